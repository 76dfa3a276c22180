// SPDX-License-Identifier: MIT
#include "planning/overlapping_places.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "creaseline/shape/outline.h"
#include "creaseline/shape/separation.h"
#include "planning/findings.h"

namespace creaseline {
namespace {

// Borders that run along each other may share a stitch's width.
constexpr double kSharedBorderMm = 1.0;

// Line, and the two places of it, the one ordered first first.
using PlacePair = std::tuple<std::size_t, std::size_t, std::size_t>;

struct PairOverlap {
  std::vector<SizeName> sizes;
  double deepest = 0.0;
};

std::vector<Ring> hullsOf(const PlacementPlan& plan) {
  std::vector<Ring> hulls;
  for (const Piece& piece : plan.outlineOnPanel.pieces) {
    hulls.push_back(convexHull(piece.outer));
  }
  return hulls;
}

double deepestOverlap(const PlacementPlan& one, const PlacementPlan& other) {
  double deepest = 0.0;
  if (gapBetween(one.placed.bounds, other.placed.bounds) >= 0.0) {
    return deepest;
  }
  const std::vector<Ring> theirs = hullsOf(other);
  for (const Ring& mine : hullsOf(one)) {
    for (const Ring& their : theirs) {
      if (const auto both = overlap(mine, their)) {
        deepest = std::max(deepest, -both->distance);
      }
    }
  }
  return deepest;
}

}  // namespace

std::vector<Finding> overlappingPlaces(const std::vector<PlacementPlan>& plans, const Order& order,
                                       const Shop& shop, const Rules& rules) {
  std::map<std::pair<std::size_t, SizeName>, std::vector<const PlacementPlan*>> garments;
  for (const PlacementPlan& plan : plans) {
    if (plan.hasRule && order.lines[plan.line].placements.size() > 1) {
      garments[{plan.line, plan.size}].push_back(&plan);
    }
  }
  std::map<PlacePair, PairOverlap> pairs;
  for (const auto& [garment, hoopings] : garments) {
    for (std::size_t i = 0; i < hoopings.size(); ++i) {
      for (std::size_t j = i + 1; j < hoopings.size(); ++j) {
        const PlacementPlan& one = *hoopings[i];
        const PlacementPlan& other = *hoopings[j];
        const double depth = one.placement == other.placement || one.panel != other.panel
                                 ? 0.0
                                 : deepestOverlap(one, other);
        if (depth <= kSharedBorderMm) {
          continue;
        }
        const auto [first, second] = std::minmax(one.placement, other.placement);
        PairOverlap& pair = pairs[{garment.first, first, second}];
        if (pair.sizes.empty() || !(pair.sizes.back() == garment.second)) {
          pair.sizes.push_back(garment.second);
        }
        pair.deepest = std::max(pair.deepest, depth);
      }
    }
  }
  std::vector<Finding> findings;
  for (auto& [places, pair] : pairs) {
    const auto& [line, first, second] = places;
    const OrderLine& at = order.lines[line];
    const Length by = Length::fromMm(pair.deepest);
    Finding finding;
    finding.severity = Severity::Watch;
    finding.code = FindingCode::OverlapsOtherPlace;
    finding.line = line;
    finding.placement = second;
    finding.place =
        findingPlace(at, *order.blank(at.blank), at.placements[second].location, pair.sizes, rules);
    finding.text = worded("it lies {} over what this line has sewn at {} as well",
                          differencePhrase(by, shop.units),
                          locationPhrase(at.placements[first].location, rules));
    finding.numbers.push_back({worded("lies over by"), by});
    finding.reason = Reason{worded("both as planned on the same panel"),
                            {},
                            worded("the rules for both places"),
                            false,
                            {},
                            worded("a move, a smaller design or another location")};
    finding.sizes = std::move(pair.sizes);
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace creaseline
