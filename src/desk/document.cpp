// SPDX-License-Identifier: MIT
// The document's life: open, reload, edit, fail, recover.
#include "desk/document.h"

#include <QDir>
#include <QFileInfo>
#include <QThreadPool>
#include <algorithm>
#include <utility>

#include "desk/changed_parts.h"
#include "desk/edit_commands.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

QString absoluteText(const std::filesystem::path& file) {
  return QFileInfo(pathText(file)).absoluteFilePath();
}

}  // namespace

Document::Document(const DeskRules& rules, Settings& settings, QObject* parent)
    : QObject(parent),
      rules_(rules),
      settings_(settings),
      runner_(rules_),
      units_(settings.units().value_or(UnitChoice{})),
      saver_(*this) {
  planned_ = std::make_shared<PlannedOrder>(nullptr, nullptr, nullptr, nullptr, units_);
  connect(&runner_, &PlanRunner::finished, this, &Document::take);
  connect(&runner_, &PlanRunner::busyChanged, this, &Document::busyChanged);
  connect(&runner_, &PlanRunner::progressed, this, &Document::progressed);
  connect(&watch_, &FileWatch::changed, this, [this](const QStringList&) { reload(); });
}

Document::~Document() = default;

void Document::openOrder(const std::filesystem::path& file) {
  finishSaving();
  letDraftGo();
  read(file);
}

void Document::letDraftGo() {
  if (recovered_) {
    recovered_.reset();
    Q_EMIT recoveryEnded(false);
  }
}

void Document::read(const std::filesystem::path& file) {
  wantedOrder_ = absoluteText(file);
  openingOrder_ = true;
  if (wantedShop_.isEmpty()) {
    wantedShop_ = shopFor(wantedOrder_);
  }
  request(true, !shop_);
}

void Document::startOrder(Order order, const Original<Order>& original) {
  finishSaving();
  runner_.cancel();
  keepShopSteps(*this);
  orderFile_.clear();
  wantedOrder_.clear();
  orderNotes_.clear();
  orderFiles_.clear();
  readingOrder_ = false;
  // Without a folder of its own yet, its paths lead from the root.
  auto started = std::make_shared<const Order>(std::move(order));
  order_ = original.file.empty()
               ? std::move(started)
               : movedOrder({std::move(started), original.file.parent_path()}, {}, original);
  original_ = original;
  original_.file.clear();
  original_.value.reset();
  orderAsRead_.reset();
  unsaved_ = true;
  if (wantedShop_.isEmpty()) {
    wantedShop_ = settings_.lastShop();
  }
  planned_ = unplanned();
  watchFiles();
  // First what is shown: whoever hears of the rest may ask what of it is selected.
  Q_EMIT plannedChanged();
  tellModified();
  Q_EMIT filesChanged();
  request(false, !shop_);
}

void Document::recover(const Left& left) {
  std::optional<Loaded<Order>> order;
  std::optional<Shop> shop;
  if (!left.orderDraft.empty()) {
    order = loadOrderDraft(left.orderDraft, *rules_.get());
  }
  if (!left.shopDraft.empty()) {
    shop = loadShop(left.shopDraft, *rules_.get()).value;
  }
  letDraftGo();
  if (shop) {
    recoverShop(left.shopFile, std::move(*shop));
  } else if (!shopModified() && !left.shopFile.isEmpty() && left.shopFile != shopFile_ &&
             QFileInfo::exists(left.shopFile)) {
    openShop(toPath(left.shopFile));  // the one that the order was planned for
  }
  const bool hasFile = !left.orderFile.isEmpty() && QFileInfo::exists(left.orderFile);
  if (order && !hasFile) {
    startOrder(std::move(order->value), order->original);
    Q_EMIT recoveryEnded(true);
    return;
  }
  recovered_ = std::move(order);
  if (hasFile) {
    read(toPath(left.orderFile));
  }
  if (!recovered_) {
    Q_EMIT recoveryEnded(true);
  }
}

void Document::openShop(const std::filesystem::path& file) {
  finishSaving();
  recoveredShop_.reset();
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
  readingOrder_ = readingShop_ = openingOrder_ = false;
  letDraftGo();
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
  savesAtRequest_ = saving() ? -1 : saves_;
  runner_.request(std::move(job));
}

void Document::take(const PlanOutcome& outcome) {
  if ((readingOrder_ || readingShop_) && savesAtRequest_ != saves_) {
    // What was read is from before a save, or from the midst of one, and would undo it.
    finishSaving();
    request(readingOrder_, readingShop_);
    return;
  }
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
    setStale(false);  // or the files would be read again, and again differ from what is in hand
    request(false, false);
    return;
  }
  const UnitChoice before = units_;
  units_ = settings_.units().value_or(shop_ ? shop_->units : UnitChoice{});
  setStale(false);
  const PlannedOrder* made = outcome.planned.get();
  const bool current = made != nullptr && made->order() == order_.get() &&
                       made->shop() == shop_.get() && made->units() == units_;
  showPlanned(current ? outcome.planned
                      : std::make_shared<const PlannedOrder>(order_, shop_, outcome.plan,
                                                             rules_.get(), units_));
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
    planFits = takeShop(outcome) && planFits;
  }
  if (!outcome.orderFiles.empty() || !outcome.shopFiles.empty()) {
    watchFiles();
    Q_EMIT filesChanged();
  }
  return planFits;
}

