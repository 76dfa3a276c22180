// SPDX-License-Identifier: MIT
// Reads files and plans on a thread of its own. The newest request wins: it cancels the one under
// way, and nothing of an older request is ever reported after it.
#pragma once

#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

#include "creaseline/base/error.h"
#include "creaseline/catalogue/load.h"
#include "creaseline/desk/desk_rules.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

// What to do. A file that is named is read; otherwise the value in memory is used. An order may be
// one in the making, which still lacks garments or places.
struct PlanJob {
  std::optional<std::filesystem::path> orderFile, shopFile;
  std::shared_ptr<const Order> order;
  std::shared_ptr<const Shop> shop;
  std::optional<UnitChoice> units;  // of the texts in the plan, instead of the shop's
};

enum class PlanStage { Order, Shop, Planning };

struct PlanOutcome {
  std::shared_ptr<const Order> order;
  std::shared_ptr<const Shop> shop;
  std::shared_ptr<const Plan> plan;  // null without order or shop, or after an error
  // The three above, ready to be shown, which takes a while with a large plan; null without a plan.
  std::shared_ptr<const PlannedOrder> planned;
  std::vector<LoadNote> orderNotes, shopNotes;
  std::vector<std::filesystem::path> orderFiles, shopFiles;  // only of what was read
  Original<Order> orderOriginal;                             // likewise
  Original<Shop> shopOriginal;
  std::optional<InputError::Details> error;
  PlanStage stage = PlanStage::Order;  // where the error came from
};

class PlanRunner : public QObject {
  Q_OBJECT

 public:
  explicit PlanRunner(const DeskRules& rules, QObject* parent = nullptr);
  ~PlanRunner() override;  // cancels and waits

  void request(PlanJob job);
  void cancel();
  [[nodiscard]] bool busy() const { return busy_; }

 Q_SIGNALS:
  void busyChanged(bool busy);
  void progressed(double share);  // 0 to 1
  void finished(const creaseline::desk::PlanOutcome& outcome);

 private:
  void setBusy(bool busy);
  void deliver(quint64 generation, const PlanOutcome& outcome);

  DeskRules rules_;
  QThreadPool pool_;
  std::shared_ptr<std::atomic<bool>> cancel_;
  quint64 generation_ = 0;
  bool busy_ = false;
};

}  // namespace creaseline::desk
