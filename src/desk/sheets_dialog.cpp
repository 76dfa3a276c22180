// SPDX-License-Identifier: MIT
// What the window "Sheets" does.
#include "desk/sheets_dialog.h"

#include <QHideEvent>
#include <QKeyEvent>
#include <QShortcut>
#include <algorithm>
#include <utility>

#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr int kPictureDelayMs = 40;
constexpr int kBusyDelayMs = 150;
const std::string kTemplates = "templates";  // the kind that has variants

}  // namespace

SheetsDialog::SheetsDialog(Settings& settings, QWidget* parent)
    : QDialog(parent), settings_(settings), model_(settings) {
  build();
  for (QTimer* timer : {&pictureDelay_, &busyDelay_}) {
    timer->setSingleShot(true);
  }
  pictureDelay_.setInterval(kPictureDelayMs);
  busyDelay_.setInterval(kBusyDelayMs);
  connectChoices();
  connectPreview();
  connectPreparer();
  connect(pdf_, &QPushButton::clicked, this, &SheetsDialog::pdfRequested);
  connect(pictures_, &QPushButton::clicked, this, &SheetsDialog::picturesRequested);
  connect(print_, &QPushButton::clicked, this, &SheetsDialog::printRequested);
  connect(close_, &QPushButton::clicked, this, &QDialog::reject);
  updateEnabled();
}

void SheetsDialog::connectChoices() {
  connect(&model_, &SheetTickModel::tickChanged, this, [this](int row) {
    if (model_.ticked(model_.id(row))) {
      kindOnShow_ = model_.id(row);
      pageInKind_ = 0;
    }
    recount();
  });
  connect(kinds_, &SheetTickList::kindChosen, this, &SheetsDialog::showKind);
  connect(paper_, &QComboBox::currentIndexChanged, this, [this] {
    settings_.setPaper(choice().paper);
    recount();
  });
  for (QCheckBox* variant : {mirrored_, turned_}) {
    connect(variant, &QCheckBox::toggled, this, [this] {
      settings_.setTemplateVariants(choice().variants);
      recount();
    });
  }
  connect(prices_, &QCheckBox::toggled, this, [this](bool shown) {
    settings_.setPricesOnSheets(shown);
    recount();
  });
  connect(range_, &PageRangeBox::changed, this, &SheetsDialog::updateEnabled);
}

void SheetsDialog::connectPreview() {
  const auto turn = [this](int pages) { showPage(page_ + pages); };
  const auto back = [turn] { turn(-1); };
  const auto on = [turn] { turn(1); };
  connect(previous_, &QPushButton::clicked, this, back);
  connect(next_, &QPushButton::clicked, this, on);
  connect(new QShortcut(QKeySequence(Qt::Key_PageUp), this), &QShortcut::activated, this, back);
  connect(new QShortcut(QKeySequence(Qt::Key_PageDown), this), &QShortcut::activated, this, on);
  connect(preview_, &SheetPreview::turned, this, turn);
  connect(pageNumber_, &QSpinBox::valueChanged, this, &SheetsDialog::showPage);
  connect(fit_, &QRadioButton::toggled, this, [this](bool whole) {
    preview_->setZoom(whole ? SheetPreview::Zoom::FitPage : SheetPreview::Zoom::ActualSize);
  });
  connect(preview_, &SheetPreview::scaleChanged, this,
          [this] { scale_->setText(tr("%1 %").arg(preview_->percentOfTrueSize())); });
  connect(preview_, &SheetPreview::scaleChanged, &pictureDelay_, qOverload<>(&QTimer::start));
  connect(&pictureDelay_, &QTimer::timeout, this, &SheetsDialog::askForPicture);
}

void SheetsDialog::connectPreparer() {
  connect(&preparer_, &SheetPreparer::counted, this, &SheetsDialog::showContents);
  connect(&preparer_, &SheetPreparer::painted, this, &SheetsDialog::showPicture);
  connect(&preparer_, &SheetPreparer::failed, this, [this](const QString& why) {
    showBusy(false);
    preview_->say(tr("The sheets cannot be made: %1").arg(why));
    total_->setText(tr("No pages"));
  });
  connect(&busyDelay_, &QTimer::timeout, busy_, &QWidget::show);
}

void SheetsDialog::showFor(Purpose purpose) {
  QPushButton* way = purpose == Purpose::Save ? pdf_ : print_;
  way->setDefault(true);
  const bool fresh = !isVisible();
  show();
  raise();
  activateWindow();
  way->setFocus(Qt::OtherFocusReason);
  if (fresh) {
    recount();
  }
}

void SheetsDialog::setPlanned(std::shared_ptr<const PlannedOrder> planned, bool current) {
  const bool other = planned_ != planned;
  planned_ = std::move(planned);
  current_ = current;
  if (!planned_ || planned_->plan() == nullptr) {
    hide();
  } else if (other) {
    recount();
  }
  updateEnabled();
}

SheetChoice SheetsDialog::choice() const {
  SheetChoice chosen;
  chosen.kinds = model_.tickedIds();
  chosen.paper = static_cast<Paper>(paper_->currentData().toInt());
  chosen.variants = {mirrored_->isChecked(), turned_->isChecked()};
  chosen.prices = prices_->isChecked();
  return chosen;
}

