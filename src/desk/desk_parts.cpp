// SPDX-License-Identifier: MIT
// How document, selection, views and actions are connected.
#include "desk/desk_parts.h"

#include <QDir>
#include <QFileInfo>

#include "desk/edit_commands.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

namespace {

constexpr int kBusyDelayMs = 200;

}  // namespace

DeskWindow::Parts::Parts(DeskWindow& window, const DeskRules& rules,
                         const std::filesystem::path& resources, const QString& settingsFile)
    : window_(window),
      resources_(resources),
      settings_(settingsFile),
      language_(settingsFile),
      rules_(rules),
      document_(rules_, settings_),
      actions_(window, document_.undoStack()),
      recovery_(QFileInfo(settingsFile).absolutePath() + QStringLiteral("/recovery"), document_),
      library_(window, settings_, document_, resources) {
  language_.readPhrases(resources_);
  if (settings_.appearance() != Appearance::System) {
    applyAppearance(settings_.appearance());
  }
  build();
  busyDelay_.setSingleShot(true);
  busyDelay_.setInterval(kBusyDelayMs);
  connectActions();
  connectStartPage();
  connectDocument();
  connectOutput();
  connectFiles();
  connectEditing();
  connectShop();
  connectOrders();
  library_.connectActions(*actions_.garments, *actions_.designs, [this] { saveOrder(Wait::No); });
  actions_.showUnits(document_.units());
  actions_.showLanguage(settings_.language());
  actions_.showAppearance(settings_.appearance());
  fillRecent();
  showPlanned();
  offerLeftWork();
}

void DeskWindow::Parts::connectActions() {
  const auto on = [this](QAction* action, void (Parts::*what)()) {
    QObject::connect(action, &QAction::triggered, &window_, [this, what] { (this->*what)(); });
  };
  on(actions_.openOrder, &Parts::askForOrder);
  on(actions_.openShop, &Parts::askForShop);
  on(actions_.openDemo, &Parts::openDemo);
  on(actions_.showWork, &Parts::showWork);
  on(actions_.about, &Parts::showAbout);
  QObject::connect(actions_.saveSheets, &QAction::triggered, &window_,
                   [this] { showSheets(SheetsDialog::Purpose::Save); });
  QObject::connect(actions_.printSheets, &QAction::triggered, &window_,
                   [this] { showSheets(SheetsDialog::Purpose::Print); });
  QObject::connect(actions_.reload, &QAction::triggered, &document_, &Document::reload);
  QObject::connect(actions_.quit, &QAction::triggered, &window_, &QWidget::close);
  const auto chooseUnits = [this] { document_.setUnits(actions_.chosenUnits(document_.units())); };
  QObject::connect(actions_.lengthUnits, &QActionGroup::triggered, &document_, chooseUnits);
  QObject::connect(actions_.rulerMarks, &QActionGroup::triggered, &document_, chooseUnits);
  QObject::connect(actions_.appearances, &QActionGroup::triggered, &window_, [this] {
    settings_.setAppearance(actions_.chosenAppearance());
    applyAppearance(settings_.appearance());
  });
  QObject::connect(actions_.languages, &QActionGroup::triggered, &window_,
                   [this] { chooseLanguage(actions_.chosenLanguage()); });
  QObject::connect(actions_.showWords, &QAction::triggered, &window_, [this] { showWords(0); });
  QObject::connect(&selection_, &Selection::changed, &window_, [this] { showSelection(); });
}

void DeskWindow::Parts::connectStartPage() {
  QObject::connect(startPage_, &StartPage::openOrderRequested, &window_, [this] { askForOrder(); });
  QObject::connect(startPage_, &StartPage::openShopRequested, &window_, [this] { askForShop(); });
  QObject::connect(startPage_, &StartPage::newShopRequested, &window_, [this] { startShop(); });
  QObject::connect(startPage_, &StartPage::openDemoRequested, &window_, [this] { openDemo(); });
  QObject::connect(startPage_, &StartPage::openRecentRequested, &window_,
                   [this](const QString& file) { openOrder(toPath(file)); });
}

