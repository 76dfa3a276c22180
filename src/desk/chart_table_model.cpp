// SPDX-License-Identifier: MIT
#include "desk/chart_table_model.h"

#include <QFont>
#include <algorithm>
#include <set>

#include "creaseline/base/error.h"
#include "creaseline/catalogue/field_check.h"
#include "desk/catalogue_words.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

// With what the kind's proportions fill; a size that makes no garment has what its chart gives.
MeasureTable tableOf(const GarmentKind* kind, const ChartSize& size) {
  try {
    if (kind != nullptr) {
      return garmentShape(*kind, size, {}, {}).measures;
    }
  } catch (const InputError&) {
    // Edits let no such size through; one that is there nevertheless is to be mended here.
  }
  return {};
}

// Names of two words stand in two lines, so that columns are as narrow as their numbers.
QString inTwoLines(QString name) {
  const qsizetype middle = name.size() / 2;
  const qsizetype before = name.lastIndexOf(QLatin1Char(' '), middle);
  const qsizetype after = name.indexOf(QLatin1Char(' '), middle);
  qsizetype at = before < 0 ? after : before;
  if (before >= 0 && after >= 0 && after - middle < middle - before) {
    at = after;
  }
  return at < 0 ? name : name.replace(at, 1, QLatin1Char('\n'));
}

}  // namespace

GarmentEdits ChartTableModel::edits() const {
  return {*planned_->order(), planned_->rules(), planned_->units()};
}

void ChartTableModel::showNothing() {
  beginResetModel();
  planned_.reset();
  added_.clear();
  measures_.clear();
  tables_.clear();
  rows_ = 0;
  endResetModel();
}

void ChartTableModel::show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t blank) {
  const bool same =
      planned_ != nullptr && blank == blank_ && shownId_ == planned->order()->blanks.at(blank).id;
  planned_ = planned;
  blank_ = blank;
  shownId_ = this->blank().id;
  if (!same) {
    added_.clear();
  }
  const GarmentKind* kind = planned->rules().kind(this->blank().kind);
  std::vector<MeasureTable> tables;
  for (const ChartSize& size : this->blank().chart.sizes) {
    tables.push_back(tableOf(kind, size));
  }
  tables_.swap(tables);
  const std::vector<Measure> columns = wantedColumns();
  const int rows = static_cast<int>(tables_.size());
  // The cell that one works in stays the current one where only lengths have changed.
  if (same && columns == measures_ && rows == rows_) {
    Q_EMIT dataChanged(index(0, 0), index(rows_ - 1, columnCount() - 1));
    Q_EMIT headerDataChanged(Qt::Vertical, 0, rows_ - 1);
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
    return;
  }
  beginResetModel();
  measures_ = columns;
  rows_ = rows;
  endResetModel();
}

std::vector<Measure> ChartTableModel::wantedColumns() const {
  std::set<Measure> wanted(added_.begin(), added_.end());
  for (const MeasureTable& table : tables_) {
    for (const auto& each : table) {
      wanted.insert(each.first);
    }
  }
  for (const ChartSize& size : blank().chart.sizes) {
    for (const auto& each : size.measures) {
      wanted.insert(each.first);
    }
  }
  return {wanted.begin(), wanted.end()};
}

void ChartTableModel::addColumn(Measure measure) {
  if (planned_ == nullptr || columnOf(measure) >= 0) {
    return;
  }
  const auto at = std::lower_bound(measures_.begin(), measures_.end(), measure);
  const int column = static_cast<int>(at - measures_.begin());
  beginInsertColumns({}, column, column);
  added_.push_back(measure);
  measures_.insert(at, measure);
  endInsertColumns();
}

std::vector<Measure> ChartTableModel::otherMeasures() const {
  std::vector<Measure> others;
  for (const auto& entry : EnumNames<Measure>::names) {
    if (columnOf(entry.first) < 0) {
      others.push_back(entry.first);
    }
  }
  return others;
}

int ChartTableModel::columnOf(Measure measure) const {
  const auto found = std::find(measures_.begin(), measures_.end(), measure);
  return found == measures_.end() ? -1 : static_cast<int>(found - measures_.begin());
}

Measure ChartTableModel::measureAt(int column) const {
  return measures_.at(static_cast<std::size_t>(column));
}

QString ChartTableModel::measureName(int column) const {
  const GarmentKind* kind = planned_->rules().kind(blank().kind);
  return measureWord(measureAt(column), kind == nullptr ? KindForm::Body : kind->form);
}

