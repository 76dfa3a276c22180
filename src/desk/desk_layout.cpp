// SPDX-License-Identifier: MIT
// Where the window's parts stand.
#include <QMenuBar>
#include <QScreen>
#include <QStatusBar>
#include <QStyle>
#include <QToolButton>
#include <QVBoxLayout>

#include "desk/desk_parts.h"
#include "desk/form_parts.h"
#include "desk/theme.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

namespace {

constexpr QSize kDeskSize{1440, 900};
constexpr int kLeastWordsCharacters = 30;  // across findings and reasons
constexpr int kMomentMs = 30;              // long enough for the first painting

}  // namespace

void DeskWindow::Parts::build() {
  auto* central = new QWidget(&window_);
  auto* layout = new QVBoxLayout(central);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  messageBar_ = new MessageBar(central);
  layout->addWidget(messageBar_);
  pages_ = new QStackedWidget(central);
  startPage_ = new StartPage(pages_);
  layout->addWidget(pages_, 1);
  window_.setCentralWidget(central);
  window_.setAcceptDrops(true);
  buildStatusBar();
  restoreWindowPlace();
  pages_->addWidget(startPage_);  // last, because it measures texts: the fonts may be there by now
}

void DeskWindow::Parts::finishLater() {
  if (!window_.windowIcon().isNull()) {
    return;
  }
  QTimer::singleShot(kMomentMs, &window_, [this] {
    window_.setWindowIcon(deskIcon(QStringLiteral("desk")));
    rules_.begin();
  });
}

void DeskWindow::Parts::needWorkspace() {
  if (workspace_ != nullptr) {
    return;
  }
  workspace_ = buildWorkspace();
  pages_->addWidget(workspace_);
  for (QSplitter* splitter : splitters_) {
    const QByteArray state = settings_.splitterState(splitter->objectName());
    if (!state.isEmpty()) {
      splitter->restoreState(state);
    }
  }
  connectWorkspace();
  showPlanned();
  updateGuide();
}

QWidget* DeskWindow::Parts::pane(const QString& heading, QWidget* content, QWidget* parent) {
  auto* pane = new QWidget(parent);
  pane->setBackgroundRole(QPalette::Base);
  pane->setAutoFillBackground(true);
  auto* layout = new QVBoxLayout(pane);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  auto* label = new QLabel(heading, pane);
  label->setContentsMargins(10, 7, 10, 5);
  QFont bold = label->font();
  bold.setBold(true);
  label->setFont(bold);
  layout->addWidget(label);
  layout->addWidget(content, 1);
  return pane;
}

QWidget* DeskWindow::Parts::buildWorkspace() {
  const auto splitter = [this](Qt::Orientation orientation, const char* name, QWidget* parent) {
    auto* made = new QSplitter(orientation, parent);
    made->setObjectName(QString::fromLatin1(name));
    made->setChildrenCollapsible(false);
    made->setHandleWidth(5);
    splitters_.append(made);
    return made;
  };
  auto* across = splitter(Qt::Horizontal, "across", pages_);
  auto* centre = splitter(Qt::Vertical, "centre", across);
  auto* right = splitter(Qt::Vertical, "right", across);
  across->addWidget(buildOrderPane());
  across->addWidget(centre);
  across->addWidget(right);

  tablePanel_ = new TablePanel(selection_, {actions_.zoomOut, actions_.zoomIn, actions_.fit});
  sizeRail_ = new SizeRail(sizeModel_, selection_);
  auto* tablePane = new QWidget(centre);
  tablePane->setBackgroundRole(QPalette::Base);
  tablePane->setAutoFillBackground(true);
  auto* tableLayout = new QVBoxLayout(tablePane);
  tableLayout->setContentsMargins(0, 0, 0, 0);
  tableLayout->addWidget(tablePanel_);
  centre->addWidget(tablePane);
  centre->addWidget(buildSizes(centre));
  centre->setStretchFactor(0, 1);

  reasonsView_ = new ReasonsView;
  findingsPanel_ = new FindingsPanel;
  right->addWidget(buildReasons(right));
  right->addWidget(pane(tr("Findings"), findingsPanel_, right));

  // Findings and reasons stay readable with large letters.
  right->setMinimumWidth(kLeastWordsCharacters * right->fontMetrics().averageCharWidth());
  across->setStretchFactor(1, 1);
  across->setSizes({490, 600, 350});
  centre->setSizes({590, 190});
  right->setSizes({440, 340});
  return across;
}

