// SPDX-License-Identifier: MIT
// A table to type in whose cells are checked while one types, with the same habits as FieldEdit:
// what will not do is said beside the table, and the old value stays.
#pragma once

#include <QAbstractTableModel>
#include <QTableView>
#include <optional>

namespace creaseline::desk {

class CheckedTableModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  using QAbstractTableModel::QAbstractTableModel;
  // What is wrong with a text for that cell, one sentence without a full stop, or nothing.
  [[nodiscard]] virtual std::optional<QString> problem(const QModelIndex& index,
                                                       const QString& text) const = 0;
  // The texts to choose from; none: it is typed.
  [[nodiscard]] virtual QStringList choices(const QModelIndex& index) const;
  // What is typed over, if that is not what is shown.
  [[nodiscard]] virtual QString typed(const QModelIndex& index) const;
  // The name of the cell for screen readers, "Thread of row 2".
  [[nodiscard]] virtual QString cellName(const QModelIndex& index) const;
};

class CheckedTable : public QTableView {
  Q_OBJECT

 public:
  CheckedTable(const QString& name, const QString& words, CheckedTableModel& model,
               QWidget* parent = nullptr);

  [[nodiscard]] int row() const { return currentIndex().isValid() ? currentIndex().row() : -1; }
  void chooseCell(int row, int column);

 Q_SIGNALS:
  // While a cell is edited, or after it was refused; empty when all is well.
  void problemChanged(const QString& problem);
  void cellChosen();
  // The clipboard is to be put in here.
  void pasteAsked();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 private:
  CheckedTableModel& model_;
};

}  // namespace creaseline::desk
