// SPDX-License-Identifier: MIT
// Rows of the size rail.
#include "desk/size_model.h"

#include "creaseline/base/units.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

SizeModel::SizeModel(QObject* parent) : QAbstractListModel(parent) {
}

void SizeModel::setPlacement(std::shared_ptr<const PlannedOrder> planned, std::size_t line,
                             std::size_t placement, std::shared_ptr<const Laid> laid) {
  if (planned == planned_ && line == line_ && placement == placement_ && laid_ && laid &&
      laid->size() == laid_->size()) {
    return;
  }
  beginResetModel();
  planned_ = std::move(planned);
  line_ = line;
  placement_ = placement;
  plans_ = planned_ ? planned_->sizes(line, placement) : std::vector<const PlacementPlan*>();
  laid_ = std::move(laid);
  arePlanned_ = !plans_.empty();
  for (std::size_t i = 0; !arePlanned_ && laid_ && i < laid_->size(); ++i) {
    plans_.push_back(&(*laid_)[i]);
  }
  endResetModel();
}

std::optional<Colour> SizeModel::cloth() const {
  return planned_ ? planned_->clothColour(line_) : std::nullopt;
}

int SizeModel::rowOf(const SizeName& size) const {
  for (std::size_t row = 0; row < plans_.size(); ++row) {
    if (plans_[row]->size == size) {
      return static_cast<int>(row);
    }
  }
  return -1;
}

int SizeModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(plans_.size());
}

QVariant SizeModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
    return {};
  }
  const PlacementPlan& plan = *plans_[static_cast<std::size_t>(index.row())];
  const QString size = toQString(plan.size.text());
  switch (role) {
    case Qt::DisplayRole:
      return size;
    case StateRole:
      return arePlanned_ ? QVariant(static_cast<int>(plan.worst)) : QVariant();
    case QuantityRole:
      return plan.quantity;
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
      return tr("Size %1, %n garment(s), %2", nullptr, plan.quantity)
          .arg(size, arePlanned_ ? garmentWord(plan.worst) : tr("not planned yet"));
    default:
      return {};
  }
}

}  // namespace creaseline::desk
