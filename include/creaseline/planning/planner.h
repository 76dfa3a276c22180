// SPDX-License-Identifier: MIT
// The planner: order + shop + rules -> plan. A pure function of its arguments.
#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <optional>

#include "creaseline/planning/plan.h"

namespace creaseline {

struct PlanOptions {
  unsigned threads = 0;       // 0: as many as the machine has; never changes the answer
  bool checkRemedies = true;  // plan each remedy before it is offered; off leaves none
  // Called from the calling thread with the share done, 0 to 1, now and then.
  std::function<void(double)> progress;
  const std::atomic<bool>* cancel = nullptr;  // when it turns true, planning throws Cancelled
};

struct Cancelled {};

// Plans every line, location and size. The order and shop must have come through the loaders or
// hold what the loaders guarantee; what does not is reported as InputError. The plan's cautions
// point into `rules`, which must outlive it.
[[nodiscard]] Plan planOrder(const Order& order, const Shop& shop, const Rules& rules,
                             const PlanOptions& options = {});

// A garment laid flat before it can be planned: its panel, and of the placement where its rule has
// the design. Nothing else is decided: no frame, no backing, no finding, and no stop says that it
// does not do. `placement` may be nothing, for a line without a place, which shows its first panel;
// the size need not be ordered. Nothing comes back where the garment cannot be drawn, because line,
// blank, kind or size are not known or the measures contradict each other.
[[nodiscard]] std::optional<PlacementPlan> layFlat(const Order& order, std::size_t line,
                                                   std::optional<std::size_t> placement,
                                                   const SizeName& size, const Shop& shop,
                                                   const Rules& rules);

// The same of any panel of a line's garment, with nothing on it. Nothing comes back where the
// garment has no such panel.
[[nodiscard]] std::optional<PlacementPlan> layPanelFlat(const Order& order, std::size_t line,
                                                        PanelName panel, const SizeName& size,
                                                        const Shop& shop, const Rules& rules);

// Plans one placement again and again, as while it is dragged: what does not change meanwhile is
// made ready once. Keeps references to order, shop and rules, which must outlive it and stay as
// they are.
class LivePlanner {
 public:
  // Throws InputError like planOrder().
  LivePlanner(const Order& order, const Shop& shop, const Rules& rules);
  ~LivePlanner();
  LivePlanner(LivePlanner&&) noexcept;
  LivePlanner& operator=(LivePlanner&&) noexcept;

  // One size of a line at one of its placements.
  struct Spot {
    std::size_t line = 0;
    std::size_t placement = 0;
    SizeName size;
  };
  // The answer as if the placement were `asked`, without findings and without the turn and the
  // scale at which rejected frames would do. Of a design that is sewn in several hoopings, the
  // first. Throws InputError where line and size do not go together.
  [[nodiscard]] PlacementPlan plan(const Spot& spot, const OrderPlacement& asked);

  // What the order must ask for so that the centre of the design lies at `centre` (panel
  // coordinates, millimetres) on a garment of this size. Nothing but the place is decided, so that
  // this costs little. Without a rule for the placement nothing can be moved: `asked` as it is.
  struct Laid {
    OrderPlacement asked;
    Point byRule;  // where the rule alone has it: its height, and sideways as at the height laid
  };
  [[nodiscard]] Laid layAt(const Spot& spot, const OrderPlacement& asked, Point centre);

 private:
  struct Prepared;
  std::unique_ptr<Prepared> prepared_;
};

// The same once, for the placement as it is.
[[nodiscard]] PlacementPlan planPlacement(const Order& order, std::size_t line,
                                          std::size_t placement, const SizeName& size,
                                          const Shop& shop, const Rules& rules);

}  // namespace creaseline
