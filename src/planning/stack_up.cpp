// SPDX-License-Identifier: MIT
#include "planning/stack_up.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string_view>

#include "base/worded.h"
#include "creaseline/base/units.h"
#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

struct Contribution {
  std::string name;
  Length error;
  std::string basis;
};

Reason reasonFor(bool sideways, const std::vector<Contribution>& contributions, Length takenBack,
                 const UnitChoice& shown) {
  // Such errors are smaller than a ruler's marks.
  const UnitChoice units = fineUnits(shown);
  std::vector<Length> errors;
  std::string list;
  std::string bases;
  for (const Contribution& each : contributions) {
    errors.push_back(each.error);
    list += fmt::format("{}{} {}", list.empty() ? "" : ", ", each.name,
                        formatLength(each.error, units));
    bases += fmt::format("{}{}: {}", bases.empty() ? "" : "; ", each.name, each.basis);
  }
  const StackUp sum = stackUp(errors);
  const std::string worst = formatLength(sum.worst, units);
  const std::string usual = formatLength(sum.rootSumSquare, units);
  const std::string room = roomPhrase(takenBack, units);
  return {sideways ? worded("errors sideways add up to {} at worst and {} as a rule (root of the "
                            "squares): {}; the machine can take back {}",
                            worst, usual, list, room)
                   : worded("errors along add up to {} at worst and {} as a rule (root of the "
                            "squares): {}; the machine can take back {}",
                            worst, usual, list, room),
          {},
          bases,
          false,
          {},
          worded("the shop's own figures for these errors")};
}

}  // namespace

StackUp stackUp(const std::vector<Length>& errors) {
  StackUp sum;
  double squares = 0.0;
  for (const Length error : errors) {
    sum.worst += abs(error);
    squares += error.mm() * error.mm();
  }
  sum.rootSumSquare = Length::fromMm(std::sqrt(squares));
  return sum;
}

Reasons stackUpReasons(const Workshop& workshop, const Slack& slack) {
  const Figures& figures = workshop.figures;
  const Defaults& defaults = workshop.rules->defaults;
  const UnitChoice& units = workshop.shop->units;
  const Shop& shop = *workshop.shop;
  const auto basis = [](const std::optional<Length>& own, const DefaultValue& shipped) {
    return own ? worded("the shop's own figure") : shipped.basis;
  };
  const Contribution crease{worded("crease"), figures.creaseError,
                            basis(shop.creaseError, defaults.creaseError)};
  const Contribution ruler{worded("ruler"), figures.rulerError,
                           basis(shop.rulerError, defaults.rulerError)};
  const Contribution cloth{worded("give of the cloth"), figures.clothGive,
                           basis(shop.clothGive, defaults.clothGive)};
  const std::string& hooping = figures.hoopingError.basis;
  return {
      reasonFor(true,
                {crease, ruler, {worded("hooping"), figures.hoopingError.sideways, hooping}, cloth},
                std::min(slack.left, slack.right), units),
      reasonFor(false, {ruler, {worded("hooping"), figures.hoopingError.along, hooping}, cloth},
                std::min(slack.up, slack.down), units)};
}

}  // namespace creaseline
