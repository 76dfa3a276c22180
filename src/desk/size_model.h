// SPDX-License-Identifier: MIT
// The sizes of one placement, side by side: what the size rail shows.
#pragma once

#include <QAbstractListModel>
#include <memory>
#include <vector>

#include "desk/unplanned.h"

namespace creaseline::desk {

class SizeModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum Role {
    StateRole = Qt::UserRole,  // Severity as int; invalid without a plan
    QuantityRole
  };

  explicit SizeModel(QObject* parent = nullptr);
  // `laid`: the sizes as they lie while there is no plan of them.
  void setPlacement(std::shared_ptr<const PlannedOrder> planned, std::size_t line,
                    std::size_t placement, std::shared_ptr<const Laid> laid = nullptr);

  [[nodiscard]] const PlannedOrder* planned() const { return planned_.get(); }
  [[nodiscard]] const std::vector<const PlacementPlan*>& plans() const { return plans_; }
  // Whether these are planned, and not only laid flat.
  [[nodiscard]] bool arePlanned() const { return arePlanned_; }
  [[nodiscard]] std::optional<Colour> cloth() const;
  [[nodiscard]] int rowOf(const SizeName& size) const;  // -1 if absent

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  std::shared_ptr<const PlannedOrder> planned_;
  std::size_t line_ = 0;
  std::size_t placement_ = 0;
  std::shared_ptr<const Laid> laid_;
  bool arePlanned_ = false;
  std::vector<const PlacementPlan*> plans_;
};

}  // namespace creaseline::desk
