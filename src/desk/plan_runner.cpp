// SPDX-License-Identifier: MIT
// One worker thread, one request at a time.
#include "desk/plan_runner.h"

#include <QMetaObject>
#include <exception>
#include <functional>
#include <utility>

#include "creaseline/planning/planner.h"

namespace creaseline::desk {

namespace {

void stopIfCancelled(const std::atomic<bool>& cancel) {
  if (cancel) {
    throw Cancelled{};
  }
}

void readFiles(const PlanJob& job, const Rules& rules, const std::atomic<bool>& cancel,
               PlanOutcome& outcome) {
  outcome.order = job.order;
  outcome.shop = job.shop;
  outcome.stage = PlanStage::Order;
  if (job.orderFile) {
    Loaded<Order> loaded = loadOrderDraft(*job.orderFile, rules);
    outcome.order = std::make_shared<const Order>(std::move(loaded.value));
    outcome.orderNotes = std::move(loaded.notes);
    outcome.orderFiles = std::move(loaded.files);
    outcome.orderOriginal = std::move(loaded.original);
  }
  stopIfCancelled(cancel);
  outcome.stage = PlanStage::Shop;
  if (job.shopFile) {
    Loaded<Shop> loaded = loadShop(*job.shopFile, rules);
    outcome.shop = std::make_shared<const Shop>(std::move(loaded.value));
    outcome.shopNotes = std::move(loaded.notes);
    outcome.shopFiles = std::move(loaded.files);
    outcome.shopOriginal = std::move(loaded.original);
  }
  stopIfCancelled(cancel);
}

void plan(const PlanJob& job, const std::shared_ptr<const Rules>& rules,
          const std::atomic<bool>& cancel, const std::function<void(double)>& progress,
          PlanOutcome& outcome) {
  outcome.stage = PlanStage::Planning;
  if (!outcome.order || !outcome.shop) {
    return;
  }
  PlanOptions options;
  options.cancel = &cancel;
  options.progress = progress;
  Shop shop = *outcome.shop;
  shop.units = job.units.value_or(shop.units);
  outcome.plan = std::make_shared<const Plan>(planOrder(*outcome.order, shop, *rules, options));
  outcome.planned = std::make_shared<const PlannedOrder>(outcome.order, outcome.shop, outcome.plan,
                                                         rules, shop.units);
}

PlanOutcome run(const PlanJob& job, const DeskRules& shipped, const std::atomic<bool>& cancel,
                const std::function<void(double)>& progress) {
  PlanOutcome outcome;
  try {
    const std::shared_ptr<const Rules> rules = shipped.get();
    readFiles(job, *rules, cancel, outcome);
    plan(job, rules, cancel, progress, outcome);
  } catch (const InputError& error) {
    outcome.error = error.details();
  } catch (const std::exception& error) {
    // A bug of ours or no memory left: the window must stay usable and say so.
    outcome.error =
        InputError::Details{{}, {}, error.what(), "a plan; this is a fault of the program"};
  }
  return outcome;
}

}  // namespace

PlanRunner::PlanRunner(const DeskRules& rules, QObject* parent) : QObject(parent), rules_(rules) {
  pool_.setMaxThreadCount(1);
}

PlanRunner::~PlanRunner() {
  if (cancel_) {
    *cancel_ = true;
  }
  pool_.waitForDone();
}

void PlanRunner::request(PlanJob job) {
  if (cancel_) {
    *cancel_ = true;
  }
  cancel_ = std::make_shared<std::atomic<bool>>(false);
  const quint64 generation = ++generation_;
  setBusy(true);
  pool_.start([this, job = std::move(job), rules = rules_, cancel = cancel_, generation] {
    int shownPercent = -1;
    const auto progress = [&](double share) {
      const int percent = static_cast<int>(share * 100.0);
      if (std::exchange(shownPercent, percent) != percent) {
        QMetaObject::invokeMethod(
            this,
            [this, generation, share] {
              if (generation == generation_) {
                Q_EMIT progressed(share);
              }
            },
            Qt::QueuedConnection);
      }
    };
    try {
      const PlanOutcome outcome = run(job, rules, *cancel, progress);
      QMetaObject::invokeMethod(
          this, [this, generation, outcome] { deliver(generation, outcome); },
          Qt::QueuedConnection);
    } catch (const Cancelled&) {
      // Whoever cancelled has already told the window.
    }
  });
}

void PlanRunner::cancel() {
  if (cancel_) {
    *cancel_ = true;
  }
  ++generation_;
  setBusy(false);
}

void PlanRunner::deliver(quint64 generation, const PlanOutcome& outcome) {
  if (generation != generation_) {
    return;
  }
  setBusy(false);
  Q_EMIT finished(outcome);
}

void PlanRunner::setBusy(bool busy) {
  if (busy_ != busy) {
    busy_ = busy;
    Q_EMIT busyChanged(busy);
  }
}

}  // namespace creaseline::desk
