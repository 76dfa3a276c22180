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

class PlannedOrder {
 public:
  // `plan` may be null: the order is known, the shop is not. `order`, `shop` likewise.
  PlannedOrder(std::shared_ptr<const Order> order, std::shared_ptr<const Shop> shop,
               std::shared_ptr<const Plan> plan, std::shared_ptr<const Rules> rules,
               UnitChoice units);
  // The same order and plan, with the numbers shown in other units.
  [[nodiscard]] PlannedOrder withUnits(const UnitChoice& units) const;

  [[nodiscard]] const Order* order() const { return order_.get(); }
  [[nodiscard]] const Shop* shop() const { return shop_.get(); }
  [[nodiscard]] const Plan* plan() const { return plan_.get(); }
  [[nodiscard]] const Rules& rules() const { return *rules_; }
  [[nodiscard]] const UnitChoice& units() const { return units_; }

  // The answer for one garment size at one place, or null.
  [[nodiscard]] const PlacementPlan* find(std::size_t line, std::size_t placement,
                                          const SizeName& size) const;
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
  void indexPlan();
  void collectSizes();

  std::shared_ptr<const Order> order_;
  std::shared_ptr<const Shop> shop_;
  std::shared_ptr<const Plan> plan_;
  std::shared_ptr<const Rules> rules_;
  UnitChoice units_;
  using Key = std::tuple<std::size_t, std::size_t, SizeName>;
  std::map<Key, const PlacementPlan*> index_;
  std::vector<SizeName> sizesInOrder_;
};

}  // namespace creaseline::desk
