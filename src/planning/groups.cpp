// SPDX-License-Identifier: MIT
// Gathers sizes that are hooped by the same numbers.
#include "creaseline/planning/groups.h"

#include <algorithm>

#include "planning/parts.h"
#include "planning/same_backing.h"

namespace creaseline {

namespace {

bool agree(Length a, Length b, const UnitChoice& units) {
  return roundToMark(a, units) == roundToMark(b, units);
}

// Where the frame's centre lies from the design's: what the hooping station sets up.
bool sameFramePlace(const PlacementPlan& a, const PlacementPlan& b, const UnitChoice& units) {
  const Point offsetA = a.frame->centre - a.placed.centre;
  const Point offsetB = b.frame->centre - b.placed.centre;
  return agree(Length::fromMm(offsetA.x), Length::fromMm(offsetB.x), units) &&
         agree(Length::fromMm(offsetA.y), Length::fromMm(offsetB.y), units);
}

bool sameFrame(const PlacementPlan& a, const PlacementPlan& b, const UnitChoice& units) {
  if (!a.frame || !b.frame) {
    return !a.frame && !b.frame;
  }
  return a.frame->frame == b.frame->frame && a.frame->turn == b.frame->turn &&
         sameFramePlace(a, b, units);
}

bool samePlace(const Placed& a, const Placed& b, const UnitChoice& units) {
  return a.from == b.from && a.turn == b.turn && a.panelTurn == b.panelTurn &&
         agree(a.drop, b.drop, units) && agree(a.centreOffset, b.centreOffset, units) &&
         agree(a.centreBelowDatum, b.centreBelowDatum, units) && agree(a.lateral, b.lateral, units);
}

bool sameNumbers(const PlacementPlan& a, const PlacementPlan& b, const UnitChoice& units) {
  if (!a.hasRule || !b.hasRule) {
    return !a.hasRule && !b.hasRule;
  }
  return samePlace(a.placed, b.placed, units) && sameFrame(a, b, units) &&
         sameBacking(a.backing, b.backing) && sameDesignPart(a, b);
}

}  // namespace

bool sameBacking(const BackingChoice& a, const BackingChoice& b) {
  return a.kind == b.kind && a.leastWeight == b.leastWeight && a.layers == b.layers &&
         a.hold == b.hold && a.topping == b.topping && a.skinCover == b.skinCover &&
         a.needleSize == b.needleSize && a.needlePoint == b.needlePoint &&
         a.cutWidth == b.cutWidth && a.cutHeight == b.cutHeight && a.stock == b.stock;
}

std::vector<SizeGroup> groupSizes(const Plan& plan, const UnitChoice& units) {
  std::vector<SizeGroup> groups;
  std::size_t firstOfPlacement = 0;  // group with which the current line and location begin
  for (std::size_t index = 0; index < plan.placements.size(); ++index) {
    const PlacementPlan& current = plan.placements[index];
    if (index > 0) {
      const PlacementPlan& previous = plan.placements[index - 1];
      if (previous.line != current.line || previous.placement != current.placement) {
        firstOfPlacement = groups.size();
      }
    }
    const auto begin = groups.begin() + static_cast<std::ptrdiff_t>(firstOfPlacement);
    const auto match = std::find_if(begin, groups.end(), [&](const SizeGroup& group) {
      return sameNumbers(plan.placements[group.front()], current, units);
    });
    if (match == groups.end()) {
      groups.push_back({index});
    } else {
      match->push_back(index);
    }
  }
  return groups;
}

bool concerns(const Finding& finding, const PlacementPlan& plan) {
  return !finding.wholeOrder && finding.line == plan.line && finding.placement == plan.placement &&
         (finding.sizes.empty() ||
          std::find(finding.sizes.begin(), finding.sizes.end(), plan.size) != finding.sizes.end());
}

}  // namespace creaseline
