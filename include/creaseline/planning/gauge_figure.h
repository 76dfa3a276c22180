// SPDX-License-Identifier: MIT
// Gauges in true scale: strips of card that are laid to an edge of the garment (collar seam, face
// edge, cuff edge, armhole seam) and carry a cross at each design's centre, instead of ruler and
// arithmetic at the table.
//
// The strip's edge is the garment's own edge about the centre line, kSeat to both sides. Several
// sizes nest on one strip, their curves aligned where the centre line meets the edge. The paper of
// a size is what lies on the garment's side of its curve, so a narrower neck, which climbs
// earlier, leaves more paper than a wider one: cut the curves in their order, smallest paper last.
#pragma once

#include <string>
#include <vector>

#include "creaseline/base/length.h"
#include "creaseline/catalogue/garment_shape.h"
#include "creaseline/planning/figure.h"
#include "creaseline/planning/figure_context.h"
#include "creaseline/planning/groups.h"

namespace creaseline {

// Length of edge to each side of the centre line: a strip held at this much of a curve neither
// turns nor slides along it by an amount that an eye misses; shorter where the edge is shorter.
// Over 60 mm a turn by 1 degree lifts the end by 1 mm.
inline constexpr double kSeat = 60.0;
// Curves and crosses nearer than this are one: a pencil line is as wide.
inline constexpr double kSameMark = 0.5;
// Curves on one strip end at least so far apart, that scissors find the right one.
inline constexpr double kCurvesApart = 2.0;
// Two holes in card need their own width of card between them.
inline constexpr double kCrossesApart = 4.0;

// One strip of one order line, panel and edge.
struct GaugeStrip {
  std::size_t line = 0;
  PanelName panel{};
  EdgeName edge{};
  std::vector<std::size_t> placements;  // indices into Plan::placements, in order
};

// In the order of the plan. Placements that stop have no gauge. Placements of sizes whose curves or
// crosses would lie too close to tell apart, or whose curves cross, are on different strips.
[[nodiscard]] std::vector<GaugeStrip> gaugeStrips(const FigureContext& context);

// "Collar gauge, front: S M L"
[[nodiscard]] std::string gaugeTitle(const FigureContext& context, const GaugeStrip& strip);
// "neck width assumed (S M): check against the garment", for each measure that the strip rests on.
[[nodiscard]] std::vector<std::string> gaugeAssumptions(const FigureContext& context,
                                                        const GaugeStrip& strip);

// The origin is where the centre line meets the edge; the garment lies below it, except for a cuff,
// above which it lies, as sleeves are drawn. `strip` is one of gaugeStrips().
[[nodiscard]] Figure gaugeFigure(const FigureContext& context, const GaugeStrip& strip);

}  // namespace creaseline
