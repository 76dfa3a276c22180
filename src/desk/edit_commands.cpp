// SPDX-License-Identifier: MIT
// Edits and remedies as undo commands.
#include "desk/edit_commands.h"

#include <memory>
#include <utility>
#include <vector>

#include "creaseline/planning/change.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

// Characters: a remedy for many lines is longer than a menu may be wide.
constexpr qsizetype kLongestStep = 80;

void put(Document& document, const OrderState& state) {
  document.setState(state);
}
void put(Document& document, const std::shared_ptr<const Shop>& shop) {
  document.setShop(shop);
}

bool same(const OrderState& a, const OrderState& b) {
  return *a.order == *b.order;
}
bool same(const std::shared_ptr<const Shop>& a, const std::shared_ptr<const Shop>& b) {
  return *a == *b;
}

bool mayMerge(const OrderState& a, const OrderState& b) {
  return a.folder == b.folder;
}
bool mayMerge(const std::shared_ptr<const Shop>& /*a*/, const std::shared_ptr<const Shop>& /*b*/) {
  return true;
}

// Holds whole orders or shops, which share nothing with the document and cost one copy a step.
template <class State>
class Step : public QUndoCommand {
 public:
  Step(const QString& name, QString merging, Document& document, State before, State after)
      : QUndoCommand(name),
        document_(document),
        merging_(std::move(merging)),
        before_(std::move(before)),
        after_(std::move(after)) {}

  void undo() override { put(document_, before_); }
  void redo() override {
    if (!std::exchange(done_, false)) {
      put(document_, after_);
    }
  }
  // The same step for a stack that is filled anew, on which it is done already.
  [[nodiscard]] std::unique_ptr<Step> again() const {
    auto step = std::make_unique<Step>(text(), QString(), document_, before_, after_);
    step->done_ = true;
    return step;
  }
  [[nodiscard]] int id() const override { return merging_.isEmpty() ? -1 : kMergingId; }
  // Typing in one field, or nudging one place, is one step.
  bool mergeWith(const QUndoCommand* next) override {
    const auto* step = dynamic_cast<const Step*>(next);
    if (step == nullptr || step->merging_ != merging_ || !mayMerge(step->after_, after_)) {
      return false;
    }
    after_ = step->after_;
    setText(step->text());
    setObsolete(same(after_, before_));
    return true;
  }

 private:
  static constexpr int kMergingId = 1;

  Document& document_;
  QString merging_;
  State before_, after_;
  bool done_ = false;  // the next redo() is that of being put on a stack
};

QUndoCommand* orderStep(Document& document, const QString& name, const QString& merging,
                        std::shared_ptr<const Order> after) {
  const OrderState before = document.state();
  return new Step<OrderState>(name, merging, document, before, {std::move(after), before.folder});
}

QUndoCommand* shopStep(Document& document, const QString& name, const QString& merging,
                       std::shared_ptr<const Shop> after) {
  return new Step<std::shared_ptr<const Shop>>(name, merging, document, document.shopInHand(),
                                               std::move(after));
}

}  // namespace

QUndoCommand* makeOrderStep(Document& document, const QString& name,
                            std::shared_ptr<const Order> after) {
  return orderStep(document, name, {}, std::move(after));
}

QUndoCommand* makeShopStep(Document& document, const QString& name,
                           std::shared_ptr<const Shop> after) {
  return shopStep(document, name, {}, std::move(after));
}

bool applyEdit(Document& document, OrderEdit edit) {
  if (edit.order == *document.orderInHand()) {
    return false;
  }
  document.undoStack().push(orderStep(document, edit.name, edit.merging,
                                      std::make_shared<const Order>(std::move(edit.order))));
  return true;
}

bool applyEdit(Document& document, ShopEdit edit) {
  if (edit.shop == *document.shopInHand()) {
    return false;
  }
  document.undoStack().push(shopStep(document, edit.name, edit.merging,
                                     std::make_shared<const Shop>(std::move(edit.shop))));
  return true;
}

void keepShopSteps(Document& document) {
  QUndoStack& stack = document.undoStack();
  std::vector<std::unique_ptr<QUndoCommand>> kept;
  for (int i = 0; i < stack.index(); ++i) {
    const auto* step = dynamic_cast<const Step<std::shared_ptr<const Shop>>*>(stack.command(i));
    if (step != nullptr) {
      kept.push_back(step->again());
    }
  }
  stack.clear();
  for (auto& step : kept) {
    stack.push(step.release());
  }
}

bool applyRemedy(Document& document, const Finding& finding, const Remedy& remedy) {
  if (!document.orderInHand()) {
    return false;
  }
  auto changed = orderWith(*document.orderInHand(), finding, remedy.change);
  return changed &&
         applyEdit(document, {shortened(capitalised(toQString(remedy.text)), kLongestStep),
                              {},
                              std::move(*changed)});
}

}  // namespace creaseline::desk
