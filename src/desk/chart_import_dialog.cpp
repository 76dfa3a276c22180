// SPDX-License-Identifier: MIT
#include "desk/chart_import_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPainter>
#include <QRegularExpression>
#include <QScreen>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <algorithm>
#include <utility>

#include "desk/catalogue_words.h"
#include "desk/form_parts.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr QSize kImportSize{980, 640};
constexpr int kLeastColumnCharacters = 23;
constexpr int kRowRoom = 8;
constexpr int kProblemLines = 5;
constexpr int kUnitNotSaid = -1;
// Data of the roles that are no measure; measures stand with their own number.
constexpr int kIgnored = -1, kSize = -2, kBand = -3;

// With points of measure called as they are over the columns, not as in files.
QString inWords(const std::string& text, KindForm form) {
  QString words = toQString(text);
  for (const auto& [measure, name] : EnumNames<Measure>::names) {
    const QRegularExpression whole(QStringLiteral("(?<![\\w-])%1(?![\\w-])").arg(toQString(name)));
    words.replace(whole, QStringLiteral("“%1”").arg(measureWord(measure, form)));
  }
  return capitalised(words);
}

void fillUnits(QComboBox& choice, const QString& notSaid) {
  choice.addItem(notSaid, kUnitNotSaid);
  choice.addItem(ChartImportDialog::tr("inches"), static_cast<int>(LengthUnit::Inch));
  choice.addItem(ChartImportDialog::tr("centimetres"), static_cast<int>(LengthUnit::Centimetre));
  choice.addItem(ChartImportDialog::tr("millimetres"), static_cast<int>(LengthUnit::Millimetre));
}

void chooseUnit(QComboBox& choice, std::optional<LengthUnit> unit) {
  choice.setCurrentIndex(choice.findData(unit ? static_cast<int>(*unit) : kUnitNotSaid));
}

std::optional<LengthUnit> unitOf(const QComboBox& choice) {
  const int what = choice.currentData().toInt();
  return what == kUnitNotSaid ? std::nullopt : std::optional(static_cast<LengthUnit>(what));
}

}  // namespace

ChartImportDialog::ChartImportDialog(ChartImport table, const QString& source, KindForm form,
                                     Judge judge, QWidget* parent)
    : QDialog(parent), table_(std::move(table)), form_(form), judge_(std::move(judge)) {
  build(source);
  fillCells();
  this->judge();
}

void ChartImportDialog::build(const QString& source) {
  setObjectName(QStringLiteral("chartPreview"));
  setWindowTitle(tr("Size chart from %1").arg(source));
  setWindowFlag(Qt::WindowMaximizeButtonHint);
  auto* words = new QLabel(
      tr("Say over each column what it holds. Nothing is taken until every column is clear."),
      this);
  words->setWordWrap(true);
  buildTable();
  heading_ = new QLabel(tr("P&roblems"), this);
  problems_ = new QListWidget(this);
  problems_->setObjectName(QStringLiteral("importProblems"));
  problems_->setAccessibleName(tr("Problems of the table"));
  problems_->setWordWrap(true);
  problems_->setMaximumHeight(kProblemLines * (fontMetrics().height() + 6));
  heading_->setBuddy(problems_);
  connect(problems_, &QListWidget::currentRowChanged, this, &ChartImportDialog::jumpTo);
  connect(problems_, &QListWidget::itemActivated, this, [this] {
    jumpTo(problems_->currentRow());
    cells_->setFocus(Qt::OtherFocusReason);
  });
  summary_ = new QLabel(this);
  summary_->setObjectName(QStringLiteral("importSummary"));
  summary_->setWordWrap(true);
  summary_->setTextFormat(Qt::PlainText);
  auto* buttons = new QDialogButtonBox(this);
  take_ = buttons->addButton(tr("&Take the chart"), QDialogButtonBox::AcceptRole);
  take_->setObjectName(QStringLiteral("importTake"));
  cancel_ = buttons->addButton(tr("&Cancel"), QDialogButtonBox::RejectRole);
  cancel_->setObjectName(QStringLiteral("importCancel"));
  take_->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* last = new QHBoxLayout;
  last->addWidget(summary_, 1);
  last->addWidget(buttons);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(words);
  layout->addLayout(buildUnitOfAll());
  layout->addWidget(cells_, 1);
  layout->addWidget(heading_);
  layout->addWidget(problems_);
  layout->addLayout(last);
  resize(kImportSize.boundedTo(screen()->availableSize() - QSize(40, 60)));
}

