// SPDX-License-Identifier: MIT
// Where the parts of the window "Sheets" stand.
#include <QButtonGroup>
#include <QHBoxLayout>
#include <QScreen>

#include "desk/form_parts.h"
#include "desk/sheets_dialog.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr QSize kSheetsSize{1080, 780};
constexpr int kLeastKindsHeight = 120;
constexpr int kBusyWidth = 90;
// Least width of the left column, in average characters.
constexpr int kLeastChoices = 31;

}  // namespace

QString paperWords(Paper paper) {
  switch (paper) {
    case Paper::A4:
      return SheetsDialog::tr("A4, 210 × 297 mm");
    case Paper::Letter:
      return SheetsDialog::tr("Letter, 8 1/2 × 11 in");
    case Paper::A3:
      return SheetsDialog::tr("A3, 297 × 420 mm");
    case Paper::Tabloid:
      return SheetsDialog::tr("Tabloid, 11 × 17 in");
    case Paper::A2:
      return SheetsDialog::tr("A2, 420 × 594 mm");
    case Paper::AnsiC:
      return SheetsDialog::tr("ANSI C, 17 × 22 in");
  }
  return {};
}

void SheetsDialog::build() {
  setObjectName(QStringLiteral("sheets"));
  setWindowTitle(tr("Sheets"));
  setWindowFlag(Qt::WindowMaximizeButtonHint);
  auto* layout = new QVBoxLayout(this);
  auto* upper = new QHBoxLayout;
  upper->setSpacing(10);
  upper->addLayout(buildChoices(), 1);
  upper->addLayout(buildPreview(), 2);
  layout->addLayout(upper, 1);
  layout->addLayout(buildOutputs());
  orderTabs();
  resize(kSheetsSize.boundedTo(screen()->availableSize() - QSize(40, 60)));
  restoreGeometry(settings_.geometryOf(objectName()));
}

QLayout* SheetsDialog::buildChoices() {
  auto* column = new QVBoxLayout;
  auto* heading = new QLabel(tr("&Kinds of sheets"), this);
  kinds_ = new SheetTickList(model_, this);
  kinds_->setMinimumHeight(kLeastKindsHeight);
  kinds_->setMinimumWidth(fontMetrics().averageCharWidth() * kLeastChoices);
  heading->setBuddy(kinds_);
  total_ = new QLabel(this);
  total_->setObjectName(QStringLiteral("sheetsTotal"));
  QFont bold = total_->font();
  bold.setBold(true);
  total_->setFont(bold);
  busy_ = new QProgressBar(this);
  busy_->setObjectName(QStringLiteral("sheetsBusy"));
  busy_->setAccessibleName(tr("The sheets are being made"));
  busy_->setRange(0, 0);
  busy_->setTextVisible(false);
  busy_->setFixedSize(kBusyWidth, fontMetrics().height() / 2);
  busy_->hide();
  auto* count = new QHBoxLayout;
  count->addWidget(total_, 1);
  count->addWidget(busy_);
  range_ = new PageRangeBox(this);
  column->addWidget(heading);
  column->addWidget(kinds_, 1);
  column->addLayout(count);
  column->addSpacing(6);
  column->addLayout(buildPaper());
  column->addSpacing(6);
  column->addWidget(range_);
  return column;
}

QLayout* SheetsDialog::buildPaper() {
  auto* column = new QVBoxLayout;
  auto* label = new QLabel(tr("&Paper"), this);
  paper_ = new StillChoice(this);
  paper_->setObjectName(QStringLiteral("sheetsPaper"));
  paper_->setAccessibleName(tr("Paper"));
  for (const auto& entry : EnumNames<Paper>::names) {
    paper_->addItem(paperWords(entry.first), static_cast<int>(entry.first));
  }
  paper_->setCurrentIndex(paper_->findData(static_cast<int>(settings_.paper())));
  label->setBuddy(paper_);
  auto* row = new QHBoxLayout;
  row->addWidget(label);
  row->addWidget(paper_, 1);
  column->addLayout(row);
  const TemplateVariants variants = settings_.templateVariants();
  mirrored_ = new QCheckBox(tr("&Mirrored templates as well"), this);
  mirrored_->setObjectName(QStringLiteral("templatesMirrored"));
  mirrored_->setToolTip(tr("As seen from the back of the cloth"));
  mirrored_->setAccessibleDescription(mirrored_->toolTip());
  mirrored_->setChecked(variants.mirrored);
  turned_ = new QCheckBox(tr("&Turned templates as well"), this);
  turned_->setObjectName(QStringLiteral("templatesTurned"));
  turned_->setToolTip(tr("Upside down, for a garment that is loaded with its top towards you"));
  turned_->setAccessibleDescription(turned_->toolTip());
  turned_->setChecked(variants.turned);
  column->addWidget(mirrored_);
  column->addWidget(turned_);
  prices_ = new QCheckBox(tr("C&ost on the order summary"), this);
  prices_->setObjectName(QStringLiteral("sheetsPrices"));
  prices_->setToolTip(tr("Where the shop has rates; no other sheet shows prices"));
  prices_->setAccessibleDescription(prices_->toolTip());
  prices_->setChecked(settings_.pricesOnSheets());
  column->addWidget(prices_);
  return column;
}

