// SPDX-License-Identifier: MIT
// The size chart of a garment: the table, name and band of the chosen size, sizes and points of
// measure to be added and taken out, and the ways in from the clipboard and from a file.
#pragma once

#include <QComboBox>
#include <QGroupBox>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <memory>

#include "desk/chart_table_model.h"
#include "desk/checked_table.h"
#include "desk/field_edit.h"
#include "desk/form_parts.h"

namespace creaseline::desk {

class ChartPanel : public QGroupBox {
  Q_OBJECT

 public:
  explicit ChartPanel(QWidget* parent = nullptr);
  void show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t blank);

 Q_SIGNALS:
  void edited(const creaseline::desk::OrderEdit& edit);
  void pasteAsked();
  void importAsked();

 private:
  QWidget* buildSizeStrip();
  QLayout* buildButtons();
  QPushButton* button(const char* name, const QString& text, const QString& words);
  [[nodiscard]] GarmentEdits edits() const;
  [[nodiscard]] std::size_t size() const;  // the row chosen
  [[nodiscard]] const Blank& blank() const { return planned_->order()->blanks.at(blank_); }
  void showSize();
  void fillMeasures();
  void shiftSize(int by);
  void say(const QString& problem);
  void showNote();
  void setBand(int index);

  std::shared_ptr<const PlannedOrder> planned_;
  std::size_t blank_ = 0;
  ChartTableModel* model_ = nullptr;
  CheckedTable* table_ = nullptr;
  FieldEdit* sizeName_ = nullptr;
  QComboBox* band_ = nullptr;
  QMenu* measures_ = nullptr;
  QPushButton *addMeasure_ = nullptr, *add_ = nullptr, *remove_ = nullptr, *up_ = nullptr,
              *down_ = nullptr, *paste_ = nullptr, *import_ = nullptr;
  NoteLabel* below_ = nullptr;
  QString problem_;
};

}  // namespace creaseline::desk
