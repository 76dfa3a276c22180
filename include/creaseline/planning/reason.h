// SPDX-License-Identifier: MIT
// Why a number is what it is.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/catalogue/identifiers.h"
#include "creaseline/catalogue/size_chart.h"

namespace creaseline {

// One link in the chain of reasons behind a number of the plan.
struct Reason {
  std::string text;      // a sentence without a full stop
  RuleId rule;           // the rule applied, or empty
  std::string basis;     // of the rule: "common practice, no source", "size chart", ...
  bool assumed = false;  // rests on a measure that the chart lacks
  std::optional<Measure> measure = {};  // of the garment, that it rests on
  std::string changedBy = {};           // what would change it, or empty: "a house rule"
  bool operator==(const Reason&) const = default;
};
using Reasons = std::vector<Reason>;

}  // namespace creaseline