// How two sizes are compared is said where one would do it, and done there too.
QWidget* DeskWindow::Parts::buildSizes(QWidget* parent) {
  QWidget* made = pane(tr("Sizes, all to one scale"), sizeRail_, parent);
  auto* layout = static_cast<QVBoxLayout*>(made->layout());
  const std::unique_ptr<QLayoutItem> first(layout->takeAt(0));
  QWidget* heading = first->widget();
  auto* head = new QHBoxLayout;
  head->setContentsMargins(0, 0, 6, 0);
  head->addWidget(heading);
  head->addStretch(1);
  auto* compare = new QToolButton(made);
  compare->setObjectName(QStringLiteral("compareSizesButton"));
  compare->setText(tr("Compare…"));
  compare->setAccessibleName(tr("Compare with another size"));
  compare->setToolTip(sizeRail_->toolTip());
  compare->setAutoRaise(true);
  compare->setFocusPolicy(Qt::TabFocus);
  compare->setPopupMode(QToolButton::InstantPopup);
  compare->setMenu(actions_.compareSizes);
  head->addWidget(compare);
  layout->insertLayout(0, head);
  QObject::connect(actions_.compareSizes, &QMenu::aboutToShow, &window_, [this] { fillSizes(); });
  return made;
}

void DeskWindow::Parts::fillSizes() {
  QMenu& menu = *actions_.compareSizes;
  menu.clear();
  for (const PlacementPlan* plan : sizeModel_.plans()) {
    if (plan->size == selection_.size()) {
      continue;
    }
    QAction* size = menu.addAction(withoutMnemonic(toQString(plan->size.text())));
    size->setCheckable(true);
    size->setChecked(sizeRail_->isCompared(plan->size));
    QObject::connect(size, &QAction::triggered, sizeRail_, [this, name = plan->size] {
      selection_.compare(name);
      sizeRail_->viewport()->update();
    });
  }
  if (menu.isEmpty()) {
    menu.addAction(tr("There is no other size"))->setEnabled(false);
  }
}

// What is missing stands above the reasons, which there are few of then.
QWidget* DeskWindow::Parts::buildReasons(QWidget* parent) {
  auto* both = new QWidget(parent);
  auto* layout = new QVBoxLayout(both);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  missing_ = new MissingPanel(both);
  layout->addWidget(missing_);
  layout->addWidget(reasonsView_, 1);
  return pane(tr("Reasons"), both, parent);
}

// The table of the order above, what is selected in it below, to edit.
QWidget* DeskWindow::Parts::buildOrderPane() {
  auto* halves = new QSplitter(Qt::Vertical, pages_);
  halves->setObjectName(QStringLiteral("left"));
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(5);
  splitters_.append(halves);
  auto* pane = new QWidget(halves);
  pane->setBackgroundRole(QPalette::Base);
  pane->setAutoFillBackground(true);
  auto* layout = new QVBoxLayout(pane);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  orderTitle_ = new QLabel(pane);
  orderTitle_->setObjectName(QStringLiteral("orderTitle"));
  orderTitle_->setTextFormat(Qt::PlainText);
  orderTitle_->setWordWrap(true);
  orderTitle_->setContentsMargins(10, 7, 10, 0);
  QFont large = orderTitle_->font();
  large.setBold(true);
  large.setPointSizeF(large.pointSizeF() * 1.2);
  orderTitle_->setFont(large);
  orderDetail_ = new QLabel(pane);
  orderDetail_->setObjectName(QStringLiteral("orderDetail"));
  orderDetail_->setTextFormat(Qt::PlainText);
  orderDetail_->setWordWrap(true);
  orderDetail_->setContentsMargins(10, 2, 10, 7);
  guide_ = new OrderGuide(pane);
  orderView_ = new OrderView(orderModel_, selection_, pane);
  layout->addWidget(orderTitle_);
  layout->addWidget(orderDetail_);
  layout->addWidget(guide_);
  layout->addWidget(orderView_, 1);
  layout->addWidget(buildEditStrip(pane));
  pane->setMinimumWidth(300);
  details_ = new DetailsPanel(halves);
  halves->addWidget(pane);
  halves->addWidget(details_);
  halves->setStretchFactor(0, 1);
  halves->setSizes({520, 280});
  return halves;
}

