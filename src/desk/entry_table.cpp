// SPDX-License-Identifier: MIT
#include "desk/entry_table.h"

#include <QColorDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPainter>
#include <utility>

#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kSample = 14;
constexpr int kButtonRoom = 8;

QIcon sampleOf(const QColor& colour, const QColor& edge) {
  QPixmap sample(kSample, kSample);
  sample.fill(colour);
  QPainter painter(&sample);
  painter.setPen(edge);
  painter.drawRect(0, 0, kSample - 1, kSample - 1);
  return {sample};
}

}  // namespace

// ---- Model -------------------------------------------------------------------------------------

EntryModel::EntryModel(std::vector<EntryColumn> columns, QObject* parent)
    : CheckedTableModel(parent), columns_(std::move(columns)) {
}

void EntryModel::show(int rows) {
  if (rows > rows_) {
    beginInsertRows({}, rows_, rows - 1);
    rows_ = rows;
    endInsertRows();
  } else if (rows < rows_) {
    beginRemoveRows({}, rows, rows_ - 1);
    rows_ = rows;
    endRemoveRows();
  }
  if (rows_ > 0) {
    Q_EMIT dataChanged(index(0, 0), index(rows_ - 1, columnCount() - 1));
  }
}

const EntryColumn& EntryModel::column(const QModelIndex& index) const {
  return columns_.at(static_cast<std::size_t>(index.column()));
}

int EntryModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : rows_;
}

int EntryModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant EntryModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) {
    return {};
  }
  const EntryColumn& at = column(index);
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return at.text(index.row());
    case Qt::DecorationRole:
      return at.sample ? QVariant(sampleOf(at.sample(index.row()), Qt::gray)) : QVariant();
    case Qt::TextAlignmentRole:
      return QVariant(at.number ? Qt::AlignRight | Qt::AlignVCenter
                                : Qt::AlignLeft | Qt::AlignVCenter);
    default:
      return {};
  }
}

QVariant EntryModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole) {
    return {};
  }
  return orientation == Qt::Horizontal ? columns_.at(static_cast<std::size_t>(section)).title
                                       : QString::number(section + 1);
}

Qt::ItemFlags EntryModel::flags(const QModelIndex& index) const {
  return CheckedTableModel::flags(index) | (index.isValid() ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

bool EntryModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid() || problem(index, value.toString())) {
    return false;
  }
  // What reads as before was not typed over, however finely the entry has it.
  if (value.toString().trimmed() != column(index).text(index.row())) {
    column(index).change(index.row(), value.toString());
  }
  return true;
}

std::optional<QString> EntryModel::problem(const QModelIndex& index, const QString& text) const {
  return column(index).problem(index.row(), text);
}

QStringList EntryModel::choices(const QModelIndex& index) const {
  const EntryColumn& at = column(index);
  return at.choices ? at.choices(index.row()) : QStringList();
}

// ---- Table with its buttons --------------------------------------------------------------------

