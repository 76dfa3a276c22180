// SPDX-License-Identifier: MIT
// Remedies as undo commands.
#include "desk/edit_commands.h"

#include <algorithm>
#include <functional>
#include <utility>
#include <variant>

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

// "3-2" for the first part split from line "3".
std::string freshId(const std::vector<OrderLine>& lines, const std::string& from) {
  for (int part = 2;; ++part) {
    std::string id = from + "-" + std::to_string(part);
    if (std::none_of(lines.begin(), lines.end(),
                     [&](const OrderLine& line) { return line.id == id; })) {
      return id;
    }
  }
}

// Makes the change for these sizes of one line alone. The planner has checked a remedy for the
// sizes of its finding and for no others, so these become a line of their own, right behind.
void changeSizes(std::vector<OrderLine>& lines, std::size_t line,
                 const std::vector<SizeName>& sizes,
                 const std::function<void(OrderLine&)>& change) {
  const auto meant = [&](const SizeQuantity& entry) {
    return std::find(sizes.begin(), sizes.end(), entry.size) != sizes.end();
  };
  OrderLine part = lines[line];
  std::erase_if(part.sizes, [&](const SizeQuantity& entry) { return !meant(entry); });
  if (part.sizes.empty()) {
    return;
  }
  change(part);
  if (part.sizes.size() == lines[line].sizes.size()) {
    lines[line] = std::move(part);
    return;
  }
  part.id = freshId(lines, lines[line].id);
  std::erase_if(lines[line].sizes, meant);
  lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(line) + 1, std::move(part));
}

// What each kind of change does to a placement; mirrors how the planner tries it.
struct Edit {
  OrderPlacement& at;

  void operator()(const TurnChange& change) const { at.turn = at.turn + change.turn; }
  void operator()(const ScaleChange& change) const { at.scale *= change.factor; }
  void operator()(const SizeSplitChange& change) const { at.scale *= change.factor; }
  void operator()(const MoveChange& change) const { at.moveDown += change.down; }
  void operator()(const LocationChange& change) const {
    at.location = change.location;
    at.moveDown = {};
  }
  void operator()(const SplitChange&) const { at.split = true; }
  void operator()(const StitchesChange&) const {}
  void operator()(const ShopChange&) const {}
};

bool changesOrder(const Change& change) {
  return !std::holds_alternative<ShopChange>(change) &&
         !std::holds_alternative<StitchesChange>(change);
}

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

std::optional<std::vector<OrderLine>> linesWith(const Order& order, const Finding& finding,
                                                const Change& change) {
  std::vector<OrderLine> lines = order.lines;
  if (finding.line >= lines.size() || finding.placement >= lines[finding.line].placements.size() ||
      !changesOrder(change)) {
    return std::nullopt;
  }
  const auto* split = std::get_if<SizeSplitChange>(&change);
  changeSizes(
      lines, finding.line, split == nullptr ? finding.sizes : split->sizes,
      [&](OrderLine& line) { std::visit(Edit{line.placements[finding.placement]}, change); });
  return lines == order.lines ? std::nullopt : std::optional(std::move(lines));
}

bool applyRemedy(Document& document, const Finding& finding, const Remedy& remedy) {
  if (!document.orderInHand()) {
    return false;
  }
  auto lines = linesWith(*document.orderInHand(), finding, remedy.change);
  if (!lines) {
    return false;
  }
  OrderEdit edit{capitalised(toQString(remedy.text)), {}, *document.orderInHand()};
  edit.order.lines = std::move(*lines);
  return applyEdit(document, std::move(edit));
}

}  // namespace creaseline::desk
