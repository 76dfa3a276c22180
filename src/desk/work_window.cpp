// SPDX-License-Identifier: MIT
#include "desk/work_window.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "creaseline/planning/wording.h"
#include "desk/money_words.h"
#include "desk/text.h"
#include "desk/theme.h"
#include "desk/work_html.h"

namespace creaseline::desk {

namespace {

constexpr QSize kWorkSize{860, 640};

QTextBrowser* reader(const char* name, const QString& words, QWidget* parent) {
  auto* made = new QTextBrowser(parent);
  made->setObjectName(QString::fromLatin1(name));
  made->setAccessibleName(words);
  made->setOpenLinks(false);
  made->setFrameShape(QFrame::NoFrame);
  made->setTabChangesFocus(true);
  return made;
}

}  // namespace

WorkWindow::WorkWindow(Settings& settings, QWidget* parent)
    : SideWindow(QStringLiteral("workWindow"), kWorkSize, settings, parent) {
  setWindowTitle(tr("Runs and materials"));
  build();
}

WorkWindow::~WorkWindow() = default;

void WorkWindow::build() {
  auto* layout = new QVBoxLayout(this);
  summary_ = new QLabel(this);
  summary_->setObjectName(QStringLiteral("workSummary"));
  summary_->setWordWrap(true);
  layout->addWidget(summary_);
  auto* tabs = new QTabWidget(this);
  tabs->setObjectName(QStringLiteral("workTabs"));
  tabs->setAccessibleName(tr("Runs, materials"));
  tabs->addTab(buildRuns(), tr("Runs"));
  materials_ = reader("workMaterials", tr("Materials to lay ready"), tabs);
  tabs->addTab(materials_, tr("Materials"));
  tabs->addTab(buildCuts(), tr("Cutting"));
  tabs->addTab(buildCost(), tr("Cost"));
  layout->addWidget(tabs, 1);
}

QWidget* WorkWindow::buildCuts() {
  auto* area = new QScrollArea(this);
  area->setFrameShape(QFrame::NoFrame);
  area->setWidgetResizable(true);
  area->setFocusPolicy(Qt::NoFocus);
  // Always there, because its coming would narrow what has been laid out already.
  area->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  cuts_ = new CutView(area);
  area->setWidget(cuts_);
  return area;
}

QWidget* WorkWindow::buildCost() {
  auto* page = new QWidget(this);
  auto* layout = new QVBoxLayout(page);
  costHead_ = new QLabel(page);
  costHead_->setObjectName(QStringLiteral("costHead"));
  costHead_->setWordWrap(true);
  layout->addWidget(costHead_);
  missing_ = new QListWidget(page);
  missing_->setObjectName(QStringLiteral("costMissing"));
  missing_->setAccessibleName(tr("What is not counted"));
  missing_->setWordWrap(true);
  layout->addWidget(missing_, 1);
  fillIn_ = new QPushButton(tr("&Go to where it is given"), page);
  fillIn_->setObjectName(QStringLiteral("costFillIn"));
  fillIn_->setAutoDefault(false);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(fillIn_);
  buttons->addStretch(1);
  layout->addLayout(buttons);
  cost_ = reader("workCost", tr("Cost by kind, line and run"), page);
  layout->addWidget(cost_, 3);
  connect(fillIn_, &QPushButton::clicked, this, &WorkWindow::askForField);
  connect(missing_, &QListWidget::itemActivated, this, &WorkWindow::askForField);
  return page;
}

QWidget* WorkWindow::buildRuns() {
  auto* page = new QWidget(this);
  auto* layout = new QVBoxLayout(page);
  day_ = new DayBar(page);
  layout->addWidget(day_);
  auto* lower = new QHBoxLayout;
  runs_ = new QListWidget(page);
  runs_->setObjectName(QStringLiteral("workRuns"));
  runs_->setAccessibleName(tr("Runs in order"));
  runs_->setWordWrap(true);
  runs_->setSpacing(3);
  lower->addWidget(runs_, 2);
  auto* right = new QVBoxLayout;
  needles_ = new NeedleChart(page);
  run_ = reader("workRun", tr("What the chosen run takes"), page);
  right->addWidget(needles_);
  right->addWidget(run_, 1);
  lower->addLayout(right, 3);
  layout->addLayout(lower, 1);
  connect(runs_, &QListWidget::currentRowChanged, this, &WorkWindow::showRun);
  connect(day_, &DayBar::chosen, runs_, qOverload<int>(&QListWidget::setCurrentRow));
  return page;
}

void WorkWindow::setPlanned(std::shared_ptr<const PlannedOrder> planned) {
  planned_ = std::move(planned);
  if (isVisible()) {
    workOut();
  }
}

WorkWindow::Work WorkWindow::workOf(const std::shared_ptr<const PlannedOrder>& planned) {
  const ReportContext context{*planned->plannedFor(), *planned->shop(), planned->rules()};
  RunPlan runs = planRuns(*planned->plan(), context, planned->units());
  PickList picks = pickList(*planned->plan(), runs, context, planned->units());
  auto cost = orderCost(*planned->plan(), runs, context, planned->units());
  return {planned, std::move(runs), std::move(picks), std::move(cost)};
}

void WorkWindow::workOut() {
  if (!planned_ || planned_->plan() == nullptr) {
    job_.forget();
    work_.reset();
    showWork();
    return;
  }
  job_.start([planned = planned_] { return workOf(planned); },
             [this](Work work) {
               work_ = std::move(work);
               showWork();
             });
}

void WorkWindow::showWork() {
  const int chosen = runs_->currentRow();
  runs_->clear();
  if (!work_) {
    summary_->setText(tr("Nothing is planned yet."));
    day_->show({});
    run_->clear();
    materials_->clear();
    cuts_->show({}, {});
    needles_->show({});
    showCost();
    return;
  }
  const RunPlan& runs = work_->runs;
  QString said =
      tr("%1 for %2 in %3", "time, hoopings, runs")
          .arg(toQString(formatDuration(runs.total)), tr("%n hooping(s)", nullptr, runs.hoopings),
               tr("%n run(s)", nullptr, static_cast<int>(runs.cards.size())));
  if (!runs.held.empty()) {
    int held = 0;
    for (const HeldGarments& each : runs.held) {
      held += each.garments;
    }
    said += QStringLiteral(". ") + tr("%n hooping(s) held by stops", nullptr, held);
  }
  summary_->setText(said);
  day_->show(runs);
  for (const RunCard& card : runs.cards) {
    runs_->addItem(
        tr("%1  %2, %3\n%4, %n garment(s), %5", "number, place, design, frame, time", card.garments)
            .arg(card.number)
            .arg(toQString(card.location), toQString(card.design), toQString(card.frame),
                 toQString(formatDuration(card.time.total))));
  }
  materials_->setHtml(materialsText(work_->picks, runs, palette(), work_->planned->units()));
  cuts_->show(work_->picks.cuts, work_->planned->units());
  showCost();
  runs_->setCurrentRow(runs.cards.empty() ? -1 : std::clamp(chosen, 0, runs_->count() - 1));
  showRun(runs_->currentRow());
}

void WorkWindow::showCost() {
  const int chosen = missing_->currentRow();
  missing_->clear();
  cost_->clear();
  costHead_->clear();
  if (work_ && !work_->cost) {
    costHead_->setText(tr("The shop has no rates, so the cost is not reckoned."));
    missing_->addItem(tr("Give the currency, then what work and material cost"));
  } else if (work_) {
    const OrderCost& cost = *work_->cost;
    const QString total = moneyWords(cost.total, cost.currency);
    costHead_->setText(
        QStringLiteral("<b>%1</b>. %2")
            .arg((cost.complete() ? tr("Total %1") : tr("Incomplete total %1")).arg(total),
                 tr("%1 a garment. For the owner; not on what lies at the machine.")
                     .arg(moneyWords(cost.perGarment, cost.currency))));
    for (const NotCounted& each : cost.notCounted) {
      missing_->addItem(tr("Not counted: %1. To count it, %2.")
                            .arg(toQString(each.text), toQString(each.remedy)));
    }
    cost_->setHtml(costText(cost));
  }
  const bool some = missing_->count() > 0;
  missing_->setVisible(some);
  fillIn_->setVisible(some);
  missing_->setCurrentRow(some ? std::clamp(chosen, 0, missing_->count() - 1) : -1);
}

void WorkWindow::askForField() {
  const int row = missing_->currentRow();
  if (!work_ || row < 0) {
    return;
  }
  if (!work_->cost) {
    Q_EMIT fieldAsked(std::nullopt, {});
    return;
  }
  const NotCounted asked = work_->cost->notCounted.at(static_cast<std::size_t>(row));
  Q_EMIT fieldAsked(asked.field, asked.entry);
}

void WorkWindow::showRun(int run) {
  day_->choose(run);
  if (!work_ || run < 0 || run >= static_cast<int>(work_->runs.cards.size())) {
    return;
  }
  const RunCard& card = work_->runs.cards[static_cast<std::size_t>(run)];
  needles_->show(card);
  run_->setHtml(runText(card, palette(), work_->planned->units()));
}

void WorkWindow::showEvent(QShowEvent* event) {
  SideWindow::showEvent(event);
  workOut();
}

void WorkWindow::changeEvent(QEvent* event) {
  SideWindow::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && work_) {
    showWork();
  }
}

}  // namespace creaseline::desk
