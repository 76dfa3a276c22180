// SPDX-License-Identifier: MIT
// Look-ups in one plan.
#include "desk/planned_order.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace creaseline::desk {

namespace {

// Severity::Stop comes first in the enumeration and is the worst.
void takeWorse(std::optional<Severity>& worst, Severity candidate) {
  if (!worst || candidate < *worst) {
    worst = candidate;
  }
}

// Puts the sizes of one chart into the list so far: a new size goes behind the last of its
// predecessors in the chart that the list already has, before anything that follows it.
void mergeChart(const SizeChart& chart, std::vector<SizeName>& sizes) {
  auto position = sizes.begin();
  for (const ChartSize& entry : chart.sizes) {
    const auto known = std::find(sizes.begin(), sizes.end(), entry.name);
    if (known != sizes.end()) {
      position = std::max(position, std::next(known));
    } else {
      position = std::next(sizes.insert(position, entry.name));
    }
  }
}

}  // namespace

PlannedOrder::PlannedOrder(std::shared_ptr<const Order> order, std::shared_ptr<const Shop> shop,
                           std::shared_ptr<const Plan> plan, std::shared_ptr<const Rules> rules,
                           UnitChoice units)
    : order_(std::move(order)),
      shop_(std::move(shop)),
      plan_(std::move(plan)),
      rules_(std::move(rules)),
      units_(units) {
  indexPlan();
  collectSizes();
}

PlannedOrder PlannedOrder::withUnits(const UnitChoice& units) const {
  PlannedOrder copy = *this;
  copy.units_ = units;
  return copy;
}

void PlannedOrder::indexPlan() {
  if (!plan_) {
    return;
  }
  for (const PlacementPlan& planned : plan_->placements) {
    index_.emplace(Key{planned.line, planned.placement, planned.size}, &planned);
  }
}

void PlannedOrder::collectSizes() {
  if (!order_) {
    return;
  }
  std::vector<SizeName> all;
  for (const Blank& blank : order_->blanks) {
    mergeChart(blank.chart, all);
  }
  const auto ordered = [this](const SizeName& size) {
    return std::any_of(order_->lines.begin(), order_->lines.end(), [&](const OrderLine& line) {
      return std::any_of(line.sizes.begin(), line.sizes.end(),
                         [&](const SizeQuantity& entry) { return entry.size == size; });
    });
  };
  std::copy_if(all.begin(), all.end(), std::back_inserter(sizesInOrder_), ordered);
}

const PlacementPlan* PlannedOrder::find(std::size_t line, std::size_t placement,
                                        const SizeName& size) const {
  const auto found = index_.find(Key{line, placement, size});
  return found == index_.end() ? nullptr : found->second;
}

std::vector<const PlacementPlan*> PlannedOrder::sizes(std::size_t line,
                                                      std::size_t placement) const {
  std::vector<const PlacementPlan*> result;
  for (const SizeName& size : sizesInOrder_) {
    if (const PlacementPlan* planned = find(line, placement, size)) {
      result.push_back(planned);
    }
  }
  return result;
}

std::optional<Severity> PlannedOrder::worst(std::size_t line, std::size_t placement) const {
  std::optional<Severity> result;
  for (const PlacementPlan* planned : sizes(line, placement)) {
    takeWorse(result, planned->worst);
  }
  return result;
}

std::optional<Severity> PlannedOrder::worst(std::size_t line) const {
  std::optional<Severity> result;
  if (!order_ || line >= order_->lines.size()) {
    return result;
  }
  for (std::size_t i = 0; i < order_->lines[line].placements.size(); ++i) {
    if (const auto severity = worst(line, i)) {
      takeWorse(result, *severity);
    }
  }
  return result;
}

std::optional<Colour> PlannedOrder::clothColour(std::size_t line) const {
  if (!order_ || line >= order_->lines.size()) {
    return std::nullopt;
  }
  const OrderLine& ordered = order_->lines[line];
  const Blank* blank = order_->blank(ordered.blank);
  if (blank == nullptr) {
    return std::nullopt;
  }
  const auto found =
      std::find_if(blank->colours.begin(), blank->colours.end(),
                   [&](const ClothColour& colour) { return colour.name == ordered.colour; });
  return found == blank->colours.end() ? std::nullopt : std::optional(found->colour);
}

}  // namespace creaseline::desk
