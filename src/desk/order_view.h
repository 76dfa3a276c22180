// SPDX-License-Identifier: MIT
// The order table: lines with quantities by size, places with states by size.
#pragma once

#include <QTreeView>

#include "desk/order_model.h"
#include "desk/selection.h"

namespace creaseline::desk {

class OrderView : public QTreeView {
  Q_OBJECT

 public:
  // Both must outlive the view.
  OrderView(OrderModel& model, Selection& selection, QWidget* parent = nullptr);

 protected:
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
  void drawBranches(QPainter* painter, const QRect& rect, const QModelIndex& index) const override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void followModel();
  void followSelection();
  void fitColumns();

  OrderModel& model_;
  Selection& selection_;
  bool following_ = false;
};

}  // namespace creaseline::desk
