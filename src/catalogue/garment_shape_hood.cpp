// SPDX-License-Identifier: MIT
// Hood panel: the hood spread flat and seen from behind.
//
// A hood of two halves meets in the crown seam, which is the centre crease here. It is a bag, not
// a surface that lies flat, so this is a model, drawn on the safe side:
// - width at the face edge: half of the edge's girth, which is the hood height, since the other
//   half lies underneath. Towards the neck the cloth that lies flat narrows to the neck width.
// - centre line: from the face edge back over the crown (hood depth) and down to the neck seam
//   (hood height), less what the round of the crown saves against a square corner,
//   (2 - pi / 2) x radius, with 0.6 of the hood depth as radius (from memory).
// - neck seam: the curve of the back neck.
#include <numbers>

#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

double centreLength(const Measures& measures) {
  const double depth = measures.mm(Measure::HoodDepth);
  const double saved = (2.0 - std::numbers::pi / 2.0) * 0.6 * depth;
  return depth + measures.mm(Measure::HoodHeight) - saved;
}

Polyline sideFold(Point faceCorner, Point neckCorner) {
  const double fall = neckCorner.y;
  return curve(faceCorner, {faceCorner.x, 0.50 * fall},
               {neckCorner.x + 0.45 * (faceCorner.x - neckCorner.x), 0.88 * fall}, neckCorner);
}

// The top of the back below the neck seam, cut off at the pits.
void addBack(PanelShape& panel, const GarmentKind& kind, const Measures& measures, double length) {
  const BodyPoints points = bodyPoints(PanelName::Back, measures);
  Ring half = neckline(kind, PanelName::Back, measures);
  append(half, armhole(points));
  Ring area = half;
  append(area, mirroredBack(half));
  area.pop_back();  // the centre point is there already
  addArea(panel, DetailKind::Neighbour, shifted(area, {0.0, length}));
}

}  // namespace

PanelShape hoodPanel(const GarmentKind& kind, const Measures& measures) {
  PanelShape panel;
  panel.name = PanelName::Hood;
  panel.wornUp = Angle::fromDegrees(180.0);
  panel.measures = {Measure::HoodHeight, Measure::HoodDepth, Measure::NeckWidth,
                    Measure::BackNeckDrop};
  const double length = centreLength(measures);
  panel.centreBackOrFront = Length::fromMm(length);

  const Polyline neckSeam = shifted(neckline(kind, PanelName::Back, measures), {0.0, length});
  const Point faceCorner{measures.mm(Measure::HoodHeight) / 2.0, 0.0};
  HalfOutline half(faceCorner);
  half.along(sideFold(faceCorner, neckSeam.back()), EdgeName::Fold);
  half.along(Polyline(neckSeam.rbegin(), neckSeam.rend()), EdgeName::NeckSeam);
  half.drawInto(panel, EdgeName::FaceEdge);

  addBack(panel, kind, measures, length);
  addLine(panel, DetailKind::Seam, {{0.0, 0.0}, {0.0, length}});
  // The tunnel of the face edge, 25 mm from memory.
  constexpr double kTunnel = 25.0;
  if (kind.drawcord) {
    // Rings may hold the tunnel, a needle would sew its cord fast. The eyelets lie underneath: the
    // hood's front ends, where they are, are the half that does not show.
    Ring tunnel = partDownTo(sideFold(faceCorner, neckSeam.back()), kTunnel);
    append(tunnel, mirroredBack(tunnel));
    panel.keepOuts.push_back(
        {KeepOutName::DrawcordTunnel, tunnel, true, false,
         measures.anyAssumed({Measure::HoodHeight, Measure::HoodDepth, Measure::NeckWidth})});
  }
  addLine(panel, DetailKind::Seam, {{-faceCorner.x, kTunnel}, {faceCorner.x, kTunnel}});
  return panel;
}

}  // namespace creaseline::garment
