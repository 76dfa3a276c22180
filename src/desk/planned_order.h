// SPDX-License-Identifier: MIT
// One order, the shop, and the plan that belongs to exactly these two: what every view shows.
// Immutable; the document swaps the whole of it, so that no view ever mixes old and new.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <tuple>
#include <vector>

#include "creaseline/planning/plan.h"

namespace creaseline::desk {

// Where a line or a place stands in the order.
struct Spot {
  std::size_t line = 0;
  std::optional<std::size_t> placement;  // nothing: the line itself
};

class PlannedOrder {
 public:
  // `plan` may be null: the order is known, the shop is not. `order`, `shop` likewise, and `rules`
  // as long as there is no order.
  PlannedOrder(std::shared_ptr<const Order> order, std::shared_ptr<const Shop> shop,
               std::shared_ptr<const Plan> plan, std::shared_ptr<const Rules> rules,
               UnitChoice units);
  // This plan for an order that has been edited since, until the new plan is there: what is planned
  // for a garment, place and size stands where these are found in the edited order.
  [[nodiscard]] PlannedOrder withOrder(std::shared_ptr<const Order> edited) const;
  // The same order and plan, with the numbers shown in other units.
  [[nodiscard]] PlannedOrder withUnits(const UnitChoice& units) const;

  [[nodiscard]] const Order* order() const { return order_.get(); }
  // The order that plan() was made for; differs from order() only until an edit is planned.
  [[nodiscard]] const Order* plannedFor() const { return plannedFor_.get(); }
  [[nodiscard]] const Shop* shop() const { return shop_.get(); }
  // The same, or one without anything in it.
  [[nodiscard]] const Shop& shopForDrawing() const;
  [[nodiscard]] const Plan* plan() const { return plan_.get(); }
  // Only with an order.
  [[nodiscard]] const Rules& rules() const { return *rules_; }
  [[nodiscard]] const UnitChoice& units() const { return units_; }

  // The answers for one garment size at one place: one for each hooping; none without a plan.
  [[nodiscard]] const std::vector<const PlacementPlan*>& hoopings(std::size_t line,
                                                                  std::size_t placement,
                                                                  const SizeName& size) const;
  // The first of them, or null.
  [[nodiscard]] const PlacementPlan* find(std::size_t line, std::size_t placement,
                                          const SizeName& size) const;
  // Where a finding's place stands in order(); nothing if it is gone.
  [[nodiscard]] std::optional<Spot> spotOf(const Finding& finding) const;
  // All sizes of one place, in the order of the charts.
  [[nodiscard]] std::vector<const PlacementPlan*> sizes(std::size_t line,
                                                        std::size_t placement) const;
  // Nothing without a plan.
  [[nodiscard]] std::optional<Severity> worst(std::size_t line, std::size_t placement) const;
  [[nodiscard]] std::optional<Severity> worst(std::size_t line) const;

  // The sizes that occur in the order, in the order of the charts: columns of the order table.
  [[nodiscard]] const std::vector<SizeName>& sizesInOrder() const { return sizesInOrder_; }
  // The colour of the line's cloth, if its blank names one.
  [[nodiscard]] std::optional<Colour> clothColour(std::size_t line) const;

 private:
  using Key = std::tuple<std::size_t, std::size_t, SizeName>;
  using Index = std::map<Key, std::vector<const PlacementPlan*>>;

  [[nodiscard]] bool sameSpots(const Order& edited) const;
  [[nodiscard]] Index indexOfPlan() const;
  void collectSizes();

  std::shared_ptr<const Order> order_;
  std::shared_ptr<const Order> plannedFor_;
  std::shared_ptr<const Shop> shop_;
  std::shared_ptr<const Plan> plan_;
  std::shared_ptr<const Rules> rules_;
  UnitChoice units_;
  std::shared_ptr<const Index> index_;
  std::vector<SizeName> sizesInOrder_;
};

}  // namespace creaseline::desk