void DeskWindow::Parts::connectWorkspace() {
  TableCanvas& canvas = tablePanel_->canvas();
  QObject::connect(actions_.zoomIn, &QAction::triggered, &canvas, &TableCanvas::zoomIn);
  QObject::connect(actions_.zoomOut, &QAction::triggered, &canvas, &TableCanvas::zoomOut);
  QObject::connect(actions_.fit, &QAction::triggered, &canvas, &TableCanvas::fit);
  QObject::connect(&document_, &Document::staleChanged, &canvas, &TableCanvas::setStale);
  const auto goTo = [](QAction* action, QWidget* target) {
    QObject::connect(action, &QAction::triggered, target,
                     [target] { target->setFocus(Qt::ShortcutFocusReason); });
  };
  goTo(actions_.goToOrder, orderView_);
  goTo(actions_.goToTable, &canvas);
  goTo(actions_.goToSizes, sizeRail_);
  goTo(actions_.goToReasons, reasonsView_);
  goTo(actions_.goToDetails, details_);
  goTo(actions_.goToFindings, findingsPanel_->findChild<QListView*>());
  if (loadWords()) {
    reasonsView_->setWords(words_);
  }
  QObject::connect(reasonsView_, &ReasonsView::wordAsked, &window_,
                   [this](std::size_t word) { showWords(word); });
  QObject::connect(findingsPanel_, &FindingsPanel::jumpRequested, &window_,
                   [this](const Finding& finding) { jumpTo(finding); });
  QObject::connect(findingsPanel_, &FindingsPanel::houseRuleRequested, &window_,
                   [this](std::size_t rule) {
                     if (ShopWindow* shop = showShop()) {
                       shop->goToHouseRule(rule);
                     }
                   });
  QObject::connect(
      findingsPanel_, &FindingsPanel::leadRequested, &window_,
      [this](const Finding& finding, const ShopChange& change) { leadTo(finding, change); });
  QObject::connect(
      findingsPanel_, &FindingsPanel::remedyRequested, &window_,
      [this](const Finding& finding, const Remedy& remedy) { tryRemedy(finding, remedy); });
  connectForms();
  connectGuide();
}

void DeskWindow::Parts::connectDocument() {
  const auto on = [this](auto signal, void (Parts::*what)()) {
    QObject::connect(&document_, signal, &window_, [this, what] { (this->*what)(); });
  };
  on(&Document::plannedChanged, &Parts::showPlanned);
  on(&Document::problemChanged, &Parts::showProblem);
  on(&Document::filesChanged, &Parts::fillRecent);
  on(&Document::filesChanged, &Parts::showNotes);
  on(&Document::busyChanged, &Parts::showBusy);
  QObject::connect(&document_, &Document::unitsChanged, &window_,
                   [this] { actions_.showUnits(document_.units()); });
  QObject::connect(&document_, &Document::staleChanged, &window_, [this] { updateEnabled(); });
  const auto progressed = [this](double share) {
    progress_->setValue(static_cast<int>(share * 100.0));
  };
  QObject::connect(&document_, &Document::progressed, progress_, progressed);
  QObject::connect(&output_, &SheetOutput::progressed, progress_, progressed);
  QObject::connect(&document_, &Document::modifiedChanged, &window_,
                   [this](bool modified) { window_.setWindowModified(modified); });
  QObject::connect(&busyDelay_, &QTimer::timeout, &window_, [this] {
    for (QWidget* part : {static_cast<QWidget*>(activity_), static_cast<QWidget*>(progress_),
                          static_cast<QWidget*>(cancel_)}) {
      part->show();
    }
  });
  QObject::connect(cancel_, &QPushButton::clicked, &window_, [this] {
    output_.cancel();
    document_.cancelPlanning();
  });
}

void DeskWindow::Parts::openOrder(const std::filesystem::path& file) {
  if (mayLeaveOrder()) {
    document_.openOrder(file);
    needWorkspace();  // while the file is being read
  }
}

void DeskWindow::Parts::openShop(const std::filesystem::path& file) {
  if (mayLeaveShop()) {
    document_.openShop(file);
  }
}

void DeskWindow::Parts::showPlanned() {
  if (atWork()) {
    needWorkspace();
  }
  const auto planned = document_.planned();
  orderModel_.setPlanned(planned);
  if (workspace_ != nullptr) {
    findingsPanel_->setPlanned(planned);
  }
  if (workWindow_ != nullptr) {
    workWindow_->setPlanned(planned);
  }
  selection_.setPlanned(planned);
  showPage();
  showTitle();
  showCounts();
  updateEnabled();
}

void DeskWindow::Parts::showSelection() {
  if (workspace_ == nullptr) {
    return;
  }
  const auto planned = document_.planned();
  details_->show(planned, selection_.spot());
  updateEditing();
  const auto laid = layUnplanned(*planned, selection_);
  sizeModel_.setPlacement(planned, selection_.line(), selection_.placement(), laid);
  tablePanel_->showSelection(planned, laid);
  const PlacementPlan* plan = selection_.current();
  const auto missing = whatIsMissing(*planned, selection_, plan != nullptr || !laid->empty());
  missing_->show(missing);
  if (plan != nullptr) {
    reasonsView_->show(reasonsFor(*planned, *plan));
  } else if (missing.empty()) {
    reasonsView_->showNothing(tr("Why it is as it is stands here as soon as it is planned."));
  } else {
    reasonsView_->showNothing({});
  }
}

