// SPDX-License-Identifier: MIT
#include "desk/chart_panel.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/catalogue_words.h"
#include "desk/form_parts.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr int kColumnCharacters = 14;
constexpr int kBandCharacters = 26;

}  // namespace

ChartPanel::ChartPanel(QWidget* parent) : QGroupBox(tr("Size chart"), parent) {
  setObjectName(QStringLiteral("chartPanel"));
  model_ = new ChartTableModel(this);
  table_ = new CheckedTable(QStringLiteral("chart"), tr("Size chart, sizes by points of measure"),
                            *model_, this);
  table_->horizontalHeader()->setDefaultSectionSize(fontMetrics().averageCharWidth() *
                                                    kColumnCharacters);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignCenter);
  below_ = new NoteLabel(this);
  below_->setObjectName(QStringLiteral("chartNote"));
  below_->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  layout->setSpacing(4);
  layout->addWidget(buildSizeStrip());
  layout->addWidget(table_, 1);
  layout->addWidget(below_);
  layout->addLayout(buildButtons());
  connect(model_, &ChartTableModel::edited, this, &ChartPanel::edited);
  connect(table_, &CheckedTable::problemChanged, this, &ChartPanel::say);
  connect(table_, &CheckedTable::cellChosen, this, &ChartPanel::showSize);
  connect(table_, &CheckedTable::pasteAsked, this, &ChartPanel::pasteAsked);
}

QWidget* ChartPanel::buildSizeStrip() {
  auto* strip = new QWidget(this);
  sizeName_ = new FieldEdit(
      QStringLiteral("chartSizeName"), tr("Name of the chosen size"),
      [this](const QString& text) {
        return problemOf(edits().checkSizeName(blank_, size(), toUtf8(text)));
      },
      strip);
  connect(sizeName_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().sizeName(blank_, size(), toUtf8(text.trimmed())));
  });
  band_ = makeChoice("chartSizeBand", tr("Band of the chosen size"), strip);
  band_->setMinimumContentsLength(kBandCharacters);
  connect(band_, &QComboBox::activated, this, &ChartPanel::setBand);
  add_ = button("chartSizeAdd", tr("Add a size"), tr("Behind the chosen one, with its measures"));
  remove_ = button("chartSizeRemove", tr("Remove"), tr("Remove the chosen size"));
  up_ = button("chartSizeUp", tr("Up"), tr("Put the chosen size further up"));
  down_ = button("chartSizeDown", tr("Down"), tr("Put the chosen size further down"));
  for (QPushButton* each : {remove_, up_, down_}) {
    each->setAccessibleName(each->toolTip());
  }
  connect(add_, &QPushButton::clicked, this, [this] {
    const int row = static_cast<int>(size());
    const int column = std::max(0, table_->currentIndex().column());
    Q_EMIT edited(edits().addSize(blank_, size()));
    table_->chooseCell(row + 1, column);
    sizeName_->edit().setFocus(Qt::OtherFocusReason);
    sizeName_->edit().selectAll();
  });
  connect(remove_, &QPushButton::clicked, this, [this] {
    const auto problem = edits().removeSizeProblem(blank_, size());
    say(problem.value_or(QString()));
    if (!problem) {
      Q_EMIT edited(edits().removeSize(blank_, size()));
    }
  });
  connect(up_, &QPushButton::clicked, this, [this] { shiftSize(-1); });
  connect(down_, &QPushButton::clicked, this, [this] { shiftSize(1); });
  auto* nameLabel = new QLabel(tr("Si&ze"), strip);
  nameLabel->setBuddy(sizeName_);
  auto* bandLabel = new QLabel(tr("&Band"), strip);
  bandLabel->setBuddy(band_);
  sizeName_->setFixedWidth(fontMetrics().averageCharWidth() * kColumnCharacters);
  auto* row = new QHBoxLayout(strip);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(nameLabel, 0, Qt::AlignTop);
  row->addWidget(sizeName_, 0, Qt::AlignTop);
  row->addSpacing(8);
  row->addWidget(bandLabel, 0, Qt::AlignTop);
  row->addWidget(band_, 0, Qt::AlignTop);
  row->addStretch(1);
  for (QPushButton* each : {add_, remove_, up_, down_}) {
    row->addWidget(each, 0, Qt::AlignTop);
  }
  // In line with the text in the fields.
  for (QLabel* label : {nameLabel, bandLabel}) {
    label->setMinimumHeight(band_->sizeHint().height());
  }
  return strip;
}

