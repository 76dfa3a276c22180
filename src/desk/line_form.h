// SPDX-License-Identifier: MIT
// One line of the order: which garment, its colour, how many of each size, note.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QWidget>
#include <memory>
#include <vector>

#include "desk/field_edit.h"
#include "desk/note_edit.h"
#include "desk/order_edits.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

class LineForm : public QWidget {
  Q_OBJECT

 public:
  explicit LineForm(QWidget* parent = nullptr);
  void show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t line);
  void showNothing();

 Q_SIGNALS:
  void edited(const creaseline::desk::OrderEdit& edit);

 private:
  [[nodiscard]] OrderEdits edits() const;
  [[nodiscard]] const OrderLine& shownLine() const;
  void fillBlanks();
  void fillColours(const Blank* blank);
  void fillSizes(const Blank* blank);

  std::shared_ptr<const PlannedOrder> planned_;
  std::size_t line_ = 0;
  FieldEdit* id_ = nullptr;
  QComboBox* blank_ = nullptr;
  QComboBox* colour_ = nullptr;
  QWidget* sizes_ = nullptr;
  QGridLayout* sizesLayout_ = nullptr;
  std::vector<SizeName> sizeNames_;
  std::vector<FieldEdit*> quantities_;
  NoteEdit* note_ = nullptr;
  QCheckBox* supplied_ = nullptr;
};

}  // namespace creaseline::desk
