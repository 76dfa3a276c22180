// SPDX-License-Identifier: MIT
// New orders, saving, and what an earlier session left unsaved.
#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QStatusBar>

#include "creaseline/base/file.h"
#include "desk/changed_parts.h"
#include "desk/desk_parts.h"
#include "desk/file_questions.h"
#include "desk/text.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

namespace {

constexpr qsizetype kConflictsShown = 4;
constexpr int kTakenMs = 20'000;  // who looks up from the machine shall still see it

}  // namespace

void DeskWindow::Parts::connectFiles() {
  QObject::connect(actions_.newOrder, &QAction::triggered, &window_, [this] { startOrder(); });
  QObject::connect(startPage_, &StartPage::newOrderRequested, &window_, [this] { startOrder(); });
  QObject::connect(actions_.save, &QAction::triggered, &window_, [this] { saveOrder(Wait::No); });
  QObject::connect(actions_.saveAs, &QAction::triggered, &window_,
                   [this] { saveOrderAs(Wait::No); });
  QObject::connect(&document_, &Document::saved, &window_,
                   [this](SaveResult result) { told(Saveable::Order, result); });
  QObject::connect(&document_, &Document::shopSaved, &window_,
                   [this](SaveResult result) { told(Saveable::Shop, result); });
  QObject::connect(&document_, &Document::modifiedChanged, &window_, [this] { updateEditing(); });
  QObject::connect(&document_, &Document::outsideTaken, &window_,
                   [this](const QString& file, const QStringList& parts) {
                     window_.statusBar()->showMessage(
                         tr("%1 was changed by somebody else; taken over: %2. Undo takes it back.")
                             .arg(QFileInfo(file).fileName(), fewOf(parts)),
                         kTakenMs);
                   });
  QObject::connect(&document_, &Document::merged, &window_, [this] { showMerged(); });
  QObject::connect(&recovery_, &Recovery::notKept, &window_, [this](const QString& reason) {
    messageBar_->say(Severity::Watch, tr("Unsaved changes cannot be kept against a crash"),
                     tr("%1. Save the order often.").arg(reason));
  });
}

void DeskWindow::Parts::startOrder() {
  if (!mayLeaveOrder()) {
    return;
  }
  Order order;
  const auto open = document_.orderInHand();
  // The first of all is the next one after none.
  order.id = nextNumber(open ? open->id : "0", orderFolder());
  document_.startOrder(std::move(order));
  details_->setCurrentIndex(DetailsPanel::OrderTab);
}

void DeskWindow::Parts::finishTyping() {
  // Also in a window beside this one, such as the shop's.
  if (QWidget* focused = QApplication::focusWidget()) {
    focused->clearFocus();
    focused->setFocus();
  }
}

bool DeskWindow::Parts::fileGone() const {
  // The disk, which may be a slow one, is asked only when something is wrong.
  return document_.problem() && !document_.orderFile().isEmpty() &&
         !QFileInfo::exists(document_.orderFile());
}

bool DeskWindow::Parts::saveOrder(Wait wait) {
  finishTyping();
  if (document_.original().file.empty() || fileGone()) {
    return saveOrderAs(wait);
  }
  document_.startSaving();
  return begun(wait);
}

bool DeskWindow::Parts::saveOrderAs(Wait wait) {
  finishTyping();
  const auto order = document_.orderInHand();
  if (!order) {
    return false;
  }
  const QString file =
      askWhereToSave(tr("Save the order"), fileNameFor(order->id, QStringLiteral(".order.json")),
                     tr("Orders (*.order.json)"), QStringLiteral(".order.json"));
  if (file.isEmpty()) {
    return false;
  }
  try {
    // The dialog has asked whether a file that is there may go.
    document_.startSavingAs(toPath(file), stampOf(toPath(file)));
    return begun(wait);
  } catch (const InputError& error) {
    messageBar_->say(Severity::Stop, tr("The order was not saved"), toQString(error.what()));
    return false;
  }
}

bool DeskWindow::Parts::begun(Wait wait) {
  if (wait == Wait::No) {
    return true;
  }
  document_.finishSaving();
  return document_.saveResult() == SaveResult::Saved;
}

