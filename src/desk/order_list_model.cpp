// SPDX-License-Identifier: MIT
#include "desk/order_list_model.h"

#include <QDir>
#include <utility>

#include "desk/text.h"

namespace creaseline::desk {

OrderListModel::OrderListModel(QObject* parent) : QAbstractTableModel(parent) {
}

void OrderListModel::setOrders(std::vector<OrderHead> orders) {
  beginResetModel();
  orders_ = std::move(orders);
  endResetModel();
}

int OrderListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(orders_.size());
}

int OrderListModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant OrderListModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
    return {};
  }
  const OrderHead& order = orders_[static_cast<std::size_t>(index.row())];
  if (role == Qt::ToolTipRole) {
    return QDir::toNativeSeparators(pathText(order.file));
  }
  if (role == Qt::TextAlignmentRole) {
    return QVariant(index.column() == Quantity ? Qt::AlignRight | Qt::AlignVCenter
                                               : Qt::AlignLeft | Qt::AlignVCenter);
  }
  if (role != Qt::DisplayRole) {
    return {};
  }
  switch (index.column()) {
    case Number:
      return toQString(order.id);
    case Title:
      return toQString(order.title);
    case Customer:
      return toQString(order.customer);
    case Due:
      return toQString(order.due);
    case Garments: {
      QStringList names;
      for (const std::string& name : order.garments) {
        names.append(toQString(name));
      }
      return names.join(QStringLiteral(", "));
    }
    case Quantity:
      return order.quantity;
    default:
      return {};
  }
}

QVariant OrderListModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
    return {};
  }
  const QString names[] = {tr("Number"), tr("Title"),    tr("Customer"),
                           tr("Due"),    tr("Garments"), tr("Quantity")};
  return section >= 0 && section < ColumnCount ? names[section] : QVariant();
}

}  // namespace creaseline::desk
