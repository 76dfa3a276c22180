// SPDX-License-Identifier: MIT
// What those who observe a plan have in common: what they look at and how they say it.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "creaseline/planning/wording.h"
#include "planning/observation.h"

namespace creaseline {

// Gathers observations of one plan; those derived have a member for each subject.
class Observer {
 public:
  Observer(const PlacementRequest& request, const PlacementPlan& plan, const Workshop& workshop)
      : request_(request), plan_(plan), workshop_(workshop), units_(workshop.shop->units) {}

 protected:
  [[nodiscard]] std::string text(Length length) const { return formatLength(length, units_); }

  // More than nothing, and never said to be 0.
  [[nodiscard]] std::string difference(Length length) const {
    return differencePhrase(length, units_);
  }

  void say(Severity severity, FindingCode code, std::string subject, std::string sentence,
           std::string_view number = {}, Length amount = {}) {
    std::vector<Number> numbers;
    if (!number.empty()) {
      numbers.push_back({std::string(number), amount});
    }
    found_.push_back({severity, code, std::move(subject), std::move(sentence), amount,
                      std::move(numbers), std::nullopt});
  }

  // Where the limit of what was said last is from.
  void because(std::optional<Reason> reason) { found_.back().reason = std::move(reason); }

  [[nodiscard]] std::vector<Observation> take() { return std::move(found_); }

  const PlacementRequest& request_;
  const PlacementPlan& plan_;
  const Workshop& workshop_;
  const UnitChoice& units_;

 private:
  std::vector<Observation> found_;
};

}  // namespace creaseline
