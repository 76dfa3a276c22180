// SPDX-License-Identifier: MIT
// A short list of entries (fibres, colours, thread blocks, pieces) as a table to type in, with
// buttons to add, remove and move entries and the problem of what is typed below. It holds no
// entries of its own: each column says how to show, check and change a cell.
#pragma once

#include <QColor>
#include <QGroupBox>
#include <QLabel>
#include <QToolButton>
#include <functional>
#include <vector>

#include "desk/checked_table.h"
#include "desk/form_parts.h"

namespace creaseline::desk {

struct EntryColumn {
  QString title;
  std::function<QString(int row)> text;
  std::function<std::optional<QString>(int row, const QString& text)> problem;
  std::function<void(int row, const QString& text)> change;
  std::function<QStringList(int row)> choices = {};  // if there is something to choose from
  std::function<QColor(int row)> sample = {};        // if the cell has a colour
  bool number = false;
};

class EntryModel : public CheckedTableModel {
  Q_OBJECT

 public:
  EntryModel(std::vector<EntryColumn> columns, QObject* parent = nullptr);

  // The entries are others, or have changed.
  void show(int rows);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role = Qt::DisplayRole) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  [[nodiscard]] std::optional<QString> problem(const QModelIndex& index,
                                               const QString& text) const override;
  [[nodiscard]] QStringList choices(const QModelIndex& index) const override;

 private:
  [[nodiscard]] const EntryColumn& column(const QModelIndex& index) const;

  std::vector<EntryColumn> columns_;
  int rows_ = 0;
};

class EntryTable : public QGroupBox {
  Q_OBJECT

 public:
  // What the buttons do; a missing one has no button. `colourColumn` gets a button that asks for a
  // colour.
  struct Deeds {
    std::function<void()> add;
    std::function<void(int row)> remove;
    std::function<void(int row, int by)> shift;
    int colourColumn = -1;
  };
  // `name`: object name of the table, from which those of its buttons are made; `entry`: what one
  // of them is called, "thread block".
  EntryTable(const QString& name, const QString& title, const QString& entry,
             std::vector<EntryColumn> columns, Deeds deeds, QWidget* parent = nullptr);

  void show(int rows);
  void chooseRow(int row);
  void setColumnWidths(const std::vector<int>& characters);
  // What stands below the table while nothing is wrong.
  void setNote(const QString& note);
  void say(const QString& problem);
  [[nodiscard]] CheckedTable& table() { return *table_; }
  [[nodiscard]] QString problem() const { return problem_; }

 private:
  QToolButton* button(const QString& name, const QString& text, const QString& words);
  void updateButtons();
  void pickColour();
  void showNote();

  QString name_;
  Deeds deeds_;
  EntryModel* model_ = nullptr;
  CheckedTable* table_ = nullptr;
  QToolButton *add_ = nullptr, *remove_ = nullptr, *up_ = nullptr, *down_ = nullptr,
              *colour_ = nullptr;
  NoteLabel* below_ = nullptr;
  QString note_, problem_;
};

}  // namespace creaseline::desk
