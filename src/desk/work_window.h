// SPDX-License-Identifier: MIT
// How the order is sewn and what it takes: runs in order with their needles and times, and the
// materials to lay ready and how backing is cut. Worked out off the GUI thread whenever the plan
// changes.
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTextBrowser>
#include <memory>
#include <optional>

#include "creaseline/planning/cost.h"
#include "creaseline/planning/pick_list.h"
#include "desk/cut_view.h"
#include "desk/day_bar.h"
#include "desk/latest_job.h"
#include "desk/needle_chart.h"
#include "desk/planned_order.h"
#include "desk/side_window.h"

namespace creaseline::desk {

class WorkWindow : public SideWindow {
  Q_OBJECT

 public:
  WorkWindow(Settings& settings, QWidget* parent);
  ~WorkWindow() override;

  void setPlanned(std::shared_ptr<const PlannedOrder> planned);
  [[nodiscard]] bool ready() const { return work_.has_value() && !job_.running(); }

 Q_SIGNALS:
  // Where what the cost lacks can be given: see NotCounted. Nothing: the shop has no rates.
  void fieldAsked(std::optional<creaseline::CostField> field, const std::string& entry);

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Work {
    std::shared_ptr<const PlannedOrder> planned;  // the cards point into it
    RunPlan runs;
    PickList picks;
    std::optional<OrderCost> cost;  // nothing where the shop has no rates
  };
  [[nodiscard]] static Work workOf(const std::shared_ptr<const PlannedOrder>& planned);

  void build();
  QWidget* buildRuns();
  QWidget* buildCuts();
  QWidget* buildCost();
  void workOut();
  void showWork();
  void showRun(int run);
  void showCost();
  void askForField();

  std::shared_ptr<const PlannedOrder> planned_;
  LatestJob job_{*this};
  std::optional<Work> work_;
  QLabel* summary_ = nullptr;
  DayBar* day_ = nullptr;
  QListWidget* runs_ = nullptr;
  NeedleChart* needles_ = nullptr;
  QTextBrowser* run_ = nullptr;
  QTextBrowser* materials_ = nullptr;
  CutView* cuts_ = nullptr;
  QLabel* costHead_ = nullptr;
  QListWidget* missing_ = nullptr;  // what is not counted, one a row
  QPushButton* fillIn_ = nullptr;
  QTextBrowser* cost_ = nullptr;
};

}  // namespace creaseline::desk
