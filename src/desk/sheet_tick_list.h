// SPDX-License-Identifier: MIT
// The tick list of the kinds of sheets: name, pages, and under them what the kind is for.
#pragma once

#include <QListView>

#include "desk/sheet_tick_model.h"

namespace creaseline::desk {

class SheetTickList : public QListView {
  Q_OBJECT

 public:
  explicit SheetTickList(SheetTickModel& model, QWidget* parent = nullptr);

  // Marks a row as the one on show, without asking for it.
  void follow(int row);

 Q_SIGNALS:
  // Chosen by click or by the arrow keys; also when it is chosen once more.
  void kindChosen(int row);

 protected:
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

 private:
  bool following_ = false;
};

}  // namespace creaseline::desk
