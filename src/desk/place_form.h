// SPDX-License-Identifier: MIT
// One place of a line: location, design, scale, what is moved and turned against the rule, note.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QWidget>
#include <memory>

#include "desk/field_edit.h"
#include "desk/note_edit.h"
#include "desk/order_edits.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

class PlaceForm : public QWidget {
  Q_OBJECT

 public:
  explicit PlaceForm(QWidget* parent = nullptr);
  void show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t line,
            std::size_t placement);
  void showNothing();

 Q_SIGNALS:
  void edited(const creaseline::desk::OrderEdit& edit);

 private:
  [[nodiscard]] OrderEdits edits() const;
  [[nodiscard]] const OrderPlacement& shownPlace() const;
  [[nodiscard]] LengthUnit unit() const { return planned_->units().length; }
  void makeFields();
  void fillLocations();
  void fillDesigns();

  std::shared_ptr<const PlannedOrder> planned_;
  std::size_t line_ = 0, placement_ = 0;
  QComboBox* location_ = nullptr;
  QComboBox* design_ = nullptr;
  FieldEdit* scale_ = nullptr;
  FieldEdit* moveDown_ = nullptr;
  FieldEdit* moveRight_ = nullptr;
  FieldEdit* turn_ = nullptr;
  FieldEdit* frameTurn_ = nullptr;
  QCheckBox* split_ = nullptr;
  NoteEdit* note_ = nullptr;
};

}  // namespace creaseline::desk
