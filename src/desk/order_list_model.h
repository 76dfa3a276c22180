// SPDX-License-Identifier: MIT
// Orders that were found, one a row.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "creaseline/catalogue/order_library.h"

namespace creaseline::desk {

class OrderListModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Number, Title, Customer, Due, Garments, Quantity, ColumnCount };

  explicit OrderListModel(QObject* parent = nullptr);
  void setOrders(std::vector<OrderHead> orders);
  [[nodiscard]] const OrderHead& order(int row) const {
    return orders_.at(static_cast<std::size_t>(row));
  }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

 private:
  std::vector<OrderHead> orders_;
};

}  // namespace creaseline::desk
