// SPDX-License-Identifier: MIT
// Rows of the findings list.
#include "desk/finding_model.h"

#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

FindingModel::FindingModel(QObject* parent) : QAbstractListModel(parent) {
}

bool FindingModel::findsTheSame(const PlannedOrder& other) const {
  return planned_ && planned_->plan() != nullptr && other.plan() != nullptr &&
         planned_->plan()->findings == other.plan()->findings;
}

bool FindingModel::setPlanned(std::shared_ptr<const PlannedOrder> planned) {
  if (planned && findsTheSame(*planned)) {
    planned_ = std::move(planned);
    return false;
  }
  beginResetModel();
  planned_ = std::move(planned);
  endResetModel();
  return true;
}

const Finding* FindingModel::finding(int row) const {
  return row < 0 || row >= rowCount() ? nullptr
                                      : &planned_->plan()->findings[static_cast<std::size_t>(row)];
}

int FindingModel::rowCount(const QModelIndex& parent) const {
  if (parent.isValid() || !planned_ || planned_->plan() == nullptr) {
    return 0;
  }
  return static_cast<int>(planned_->plan()->findings.size());
}

QVariant FindingModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
    return {};
  }
  const Finding& entry = *finding(index.row());
  switch (role) {
    case Qt::DisplayRole:
      return capitalised(toQString(entry.text));
    case SeverityRole:
      return static_cast<int>(entry.severity);
    case PlaceRole:
      return capitalised(toQString(entry.place));
    case RemediesRole:
      return static_cast<int>(entry.remedies.size());
    case Qt::AccessibleTextRole:
      return tr("%1. %2. %3", "severity. place. text")
          .arg(findingWord(entry.severity), toQString(entry.place), toQString(entry.text));
    default:
      return {};
  }
}

}  // namespace creaseline::desk
