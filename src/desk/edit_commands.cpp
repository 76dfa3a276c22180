// SPDX-License-Identifier: MIT
// Remedies as undo commands.
#include "desk/edit_commands.h"

#include <utility>

#include "creaseline/planning/change.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

// Holds whole orders, which share nothing with the document and cost one copy a step.
class OrderStep : public QUndoCommand {
 public:
  OrderStep(const QString& name, const QString& merging, Document& document,
            std::shared_ptr<const Order> after)
      : QUndoCommand(name),
        document_(document),
        merging_(merging),
        before_(document.state()),
        after_{std::move(after), before_.folder} {}

  void undo() override { document_.setState(before_); }
  void redo() override { document_.setState(after_); }
  [[nodiscard]] int id() const override { return merging_.isEmpty() ? -1 : kMergingId; }
  // Typing in one field, or nudging one place, is one step.
  bool mergeWith(const QUndoCommand* next) override {
    const auto* step = dynamic_cast<const OrderStep*>(next);
    if (step == nullptr || step->merging_ != merging_ || step->after_.folder != after_.folder) {
      return false;
    }
    after_ = step->after_;
    setText(step->text());
    setObsolete(*after_.order == *before_.order);
    return true;
  }

 private:
  static constexpr int kMergingId = 1;

  Document& document_;
  QString merging_;
  OrderState before_, after_;
};

}  // namespace

QUndoCommand* makeOrderStep(Document& document, const QString& name,
                            std::shared_ptr<const Order> after) {
  return new OrderStep(name, {}, document, std::move(after));
}

bool applyEdit(Document& document, OrderEdit edit) {
  if (edit.order == *document.orderInHand()) {
    return false;
  }
  document.undoStack().push(new OrderStep(edit.name, edit.merging, document,
                                          std::make_shared<const Order>(std::move(edit.order))));
  return true;
}

bool applyRemedy(Document& document, const Finding& finding, const Remedy& remedy) {
  if (!document.orderInHand()) {
    return false;
  }
  auto changed = orderWith(*document.orderInHand(), finding, remedy.change);
  return changed &&
         applyEdit(document, {capitalised(toQString(remedy.text)), {}, std::move(*changed)});
}

}  // namespace creaseline::desk
