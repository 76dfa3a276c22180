// SPDX-License-Identifier: MIT
// The head of the order: number, title, customer, due date, frames, note.
#pragma once

#include <QPlainTextEdit>
#include <QWidget>
#include <memory>

#include "desk/field_edit.h"
#include "desk/frames_pick.h"
#include "desk/note_edit.h"
#include "desk/order_edits.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

class OrderForm : public QWidget {
  Q_OBJECT

 public:
  explicit OrderForm(QWidget* parent = nullptr);
  void show(const std::shared_ptr<const PlannedOrder>& planned);

 Q_SIGNALS:
  void edited(const creaseline::desk::OrderEdit& edit);

 private:
  using Make = OrderEdit (OrderEdits::*)(const std::string&) const;
  FieldEdit* field(const QString& name, const QString& words, const FieldEdit::Check& check,
                   Make make);
  [[nodiscard]] OrderEdits edits() const;
  void edit(Make make, const QString& text, const QString& typing);

  std::shared_ptr<const PlannedOrder> planned_;
  FieldEdit* number_ = nullptr;
  FieldEdit* title_ = nullptr;
  FieldEdit* customer_ = nullptr;
  FieldEdit* due_ = nullptr;
  FramesPick* frames_ = nullptr;
  NoteEdit* note_ = nullptr;
};

}  // namespace creaseline::desk
