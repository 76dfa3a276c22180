// SPDX-License-Identifier: MIT
// Making the changes that remedies propose: to one placement, and to a whole order.
#pragma once

#include <optional>

#include "creaseline/catalogue/order.h"
#include "creaseline/planning/finding.h"

namespace creaseline {

// True for what the order itself can hold; false for what has to be bought, measured or made anew.
[[nodiscard]] bool changesOrder(const Change& change);

// Makes a change to one placement, for garments of that size. What is a matter of the whole order,
// several lines, the shop or the design file leaves it as it was.
void applyChange(const Change& change, const SizeName& size, OrderPlacement& placement);

// The order with the change made for the sizes of the finding, or the lines and sizes that the
// change names. The planner has checked a remedy for these sizes and for no others; where the line
// has more, they become a line of their own right behind it. Nothing if the change is not one of
// the order's, would change nothing, or the order lacks a line or placement that is meant.
[[nodiscard]] std::optional<Order> orderWith(const Order& order, const Finding& finding,
                                             const Change& change);

}  // namespace creaseline