QWidget* DeskWindow::Parts::buildEditStrip(QWidget* parent) {
  auto* strip = new QWidget(parent);
  auto* layout = new QHBoxLayout(strip);
  layout->setContentsMargins(8, 4, 8, 4);
  layout->setSpacing(4);
  const auto button = [&](const QString& words) {
    auto* made = new QToolButton(strip);
    made->setAutoRaise(true);
    made->setFocusPolicy(Qt::TabFocus);
    made->setText(words);
    layout->addWidget(made);
    return made;
  };
  const auto menu = [&](QMenu* shown, const QString& words) {
    QToolButton* made = button(words);
    made->setMenu(shown);
    made->setPopupMode(QToolButton::InstantPopup);
    made->setAccessibleName(shown->title().remove(QLatin1Char('&')));
    made->setObjectName(shown->objectName() + QStringLiteral("Button"));
  };
  menu(actions_.addGarment, tr("+ Garment"));
  menu(actions_.addPlace, tr("+ Place"));
  layout->addStretch(1);
  for (QAction* action : {actions_.duplicate, actions_.remove}) {
    button({})->setDefaultAction(action);
  }
  return strip;
}

void DeskWindow::Parts::buildStatusBar() {
  activity_ = new QLabel(&window_);
  progress_ = new QProgressBar(&window_);
  progress_->setObjectName(QStringLiteral("progress"));
  progress_->setAccessibleName(tr("Planning done"));
  progress_->setRange(0, 100);
  progress_->setMaximumWidth(180);
  cancel_ = new QPushButton(tr("Stop planning"), &window_);
  cancel_->setObjectName(QStringLiteral("cancelPlanning"));
  counts_ = new QLabel(&window_);
  counts_->setObjectName(QStringLiteral("counts"));
  counts_->setTextFormat(Qt::RichText);
  counts_->setContentsMargins(0, 0, 8, 0);
  QStatusBar* bar = window_.statusBar();
  bar->addWidget(activity_);
  bar->addWidget(progress_);
  bar->addWidget(cancel_);
  bar->addPermanentWidget(counts_);
  for (QWidget* busy : {static_cast<QWidget*>(activity_), static_cast<QWidget*>(progress_),
                        static_cast<QWidget*>(cancel_)}) {
    busy->hide();
  }
}

void DeskWindow::Parts::restoreWindowPlace() {
  // The bar with the window's name needs room as well.
  const int bar = window_.style()->pixelMetric(QStyle::PM_TitleBarHeight);
  const QSize room = window_.screen()->availableSize() - QSize(0, bar);
  window_.resize(kDeskSize.boundedTo(room));
  const QByteArray geometry = settings_.windowGeometry();
  if (!geometry.isEmpty()) {
    window_.restoreGeometry(geometry);
  }
}

void DeskWindow::Parts::keepWindowPlace() {
  if (sheetsDialog_ != nullptr) {
    sheetsDialog_->hide();  // which keeps its own
  }
  settings_.setWindowGeometry(window_.saveGeometry());
  for (const QSplitter* splitter : splitters_) {
    settings_.setSplitterState(splitter->objectName(), splitter->saveState());
  }
}

}  // namespace creaseline
