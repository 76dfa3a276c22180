// SPDX-License-Identifier: MIT
// Places of one line whose sewing lies over each other.
#pragma once

#include <vector>

#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

// A finding for each two places of a line that meet on a panel in some size, about the one that is
// ordered later. What is meant to be sewn one over the other is one design; two that meet are
// mostly a slip, such as a place entered twice. Pieces of outlines count by their convex hulls.
std::vector<Finding> overlappingPlaces(const std::vector<PlacementPlan>& plans, const Order& order,
                                       const Shop& shop, const Rules& rules);

}  // namespace creaseline
