// SPDX-License-Identifier: MIT
// The texts of a plan say every length in the units asked for.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "creaseline/base/file.h"
#include "creaseline/catalogue/load.h"
#include "creaseline/planning/pick_list.h"
#include "creaseline/planning/planner.h"
#include "creaseline/planning/quality_check.h"
#include "creaseline/planning/report.h"
#include "creaseline/planning/run_card.h"
#include "support/sample.h"

namespace creaseline {
namespace {

const std::filesystem::path kSource = SOURCE_DIR;

std::string onOneLine(const std::string& text) {
  return std::regex_replace(text, std::regex("\\s+"), " ");
}

// Whatever a person wrote stays as it was written: names ("8 × 9 in magnetic"), notes, and of the
// shipped rules their notes and bases, which quote their sources ("2 to 3 in below the collar").
void addWritten(const nlohmann::json& node, std::set<std::string>& written) {
  if (node.is_string()) {
    const std::string text = onOneLine(node.get<std::string>());
    if (std::regex_search(text, std::regex("[0-9] ?(mm|cm|in)\\b"))) {
      written.insert(text);
    }
  }
  if (node.is_object() || node.is_array()) {
    for (const nlohmann::json& value : node) {
      addWritten(value, written);
    }
  }
}

std::string withoutWritten(std::string text) {
  std::set<std::string> written;
  for (const char* folder : {"demo", "resources/rules", "resources/kinds"}) {
    for (const auto& entry : std::filesystem::recursive_directory_iterator(kSource / folder)) {
      if (entry.path().extension() == ".json") {
        addWritten(nlohmann::json::parse(readFile(entry.path())), written);
      }
    }
  }
  std::vector<std::string> longestFirst(written.begin(), written.end());
  std::sort(longestFirst.begin(), longestFirst.end(),
            [](const std::string& a, const std::string& b) { return a.size() > b.size(); });
  for (const std::string& each : longestFirst) {
    // A bare length of a rule, "3 in", may stand anywhere in a plan by chance.
    if (each.find_first_not_of("0123456789 /.,incm") == std::string::npos) {
      continue;
    }
    for (std::size_t at = text.find(each); at != std::string::npos; at = text.find(each, at)) {
      text.replace(at, each.size(), "(written)");
    }
  }
  return text;
}

// Machines are set, and designs drawn, in millimetres: there they stand in brackets behind the
// unit asked for.
std::string withoutMachineUnits(const std::string& text) {
  return std::regex_replace(text,
                            std::regex("(in|cm) \\([0-9]+(\\.[0-9])? mm\\) "
                                       "(right of|left of|above|below)"),
                            "$1 $3");
}

// Everything that report, run cards, pick list and check sheet say of a plan.
std::string textsOf(const UnitChoice& units) {
  const Rules& rules = sample::shippedRules();
  const Order order = loadOrder(kSource / "demo" / "regatta.order.json", rules).value;
  Shop shop = loadShop(kSource / "demo" / "workshop.shop.json", rules).value;
  shop.units = units;
  const Plan plan = planOrder(order, shop, rules);
  const ReportContext context{order, shop, rules};
  std::string all = textReport(plan, context, units) + "\n";
  const RunPlan runs = planRuns(plan, context, units);
  const auto add = [&all](const std::string& text) { all += text + "\n"; };
  for (const RunCard& card : runs.cards) {
    for (const std::string& text : {card.machineReason, card.frame, card.loading, card.turn,
                                    card.start, card.bracketOnGarment, card.bracketAtMachine}) {
      add(text);
    }
    std::for_each(card.setUp.begin(), card.setUp.end(), add);
    std::for_each(card.watches.begin(), card.watches.end(), add);
    for (const RunStep& step : card.steps) {
      add(step.text);
    }
    for (const TimeShare& share : card.time.each) {
      add(share.text + "\n" + share.basis);
    }
  }
  const PickList picked = pickList(plan, runs, context, units);
  std::for_each(picked.shortages.begin(), picked.shortages.end(), add);
  for (const QualityPart& part : qualityCheck(plan, context, units).parts) {
    for (const QualityRow& row : part.rows) {
      add(row.dropFrom + "\n" + row.dropAllowed + "\n" + row.sidewaysFrom + "\n" +
          row.sidewaysAllowed);
    }
  }
  return withoutMachineUnits(withoutWritten(onOneLine(all)));
}

// Each with the words around it.
std::set<std::string> foundIn(const std::string& text, const std::string& pattern) {
  std::set<std::string> found;
  const std::regex wanted(pattern);
  for (std::sregex_iterator each(text.begin(), text.end(), wanted), end; each != end; ++each) {
    const auto at = static_cast<std::size_t>(each->position());
    const std::size_t from = at < 60 ? 0 : at - 60;
    found.insert(text.substr(from, at + static_cast<std::size_t>(each->length()) - from + 20));
  }
  return found;
}

}  // namespace

TEST_CASE("a plan in inches says no length in millimetres or centimetres", "[planning][units]") {
  const std::string text = textsOf({LengthUnit::Inch, RulerMark::Eighth});
  REQUIRE(text.find(" in ") != std::string::npos);
  // Densities are per square millimetre, as the trade counts stitches.
  CHECK(foundIn(text, "[0-9] ?(mm|cm)\\b(?!²)") == std::set<std::string>{});
}

TEST_CASE("a plan in a metric unit says no length in inches or in the other one",
          "[planning][units]") {
  const bool millimetres = GENERATE(true, false);
  const std::string text =
      textsOf({millimetres ? LengthUnit::Millimetre : LengthUnit::Centimetre, RulerMark::Eighth});
  CHECK(foundIn(text, "[0-9]/[0-9]+ in\\b") == std::set<std::string>{});
  CHECK(foundIn(text, millimetres ? "[0-9] cm\\b" : "[0-9] mm\\b(?!²)") == std::set<std::string>{});
}

}  // namespace creaseline
