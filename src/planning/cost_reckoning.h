// SPDX-License-Identifier: MIT
// What each kind of cost is, exactly, split among lines and runs; not rounded yet.
#pragma once

#include <optional>
#include <vector>

#include "creaseline/planning/cost.h"
#include "planning/cost_rounding.h"

namespace creaseline {

// A share of a kind of cost that one line, and one run or none, is to bear.
struct CostCell {
  CostKind kind{};
  std::size_t line = 0;            // index in the order
  std::optional<std::size_t> run;  // index among the cards
  ExactMoney amount;
};

struct ExactCost {
  std::vector<CostCell> cells;
  std::vector<CostItem> items;  // without amounts
  std::vector<NotCounted> notCounted;
};

// Precondition: the shop has rates. `runs` must be the plan's.
[[nodiscard]] ExactCost reckonCost(const Plan& plan, const RunPlan& runs,
                                   const ReportContext& context, const UnitChoice& units);

}  // namespace creaseline
