// SPDX-License-Identifier: MIT
// The findings of the plan as a list, and below them the shop's rules that the order leaves unused.
#pragma once

#include <QAbstractListModel>
#include <memory>

#include "creaseline/catalogue/shop_check.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

class FindingModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum Role {
    SeverityRole = Qt::UserRole,  // Severity as int
    PlaceRole,                    // where, as text
    RemediesRole                  // how many remedies
  };

  explicit FindingModel(QObject* parent = nullptr);
  // Resets the model, unless the same is found: then false.
  bool setPlanned(std::shared_ptr<const PlannedOrder> planned);
  [[nodiscard]] const Finding* finding(int row) const;         // null for any other row
  [[nodiscard]] const IdleHouseRule* idleRule(int row) const;  // likewise

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  [[nodiscard]] bool findsTheSame(const PlannedOrder& other,
                                  const std::vector<IdleHouseRule>& idle) const;
  [[nodiscard]] int findings() const;
  [[nodiscard]] static QVariant idleData(const IdleHouseRule& idle, int role);

  std::shared_ptr<const PlannedOrder> planned_;
  std::vector<IdleHouseRule> idle_;
};

}  // namespace creaseline::desk
