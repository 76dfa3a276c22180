// SPDX-License-Identifier: MIT
// The document's life: open, reload, edit, fail, recover.
#include "desk/document.h"

#include <QDir>
#include <QFileInfo>
#include <utility>

#include "desk/text.h"

namespace creaseline::desk {

namespace {

QString absoluteText(const std::filesystem::path& file) {
  return QFileInfo(pathText(file)).absoluteFilePath();
}

}  // namespace

Document::Document(std::shared_ptr<const Rules> rules, Settings& settings, QObject* parent)
    : QObject(parent),
      rules_(std::move(rules)),
      settings_(settings),
      runner_(rules_),
      units_(settings.units().value_or(UnitChoice{})) {
  planned_ = std::make_shared<PlannedOrder>(nullptr, nullptr, nullptr, rules_, units_);
  connect(&runner_, &PlanRunner::finished, this, &Document::take);
  connect(&runner_, &PlanRunner::busyChanged, this, &Document::busyChanged);
  connect(&runner_, &PlanRunner::progressed, this, &Document::progressed);
  connect(&watch_, &FileWatch::changed, this, [this](const QStringList&) { reload(); });
}

void Document::openOrder(const std::filesystem::path& file) {
  wantedOrder_ = absoluteText(file);
  if (wantedShop_.isEmpty()) {
    wantedShop_ = shopFor(wantedOrder_);
  }
  request(true, !shop_);
}

void Document::openShop(const std::filesystem::path& file) {
  wantedShop_ = absoluteText(file);
  request(false, true);
}

void Document::reload() {
  request(!wantedOrder_.isEmpty(), !wantedShop_.isEmpty());
}

void Document::cancelPlanning() {
  if (!runner_.busy()) {
    return;
  }
  runner_.cancel();
  wantedOrder_ = orderFile_;
  wantedShop_ = shopFile_;
  readingOrder_ = readingShop_ = false;
  setStale(planned_->plan() != nullptr);
}

// What an earlier request was still reading must not be lost when a newer one replaces it.
void Document::request(bool readOrder, bool readShop) {
  // While a file is broken every request reads again, or it would hide that it is broken.
  readingOrder_ = (readingOrder_ && runner_.busy()) || readOrder || stale_;
  readingShop_ = (readingShop_ && runner_.busy()) || readShop || stale_;
  PlanJob job;
  if (readingOrder_ && !wantedOrder_.isEmpty()) {
    job.orderFile = toPath(wantedOrder_);
  }
  if (readingShop_ && !wantedShop_.isEmpty()) {
    job.shopFile = toPath(wantedShop_);
  }
  job.order = order_;
  job.shop = shop_;
  job.units = settings_.units();
  runner_.request(std::move(job));
}

void Document::take(const PlanOutcome& outcome) {
  const bool planFits = takeFiles(outcome);
  if (outcome.error) {
    fail(outcome);
    return;
  }
  readingOrder_ = readingShop_ = false;
  wantedOrder_ = orderFile_;
  wantedShop_ = shopFile_;
  const bool hadProblem = std::exchange(problem_, std::nullopt).has_value();
  if (hadProblem) {
    Q_EMIT problemChanged();
  }
  if (!planFits) {
    request(false, false);
    return;
  }
  const UnitChoice before = units_;
  units_ = settings_.units().value_or(shop_ ? shop_->units : UnitChoice{});
  planned_ = std::make_shared<PlannedOrder>(order_, shop_, outcome.plan, rules_, units_);
  setStale(false);
  Q_EMIT plannedChanged();
  if (!(units_ == before)) {
    Q_EMIT unitsChanged();
  }
}

// Whatever was read without error counts, even if something after it failed.
bool Document::takeFiles(const PlanOutcome& outcome) {
  bool planFits = true;
  if (!outcome.orderFiles.empty()) {
    planFits = takeOrder(outcome);
  }
  if (!outcome.shopFiles.empty()) {
    shop_ = outcome.shop;
    shopNotes_ = outcome.shopNotes;
    shopFiles_ = outcome.shopFiles;
    shopFile_ = wantedShop_;
    settings_.setLastShop(shopFile_);
  }
  if (!outcome.orderFiles.empty() || !outcome.shopFiles.empty()) {
    watchFiles();
    Q_EMIT filesChanged();
  }
  return planFits;
}

// Edits live as long as the file still says what it said when they were made.
bool Document::takeOrder(const PlanOutcome& outcome) {
  const bool sameFile = orderFile_ == wantedOrder_;
  const bool sameContent = sameFile && orderAsRead_ && *orderAsRead_ == *outcome.order;
  orderNotes_ = outcome.orderNotes;
  orderFiles_ = outcome.orderFiles;
  orderFile_ = wantedOrder_;
  settings_.addRecentOrder(orderFile_);
  if (sameContent) {
    return *order_ == *outcome.order;
  }
  const int edits = undoStack_.index();
  undoStack_.clear();
  orderAsRead_ = order_ = outcome.order;
  if (sameFile && edits > 0) {
    Q_EMIT editsDropped(edits);
  }
  return true;
}

void Document::fail(const PlanOutcome& outcome) {
  problem_ = Problem{*outcome.error, outcome.stage};
  // A new order that cannot be read leaves the old one as good as it was.
  const bool replaces = (outcome.stage == PlanStage::Order && wantedOrder_ != orderFile_) ||
                        (outcome.stage == PlanStage::Shop && wantedShop_ != shopFile_);
  if (!replaces) {
    setStale(planned_->plan() != nullptr);
  }
  if (order_ && planned_->order() == nullptr) {
    planned_ = std::make_shared<PlannedOrder>(order_, shop_, nullptr, rules_, units_);
    Q_EMIT plannedChanged();
  }
  watchFiles();
  Q_EMIT problemChanged();
}

// A file that could not be read is watched as well, so that mending it is enough.
void Document::watchFiles() {
  QStringList files;
  for (const auto* read : {&orderFiles_, &shopFiles_}) {
    for (const std::filesystem::path& file : *read) {
      files.append(absoluteText(file));
    }
  }
  for (const QString& wanted : {wantedOrder_, wantedShop_}) {
    if (!wanted.isEmpty()) {
      files.append(wanted);
    }
  }
  if (problem_ && !problem_->details.file.empty()) {
    files.append(absoluteText(problem_->details.file));
  }
  watch_.watch(files);
}

void Document::setStale(bool stale) {
  if (stale_ != stale) {
    stale_ = stale;
    Q_EMIT staleChanged(stale);
  }
}

void Document::setUnits(const UnitChoice& units) {
  if (settings_.units() == units) {
    return;
  }
  settings_.setUnits(units);
  units_ = units;
  // Numbers change at once; the plan's own sentences follow when it has been planned again.
  planned_ = std::make_shared<PlannedOrder>(planned_->withUnits(units_));
  Q_EMIT unitsChanged();
  Q_EMIT plannedChanged();
  if (order_ && shop_) {
    request(false, false);
  }
}

void Document::setLines(std::vector<OrderLine> lines) {
  if (!order_) {
    return;
  }
  auto changed = std::make_shared<Order>(*order_);
  changed->lines = std::move(lines);
  order_ = std::move(changed);
  request(false, false);
}

QString Document::shopFor(const QString& orderFile) const {
  const QDir folder = QFileInfo(orderFile).absoluteDir();
  const QStringList beside = folder.entryList({QStringLiteral("*.shop.json")}, QDir::Files);
  if (beside.size() == 1) {
    return folder.absoluteFilePath(beside.first());
  }
  const QString last = settings_.lastShop();
  return QFileInfo::exists(last) ? last : QString();
}

}  // namespace creaseline::desk