void DeskWindow::Parts::showPage() {
  const auto planned = document_.planned();
  startPage_->showState(planned->shop() != nullptr, demo().has_value(), settings_.recentOrders());
  if (atWork()) {
    needWorkspace();
    pages_->setCurrentWidget(workspace_);
  } else {
    pages_->setCurrentWidget(startPage_);
  }
}

// An order can be worked at as soon as it is there; what else it needs is asked for beside it.
bool DeskWindow::Parts::atWork() const {
  return document_.planned()->order() != nullptr;
}

void DeskWindow::Parts::showTitle() {
  const Order* order = document_.planned()->order();
  if (order == nullptr) {
    window_.setWindowTitle(tr("Creaseline[*]"));
    return;
  }
  const QString name = tr("%1 %2", "order number, title")
                           .arg(toQString(order->id), toQString(order->title))
                           .trimmed();
  window_.setWindowTitle(tr("%1[*] - Creaseline").arg(name));
  if (workspace_ == nullptr) {
    return;
  }
  orderTitle_->setText(name);
  QStringList detail;
  if (!order->customer.empty()) {
    detail.append(toQString(order->customer));
  }
  if (!order->due.empty()) {
    detail.append(tr("due %1").arg(toQString(order->due)));
  }
  detail.append(tr("%n garment(s)", nullptr, order->garments()));
  if (const Shop* shop = document_.planned()->shop()) {
    detail.append(tr("planned for %1").arg(toQString(shop->name)));
  }
  orderDetail_->setText(detail.join(QStringLiteral(", ")));
}

void DeskWindow::Parts::showCounts() {
  const Plan* plan = document_.planned()->plan();
  if (plan == nullptr) {
    counts_->clear();
    return;
  }
  const auto part = [this](Severity severity, const QString& words) {
    return QStringLiteral("<span style='color:%1'>%2 %3</span>")
        .arg(stateColour(severity, window_.palette()).name(), stateShape(severity), words);
  };
  counts_->setText(
      (QStringList{part(Severity::Stop, tr("%n stop(s)", nullptr, plan->counts.stops)),
                   part(Severity::Watch, tr("%n watch(es)", nullptr, plan->counts.watches)),
                   part(Severity::Note, tr("%n note(s)", nullptr, plan->counts.notes)),
                   tr("%n hooping(s)", nullptr, plan->counts.placements)})
          .join(QStringLiteral("&nbsp;&nbsp; ")));
}

void DeskWindow::Parts::showProblem() {
  updateEnabled();
  if (!document_.problem()) {
    messageBar_->hide();
    showNotes();
    if (!messageBar_->isVisible()) {
      offerLeftWork();
    }
    return;
  }
  const Problem& problem = *document_.problem();
  const InputError::Details& details = problem.details;
  const QString file = toQString(details.file);
  const QString name = file.isEmpty() ? tr("The order") : QFileInfo(file).fileName();
  const QString headline =
      document_.stale() ? tr("%1 cannot be read; the last good plan stays on screen").arg(name)
      : problem.stage == PlanStage::Planning ? tr("%1 cannot be planned").arg(name)
                                             : tr("%1 cannot be opened").arg(name);
  QStringList lines;
  const auto add = [&](const QString& label, const QString& value) {
    if (!value.isEmpty()) {
      lines.append(label.arg(value));
    }
  };
  add(tr("File: %1"), QDir::toNativeSeparators(file));
  add(tr("Place: %1"), toQString(details.where));
  add(tr("Found: %1"), toQString(details.found));
  add(tr("Expected: %1"), toQString(details.expected));
  std::vector<MessageBar::Answer> ways{{tr("&Try again"), [this] { document_.reload(); }}};
  if (fileGone()) {
    ways.push_back({tr("Save &as…"), [this] { saveOrderAs(Wait::No); }});
  }
  messageBar_->say(Severity::Stop, headline, lines.join(QLatin1Char('\n')), ways);
}

