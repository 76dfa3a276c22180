// SPDX-License-Identifier: MIT
// The planner: order + shop + rules -> plan. A pure function of its arguments.
#pragma once

#include <atomic>
#include <functional>

#include "creaseline/planning/plan.h"

namespace creaseline {

struct PlanOptions {
  unsigned threads = 0;       // 0: as many as the machine has; never changes the answer
  bool checkRemedies = true;  // plan each remedy before it is offered; off leaves none
  // Called from the calling thread with the share done, 0 to 1, now and then.
  std::function<void(double)> progress;
  const std::atomic<bool>* cancel = nullptr;  // when it turns true, planning throws Cancelled
};

struct Cancelled {};

// Plans every line, location and size. The order and shop must have come through the loaders or
// hold what the loaders guarantee; what does not is reported as InputError. The plan's cautions
// point into `rules`, which must outlive it.
[[nodiscard]] Plan planOrder(const Order& order, const Shop& shop, const Rules& rules,
                             const PlanOptions& options = {});

// The answer for one placement and one size, without findings; for the desk's live drag. Of a
// design that is sewn in several hoopings, the first.
[[nodiscard]] PlacementPlan planPlacement(const Order& order, std::size_t line,
                                          std::size_t placement, const SizeName& size,
                                          const Shop& shop, const Rules& rules);

}  // namespace creaseline
