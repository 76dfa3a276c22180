// SPDX-License-Identifier: MIT
// The document behind the window: files, order, shop, plan, undo stack. Knows no widget.
//
// Two states are kept. The *order in hand* is what edits change at once. What is shown is a
// PlannedOrder, replaced as a whole when a new plan arrives; if a file breaks, the last good one
// stays and is marked stale.
#pragma once

#include <QObject>
#include <QStringList>
#include <QUndoStack>
#include <filesystem>
#include <memory>
#include <optional>

#include "creaseline/base/error.h"
#include "desk/file_watch.h"
#include "desk/plan_runner.h"
#include "desk/planned_order.h"
#include "desk/settings.h"

namespace creaseline::desk {

// What went wrong with a file, and whether the plan on screen suffers from it.
struct Problem {
  InputError::Details details;
  PlanStage stage{};
};

class Document : public QObject {
  Q_OBJECT

 public:
  Document(std::shared_ptr<const Rules> rules, Settings& settings, QObject* parent = nullptr);

  void openOrder(const std::filesystem::path& file);
  void openShop(const std::filesystem::path& file);
  // Reads both files again and plans.
  void reload();
  // Stops planning; what is on screen stays and is marked stale if it is not up to date.
  void cancelPlanning();

  // Never null; empty before anything is open.
  [[nodiscard]] std::shared_ptr<const PlannedOrder> planned() const { return planned_; }
  [[nodiscard]] bool stale() const { return stale_; }
  [[nodiscard]] bool busy() const { return runner_.busy(); }
  [[nodiscard]] const std::optional<Problem>& problem() const { return problem_; }
  [[nodiscard]] const QString& orderFile() const { return orderFile_; }
  [[nodiscard]] const QString& shopFile() const { return shopFile_; }
  [[nodiscard]] const std::vector<LoadNote>& orderNotes() const { return orderNotes_; }
  [[nodiscard]] const std::vector<LoadNote>& shopNotes() const { return shopNotes_; }

  [[nodiscard]] const UnitChoice& units() const { return units_; }
  void setUnits(const UnitChoice& units);

  QUndoStack& undoStack() { return undoStack_; }
  // The order in hand, with all edits; null before one is open.
  [[nodiscard]] std::shared_ptr<const Order> orderInHand() const { return order_; }
  // For undo commands only: replaces the lines of the order in hand and plans again.
  void setLines(std::vector<OrderLine> lines);

 Q_SIGNALS:
  void plannedChanged();
  void staleChanged(bool stale);
  void busyChanged(bool busy);
  void progressed(double share);
  void problemChanged();
  void filesChanged();
  void unitsChanged();
  // Edits were dropped because the order file changed on disk.
  void editsDropped(int count);

 private:
  void request(bool readOrder, bool readShop);
  void take(const PlanOutcome& outcome);
  // False if the plan is not for the order in hand, because edits made since reading are kept.
  bool takeFiles(const PlanOutcome& outcome);
  bool takeOrder(const PlanOutcome& outcome);
  void fail(const PlanOutcome& outcome);
  void watchFiles();
  void setStale(bool stale);
  [[nodiscard]] QString shopFor(const QString& orderFile) const;

  std::shared_ptr<const Rules> rules_;
  Settings& settings_;
  PlanRunner runner_;
  FileWatch watch_;
  QUndoStack undoStack_;

  QString orderFile_, shopFile_;      // of what is in hand
  QString wantedOrder_, wantedShop_;  // being read; become the above when reading succeeds
  bool readingOrder_ = false;         // the request under way reads it
  bool readingShop_ = false;
  std::shared_ptr<const Order> orderAsRead_;
  std::shared_ptr<const Order> order_;  // in hand
  std::shared_ptr<const Shop> shop_;
  std::vector<LoadNote> orderNotes_, shopNotes_;
  std::vector<std::filesystem::path> orderFiles_, shopFiles_;
  std::shared_ptr<const PlannedOrder> planned_;
  std::optional<Problem> problem_;
  UnitChoice units_;
  bool stale_ = false;
};

}  // namespace creaseline::desk
