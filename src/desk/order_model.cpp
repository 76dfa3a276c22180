// SPDX-License-Identifier: MIT
// Rows and columns of the order.
#include "desk/order_model.h"

#include <algorithm>

#include "creaseline/catalogue/field_check.h"
#include "creaseline/planning/wording.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

// Internal id of a top row; of a placement's row it is the line's index plus one.
constexpr quintptr kTopRow = 0;

}  // namespace

OrderModel::OrderModel(QObject* parent) : QAbstractItemModel(parent) {
}

void OrderModel::setPlanned(std::shared_ptr<const PlannedOrder> planned) {
  if (planned_ && sameForm(*planned)) {
    planned_ = std::move(planned);
    tellAllChanged();
    return;
  }
  beginResetModel();
  planned_ = std::move(planned);
  endResetModel();
}

bool OrderModel::sameForm(const PlannedOrder& other) const {
  if (planned_->order() == nullptr || other.order() == nullptr ||
      planned_->sizesInOrder() != other.sizesInOrder()) {
    return false;
  }
  const auto& mine = planned_->order()->lines;
  const auto& others = other.order()->lines;
  return std::equal(mine.begin(), mine.end(), others.begin(), others.end(),
                    [](const OrderLine& left, const OrderLine& right) {
                      return left.id == right.id &&
                             left.placements.size() == right.placements.size();
                    });
}

void OrderModel::tellAllChanged() {
  const int lastColumn = columnCount() - 1;
  const int lines = rowCount();
  if (lines == 0) {
    return;
  }
  Q_EMIT dataChanged(index(0, 0), index(lines - 1, lastColumn));
  for (int line = 0; line < lines; ++line) {
    const QModelIndex top = index(line, 0);
    if (const int places = rowCount(top); places > 0) {
      Q_EMIT dataChanged(index(0, 0, top), index(places - 1, lastColumn, top));
    }
  }
}

bool OrderModel::mayHave(std::size_t line, const SizeName& size) const {
  const Blank* blank = planned_->order()->blank(planned_->order()->lines[line].blank);
  return blank != nullptr && blank->chart.find(size) != nullptr;
}

bool OrderModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const SizeName* size = index.isValid() ? sizeAt(index.column()) : nullptr;
  if (role != Qt::EditRole || size == nullptr || !(flags(index) & Qt::ItemIsEditable)) {
    return false;
  }
  const auto quantity = checkQuantity(toUtf8(value.toString()));
  if (!quantity) {
    return false;
  }
  Q_EMIT quantityAsked(index.row(), toQString(size->text()), *quantity);
  return true;
}

int OrderModel::sizeColumn(const SizeName& size) const {
  for (int column = 1; column < columnCount(); ++column) {
    if (*sizeAt(column) == size) {
      return column;
    }
  }
  return -1;
}

QModelIndex OrderModel::indexOf(std::size_t line, std::size_t placement, int column) const {
  return index(static_cast<int>(placement), column, index(static_cast<int>(line), 0));
}

QModelIndex OrderModel::index(int row, int column, const QModelIndex& parent) const {
  if (!hasIndex(row, column, parent)) {
    return {};
  }
  return createIndex(row, column,
                     parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : kTopRow);
}

QModelIndex OrderModel::parent(const QModelIndex& child) const {
  if (!child.isValid() || child.internalId() == kTopRow) {
    return {};
  }
  return createIndex(static_cast<int>(child.internalId()) - 1, 0, kTopRow);
}

int OrderModel::rowCount(const QModelIndex& parent) const {
  if (!planned_ || planned_->order() == nullptr) {
    return 0;
  }
  const auto& lines = planned_->order()->lines;
  if (!parent.isValid()) {
    return static_cast<int>(lines.size());
  }
  if (parent.internalId() != kTopRow || parent.column() != 0) {
    return 0;
  }
  return static_cast<int>(lines[static_cast<std::size_t>(parent.row())].placements.size());
}

int OrderModel::columnCount(const QModelIndex&) const {
  return 1 + (planned_ ? static_cast<int>(planned_->sizesInOrder().size()) : 0);
}

const SizeName* OrderModel::sizeAt(int column) const {
  if (!planned_ || column < 1 || column >= columnCount()) {
    return nullptr;
  }
  return &planned_->sizesInOrder()[static_cast<std::size_t>(column) - 1];
}

