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

// Finds a place of the order that was planned in the order as edited since: the line by its id, the
// place by its location, the same position first.
class SpotFinder {
 public:
  SpotFinder(const Order& planned, const Order& edited) : planned_(planned), edited_(edited) {
    for (std::size_t i = 0; i < edited.lines.size(); ++i) {
      lines_.emplace(edited.lines[i].id, i);
    }
  }

  [[nodiscard]] std::optional<Spot> find(std::size_t line, std::size_t placement) const {
    const OrderLine& planned = planned_.lines[line];
    const auto found = lines_.find(planned.id);
    if (found == lines_.end()) {
      return std::nullopt;
    }
    if (placement >= planned.placements.size()) {
      return Spot{found->second, std::nullopt};
    }
    const auto& places = edited_.lines[found->second].placements;
    const auto same = [&](const OrderPlacement& each) {
      return each.location == planned.placements[placement].location;
    };
    if (placement < places.size() && same(places[placement])) {
      return Spot{found->second, placement};
    }
    const auto other = std::find_if(places.begin(), places.end(), same);
    return other == places.end()
               ? std::nullopt
               : std::optional(
                     Spot{found->second, static_cast<std::size_t>(other - places.begin())});
  }

 private:
  const Order& planned_;
  const Order& edited_;
  std::map<std::string, std::size_t> lines_;
};

}  // namespace

PlannedOrder::PlannedOrder(std::shared_ptr<const Order> order, std::shared_ptr<const Shop> shop,
                           std::shared_ptr<const Plan> plan, std::shared_ptr<const Rules> rules,
                           UnitChoice units)
    : order_(std::move(order)),
      plannedFor_(order_),
      shop_(std::move(shop)),
      plan_(std::move(plan)),
      rules_(std::move(rules)),
      units_(units),
      index_(std::make_shared<const Index>(indexOfPlan())) {
  collectSizes();
}

PlannedOrder PlannedOrder::withOrder(std::shared_ptr<const Order> edited) const {
  PlannedOrder copy = *this;
  copy.order_ = std::move(edited);
  // With a large order that takes a while, and most edits move nothing.
  if (!order_ || !copy.order_ || !sameSpots(*copy.order_)) {
    copy.index_ = std::make_shared<const Index>(copy.indexOfPlan());
  }
  copy.sizesInOrder_.clear();
  copy.collectSizes();
  return copy;
}

// Whether each place stands in `edited` where it stands in order().
bool PlannedOrder::sameSpots(const Order& edited) const {
  const auto samePlace = [](const OrderPlacement& left, const OrderPlacement& right) {
    return left.location == right.location;
  };
  return std::equal(order_->lines.begin(), order_->lines.end(), edited.lines.begin(),
                    edited.lines.end(), [&](const OrderLine& left, const OrderLine& right) {
                      return left.id == right.id &&
                             std::equal(left.placements.begin(), left.placements.end(),
                                        right.placements.begin(), right.placements.end(),
                                        samePlace);
                    });
}

PlannedOrder PlannedOrder::withUnits(const UnitChoice& units) const {
  PlannedOrder copy = *this;
  copy.units_ = units;
  return copy;
}

const Shop& PlannedOrder::shopForDrawing() const {
  static const Shop kNone;
  return shop_ ? *shop_ : kNone;
}

PlannedOrder::Index PlannedOrder::indexOfPlan() const {
  Index index;
  if (!plan_ || !order_) {
    return index;
  }
  std::vector<std::vector<std::optional<Spot>>> spots(plannedFor_->lines.size());
  const SpotFinder finder(*plannedFor_, *order_);
  for (const PlacementPlan& planned : plan_->placements) {
    auto& known = spots[planned.line];
    if (known.empty()) {
      for (std::size_t i = 0; i < plannedFor_->lines[planned.line].placements.size(); ++i) {
        known.push_back(finder.find(planned.line, i));
      }
    }
    if (const auto& spot = known[planned.placement]) {
      index[Key{spot->line, *spot->placement, planned.size}].push_back(&planned);
    }
  }
  return index;
}

std::optional<Spot> PlannedOrder::spotOf(const Finding& finding) const {
  if (!plan_ || !order_ || finding.line >= plannedFor_->lines.size()) {
    return std::nullopt;
  }
  return SpotFinder(*plannedFor_, *order_).find(finding.line, finding.placement);
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
    return std::any_of(order_->lines.begin(), order_->lines.end(),
                       [&](const OrderLine& line) { return line.find(size) != nullptr; });
  };
  std::copy_if(all.begin(), all.end(), std::back_inserter(sizesInOrder_), ordered);
}

const PlacementPlan* PlannedOrder::find(std::size_t line, std::size_t placement,
                                        const SizeName& size) const {
  const auto& all = hoopings(line, placement, size);
  return all.empty() ? nullptr : all.front();
}

const std::vector<const PlacementPlan*>& PlannedOrder::hoopings(std::size_t line,
                                                                std::size_t placement,
                                                                const SizeName& size) const {
  static const std::vector<const PlacementPlan*> kNone;
  const auto found = index_->find(Key{line, placement, size});
  return found == index_->end() ? kNone : found->second;
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
