// SPDX-License-Identifier: MIT
// A flat piece: towel, blanket, bag, bib of an apron, cap front before assembly, cuff of a beanie.
// It lies with its top, as it is used, away from the viewer.
//
//        top width
//        .-------.     y = 0
//       /         \    a dome or cut in, down to the shaped depth
//      |           |
//      |===========|   border band of a towel
//      '-----------'   y = body length
#include <algorithm>

#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

// Where the band's loops begin a needle would sink in on one side, from memory.
constexpr double kBorderReach = 2.0;
// Half of a strap's width and how far down it is sewn on, from memory.
constexpr double kHalfStrap = 14.0;
constexpr double kStrapSewn = 50.0;

void addBorder(PanelShape& panel, const Measures& measures) {
  const std::vector<Measure> shaping = {Measure::BorderAboveHem, Measure::BorderHeight};
  panel.measures.insert(panel.measures.end(), shaping.begin(), shaping.end());
  const bool assumed = measures.anyAssumed(shaping);
  const double half = measures.mm(Measure::BodyWidth) / 2.0;
  const double lower = measures.mm(Measure::BodyLength) - measures.mm(Measure::BorderAboveHem);
  for (const double y : {lower - measures.mm(Measure::BorderHeight), lower}) {
    const Ring edge = box(-half, y - kBorderReach, half, y + kBorderReach);
    panel.keepOuts.push_back({KeepOutName::BorderEdge, edge, true, false, assumed});
    addLine(panel, DetailKind::Seam, {{-half, y}, {half, y}});
  }
}

void addStraps(PanelShape& panel, const Measures& measures) {
  panel.measures.push_back(Measure::StrapFromCentre);
  const double middle = measures.mm(Measure::StrapFromCentre);
  const double inner = middle - kHalfStrap;
  const double outer = middle + kHalfStrap;
  const double sewn = std::min(kStrapSewn, measures.mm(Measure::BodyLength) / 4.0);
  const bool assumed = measures.anyAssumed({Measure::StrapFromCentre});
  const Ring strap = box(inner, 0.0, outer, sewn);
  panel.keepOuts.push_back({KeepOutName::Strap, strap, true, true, assumed});
  panel.keepOuts.push_back({KeepOutName::Strap, mirroredBack(strap), true, true, assumed});
  // The loop above the mouth, for the eye.
  const double rise = 1.2 * middle;
  Ring loop = curve({outer, 0.0}, {outer, -rise}, {-outer, -rise}, {-outer, 0.0});
  append(loop, curve({-inner, 0.0}, {-inner, -0.8 * rise}, {inner, -0.8 * rise}, {inner, 0.0}));
  addArea(panel, DetailKind::Neighbour, loop);
  addPair(panel, DetailKind::Seam, {{inner, 0.0}, {inner, sewn}, {outer, sewn}, {outer, 0.0}});
}

}  // namespace

PanelShape flatPanel(const GarmentKind& kind, const Measures& measures) {
  PanelShape panel;
  panel.name = PanelName::Flat;
  panel.measures = {Measure::BodyWidth, Measure::BodyLength, Measure::TopWidth,
                    Measure::ShapedDepth};
  const double length = measures.mm(Measure::BodyLength);
  const double top = measures.mm(Measure::TopWidth) / 2.0;
  const double full = measures.mm(Measure::BodyWidth) / 2.0;
  const double depth = measures.mm(Measure::ShapedDepth);
  panel.centreBackOrFront = Length::fromMm(length);

  HalfOutline half({top, 0.0});
  if (depth > 0.0 && top < full) {
    const double out = full - top;
    half.along(kind.flat.domed
                   ? curve({top, 0.0}, {top + 0.6 * out, 0.0}, {full, 0.4 * depth}, {full, depth})
                   : curve({top, 0.0}, {top, 0.45 * depth}, {full - 0.25 * out, 0.8 * depth},
                           {full, depth}),
               kind.flat.sides);
  }
  half.lineTo({full, length}, kind.flat.sides);
  half.drawInto(panel, kind.flat.bottom);
  // The walk joins top and bottom alike; the last side is the top one.
  panel.sides.back().name = EdgeName::TopEdge;

  if (kind.flat.border) {
    addBorder(panel, measures);
  }
  if (kind.flat.straps) {
    addStraps(panel, measures);
  }
  // A turned hem or a double edge, for the eye.
  const double inset = std::min(12.0, length / 8.0);
  addLine(panel, DetailKind::Seam, {{-full, length - inset}, {full, length - inset}});
  return panel;
}

}  // namespace creaseline::garment
