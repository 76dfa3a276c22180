// SPDX-License-Identifier: MIT
// One question to the planner: this design, at this location, on this size.
#pragma once

#include <memory>

#include "creaseline/catalogue/order.h"
#include "creaseline/planning/plan.h"
#include "planning/workshop.h"

namespace creaseline {

struct PlacementRequest {
  std::size_t lineIndex = 0;
  std::size_t placementIndex = 0;
  const OrderLine* line = nullptr;
  const Blank* blank = nullptr;
  const Design* design = nullptr;  // as drawn
  OrderPlacement placement;        // its own copy: remedies change it
  SizeName size;
  int quantity = 0;
  std::shared_ptr<const GarmentShape> garment;
};

// Answers one question. Never throws for what the loaders let through.
PlacementPlan answer(const PlacementRequest& request, const Workshop& workshop);

}  // namespace creaseline