QPushButton* SheetsDialog::button(const char* name, const QString& text) {
  auto* made = new QPushButton(text, this);
  made->setObjectName(QString::fromLatin1(name));
  return made;
}

QLayout* SheetsDialog::buildPreview() {
  auto* strip = new QHBoxLayout;
  previous_ = button("pagePrevious", tr("Pre&vious"));
  previous_->setToolTip(tr("Page Up"));
  next_ = button("pageNext", tr("&Next"));
  next_->setToolTip(tr("Page Down"));
  auto* label = new QLabel(tr("Pag&e"), this);
  pageNumber_ = new QSpinBox(this);
  pageNumber_->setObjectName(QStringLiteral("pageNumber"));
  pageNumber_->setAccessibleName(tr("Page number"));
  // A number that is being typed is not gone to figure by figure.
  pageNumber_->setKeyboardTracking(false);
  label->setBuddy(pageNumber_);
  // Which one holds is seen in every palette, unlike with a button that is pressed in.
  fit_ = new QRadioButton(tr("&Fit page"), this);
  fit_->setObjectName(QStringLiteral("zoomFit"));
  actual_ = new QRadioButton(tr("A&ctual size"), this);
  actual_->setObjectName(QStringLiteral("zoomActual"));
  // Without a group of their own they would exclude the buttons of the range as well.
  auto* zooms = new QButtonGroup(this);
  zooms->addButton(fit_);
  zooms->addButton(actual_);
  fit_->setChecked(true);
  scale_ = new QLabel(this);
  scale_->setObjectName(QStringLiteral("sheetsScale"));
  scale_->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000 %")));
  scale_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  for (QWidget* part : {static_cast<QWidget*>(previous_), static_cast<QWidget*>(label),
                        static_cast<QWidget*>(pageNumber_), static_cast<QWidget*>(next_)}) {
    strip->addWidget(part);
  }
  strip->addStretch(1);
  strip->addWidget(fit_);
  strip->addWidget(actual_);
  strip->addWidget(scale_);
  preview_ = new SheetPreview(this);
  auto* column = new QVBoxLayout;
  column->addLayout(strip);
  column->addWidget(preview_, 1);
  return column;
}

QLayout* SheetsDialog::buildOutputs() {
  hint_ = new QLabel(this);
  hint_->setObjectName(QStringLiteral("sheetsHint"));
  hint_->setWordWrap(true);
  pdf_ = button("sheetsPdf", tr("&Save as PDF…"));
  pictures_ = button("sheetsPictures", tr("Save as p&ictures (SVG)…"));
  print_ = button("sheetsPrint", tr("P&rint…"));
  close_ = button("sheetsClose", tr("C&lose"));
  auto* row = new QHBoxLayout;
  row->addWidget(hint_, 1);
  for (QPushButton* way : {pdf_, pictures_, print_, close_}) {
    row->addWidget(way);
  }
  return row;
}

// Left column downwards, then the preview from its strip to the page, then the ways out.
void SheetsDialog::orderTabs() {
  const QList<QWidget*> order{kinds_, paper_, mirrored_, turned_, range_,    previous_, pageNumber_,
                              next_,  fit_,   preview_,  pdf_,    pictures_, print_,    close_};
  for (qsizetype i = 1; i < order.size(); ++i) {
    setTabOrder(order[i - 1], order[i]);
  }
}

}  // namespace creaseline::desk
