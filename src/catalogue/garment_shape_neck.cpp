// SPDX-License-Identifier: MIT
// What sits on the collar seam, for the eye alone: neck rib, polo collar, hood.
#include <algorithm>

#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

// The far half of the neck as seen through the opening from in front: from the HPS down to the
// collar seam at the back, raised by the height of what stands on it.
Polyline farNeck(Point shoulderPoint, double backDrop, double raised) {
  const Point end{shoulderPoint.x - 0.35 * raised, shoulderPoint.y - 0.75 * raised};
  const Point middle{0.0, shoulderPoint.y + backDrop - raised};
  return curve(middle, {0.6 * end.x, middle.y}, {0.9 * end.x, (middle.y + end.y) / 2.0}, end);
}

// The near edge of a band in a V: both its sides drawn in by the height of the band.
Polyline nearBand(Point shoulderPoint, double height) {
  const Point end{shoulderPoint.x - 0.35 * height, shoulderPoint.y - 0.75 * height};
  const double point = std::max(-1.3 * height, 0.9 * shoulderPoint.y);
  const Point across{end.x, end.y - point};
  return curve({0.0, point}, Point{0.0, point} + across * (1.0 / 3.0),
               {0.75 * end.x, point + 0.60 * across.y}, end);
}

// The near edge of a neck rib or of a collar that stands: the neckline drawn in by its height.
Polyline nearRib(Point shoulderPoint, double height) {
  const Point end{shoulderPoint.x - 0.35 * height, shoulderPoint.y - 0.75 * height};
  const double lowest = std::max(-height, 0.9 * shoulderPoint.y);
  return curve({0.0, lowest}, {0.55 * end.x, lowest},
               {0.95 * end.x, lowest + 0.45 * (end.y - lowest)}, end);
}

// Both halves of a line that starts on the centre line, from the viewer's left to right.
Polyline acrossFrom(const Polyline& rightHalf) {
  Polyline line = mirroredBack(rightHalf);
  append(line, rightHalf);
  return line;
}

Polyline reversed(const Polyline& line) {
  return {line.rbegin(), line.rend()};
}

Ring between(const Polyline& upper, const Polyline& lower) {
  Ring ring = upper;
  append(ring, reversed(lower));
  return ring;
}

void addNeckRib(PanelShape& panel, const GarmentKind& kind, const Measures& measures) {
  const Point shoulderPoint = bodyPoints(panel.name, measures).shoulderPoint;
  const Polyline seam = acrossFrom(neckline(kind, panel.name, measures));
  const double height = measures.mm(Measure::CollarHeight);
  const double backDrop = measures.mm(Measure::BackNeckDrop);
  const Polyline far = acrossFrom(farNeck(shoulderPoint, backDrop, height));
  if (panel.name == PanelName::Back) {
    addArea(panel, DetailKind::CollarLine, between(far, seam));
    return;
  }
  addArea(panel, DetailKind::Neighbour, between(far, seam));
  addLine(panel, DetailKind::Seam, acrossFrom(farNeck(shoulderPoint, backDrop, 0.0)));
  const Polyline near =
      kind.neck == NeckForm::Vee ? nearBand(shoulderPoint, height) : nearRib(shoulderPoint, height);
  addArea(panel, DetailKind::CollarLine, between(acrossFrom(near), seam));
}

void addCollar(PanelShape& panel, const GarmentKind& kind, const Measures& measures) {
  const Point neck = bodyPoints(panel.name, measures).shoulderPoint;
  const double height = measures.mm(Measure::CollarHeight);
  const double backDrop = measures.mm(Measure::BackNeckDrop);
  const Polyline seam = acrossFrom(neckline(kind, panel.name, measures));
  // The stand rises by about half of the leaf that folds down over it.
  const Polyline fold = acrossFrom(farNeck(neck, backDrop, 0.55 * height));
  if (panel.name == PanelName::Back) {
    addArea(panel, DetailKind::CollarLine, between(fold, seam));
    return;
  }
  addArea(panel, DetailKind::Neighbour, between(fold, seam));
  addLine(panel, DetailKind::Seam, acrossFrom(farNeck(neck, backDrop, 0.0)));
  const Point foldEnd = fold.back();
  const Point tip{0.62 * neck.x, neck.y + 0.55 * -neck.y + 0.9 * height};
  const double half = 2.0;
  Ring leaf = curve({half, -0.5}, {0.35 * neck.x, 0.30 * neck.y},
                    {0.86 * foldEnd.x, 0.62 * foldEnd.y}, foldEnd);
  append(leaf,
         curve(foldEnd, {neck.x + 0.30 * height, neck.y}, {0.98 * neck.x, 0.35 * neck.y}, tip));
  addAreaPair(panel, DetailKind::CollarLine, leaf);
}

// A hood laid up flat above the shoulders, opening to the front.
void addHood(PanelShape& panel, const GarmentKind& kind, const Measures& measures) {
  const BodyPoints body = bodyPoints(panel.name, measures);
  const Point neck = body.shoulderPoint;
  const double height = 0.88 * measures.mm(Measure::HoodHeight);
  const double half = 0.62 * measures.mm(Measure::HoodDepth);
  const double crown = neck.y - height;
  Polyline side = curve({0.0, crown}, {0.72 * half, crown}, {half, crown + 0.18 * height},
                        {half, crown + 0.48 * height});
  append(side, curve(side.back(), {half, crown + 0.80 * height},
                     {neck.x + 0.10 * half, neck.y - 0.10 * height}, neck));
  addArea(panel, DetailKind::Neighbour,
          between(acrossFrom(side), acrossFrom(neckline(kind, panel.name, measures))));
  if (panel.name == PanelName::Back) {
    addLine(panel, DetailKind::Seam, {{0.0, crown}, {0.0, 0.0}});
    return;
  }
  // The face opening: its edges meet at centre front, a little apart over a zip.
  const double rim = std::max(crown + 0.10 * height, crown + 10.0);
  const double wide = 0.70 * half;
  const double foot = kind.opening == FrontOpening::FullZip ? 3.0 : 0.0;
  Polyline opening = curve({0.0, rim}, {0.75 * wide, rim}, {wide, rim + 0.15 * height},
                           {wide, rim + 0.42 * height});
  append(opening,
         curve(opening.back(), {wide, 0.55 * neck.y}, {0.35 * wide, 0.25 * neck.y}, {foot, 0.0}));
  addLine(panel, DetailKind::CollarLine, acrossFrom(opening));
}

}  // namespace

void addNeckDetails(PanelShape& panel, const GarmentKind& kind, const Measures& measures) {
  switch (kind.neck) {
    case NeckForm::None:
      return;
    case NeckForm::Crew:
    case NeckForm::Vee:
    case NeckForm::Stand:
      addNeckRib(panel, kind, measures);
      return;
    case NeckForm::Collar:
    case NeckForm::CollarOnStand:
      addCollar(panel, kind, measures);
      return;
    case NeckForm::Hood:
      addHood(panel, kind, measures);
      return;
  }
}

}  // namespace creaseline::garment