void DeskWindow::Parts::showNotes() {
  QStringList lines;
  for (const auto* notes : {&document_.orderNotes(), &document_.shopNotes()}) {
    for (const LoadNote& note : *notes) {
      lines.append(tr("%1, %2: %3", "file, place: remark")
                       .arg(QFileInfo(toQString(note.file)).fileName(), toQString(note.where),
                            toQString(note.text)));
    }
  }
  // Unsaved work to be taken up is worth more than remarks.
  if (lines.isEmpty() || document_.problem() || !recovery_.leftWork().empty()) {
    return;
  }
  constexpr qsizetype kMostShown = 4;
  const qsizetype count = lines.size();
  if (count > kMostShown) {
    lines = lines.mid(0, kMostShown - 1);
    lines.append(tr("and %n more", nullptr, static_cast<int>(count - lines.size())));
  }
  messageBar_->say(Severity::Note, tr("Read, with %n remark(s)", nullptr, static_cast<int>(count)),
                   lines.join(QLatin1Char('\n')));
}

void DeskWindow::Parts::showBusy() {
  const bool busy = document_.busy() || output_.busy();
  const bool printing = output_.form() == SheetOutput::Form::Paper;
  activity_->setText(!output_.busy() ? tr("Planning")
                     : printing      ? tr("Printing sheets")
                                     : tr("Saving sheets"));
  cancel_->setText(!output_.busy() ? tr("Stop planning")
                   : printing      ? tr("Stop printing")
                                   : tr("Stop saving"));
  if (busy) {
    progress_->setValue(0);
    busyDelay_.start();
  } else {
    busyDelay_.stop();
    activity_->hide();
    progress_->hide();
    cancel_->hide();
  }
  updateEnabled();
}

void DeskWindow::Parts::updateEnabled() {
  const bool planned = document_.planned()->plan() != nullptr;
  const bool current = planned && !document_.stale() && !document_.busy();
  const Order* order = document_.planned()->order();
  const bool mayPutOut = current && !output_.busy() && order->garments() > 0;
  actions_.saveSheets->setEnabled(mayPutOut);
  actions_.printSheets->setEnabled(mayPutOut);
  actions_.copyPlan->setEnabled(current);
  actions_.showWork->setEnabled(planned);
  actions_.exportPlan->setEnabled(current);
  if (sheetsDialog_ != nullptr) {
    sheetsDialog_->setPlanned(document_.planned(), mayPutOut);
  }
  actions_.reload->setEnabled(!document_.orderFile().isEmpty() || document_.problem().has_value());
  actions_.openDemo->setEnabled(demo().has_value());
  for (QAction* action :
       {actions_.zoomIn, actions_.zoomOut, actions_.fit, actions_.goToOrder, actions_.goToTable,
        actions_.goToSizes, actions_.goToReasons, actions_.goToFindings, actions_.goToDetails}) {
    action->setEnabled(atWork());
  }
  if (workspace_ != nullptr) {
    findingsPanel_->setRemediesEnabled(current);
  }
  updateEditing();
}

void DeskWindow::Parts::fillRecent() {
  actions_.recent->clear();
  const QStringList files = settings_.recentOrders();
  for (const QString& file : files) {
    QString text = QDir::toNativeSeparators(file);
    QAction* action =
        actions_.recent->addAction(text.replace(QLatin1Char('&'), QStringLiteral("&&")));
    QObject::connect(action, &QAction::triggered, &window_,
                     [this, file] { openOrder(toPath(file)); });
  }
  actions_.recent->addSeparator();
  QObject::connect(actions_.recent->addAction(tr("&Clear the list")), &QAction::triggered, &window_,
                   [this] {
                     settings_.clearRecentOrders();
                     fillRecent();
                     showPage();
                   });
  actions_.recent->setEnabled(!files.isEmpty());
}

void DeskWindow::Parts::jumpTo(const Finding& finding) {
  const SizeName size = finding.sizes.empty() ? selection_.size() : finding.sizes.front();
  if (const auto spot = document_.planned()->spotOf(finding)) {
    selection_.choose(spot->line, spot->placement.value_or(0), size);
  }
}

// The garments that were mended are shown, also where they are a line of their own now.
void DeskWindow::Parts::tryRemedy(const Finding& finding, const Remedy& remedy) {
  const auto spot = document_.planned()->spotOf(finding);
  const auto before = document_.orderInHand();
  if (!applyRemedy(document_, finding, remedy) || !spot || finding.wholeOrder ||
      finding.sizes.empty()) {
    return;
  }
  const SizeName& size = finding.sizes.front();
  const std::vector<OrderLine>& lines = document_.orderInHand()->lines;
  const BlankId blank = before->lines[spot->line].blank;
  for (std::size_t line = spot->line; line < lines.size(); ++line) {
    if (lines[line].blank == blank && lines[line].find(size) != nullptr) {
      selection_.choose(line, spot->placement.value_or(0), size);
      return;
    }
  }
}

void DeskWindow::Parts::refreshColours() {
  showCounts();
}

}  // namespace creaseline