// Edits live as long as the file still says what it said when they were made.
bool Document::takeOrder(const PlanOutcome& outcome) {
  const bool opening = std::exchange(openingOrder_, false);
  const bool sameFile = !opening && !orderFile_.isEmpty() && wantedOrder_ == orderFile_;
  const bool sameContent = sameFile && orderAsRead_ && *orderAsRead_ == *outcome.order;
  orderNotes_ = outcome.orderNotes;
  orderFiles_ = outcome.orderFiles;
  orderFile_ = wantedOrder_;
  settings_.addRecentOrder(orderFile_);
  if (sameContent) {
    keepReferences(outcome.orderOriginal);
  } else if (sameFile) {
    takeOutsideChange(outcome);
  } else {
    takeNewOrder(outcome);
  }
  return *order_ == *outcome.order;
}

void Document::takeNewOrder(const PlanOutcome& outcome) {
  keepShopSteps(*this);
  original_ = outcome.orderOriginal;
  orderAsRead_ = order_ = outcome.order;
  unsaved_ = false;
  takeRecovered();
  tellModified();
}

void Document::takeRecovered() {
  if (!recovered_) {
    return;
  }
  const Loaded<Order> recovered = *std::exchange(recovered_, std::nullopt);
  const Original<Order> fresh = std::exchange(original_, recovered.original);
  keepReferences(fresh);
  const OrderState left{std::make_shared<const Order>(recovered.value),
                        recovered.original.file.parent_path()};
  undoStack_.push(makeOrderStep(*this, tr("Take up what was not saved"),
                                movedOrder(left, folder(), original_)));
  Q_EMIT recoveryEnded(true);
}

// What both sides changed is merged, as a step that can be undone like any other.
void Document::takeOutsideChange(const PlanOutcome& outcome) {
  OutsideChange change{orderAsRead_, order_, outcome.order, {}, {}};
  const bool changedHere = modified();
  OrderMerge merge = mergeOrders(*change.base, *change.mine, *change.theirs);
  change.conflicts = std::move(merge.conflicts);
  change.toMend = std::move(merge.toMend);
  outside_ = std::move(change);
  keepReferences(outcome.orderOriginal);
  orderAsRead_ = outcome.order;
  undoStack_.push(makeOrderStep(*this, tr("Take over what changed in the file"),
                                std::make_shared<const Order>(std::move(merge.order))));
  tellModified();
  if (changedHere) {
    Q_EMIT merged();
  } else if (const QStringList parts = changedParts(*outside_.mine, *order_); !parts.isEmpty()) {
    Q_EMIT outsideTaken(orderFile_, parts);
  }
}

void Document::takeTheirs() {
  std::map<std::string, MergeSide> choices;
  for (const MergeConflict& conflict : outside_.conflicts) {
    choices[conflict.place] = MergeSide::Theirs;
  }
  takeTheirs(choices);
}

void Document::takeTheirs(const std::map<std::string, MergeSide>& choices) {
  if (!outside_.theirs || choices.empty()) {
    return;
  }
  OrderMerge merge = mergeOrders(*outside_.base, *order_, *outside_.theirs, choices);
  undoStack_.push(makeOrderStep(*this, tr("Take what the file says"),
                                std::make_shared<const Order>(std::move(merge.order))));
}

// What a new reading of the file does not know of, because it was added here and not saved yet,
// is still to be referred to.
void Document::keepReferences(Original<Order> fresh) {
  const auto keep = [](const auto& old, auto& now) {
    for (const auto& each : old) {
      const bool known = std::any_of(now.begin(), now.end(), [&](const auto& entry) {
        return entry.value && each.value && entry.value->id == each.value->id;
      });
      if (!known) {
        now.push_back(each);
      }
    }
  };
  keep(original_.blanks, fresh.blanks);
  keep(original_.designs, fresh.designs);
  original_ = std::move(fresh);
}

void Document::fail(const PlanOutcome& outcome) {
  problem_ = Problem{*outcome.error, outcome.stage};
  if (outcome.stage == PlanStage::Order) {
    openingOrder_ = false;
    if (auto recovered = std::exchange(recovered_, std::nullopt)) {
      startOrder(std::move(recovered->value), recovered->original);
      Q_EMIT recoveryEnded(true);
      Q_EMIT problemChanged();
      return;
    }
  }
  if (outcome.stage == PlanStage::Shop && recoveredShop_) {
    startShop(*std::exchange(recoveredShop_, std::nullopt));
    Q_EMIT problemChanged();
    return;
  }
  // A new order that cannot be read leaves the old one as good as it was.
  const bool replaces = (outcome.stage == PlanStage::Order && wantedOrder_ != orderFile_) ||
                        (outcome.stage == PlanStage::Shop && wantedShop_ != shopFile_);
  if (!replaces) {
    setStale(planned_->plan() != nullptr);
  }
  if (order_ && planned_->order() == nullptr) {
    planned_ = unplanned();
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

OrderState Document::state() const {
  return {order_, folder()};
}

void Document::setState(const OrderState& state) {
  order_ = state.folder == folder() ? state.order : movedOrder(state, folder(), original_);
  showEdited();
  tellModified();
  request(false, false);
}

// A large plan takes a while to be let go of; that is done elsewhere, once no view looks at it.
void Document::showPlanned(std::shared_ptr<const PlannedOrder> planned) {
  auto before = std::exchange(planned_, std::move(planned));
  Q_EMIT plannedChanged();
  QThreadPool::globalInstance()->start([before = std::move(before)]() mutable { before.reset(); });
}

std::shared_ptr<const PlannedOrder> Document::unplanned() const {
  return std::make_shared<const PlannedOrder>(order_, shop_, nullptr, rules_.get(), units_);
}

void Document::showEdited() {
  // What is shown before the first order knows no rules, and cannot be carried over to one.
  showPlanned(planned_->order() == nullptr
                  ? unplanned()
                  : std::make_shared<const PlannedOrder>(planned_->withOrder(order_)));
  Q_EMIT edited();
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
