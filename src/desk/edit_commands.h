// SPDX-License-Identifier: MIT
// Every change of the order and the shop in hand as an undoable step. The command classes stay
// private to the .cpp, so that nothing changes the order around the undo stack.
#pragma once

#include <QString>
#include <QUndoCommand>
#include <memory>

#include "creaseline/planning/finding.h"
#include "desk/document.h"
#include "desk/order_edits.h"
#include "desk/shop_edits.h"

namespace creaseline::desk {

// A step from the order in hand to `after`, not pushed yet.
[[nodiscard]] QUndoCommand* makeOrderStep(Document& document, const QString& name,
                                          std::shared_ptr<const Order> after);

// The same for the shop in hand.
[[nodiscard]] QUndoCommand* makeShopStep(Document& document, const QString& name,
                                         std::shared_ptr<const Shop> after);

// Makes the edit. False if the order, or the shop, stays as it is.
bool applyEdit(Document& document, OrderEdit edit);
bool applyEdit(Document& document, ShopEdit edit);

// Takes all from the undo stack but the steps that changed the shop, so that these can still be
// undone after another order is opened.
void keepShopSteps(Document& document);

// Tries a remedy that the planner has checked: one step on the undo stack, named like the remedy,
// shortened if that is long. False if there is nothing to change.
bool applyRemedy(Document& document, const Finding& finding, const Remedy& remedy);

}  // namespace creaseline::desk