const Length* ChartTableModel::given(const QModelIndex& index) const {
  const auto& measures = blank().chart.sizes.at(static_cast<std::size_t>(index.row())).measures;
  const auto found = measures.find(measureAt(index.column()));
  return found == measures.end() || proposed(index) ? nullptr : &found->second;
}

bool ChartTableModel::proposed(const QModelIndex& index) const {
  return blank()
             .chart.sizes.at(static_cast<std::size_t>(index.row()))
             .proposed.count(measureAt(index.column())) > 0;
}

const MeasureValue* ChartTableModel::filled(const QModelIndex& index) const {
  const MeasureTable& table = tables_.at(static_cast<std::size_t>(index.row()));
  const auto found = table.find(measureAt(index.column()));
  return found == table.end() ? nullptr : &found->second;
}

int ChartTableModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : rows_;
}

int ChartTableModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(measures_.size());
}

QVariant ChartTableModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || planned_ == nullptr) {
    return {};
  }
  const Length* length = given(index);
  const MeasureValue* value = filled(index);
  const UnitChoice& units = planned_->units();
  switch (role) {
    case Qt::EditRole:
      return length == nullptr ? QString() : toQString(fieldText(*length, units.length));
    case Qt::DisplayRole:
      if (length != nullptr) {
        return toQString(fieldText(*length, units.length));
      }
      return value == nullptr
                 ? QString()
                 : QStringLiteral("(%1)").arg(toQString(formatLength(value->value, units)));
    case Qt::FontRole: {
      QFont font;
      font.setItalic(length == nullptr);
      return font;
    }
    case Qt::TextAlignmentRole:
      return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    case Qt::ToolTipRole:
      if (length != nullptr) {
        return value != nullptr ? QVariant()
                                : tr("Garments of this kind have no use for this measure.");
      }
      return value == nullptr  ? QString()
             : proposed(index) ? tr("Only proposed: measure a garment and type over it.")
                               : tr("Not in the chart; taken as usual for this kind: %1")
                                     .arg(toQString(value->basis));
    default:
      return {};
  }
}

QVariant ChartTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (planned_ == nullptr || section < 0) {
    return {};
  }
  if (orientation == Qt::Horizontal) {
    return role == Qt::DisplayRole && section < columnCount() ? inTwoLines(measureName(section))
                                                              : QVariant();
  }
  if (section >= rows_) {
    return {};
  }
  const ChartSize& size = blank().chart.sizes.at(static_cast<std::size_t>(section));
  switch (role) {
    case Qt::DisplayRole:
      return toQString(size.name.text());
    case Qt::ToolTipRole:
      return bandWord(size.band);
    default:
      return {};
  }
}

Qt::ItemFlags ChartTableModel::flags(const QModelIndex& index) const {
  return CheckedTableModel::flags(index) | (index.isValid() ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

QString ChartTableModel::cellName(const QModelIndex& index) const {
  return tr("%1 of %2", "measure, size")
      .arg(measureName(index.column()),
           headerData(index.row(), Qt::Vertical, Qt::DisplayRole).toString());
}

std::optional<QString> ChartTableModel::problem(const QModelIndex& index,
                                                const QString& text) const {
  if (planned_ == nullptr || !index.isValid()) {
    return std::nullopt;
  }
  const Measure measure = measureAt(index.column());
  std::optional<Length> value;
  if (!text.trimmed().isEmpty()) {
    const auto length = checkMeasure(toUtf8(text), planned_->units().length, measure);
    if (!length) {
      return capitalised(toQString(length.message()));
    }
    value = *length;
  } else if (proposed(index)) {
    return std::nullopt;  // it stays as it was proposed
  } else if (measure == Measure::BodyWidth || measure == Measure::BodyLength) {
    return tr("Every chart needs this measure");
  }
  return edits().measureProblem(blank_, static_cast<std::size_t>(index.row()), measure, value);
}

bool ChartTableModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid() || problem(index, value.toString())) {
    return false;
  }
  if (proposed(index) && value.toString().trimmed().isEmpty()) {
    return false;
  }
  const Measure measure = measureAt(index.column());
  std::optional<Length> length;
  if (!value.toString().trimmed().isEmpty()) {
    const LengthUnit unit = planned_->units().length;
    length = *checkMeasure(toUtf8(value.toString()), unit, measure);
    // What reads as before was not typed over, however finely the chart gives it.
    const Length* before = given(index);
    if (before != nullptr && toQString(fieldText(*before, unit)) == value.toString().trimmed()) {
      length = *before;
    }
  }
  Q_EMIT edited(edits().measure(blank_, static_cast<std::size_t>(index.row()), measure, length));
  return true;
}

}  // namespace creaseline::desk
