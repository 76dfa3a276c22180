// SPDX-License-Identifier: MIT
// Every change a user can make to the order in hand, as undoable steps. The command classes stay
// private to the .cpp, so that nothing changes the order around the undo stack.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "creaseline/planning/finding.h"
#include "desk/document.h"

namespace creaseline::desk {

// The order's lines with the remedy in effect for the sizes of the finding. Nothing if it is a
// change of the shop or of the design file (to buy, to measure, to have made anew), which the desk
// cannot make, or if the lines would stay as they are.
[[nodiscard]] std::optional<std::vector<OrderLine>> linesWith(const Order& order,
                                                              const Finding& finding,
                                                              const Change& change);

// Tries a remedy that the planner has checked: one step on the undo stack, named like the remedy.
// False if there is nothing to change.
bool applyRemedy(Document& document, const Finding& finding, const Remedy& remedy);

}  // namespace creaseline::desk