void DeskWindow::Parts::told(Saveable what, SaveResult result) {
  const bool order = what == Saveable::Order;
  switch (result) {
    case SaveResult::Saved:
      window_.statusBar()->showMessage(
          tr("Saved as %1")
              .arg(QDir::toNativeSeparators(order ? document_.orderFile() : document_.shopFile())),
          5000);
      showTitle();
      // The plan on screen was left when the file was gone; now there is one again.
      if (document_.stale()) {
        document_.reload();
      }
      return;
    case SaveResult::ChangedOutside:
      messageBar_->say(
          Severity::Watch,
          order ? tr("Not saved yet: somebody else saved this order")
                : tr("Not saved yet: somebody else saved this shop"),
          (order ? tr("%1. Both changes are being put together; look at them, then save again.")
                 : tr("%1. It is being read again; look at it, then save again."))
              .arg(document_.saveProblem()));
      return;
    case SaveResult::NotWritten:
      messageBar_->say(
          Severity::Stop, order ? tr("The order was not saved") : tr("The shop was not saved"),
          tr("%1. The file is as it was; save it in another place.").arg(document_.saveProblem()),
          {{tr("Save &as…"),
            [this, order] { order ? saveOrderAs(Wait::No) : saveShopAs(Wait::No); }}});
      return;
  }
}

void DeskWindow::Parts::showMerged() {
  const OutsideChange& change = document_.outsideChange();
  QStringList lines;
  for (const MergeConflict& conflict : change.conflicts) {
    lines.append(tr("%1: here %2, in the file %3", "place: mine, theirs")
                     .arg(capitalised(toQString(conflict.place)), toQString(conflict.mine),
                          toQString(conflict.theirs)));
  }
  for (const std::string& each : change.toMend) {
    lines.append(toQString(each));
  }
  if (lines.isEmpty()) {
    messageBar_->say(Severity::Note, tr("Somebody else changed this order, too"),
                     tr("Both changes are in it now. Undo takes theirs out again."));
    return;
  }
  if (lines.size() > kConflictsShown) {
    const auto more = static_cast<int>(lines.size() - kConflictsShown + 1);
    lines = lines.mid(0, kConflictsShown - 1);
    lines.append(tr("and %n more", nullptr, more));
  }
  messageBar_->say(Severity::Watch, tr("Somebody else changed the same things; yours were kept"),
                   lines.join(QLatin1Char('\n')),
                   {{tr("Take &theirs"), [this] { document_.takeTheirs(); }},
                    {tr("&One by one…"), [this] { decideConflicts(); }}});
}

void DeskWindow::Parts::decideConflicts() {
  if (conflictsWindow_ == nullptr) {
    conflictsWindow_ = new ConflictsWindow(settings_, &window_);
    QObject::connect(conflictsWindow_, &ConflictsWindow::decided, &document_,
                     qOverload<const std::map<std::string, MergeSide>&>(&Document::takeTheirs));
    QObject::connect(conflictsWindow_, &ConflictsWindow::leftOpen, &window_,
                     [this] { showMerged(); });
  }
  conflictsWindow_->show(document_.outsideChange().conflicts);
}

void DeskWindow::Parts::offerLeftWork() {
  const std::vector<LeftWork> left = recovery_.leftWork();
  if (left.empty()) {
    return;
  }
  const LeftWork work = left.front();
  const QString when = QLocale().toString(work.kept.toLocalTime(), QLocale::ShortFormat);
  messageBar_->say(
      Severity::Watch,
      work.draft.empty() ? tr("The shop was not saved")
                         : tr("Order %1 was not saved").arg(work.orderName),
      tr("The program ended before it could be. What was there at %1 is still here.").arg(when),
      {{tr("&Take it up again"), [this, work] { takeUp(work); }}, {tr("Discard it"), [this, work] {
                                                                     Recovery::drop(work);
                                                                     offerLeftWork();
                                                                   }}});
}

void DeskWindow::Parts::takeUp(const LeftWork& work) {
  if (!mayLeaveOrder()) {
    offerLeftWork();
    return;
  }
  try {
    recovery_.takeUp(work);
  } catch (const InputError& error) {
    messageBar_->say(Severity::Stop, tr("What was left cannot be read"), toQString(error.what()));
  }
}

}  // namespace creaseline