QLayout* ChartImportDialog::buildUnitOfAll() {
  auto* label = new QLabel(tr("&Unit where no column says one"), this);
  unitOfAll_ = new StillChoice(this);
  unitOfAll_->setObjectName(QStringLiteral("importUnitOfAll"));
  unitOfAll_->setAccessibleName(tr("Unit where no column says one"));
  fillUnits(*unitOfAll_, tr("not said"));
  chooseUnit(*unitOfAll_, table_.unitOfAll);
  label->setBuddy(unitOfAll_);
  connect(unitOfAll_, &QComboBox::activated, this, [this] {
    table_.unitOfAll = unitOf(*unitOfAll_);
    judge();
  });
  auto* row = new QHBoxLayout;
  row->addWidget(label);
  row->addWidget(unitOfAll_);
  row->addStretch(1);
  if (table_.sizesAcross) {
    row->addWidget(
        new QLabel(tr("The sizes stood side by side and have been turned round."), this));
  }
  return row;
}

void ChartImportDialog::buildTable() {
  const int columns = static_cast<int>(table_.columns.size());
  cells_ = new QTableWidget(kChoiceRows + static_cast<int>(table_.rows.size()), columns, this);
  cells_->setObjectName(QStringLiteral("importTable"));
  cells_->setAccessibleName(tr("The table as it was found"));
  cells_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                          QAbstractItemView::AnyKeyPressed);
  connect(cells_, &QTableWidget::itemChanged, this, &ChartImportDialog::takeTyped);
  cells_->setSelectionMode(QAbstractItemView::SingleSelection);
  cells_->setTabKeyNavigation(false);
  cells_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  cells_->setCornerButtonEnabled(false);
  QStringList titles, rows{tr("Holds"), tr("Unit"), tr("All round")};
  for (int column = 0; column < columns; ++column) {
    titles.append(columnAt(column).title.empty() ? tr("column %1").arg(column + 1)
                                                 : toQString(columnAt(column).title));
  }
  for (const auto& row : table_.rows) {
    rows.append(row.empty() || table_.sizesAcross ? QString()
                                                  : QString::number(row.front().place.line));
  }
  cells_->setHorizontalHeaderLabels(titles);
  cells_->setVerticalHeaderLabels(rows);
  cells_->setWordWrap(false);
  cells_->horizontalHeader()->setHighlightSections(false);
  cells_->horizontalHeader()->setStretchLastSection(true);
  cells_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + kRowRoom);
  cells_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  for (int column = 0; column < columns; ++column) {
    buildColumn(column);
  }
}

QString ChartImportDialog::columnName(int column) const {
  const std::string& title = table_.columns.at(static_cast<std::size_t>(column)).title;
  return title.empty() ? tr("Column %1").arg(column + 1)
                       : tr("Column %1, %2").arg(column + 1).arg(toQString(title));
}

void ChartImportDialog::buildColumn(int column) {
  QComboBox* role = roleChoice(column);
  QComboBox* unit = unitChoice(column);
  QCheckBox* girth = girthChoice(column);
  roles_.push_back(role);
  units_.push_back(unit);
  girths_.push_back(girth);
  cells_->setCellWidget(kRoleRow, column, role);
  cells_->setCellWidget(kUnitRow, column, unit);
  cells_->setCellWidget(kGirthRow, column, girth);
  for (int row = 0; row < kChoiceRows; ++row) {
    cells_->setRowHeight(row, role->sizeHint().height() + 2);
    // A cell under a control is not one to stand on.
    auto* item = new QTableWidgetItem;
    item->setFlags(Qt::NoItemFlags);
    cells_->setItem(row, column, item);
  }
  const int least = fontMetrics().averageCharWidth() * kLeastColumnCharacters;
  const int title = cells_->horizontalHeader()->fontMetrics().horizontalAdvance(
                        toQString(columnAt(column).title)) +
                    20;
  cells_->setColumnWidth(column, std::clamp(title, least, 2 * least));
}