QVariant OrderModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid) || !planned_) {
    return {};
  }
  const bool top = index.internalId() == kTopRow;
  const std::size_t line = top ? static_cast<std::size_t>(index.row())
                               : static_cast<std::size_t>(index.internalId()) - 1;
  const SizeName* size = sizeAt(index.column());
  switch (role) {
    case LineRole:
      return static_cast<int>(line);
    case PlacementRole:
      return top ? QVariant() : QVariant(index.row());
    case SizeRole:
      return size == nullptr ? QVariant() : QVariant(toQString(size->text()));
    case Qt::TextAlignmentRole:
      return size == nullptr ? QVariant() : QVariant(Qt::AlignCenter);
    default:
      return top ? lineData(line, index.column(), role)
                 : placementData(line, static_cast<std::size_t>(index.row()), index.column(), role);
  }
}

QVariant OrderModel::lineData(std::size_t line, int column, int role) const {
  const OrderLine& ordered = planned_->order()->lines[line];
  if (column == 0) {
    const Blank* blank = planned_->order()->blank(ordered.blank);
    const QString name = toQString(blank == nullptr ? ordered.blank.text() : blank->name);
    const QString garments = tr("%n garment(s)", nullptr, ordered.garments());
    const QString detail =
        ordered.colour.empty()
            ? garments
            : tr("%1, %2", "colour, garments").arg(toQString(ordered.colour), garments);
    const auto worst = planned_->worst(line);
    switch (role) {
      case Qt::DisplayRole:
        return name;
      case DetailRole:
        return detail;
      case StateRole:
        return worst ? QVariant(static_cast<int>(*worst)) : QVariant();
      case Qt::ToolTipRole:
      case Qt::AccessibleTextRole:
        return worst ? tr("Line %1: %2, %3: %4", "number: garment, detail: state")
                           .arg(toQString(ordered.id), name, detail, garmentWord(*worst))
                     : tr("Line %1: %2, %3").arg(toQString(ordered.id), name, detail);
      default:
        return {};
    }
  }
  const SizeQuantity* quantity = ordered.find(*sizeAt(column));
  if (quantity == nullptr) {
    return {};
  }
  if (role == Qt::DisplayRole || role == Qt::EditRole) {
    return QString::number(quantity->quantity);
  }
  if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole) {
    return tr("%n garment(s) in size %1", nullptr, quantity->quantity)
        .arg(toQString(quantity->size.text()));
  }
  return {};
}

QVariant OrderModel::placementData(std::size_t line, std::size_t placement, int column,
                                   int role) const {
  const OrderPlacement& ordered = planned_->order()->lines[line].placements[placement];
  if (column == 0) {
    const Design* design = planned_->order()->design(ordered.design);
    const QString place = toQString(locationPhrase(ordered.location, planned_->rules()));
    const QString what = toQString(design == nullptr ? ordered.design.text() : design->name);
    switch (role) {
      case Qt::DisplayRole:
        return place;
      case DetailRole:
        return what;
      case Qt::ToolTipRole:
      case Qt::AccessibleTextRole:
        return tr("%1: %2", "place: design").arg(place, what);
      default:
        return {};
    }
  }
  const PlacementPlan* plan = planned_->find(line, placement, *sizeAt(column));
  if (plan == nullptr) {
    return {};
  }
  switch (role) {
    case StateRole:
      return static_cast<int>(plan->worst);
    case Qt::DisplayRole:
      return stateShape(plan->worst);
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
      return tr("Size %1: %2").arg(toQString(plan->size.text()), garmentWord(plan->worst));
    default:
      return {};
  }
}

QVariant OrderModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) {
    return {};
  }
  if (role == Qt::TextAlignmentRole) {
    return sizeAt(section) == nullptr ? QVariant() : QVariant(Qt::AlignCenter);
  }
  if (role != Qt::DisplayRole) {
    return {};
  }
  if (section == 0) {
    return tr("Garment and place");
  }
  const SizeName* size = sizeAt(section);
  return size == nullptr ? QVariant() : QVariant(toQString(size->text()));
}

Qt::ItemFlags OrderModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) {
    return Qt::NoItemFlags;
  }
  const Qt::ItemFlags shown = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  const SizeName* size = sizeAt(index.column());
  const bool typed = index.internalId() == kTopRow && size != nullptr &&
                     mayHave(static_cast<std::size_t>(index.row()), *size);
  return typed ? shown | Qt::ItemIsEditable : shown;
}

}  // namespace creaseline::desk
