// SPDX-License-Identifier: MIT
#include "planning/cloth.h"

#include <algorithm>
#include <initializer_list>
#include <map>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "creaseline/shape/separation.h"
#include "planning/placement.h"

namespace creaseline {
namespace {

bool anyAssumed(const GarmentShape& garment, std::initializer_list<Measure> measures) {
  return std::any_of(measures.begin(), measures.end(), [&garment](Measure measure) {
    const auto found = garment.measures.find(measure);
    return found != garment.measures.end() && found->second.assumed;
  });
}

// How far the farthest point of the outline is outside the panel; 0 if none is. A hull that is
// clear of every edge is outside altogether or not at all.
double farthestOutside(const Ring& panel, const Ring& hull, bool clearOfEdges) {
  if (clearOfEdges && contains(panel, hull.front())) {
    return 0.0;
  }
  double farthest = 0.0;
  for (const Point point : hull) {
    if (!contains(panel, point)) {
      farthest = std::max(farthest, nearestSide(panel, point).distance);
    }
  }
  return farthest;
}

// Convex pieces to measure with: each piece's own hull is nearer to the truth than one hull.
std::vector<Ring> pieceHulls(const Outline& outline) {
  std::vector<Ring> hulls;
  for (const Piece& piece : outline.pieces) {
    hulls.push_back(convexHull(piece.outer));
  }
  return hulls;
}

void addEdges(std::vector<ClothCheck>& checks, const GarmentShape& garment, const PanelShape& panel,
              const std::vector<Ring>& hulls, Length seamClearance, Length horizon) {
  std::map<std::pair<EdgeName, bool>, double> rooms;
  std::vector<double*> roomOf;
  for (const PanelSide& side : panel.sides) {
    roomOf.push_back(&rooms.try_emplace({side.name, side.viewerRight}, horizon.mm()).first->second);
  }
  for (const Ring& hull : hulls) {
    const SideMeter meter(hull, panel.outline, true);
    // Near sides first: once an edge's nearest is measured, its far ones need not be.
    std::vector<std::pair<double, std::size_t>> sides;
    for (std::size_t i = 0; i < panel.sides.size(); ++i) {
      sides.emplace_back(meter.atLeast(i), i);
    }
    std::sort(sides.begin(), sides.end());
    for (const auto& [bound, i] : sides) {
      double& least = *roomOf[i];
      if (bound <= std::max(least, 0.0)) {
        least = std::min(least, meter.measure(i).distance);
      }
    }
  }
  for (const auto& [side, room] : rooms) {
    checks.push_back({sideLabel(panel, {side.first, side.second}), Length::fromMm(room),
                      seamClearance, edgeAssumed(side.first, panel, garment)});
  }
}

void addKeepOuts(std::vector<ClothCheck>& checks, const PanelShape& panel,
                 const std::vector<Ring>& hulls, Length horizon) {
  std::map<KeepOutName, ClothCheck> nearest;
  for (const KeepOut& keepOut : panel.keepOuts) {
    if (!keepOut.needle) {
      continue;
    }
    for (const Ring& hull : hulls) {
      if (gapBetween(ringBounds(hull), ringBounds(keepOut.area)) > horizon.mm()) {
        continue;
      }
      const Length room = Length::fromMm(separation(hull, keepOut.area).distance);
      const auto [entry, added] = nearest.try_emplace(
          keepOut.name, ClothCheck{keepOutPhrase(keepOut.name), room, {}, keepOut.assumed});
      if (!added && room < entry->second.room) {
        entry->second.room = room;
        entry->second.assumed = keepOut.assumed;
      }
    }
  }
  for (const auto& [name, check] : nearest) {
    checks.push_back(check);
  }
}

}  // namespace

bool edgeAssumed(EdgeName edge, const PanelShape& panel, const GarmentShape& garment) {
  switch (edge) {
    case EdgeName::CollarSeam:
      return anyAssumed(garment,
                        {Measure::NeckWidth, Measure::FrontNeckDrop, Measure::BackNeckDrop});
    case EdgeName::ShoulderSeam:
      return anyAssumed(garment,
                        {Measure::ShoulderWidth, Measure::ShoulderDrop, Measure::NeckWidth});
    case EdgeName::Armhole:
    case EdgeName::ArmOpening:
      return anyAssumed(garment,
                        {Measure::ArmholeDepth, Measure::ShoulderWidth, Measure::ShoulderDrop});
    case EdgeName::Fold:
      // The sides of a spread hood are folds as well.
      return panel.name == PanelName::Hood
                 ? anyAssumed(garment,
                              {Measure::HoodHeight, Measure::HoodDepth, Measure::NeckWidth})
                 : anyAssumed(garment, {Measure::SleeveWidth, Measure::CuffWidth});
    case EdgeName::FaceEdge:
    case EdgeName::NeckSeam:
    case EdgeName::CrownSeam:
      return anyAssumed(garment, {Measure::HoodHeight, Measure::HoodDepth});
    case EdgeName::LegOpening:
      return anyAssumed(garment, {Measure::LegRise, Measure::CrotchWidth});
    case EdgeName::TopEdge:
    case EdgeName::SideEdge:
      return anyAssumed(garment, {Measure::TopWidth, Measure::ShapedDepth});
    case EdgeName::WaistSeam:
    case EdgeName::CrotchSeam:
      return anyAssumed(garment, {Measure::WaistWidth, Measure::FrontRise, Measure::ThighWidth});
    case EdgeName::Inseam:
      return anyAssumed(garment, {Measure::ThighWidth, Measure::LegHemWidth});
    case EdgeName::SideSeam:
      return isLeg(panel.name) &&
             anyAssumed(garment, {Measure::WaistWidth, Measure::ThighWidth, Measure::LegHemWidth});
    case EdgeName::BottomSeam:
    case EdgeName::TurnUpFold:
    case EdgeName::Hem:
    case EdgeName::CuffEdge:
      return false;
  }
  return false;
}

std::string sideLabel(const PanelShape& panel, const PanelSide& side) {
  if (panel.name == PanelName::Flat) {
    const bool lateral = side.name == EdgeName::SideSeam || side.name == EdgeName::SideEdge ||
                         side.name == EdgeName::Fold;
    const std::string edge = edgePhrase(side.name);
    return !lateral           ? edge
           : side.viewerRight ? worded("{} (viewer's right)", edge)
                              : worded("{} (viewer's left)", edge);
  }
  if (isLeg(panel.name)) {
    return edgePhrase(side.name);  // each is there once
  }
  const bool paired = side.name == EdgeName::SideSeam || side.name == EdgeName::Armhole ||
                      side.name == EdgeName::ShoulderSeam || side.name == EdgeName::ArmOpening ||
                      side.name == EdgeName::LegOpening;
  if (!paired) {
    return edgePhrase(side.name);
  }
  const bool wearerLeft = (panel.name == PanelName::Back) != side.viewerRight;
  return wearerLeft ? worded("{} (wearer's left)", edgePhrase(side.name))
                    : worded("{} (wearer's right)", edgePhrase(side.name));
}

std::vector<ClothCheck> checkCloth(const GarmentShape& garment, const PanelShape& panel,
                                   const Outline& onPanel, Length seamClearance, Length horizon) {
  const std::vector<Ring> hulls = pieceHulls(onPanel);
  std::vector<ClothCheck> checks;
  addEdges(checks, garment, panel, hulls, seamClearance, horizon);
  const bool clearOfEdges = std::all_of(
      checks.begin(), checks.end(), [](const ClothCheck& edge) { return edge.room > Length(); });
  double outside = 0.0;
  for (const Ring& hull : hulls) {
    outside = std::max(outside, farthestOutside(panel.outline, hull, clearOfEdges));
  }
  addKeepOuts(checks, panel, hulls, horizon);
  std::stable_sort(checks.begin(), checks.end(),
                   [](const ClothCheck& a, const ClothCheck& b) { return a.room < b.room; });
  if (outside > 0.0) {
    checks.insert(checks.begin(), {worded("inside the {}", panelPhrase(panel.name)),
                                   Length::fromMm(-outside),
                                   {},
                                   false,
                                   true});
  }
  return checks;
}

Length widerThanPanel(const PanelShape& panel, const Box& design) {
  double narrowest = std::numeric_limits<double>::infinity();
  constexpr int kRows = 8;
  for (int row = 0; row <= kRows; ++row) {
    const double y = design.min.y + design.height() * row / kRows;
    if (const auto extent = rowExtent(panel.outline, y)) {
      narrowest = std::min(narrowest, extent->length());
    }
  }
  if (!std::isfinite(narrowest)) {
    return {};
  }
  return Length::fromMm(design.width() - narrowest);
}

}  // namespace creaseline
