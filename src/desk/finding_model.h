// SPDX-License-Identifier: MIT
// The findings of the plan as a list.
#pragma once

#include <QAbstractListModel>
#include <memory>

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
  [[nodiscard]] const Finding* finding(int row) const;  // null outside

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  [[nodiscard]] bool findsTheSame(const PlannedOrder& other) const;

  std::shared_ptr<const PlannedOrder> planned_;
};

}  // namespace creaseline::desk
