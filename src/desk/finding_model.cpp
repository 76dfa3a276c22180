// SPDX-License-Identifier: MIT
// Rows of the findings list.
#include "desk/finding_model.h"

#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

FindingModel::FindingModel(QObject* parent) : QAbstractListModel(parent) {
}

bool FindingModel::findsTheSame(const PlannedOrder& other,
                                const std::vector<IdleHouseRule>& idle) const {
  return planned_ && planned_->plan() != nullptr && other.plan() != nullptr && idle == idle_ &&
         planned_->plan()->findings == other.plan()->findings;
}

bool FindingModel::setPlanned(std::shared_ptr<const PlannedOrder> planned) {
  std::vector<IdleHouseRule> idle;
  if (planned && planned->plan() != nullptr) {
    idle = idleHouseRules(*planned->plannedFor(), *planned->shop());
  }
  if (planned && findsTheSame(*planned, idle)) {
    planned_ = std::move(planned);
    return false;
  }
  beginResetModel();
  planned_ = std::move(planned);
  idle_ = std::move(idle);
  endResetModel();
  return true;
}

int FindingModel::findings() const {
  return planned_ && planned_->plan() != nullptr
             ? static_cast<int>(planned_->plan()->findings.size())
             : 0;
}

const Finding* FindingModel::finding(int row) const {
  return row < 0 || row >= findings() ? nullptr
                                      : &planned_->plan()->findings[static_cast<std::size_t>(row)];
}

const IdleHouseRule* FindingModel::idleRule(int row) const {
  return row < findings() || row >= rowCount() ? nullptr
                                               : &idle_[static_cast<std::size_t>(row - findings())];
}

int FindingModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : findings() + static_cast<int>(idle_.size());
}

QVariant FindingModel::idleData(const IdleHouseRule& idle, int role) {
  switch (role) {
    case Qt::DisplayRole:
      return capitalised(toQString(idle.note.text));
    case SeverityRole:
      return static_cast<int>(Severity::Note);
    case PlaceRole:
      return capitalised(toQString(idle.note.where));
    case RemediesRole:
      return 0;
    case Qt::AccessibleTextRole:
      return tr("%1. %2. %3", "severity. place. text")
          .arg(findingWord(Severity::Note), toQString(idle.note.where), toQString(idle.note.text));
    default:
      return {};
  }
}

QVariant FindingModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
    return {};
  }
  if (const IdleHouseRule* idle = idleRule(index.row())) {
    return idleData(*idle, role);
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
