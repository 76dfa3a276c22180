// SPDX-License-Identifier: MIT
// The size chart of one garment as a table: a row for each size, a column for each point of measure
// that the garment's kind uses or the chart gives. What the chart does not give is shown in
// brackets, as the kind's proportions fill it, and so is what is only proposed.
#pragma once

#include <map>
#include <memory>
#include <vector>

#include "desk/checked_table.h"
#include "desk/garment_edits.h"

namespace creaseline::desk {

class ChartTableModel : public CheckedTableModel {
  Q_OBJECT

 public:
  using CheckedTableModel::CheckedTableModel;

  // Of the garment at `blank` in the planned order's order, which has it.
  void show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t blank);
  void showNothing();

  // A column without any value yet, until another garment is shown.
  void addColumn(Measure measure);
  // Those that have no column.
  [[nodiscard]] std::vector<Measure> otherMeasures() const;
  [[nodiscard]] const std::vector<Measure>& measures() const { return measures_; }
  [[nodiscard]] int columnOf(Measure measure) const;  // -1: none

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role = Qt::DisplayRole) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  [[nodiscard]] std::optional<QString> problem(const QModelIndex& index,
                                               const QString& text) const override;
  [[nodiscard]] QString cellName(const QModelIndex& index) const override;

 Q_SIGNALS:
  void edited(const creaseline::desk::OrderEdit& edit);

 private:
  [[nodiscard]] const Blank& blank() const { return planned_->order()->blanks.at(blank_); }
  [[nodiscard]] GarmentEdits edits() const;
  [[nodiscard]] Measure measureAt(int column) const;
  [[nodiscard]] const Length* given(const QModelIndex& index) const;  // by somebody who measured
  [[nodiscard]] bool proposed(const QModelIndex& index) const;
  [[nodiscard]] const MeasureValue* filled(const QModelIndex& index) const;
  [[nodiscard]] std::vector<Measure> wantedColumns() const;
  [[nodiscard]] QString measureName(int column) const;

  std::shared_ptr<const PlannedOrder> planned_;  // null: nothing is shown
  std::size_t blank_ = 0;
  BlankId shownId_;
  std::vector<Measure> added_, measures_;
  int rows_ = 0;
  std::vector<MeasureTable> tables_;  // of the sizes, with what is filled
};

}  // namespace creaseline::desk