EntryTable::EntryTable(const QString& name, const QString& title, const QString& entry,
                       std::vector<EntryColumn> columns, Deeds deeds, QWidget* parent)
    : QGroupBox(title, parent), name_(name), deeds_(std::move(deeds)) {
  model_ = new EntryModel(std::move(columns), this);
  table_ = new CheckedTable(name, title, *model_, this);
  table_->verticalHeader()->hide();
  table_->setSelectionBehavior(QAbstractItemView::SelectItems);
  table_->horizontalHeader()->setStretchLastSection(true);
  below_ = new NoteLabel(this);
  below_->setObjectName(name + QStringLiteral("Note"));
  below_->setWordWrap(true);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(4);
  add_ = button(QStringLiteral("Add"), tr("Add"), tr("Add a %1").arg(entry));
  connect(add_, &QToolButton::clicked, this, [this] { deeds_.add(); });
  remove_ = button(QStringLiteral("Remove"), tr("Remove"), tr("Remove the %1").arg(entry));
  connect(remove_, &QToolButton::clicked, this, [this] { deeds_.remove(table_->row()); });
  buttons->addWidget(add_);
  buttons->addWidget(remove_);
  if (deeds_.shift) {
    up_ = button(QStringLiteral("Up"), tr("Up"), tr("Put the %1 further up").arg(entry));
    down_ = button(QStringLiteral("Down"), tr("Down"), tr("Put the %1 further down").arg(entry));
    for (const auto& [made, by] : {std::pair(up_, -1), std::pair(down_, 1)}) {
      connect(made, &QToolButton::clicked, this, [this, step = by] {
        const int row = table_->row();
        const int column = table_->currentIndex().column();
        deeds_.shift(row, step);
        table_->chooseCell(row + step, column);
      });
      buttons->addWidget(made);
    }
  }
  if (deeds_.colourColumn >= 0) {
    colour_ =
        button(QStringLiteral("Colour"), tr("Colour…"), tr("Pick the %1's colour").arg(entry));
    connect(colour_, &QToolButton::clicked, this, &EntryTable::pickColour);
    buttons->addWidget(colour_);
  }
  buttons->addStretch(1);
  auto* layout = new QVBoxLayout(this);
  layout->setSpacing(4);
  layout->addWidget(table_, 1);
  layout->addWidget(below_);
  layout->addLayout(buttons);
  connect(table_, &CheckedTable::problemChanged, this, &EntryTable::say);
  connect(table_, &CheckedTable::cellChosen, this, &EntryTable::updateButtons);
  updateButtons();
  showNote();
}

// Narrower than push buttons: five of them stand below a narrow table.
QToolButton* EntryTable::button(const QString& name, const QString& text, const QString& words) {
  auto* made = new QToolButton(this);
  made->setText(text);
  made->setFocusPolicy(Qt::StrongFocus);
  made->setObjectName(name_ + name);
  made->setAccessibleName(words);
  made->setToolTip(words);
  made->setMinimumHeight(made->fontMetrics().height() + kButtonRoom);
  return made;
}

void EntryTable::show(int rows) {
  say({});  // of another entry, or mended
  const QModelIndex before = table_->currentIndex();
  model_->show(rows);
  if (!table_->currentIndex().isValid() && rows > 0) {
    const int row = before.isValid() ? std::min(before.row(), rows - 1) : 0;
    table_->chooseCell(row, before.isValid() ? before.column() : 0);
  }
  updateButtons();
}

void EntryTable::chooseRow(int row) {
  table_->chooseCell(row, 0);
  table_->setFocus(Qt::OtherFocusReason);
}

void EntryTable::setColumnWidths(const std::vector<int>& characters) {
  for (std::size_t i = 0; i < characters.size(); ++i) {
    table_->setColumnWidth(static_cast<int>(i), fontMetrics().averageCharWidth() * characters[i]);
  }
}

void EntryTable::setNote(const QString& note) {
  note_ = note;
  showNote();
}

void EntryTable::say(const QString& problem) {
  problem_ = problem;
  showNote();
}

void EntryTable::showNote() {
  if (problem_.isEmpty()) {
    below_->say(note_);
  } else {
    below_->say(problem_, Severity::Stop);
  }
  below_->setVisible(!below_->text().isEmpty());
  table_->setAccessibleDescription(below_->text());
}

void EntryTable::updateButtons() {
  const int row = table_->row();
  remove_->setEnabled(row >= 0);
  if (up_ != nullptr) {
    up_->setEnabled(row > 0);
    down_->setEnabled(row >= 0 && row + 1 < model_->rowCount());
  }
  if (colour_ != nullptr) {
    colour_->setEnabled(row >= 0);
  }
}

void EntryTable::pickColour() {
  const QModelIndex cell = model_->index(table_->row(), deeds_.colourColumn);
  const QColor colour =
      QColorDialog::getColor(QColor(cell.data(Qt::EditRole).toString()), this, tr("Pick a colour"));
  if (colour.isValid()) {
    model_->setData(cell, colour.name(), Qt::EditRole);
  }
}

}  // namespace creaseline::desk
