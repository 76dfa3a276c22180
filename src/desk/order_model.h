// SPDX-License-Identifier: MIT
// The order as a tree for a table view: a row a line with quantities by size, to be typed over,
// under it a row a placement with the state of each size.
#pragma once

#include <QAbstractItemModel>
#include <memory>

#include "desk/planned_order.h"

namespace creaseline::desk {

class OrderModel : public QAbstractItemModel {
  Q_OBJECT

 public:
  enum Role {
    LineRole = Qt::UserRole,  // int
    PlacementRole,            // int; invalid on a line's row
    SizeRole,                 // text; invalid outside the size columns
    StateRole,                // Severity as int, of a line its worst; invalid without a plan
    DetailRole                // second line of the first column
  };

  explicit OrderModel(QObject* parent = nullptr);
  void setPlanned(std::shared_ptr<const PlannedOrder> planned);

  // Columns: first the name, then one a size.
  [[nodiscard]] int sizeColumn(const SizeName& size) const;  // -1 if it has none
  [[nodiscard]] QModelIndex indexOf(std::size_t line, std::size_t placement, int column) const;

  QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
  QModelIndex parent(const QModelIndex& child) const override;
  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation,
                      int role = Qt::DisplayRole) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  // Quantities can be typed over; the change is asked for, not made here.
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

 Q_SIGNALS:
  void quantityAsked(int line, const QString& size, int quantity);

 private:
  // Whether rows and columns stay, so that whoever types in a cell can go on.
  [[nodiscard]] bool sameForm(const PlannedOrder& other) const;
  void tellAllChanged();
  [[nodiscard]] bool mayHave(std::size_t line, const SizeName& size) const;
  [[nodiscard]] const SizeName* sizeAt(int column) const;
  [[nodiscard]] QVariant lineData(std::size_t line, int column, int role) const;
  [[nodiscard]] QVariant placementData(std::size_t line, std::size_t placement, int column,
                                       int role) const;

  std::shared_ptr<const PlannedOrder> planned_;
};

}  // namespace creaseline::desk