QComboBox* ChartImportDialog::roleChoice(int column) {
  auto* choice = new StillChoice(cells_);
  choice->setObjectName(QStringLiteral("importRole%1").arg(column + 1));
  choice->setAccessibleName(tr("%1: what it holds").arg(columnName(column)));
  choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  choice->addItem(tr("Leave out"), kIgnored);
  choice->addItem(tr("Size"), kSize);
  choice->addItem(tr("Band"), kBand);
  choice->insertSeparator(choice->count());
  for (const auto& entry : EnumNames<Measure>::names) {
    choice->addItem(measureWord(entry.first, form_), static_cast<int>(entry.first));
  }
  const ImportColumn& at = columnAt(column);
  const int what = at.role == ColumnRole::Measure ? static_cast<int>(at.measure)
                   : at.role == ColumnRole::Size  ? kSize
                   : at.role == ColumnRole::Band  ? kBand
                                                  : kIgnored;
  choice->setCurrentIndex(choice->findData(what));
  connect(choice, &QComboBox::activated, this,
          [this, column](int index) { setRole(column, index); });
  return choice;
}

QComboBox* ChartImportDialog::unitChoice(int column) {
  auto* choice = new StillChoice(cells_);
  choice->setObjectName(QStringLiteral("importUnit%1").arg(column + 1));
  choice->setAccessibleName(tr("%1: unit").arg(columnName(column)));
  choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  fillUnits(*choice, tr("as above"));
  chooseUnit(*choice, columnAt(column).unit);
  connect(choice, &QComboBox::activated, this, [this, column, choice] {
    columnAt(column).unit = unitOf(*choice);
    judge();
  });
  return choice;
}

QCheckBox* ChartImportDialog::girthChoice(int column) {
  auto* choice = new QCheckBox(tr("take half"), cells_);
  choice->setObjectName(QStringLiteral("importGirth%1").arg(column + 1));
  choice->setAccessibleName(tr("%1: measured all round, take half").arg(columnName(column)));
  choice->setToolTip(tr("Measured all round the garment; half of it is the flat measure"));
  choice->setChecked(columnAt(column).girth);
  choice->setAutoFillBackground(true);  // an empty box is hard to see on the ground of a table
  connect(choice, &QCheckBox::clicked, this, [this, column](bool checked) {
    columnAt(column).girth = checked;
    judge();
  });
  return choice;
}

void ChartImportDialog::fillCells() {
  const QSignalBlocker quiet(cells_);
  for (std::size_t row = 0; row < table_.rows.size(); ++row) {
    for (std::size_t column = 0; column < table_.rows[row].size(); ++column) {
      cells_->setItem(static_cast<int>(row) + kChoiceRows, static_cast<int>(column),
                      new QTableWidgetItem(toQString(table_.rows[row][column].text)));
    }
  }
}

// A cell that was mended here; the file or the spreadsheet it is from stays as it is.
void ChartImportDialog::takeTyped(const QTableWidgetItem* item) {
  const int row = item->row() - kChoiceRows;
  if (row >= 0) {
    table_.rows.at(static_cast<std::size_t>(row))
        .at(static_cast<std::size_t>(item->column()))
        .text = toUtf8(item->text().trimmed());
    judge();
  }
}

// By shape as well as by colour.
void ChartImportDialog::markCells() {
  const QColor colour = stateColour(Severity::Stop, palette());
  const int side = fontMetrics().ascent();
  QPixmap mark(QSize(side, side) * devicePixelRatio());
  mark.setDevicePixelRatio(devicePixelRatio());
  mark.fill(Qt::transparent);
  QPainter painter(&mark);
  painter.setRenderHint(QPainter::Antialiasing);
  paintState(painter, QRectF(0.0, 0.0, side, side), Severity::Stop, colour);
  painter.end();
  for (std::size_t row = 0; row < table_.rows.size(); ++row) {
    for (std::size_t column = 0; column < table_.rows[row].size(); ++column) {
      QTableWidgetItem* item =
          cells_->item(static_cast<int>(row) + kChoiceRows, static_cast<int>(column));
      const TablePlace& at = table_.rows[row][column].place;
      const bool bad = std::any_of(places_.begin(), places_.end(), [&at](const TablePlace& place) {
        return place.line == at.line && place.column == at.column;
      });
      item->setIcon(bad ? QIcon(mark) : QIcon());
      item->setData(Qt::ForegroundRole, bad ? QVariant(QBrush(colour)) : QVariant());
    }
  }
}

