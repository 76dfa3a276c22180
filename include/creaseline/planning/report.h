// SPDX-License-Identifier: MIT
// A plan as text for people and as JSON for machines. Deterministic to the byte.
#pragma once

#include <string>

#include "creaseline/base/units.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

struct ReportContext {
  const Order& order;
  const Shop& shop;
  const Rules& rules;
};

// Plain text, 100 columns at most where words allow: summary, findings with remedies, then each
// group of sizes with its numbers and reasons.
[[nodiscard]] std::string textReport(const Plan& plan, const ReportContext& context,
                                     const UnitChoice& units);

// Of the format in which a plan is written as JSON.
inline constexpr int kPlanVersion = 1;

// "format": "creaseline-plan", "version": 1; lengths as exact millimetre texts. Schema in
// resources/schema/plan.schema.json.
[[nodiscard]] std::string jsonReport(const Plan& plan, const ReportContext& context);

}  // namespace creaseline
