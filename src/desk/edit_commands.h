// SPDX-License-Identifier: MIT
// Every change of the order in hand as an undoable step. The command classes stay private to the
// .cpp, so that nothing changes the order around the undo stack.
#pragma once

#include <QString>
#include <QUndoCommand>
#include <memory>
#include <optional>
#include <vector>

#include "creaseline/planning/finding.h"
#include "desk/document.h"
#include "desk/order_edits.h"

namespace creaseline::desk {

// A step from the order in hand to `after`, not pushed yet.
[[nodiscard]] QUndoCommand* makeOrderStep(Document& document, const QString& name,
                                          std::shared_ptr<const Order> after);

// Makes the edit. False if the order stays as it is.
bool applyEdit(Document& document, OrderEdit edit);

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