SheetJob SheetsDialog::job() const {
  const PageSpan span = range_->span().value_or(PageSpan{});
  return {planned_, choice(), span.first, span.last};
}

void SheetsDialog::recount() {
  if (isVisible() && planned_ && planned_->plan() != nullptr) {
    contents_.reset();
    model_.setContents(contents_);
    showBusy(true);
    showTotal();
    updateEnabled();
    preparer_.prepare(planned_, choice());
  }
}

void SheetsDialog::showContents(const SheetContents& contents) {
  contents_ = contents;
  model_.setContents(contents_);
  showBusy(false);
  showTotal();
  preview_->setPaper(paperSize(contents.paper));
  const int page = pageAfterChange();
  {
    const QSignalBlocker quiet(pageNumber_);
    pageNumber_->setRange(std::min(1, contents.pages), contents.pages);
    pageNumber_->setSuffix(tr(" of %1", "page number").arg(contents.pages));
  }
  if (contents.pages > 0) {
    showPage(page);
    return;
  }
  preview_->say(contents.kinds.empty() ? tr("Tick at least one kind of sheets.")
                                       : tr("This order has no sheets of the kinds ticked."));
  preview_->setAccessibleName(tr("Preview, no page"));
  updateEnabled();
}

int SheetsDialog::pageAfterChange() const {
  const SheetContents::Kind* kind = contents_->find(kindOnShow_);
  if (kind != nullptr && kind->count > 0) {
    return kind->first + std::min(pageInKind_, kind->count - 1);
  }
  return std::clamp(page_, 1, std::max(1, contents_->pages));
}

void SheetsDialog::showKind(int row) {
  const SheetContents::Kind* kind = contents_ ? contents_->find(model_.id(row)) : nullptr;
  if (kind != nullptr && kind->count > 0) {
    showPage(kind->first);
  }
}

void SheetsDialog::showPage(int page) {
  if (pageCount() == 0) {
    return;
  }
  page_ = std::clamp(page, 1, pageCount());
  const QSignalBlocker quiet(pageNumber_);
  pageNumber_->setValue(page_);
  if (const SheetContents::Kind* kind = contents_->at(page_)) {
    kindOnShow_ = kind->id;
    pageInKind_ = page_ - kind->first;
    if (const std::optional<int> row = model_.row(kind->id)) {
      kinds_->follow(*row);
    }
  }
  range_->setPages(page_, pageCount());
  updateEnabled();
  askForPicture();
}

void SheetsDialog::askForPicture() {
  if (pageCount() > 0) {
    busyDelay_.start();
    preparer_.paint(page_, preview_->pixelsPerMm(), devicePixelRatioF());
  }
}

void SheetsDialog::showPicture(int page, const QString& title, const QImage& picture) {
  showBusy(preparer_.counting());
  preview_->setPicture(picture);
  preview_->setAccessibleName(
      tr("Preview of page %1 of %2: %3").arg(page).arg(pageCount()).arg(title));
}

void SheetsDialog::showBusy(bool busy) {
  if (busy) {
    busyDelay_.start();
  } else {
    busyDelay_.stop();
    busy_->hide();
  }
}

void SheetsDialog::showTotal() {
  total_->setText(!contents_             ? tr("Counting the pages")
                  : contents_->pages > 0 ? tr("%n page(s) in all", nullptr, contents_->pages)
                                         : tr("No pages"));
}

void SheetsDialog::updateEnabled() {
  const bool variants = model_.ticked(kTemplates);
  mirrored_->setEnabled(variants);
  turned_->setEnabled(variants);
  const bool pages = pageCount() > 0;
  // A button that is about to be disabled hands the focus to its twin, not to some neighbour.
  if (pages && page_ <= 1 && previous_->hasFocus()) {
    next_->setFocus(Qt::OtherFocusReason);
  } else if (pages && page_ >= pageCount() && next_->hasFocus()) {
    previous_->setFocus(Qt::OtherFocusReason);
  }
  previous_->setEnabled(!contents_ || (pages && page_ > 1));
  next_->setEnabled(!contents_ || (pages && page_ < pageCount()));
  pageNumber_->setEnabled(!contents_ || pages);
  // While pages are still counted the sheets may be put out already; the writers count again.
  const bool some = !model_.tickedIds().empty() && (!contents_ || pages);
  const bool ready = current_ && some && range_->span().has_value();
  for (QPushButton* way : {pdf_, pictures_, print_}) {
    way->setEnabled(ready);
  }
  hint_->setText(current_ ? QString()
                          : tr("The order is not planned as it stands, so its sheets wait."));
}

void SheetsDialog::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  // Enter in the page box goes to that page and does no more.
  if (enter && pageNumber_->hasFocus()) {
    event->accept();
    return;
  }
  QDialog::keyPressEvent(event);
}

void SheetsDialog::hideEvent(QHideEvent* event) {
  QDialog::hideEvent(event);
  if (!event->spontaneous()) {
    settings_.setGeometryOf(objectName(), saveGeometry());
    preparer_.cancel();
    showBusy(false);
  }
}

}  // namespace creaseline::desk