void ChartImportDialog::setRole(int column, int index) {
  const int what = roles_[static_cast<std::size_t>(column)]->itemData(index).toInt();
  ImportColumn& at = columnAt(column);
  at.role = what == kIgnored ? ColumnRole::Ignored
            : what == kSize  ? ColumnRole::Size
            : what == kBand  ? ColumnRole::Band
                             : ColumnRole::Measure;
  if (at.role == ColumnRole::Measure) {
    at.measure = static_cast<Measure>(what);
  }
  judge();
}

void ChartImportDialog::judge() {
  const QSignalBlocker quiet(cells_);
  result_ = chartOf(table_);
  Verdict verdict;
  if (result_.ok()) {
    verdict = judge_(result_.chart);
  } else {
    verdict.problems = result_.problems;
  }
  for (std::size_t i = 0; i < roles_.size(); ++i) {
    const bool measure = table_.columns[i].role == ColumnRole::Measure;
    units_[i]->setEnabled(measure);
    girths_[i]->setEnabled(measure);
    for (int row = kChoiceRows; row < cells_->rowCount(); ++row) {
      // What is left out is seen to be.
      if (QTableWidgetItem* item = cells_->item(row, static_cast<int>(i))) {
        QFont font = cells_->font();
        font.setStrikeOut(table_.columns[i].role == ColumnRole::Ignored);
        item->setFont(font);
      }
    }
  }
  showProblems(verdict.problems);
  markCells();
  take_->setEnabled(verdict.problems.empty());
  QStringList words;
  if (verdict.problems.empty()) {
    words.append(
        tr("%n size(s) can be taken.", nullptr, static_cast<int>(result_.chart.sizes.size())));
    if (!result_.skippedLines.empty()) {
      QStringList lines;
      for (const std::size_t line : result_.skippedLines) {
        lines.append(QString::number(line));
      }
      words.append(tr("Left aside as remarks: line %1.").arg(lines.join(QStringLiteral(", "))));
    }
    words += verdict.remarks;
  } else {
    words.append(tr("Put the columns right, or mend the marked cells."));
  }
  summary_->setText(words.join(QLatin1Char(' ')));
}

void ChartImportDialog::showProblems(const std::vector<ImportProblem>& problems) {
  const QSignalBlocker quiet(problems_);
  problems_->clear();
  places_.clear();
  for (const ImportProblem& each : problems) {
    const TablePlace place = each.place;
    const QString text = inWords(each.text, form_);
    const QString where =
        place.line == 0 ? text
        : place.column == 0
            ? tr("Line %1: %2").arg(place.line).arg(text)
            : tr("Line %1, column %2: %3").arg(place.line).arg(place.column).arg(text);
    auto* item =
        new QListWidgetItem(stateShape(Severity::Stop) + QLatin1Char(' ') + where, problems_);
    item->setForeground(stateColour(Severity::Stop, palette()));
    places_.push_back(place);
  }
  const bool some = !problems.empty();
  problems_->setVisible(some);
  heading_->setVisible(some);
}

// To the cell that the problem is of, if it is of one.
void ChartImportDialog::jumpTo(int problem) {
  if (problem < 0 || problem >= static_cast<int>(places_.size())) {
    return;
  }
  const TablePlace place = places_[static_cast<std::size_t>(problem)];
  for (std::size_t row = 0; row < table_.rows.size(); ++row) {
    for (std::size_t column = 0; column < table_.rows[row].size(); ++column) {
      const TablePlace& at = table_.rows[row][column].place;
      if (at.line == place.line && (at.column == place.column || place.column == 0)) {
        cells_->setCurrentCell(static_cast<int>(row) + kChoiceRows, static_cast<int>(column));
        return;
      }
    }
  }
}

}  // namespace creaseline::desk
