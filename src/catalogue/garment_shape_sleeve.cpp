// SPDX-License-Identifier: MIT
// Sleeve panel: the outer half of the sleeve, pressed flat with the line from shoulder point to
// cuff in the middle.
//
// What is seen is half the tube, so as wide as the sleeve measures flat; both sides are folds.
// The other half holds the underarm seam. The armhole seam climbs from the pit, which is on the
// hidden half, to the shoulder's end; over the quarter of the tube that is seen on each side it
// climbs the upper half of the cap.
//
//            cuff edge  y = 0
//             +-----+
//            /       \        folds
//           /         \       .
//          |           |      y = length - cap: level of the pit
//          |           |      y = length - cap / 2: the armhole seam comes into view
//           `-.     .-'
//              `---'          y = length: shoulder's end
#include <algorithm>
#include <cmath>

#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

struct SleevePoints {
  double halfCuff;
  double halfWidth;
  double pitLevel;   // from here to the cuff the tube narrows
  double seamLevel;  // where the armhole seam meets the folds
  double length;
};

// Cap height by Pythagoras: the armhole seam of one half is the slope, the flat sleeve width the
// base. A model; the seam is taken 5 % longer than its chord, and the cap kept between a fifth
// and three fifths of the width, and within the sleeve above its cuff, from memory.
double capHeight(const Measures& measures) {
  const BodyPoints body = bodyPoints(PanelName::Front, measures);
  const double seam = 1.05 * norm(body.pit - body.shoulderEnd);
  const double width = measures.mm(Measure::SleeveWidth);
  const double slope = std::sqrt(std::max(seam * seam - width * width, 0.0));
  const double aboveCuff = measures.mm(Measure::SleeveLength) - measures.mm(Measure::CuffHeight);
  return std::min(std::clamp(slope, 0.2 * width, 0.6 * width), 0.8 * aboveCuff);
}

SleevePoints sleevePoints(const Measures& measures) {
  const double length = measures.mm(Measure::SleeveLength);
  const double cap = capHeight(measures);
  return {measures.mm(Measure::CuffWidth) / 2.0, measures.mm(Measure::SleeveWidth) / 2.0,
          length - cap, length - cap / 2.0, length};
}

double halfWidthAt(const SleevePoints& points, double y) {
  const double share = std::min(y / points.pitLevel, 1.0);
  return points.halfCuff + (points.halfWidth - points.halfCuff) * share;
}

Polyline capSeam(const SleevePoints& points) {
  const double rise = points.length - points.seamLevel;
  return curve({points.halfWidth, points.seamLevel},
               {0.72 * points.halfWidth, points.seamLevel + 0.75 * rise},
               {0.36 * points.halfWidth, points.length}, {0.0, points.length});
}

// The shoulder beyond the seam, up to the neck.
void addShoulder(PanelShape& panel, const SleevePoints& points, const Measures& measures) {
  const double shoulder =
      (measures.mm(Measure::ShoulderWidth) - measures.mm(Measure::NeckWidth)) / 2.0;
  Ring area = capSeam(points);
  append(area, mirroredBack(area));
  const double end = points.length + 0.5 * shoulder;
  append(area, Polyline{{-0.7 * points.halfWidth, end}, {0.7 * points.halfWidth, end}});
  addArea(panel, DetailKind::Neighbour, area);
}

void addCuffLines(PanelShape& panel, const GarmentKind& kind, const SleevePoints& points,
                  double cuff) {
  if (cuff <= 0.0) {
    // A turned hem shows as one line of stitching, 2 cm in, from memory.
    const double y = std::min(20.0, points.pitLevel / 2.0);
    const double half = halfWidthAt(points, y);
    addLine(panel, DetailKind::Seam, {{-half, y}, {half, y}});
    return;
  }
  const double top = halfWidthAt(points, cuff);
  if (kind.cuff == CuffForm::Band) {
    addLine(panel, DetailKind::Seam, {{-top, cuff}, {top, cuff}});
    return;
  }
  addLine(panel, DetailKind::Rib, {{-top, cuff}, {top, cuff}});
  const int ribs = kind.sleeve == SleeveForm::Long ? 5 : 9;
  for (int i = -ribs + 1; i < ribs; ++i) {
    const double share = double(i) / ribs;
    addLine(panel, DetailKind::Rib, {{share * points.halfCuff, 0.0}, {share * top, cuff}});
  }
}

// Rings may hold a rib, which is soft cloth, but sewing would take its stretch. A band is sewn on
// flat: only the seam above it is kept free, 3 mm to both sides, from memory.
void addCuffKeepOut(PanelShape& panel, const GarmentKind& kind, const SleevePoints& points,
                    double cuff, const Measures& measures) {
  constexpr double kCuffSeamReach = 3.0;
  const bool band = kind.cuff == CuffForm::Band;
  const double from = band ? cuff - std::min(kCuffSeamReach, cuff / 2.0) : 0.0;
  const double to = band ? cuff + kCuffSeamReach : cuff;
  const double lower = halfWidthAt(points, from);
  const double upper = halfWidthAt(points, to);
  panel.keepOuts.push_back({band ? KeepOutName::CuffSeam : KeepOutName::CuffRib,
                            {{-lower, from}, {lower, from}, {upper, to}, {-upper, to}},
                            true,
                            false,
                            measures.anyAssumed({Measure::CuffHeight})});
}

}  // namespace

PanelShape sleevePanel(const GarmentKind& kind, PanelName name, const Measures& measures) {
  PanelShape panel;
  panel.name = name;
  panel.wornUp = Angle::fromDegrees(180.0);
  panel.measures = {Measure::SleeveLength, Measure::SleeveWidth,  Measure::CuffWidth,
                    Measure::CuffHeight,   Measure::ArmholeDepth, Measure::ShoulderDrop,
                    Measure::ShoulderWidth};
  const SleevePoints points = sleevePoints(measures);
  panel.centreBackOrFront = Length::fromMm(points.length);

  HalfOutline half({points.halfCuff, 0.0});
  half.lineTo({points.halfWidth, points.pitLevel}, EdgeName::Fold);
  half.lineTo({points.halfWidth, points.seamLevel}, EdgeName::Fold);
  half.along(capSeam(points), EdgeName::Armhole);
  half.drawInto(panel, EdgeName::CuffEdge);

  const double cuff = measures.mm(Measure::CuffHeight);
  if (cuff > 0.0) {
    addCuffKeepOut(panel, kind, points, cuff, measures);
  }
  addShoulder(panel, points, measures);
  addCuffLines(panel, kind, points, cuff);
  return panel;
}

}  // namespace creaseline::garment
