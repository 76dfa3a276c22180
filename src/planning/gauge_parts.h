// SPDX-License-Identifier: MIT
// Parts of gauge_figure: edges and crosses of a strip as numbers, and which of them go together.
//
// Strip coordinates: millimetres, x as the panel is drawn, y away from the edge into the panel,
// zero where the centre line meets the edge.
#pragma once

#include <string>
#include <vector>

#include "creaseline/planning/gauge_figure.h"

namespace creaseline::gauges {

// The edge that a landmark belongs to: the one that the strip is laid to.
[[nodiscard]] EdgeName edgeOf(Landmark from);
// The sides of that name about the centre line, cut off `kSeat` from it (less where the edge is
// short), by rising x. std::invalid_argument if the panel has no such edge on its centre line.
[[nodiscard]] Polyline seatCurve(const PanelShape& panel, EdgeName edge);
// y of the curve at x; its ends hold beyond them.
[[nodiscard]] double heightAt(const Polyline& curve, double x);
// Centre of the design.
[[nodiscard]] Point crossAt(const PlacementPlan& plan, EdgeName edge);

// A curve that sizes share.
struct SharedCurve {
  Polyline line;
  std::vector<std::size_t> placements;
};
// A cross that sizes (or locations) share.
struct SharedCross {
  Point at;
  Angle turn;  // of the design as drawn
  std::vector<std::size_t> placements;
};
struct StripContent {
  std::vector<SharedCurve> curves;  // the one that leaves most paper first
  std::vector<SharedCross> crosses;
};

// True, and the placement taken in, if it is told apart from or the same as all that is there.
[[nodiscard]] bool takeIn(StripContent& content, const FigureContext& context, std::size_t index,
                          EdgeName edge);

}  // namespace creaseline::gauges