QLayout* ChartPanel::buildButtons() {
  addMeasure_ = button("chartMeasureAdd", tr("Add a &measure"),
                       tr("A column for a point of measure that the chart gives besides"));
  measures_ = new QMenu(addMeasure_);
  measures_->setObjectName(QStringLiteral("chartMeasures"));
  addMeasure_->setMenu(measures_);
  connect(measures_, &QMenu::aboutToShow, this, &ChartPanel::fillMeasures);
  paste_ = button("chartPaste", tr("&Paste a chart…"),
                  tr("From the clipboard, as a spreadsheet puts it there"));
  import_ = button("chartImport", tr("&Import CSV…"), tr("From a file of any maker"));
  connect(paste_, &QPushButton::clicked, this, &ChartPanel::pasteAsked);
  connect(import_, &QPushButton::clicked, this, &ChartPanel::importAsked);
  auto* row = new QHBoxLayout;
  row->addWidget(addMeasure_);
  row->addStretch(1);
  row->addWidget(paste_);
  row->addWidget(import_);
  return row;
}

QPushButton* ChartPanel::button(const char* name, const QString& text, const QString& words) {
  auto* made = new QPushButton(text, this);
  made->setObjectName(QString::fromLatin1(name));
  made->setToolTip(words);
  made->setAccessibleDescription(words);
  made->setAutoDefault(false);
  return made;
}

GarmentEdits ChartPanel::edits() const {
  return {*planned_->order(), planned_->rules(), planned_->units()};
}

std::size_t ChartPanel::size() const {
  const std::size_t last = blank().chart.sizes.size() - 1;
  return std::min(static_cast<std::size_t>(std::max(0, table_->row())), last);
}

void ChartPanel::show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t blank) {
  const QModelIndex before = table_->currentIndex();
  const int row = before.row(), column = before.column();
  const bool other = planned_ == nullptr || blank != blank_;
  planned_ = planned;
  blank_ = blank;
  problem_.clear();  // of another garment, or mended
  model_->show(planned, blank);
  if (!table_->currentIndex().isValid() || other) {
    table_->chooseCell(other ? 0 : std::clamp(row, 0, model_->rowCount() - 1),
                       other ? 0 : std::clamp(column, 0, model_->columnCount() - 1));
  }
  showSize();
  showNote();
}

void ChartPanel::showSize() {
  if (planned_ == nullptr || model_->rowCount() == 0) {
    return;
  }
  const ChartSize& shown = blank().chart.sizes.at(size());
  sizeName_->setText(toQString(shown.name.text()));
  const QSignalBlocker quiet(band_);
  band_->clear();
  ChartSize told = shown;
  told.bandGiven = false;
  const QString word = bandWord(bandOf(told, planned_->rules().defaults));
  band_->addItem((bandFromName(shown.name) ? tr("By its name: %1") : tr("By its width: %1"))
                     .arg(uncapitalised(word)));
  for (const auto& entry : EnumNames<SizeBand>::names) {
    band_->addItem(bandWord(entry.first), static_cast<int>(entry.first));
  }
  band_->setCurrentIndex(shown.bandGiven ? band_->findData(static_cast<int>(shown.band)) : 0);
  const int count = model_->rowCount();
  const int row = static_cast<int>(size());
  up_->setEnabled(row > 0);
  down_->setEnabled(row + 1 < count);
}

void ChartPanel::setBand(int index) {
  std::optional<SizeBand> band;
  if (index > 0) {
    band = static_cast<SizeBand>(band_->itemData(index).toInt());
  }
  const OrderEdit asked = edits().band(blank_, size(), band);
  // Proportions differ between bands.
  const auto problem = edits().chartProblem(blank_, asked.order.blanks.at(blank_).chart);
  say(problem.value_or(QString()));
  if (problem) {
    showSize();
  } else {
    Q_EMIT edited(asked);
  }
}

void ChartPanel::shiftSize(int by) {
  const int row = static_cast<int>(size()) + by;
  const int column = std::max(0, table_->currentIndex().column());
  Q_EMIT edited(edits().shiftSize(blank_, size(), by));
  table_->chooseCell(row, column);
}

void ChartPanel::fillMeasures() {
  measures_->clear();
  const GarmentKind* kind = planned_->rules().kind(blank().kind);
  for (const Measure measure : model_->otherMeasures()) {
    const QString word = measureWord(measure, kind == nullptr ? KindForm::Body : kind->form);
    connect(measures_->addAction(word), &QAction::triggered, this, [this, measure] {
      model_->addColumn(measure);
      table_->chooseCell(static_cast<int>(size()), model_->columnOf(measure));
      table_->setFocus(Qt::OtherFocusReason);
    });
  }
}

void ChartPanel::say(const QString& problem) {
  problem_ = problem;
  showNote();
}

void ChartPanel::showNote() {
  if (problem_.isEmpty()) {
    below_->say(
        tr("Lengths in any unit, such as 20 1/2 in or 52 cm. In brackets: not measured, but "
           "proposed or taken as usual for this kind; the plan says so until it is typed over."));
  } else {
    below_->say(problem_, Severity::Stop);
  }
  table_->setAccessibleDescription(below_->text());
}

}  // namespace creaseline::desk
