// SPDX-License-Identifier: MIT
// Lines that make a front or back read as a garment: sleeves hanging beside it, ribs, pocket, zip,
// placket. Nothing is measured from them; proportions not named otherwise are for the eye.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

// Depth of a turned hem, where its stitching shows.
constexpr double kTurnedHem = 20.0;

Point direction(double degreesBelowLevel) {
  const double angle = degreesBelowLevel * std::numbers::pi / 180.0;
  return {std::cos(angle), std::sin(angle)};
}

Ring circle(Point centre, double radius) {
  constexpr int kPoints = 16;
  Ring ring;
  for (int i = 0; i < kPoints; ++i) {
    ring.push_back(centre + direction(360.0 * i / kPoints) * radius);
  }
  return ring;
}

// The wearer's sleeve on the viewer's right, as it falls when the garment is laid out.
class HangingSleeve {
 public:
  HangingSleeve(const GarmentKind& kind, const BodyPoints& body, const Measures& measures)
      : shoulder_(body.shoulderEnd),
        armhole_(armhole(body)),
        shoulderSlope_(body.shoulderEnd - body.shoulderPoint) {
    const double length = measures.mm(Measure::SleeveLength);
    const double cuff = measures.mm(Measure::CuffWidth);
    const bool isLong = kind.sleeve == SleeveForm::Long;
    const double hem = std::max(measures.mm(Measure::CuffHeight), kTurnedHem);
    const double clearOfBody = body.pit.x + (isLong ? 0.18 : 0.04) * length;
    // As steep as it looks natural, but never so steep that the cuff slips behind the body.
    for (double angle = isLong ? 62.0 : 42.0; angle >= 0.0; angle -= 1.0) {
      down_ = direction(angle);
      // The fold bends over the shoulder, so its ends are a little nearer than it is long.
      outer_ = shoulder_ + down_ * (0.97 * length);
      inner_ = outer_ + Point{-down_.y, down_.x} * cuff;
      if (inner_.x - hem * down_.x >= clearOfBody) {
        break;
      }
    }
  }

  Ring area() const {
    const double length = norm(outer_ - shoulder_);
    const Point along = shoulderSlope_ * (1.0 / norm(shoulderSlope_));
    Ring ring = curve(shoulder_, shoulder_ + along * (0.22 * length),
                      outer_ - down_ * (0.60 * length), outer_);
    const Point pit = armhole_.back();
    const Point towardsPit = pit - inner_;
    append(ring, curve(inner_, inner_ - down_ * (0.35 * norm(towardsPit)),
                       pit + down_ * (0.12 * norm(towardsPit)), pit));
    append(ring, Polyline(armhole_.rbegin() + 1, armhole_.rend() - 1));
    return ring;
  }

  // A line across the sleeve at that distance from the cuff edge.
  Polyline across(double fromCuff) const {
    return {outer_ - down_ * fromCuff, inner_ - down_ * fromCuff};
  }
  Polyline ribLine(double share, double cuff) const {
    const Point at = outer_ + (inner_ - outer_) * share;
    return {at, at - down_ * cuff};
  }

 private:
  Point shoulder_;
  Point down_;  // along the sleeve, towards the cuff
  Point outer_;
  Point inner_;
  Polyline armhole_;
  Point shoulderSlope_;
};

void addSleeves(PanelShape& panel, const GarmentKind& kind, const BodyPoints& body,
                const Measures& measures) {
  const HangingSleeve sleeve(kind, body, measures);
  addAreaPair(panel, DetailKind::Neighbour, sleeve.area());
  const double cuff = measures.mm(Measure::CuffHeight);
  if (cuff <= 0.0) {
    addPair(panel, DetailKind::Seam, sleeve.across(kTurnedHem));
    return;
  }
  if (kind.cuff == CuffForm::Band) {
    addPair(panel, DetailKind::Seam, sleeve.across(cuff));
    return;
  }
  addPair(panel, DetailKind::Rib, sleeve.across(cuff));
  constexpr int kRibs = 9;
  for (int i = 1; i < kRibs; ++i) {
    addPair(panel, DetailKind::Rib, sleeve.ribLine(double(i) / kRibs, cuff));
  }
}

void addHem(PanelShape& panel, const GarmentKind& kind, const BodyPoints& body,
            const Measures& measures) {
  const double side = body.hem.x;
  const double hem = body.hem.y;
  if (!kind.hemRib || measures.mm(Measure::RibHeight) <= 0.0) {
    addLine(panel, DetailKind::Seam, {{-side, hem - kTurnedHem}, {side, hem - kTurnedHem}});
    return;
  }
  const double top = hem - measures.mm(Measure::RibHeight);
  addLine(panel, DetailKind::Rib, {{-side, top}, {side, top}});
  constexpr double kRibSpacing = 12.0;
  for (double x = kRibSpacing / 2.0; x < side; x += kRibSpacing) {
    addPair(panel, DetailKind::Rib, {{x, top}, {x, hem}});
  }
}

void addZip(PanelShape& panel, double end, const Measures& measures) {
  constexpr double kTeeth = 3.0;
  const double tape = measures.mm(Measure::ZipWidth) / 2.0;
  addPair(panel, DetailKind::ZipLine, {{kTeeth, 0.0}, {kTeeth, end}});
  addPair(panel, DetailKind::ZipLine, {{tape, 0.0}, {tape, end}});
  addLine(
      panel, DetailKind::ZipLine,
      {{0.0, 6.0}, {4.0, 10.0}, {4.0, 24.0}, {0.0, 30.0}, {-4.0, 24.0}, {-4.0, 10.0}, {0.0, 6.0}});
}

void addButton(PanelShape& panel, Point at, double halfPlacket) {
  Ring button = circle(at, std::min(5.5, 0.4 * halfPlacket));
  button.push_back(button.front());
  addLine(panel, DetailKind::PlacketLine, button);
}

void addPlacket(PanelShape& panel, const Measures& measures) {
  const double half = measures.mm(Measure::PlacketWidth) / 2.0;
  const double length = measures.mm(Measure::PlacketLength);
  addLine(panel, DetailKind::PlacketLine,
          {{-half, 0.0}, {-half, length}, {half, length}, {half, 0.0}});
  const double boxTop = length - std::min(2.0 * half, length / 3.0);
  addLine(panel, DetailKind::PlacketLine, {{-half, boxTop}, {half, boxTop}});
  constexpr int kButtons = 2;
  for (int i = 0; i < kButtons; ++i) {
    addButton(panel, {0.0, boxTop * (0.25 + 0.5 * i)}, half);
  }
}

// A placket with buttons, or the bands of a wrapped front, down to the hem.
void addThroughFront(PanelShape& panel, bool buttons, double hem, const Measures& measures) {
  const double half = measures.mm(Measure::PlacketWidth) / 2.0;
  addPair(panel, DetailKind::PlacketLine, {{half, 0.0}, {half, hem}});
  constexpr int kButtons = 6;
  for (int i = 0; buttons && i < kButtons; ++i) {
    addButton(panel, {0.0, hem * (0.08 + 0.16 * i)}, half);
  }
}

void addOpening(PanelShape& panel, const GarmentKind& kind, double hem, const Measures& measures) {
  switch (kind.opening) {
    case FrontOpening::None:
      return;
    case FrontOpening::Placket:
      addPlacket(panel, measures);
      return;
    case FrontOpening::FullZip:
      addZip(panel, hem, measures);
      return;
    case FrontOpening::QuarterZip:
      addZip(panel, measures.mm(Measure::ZipLength), measures);
      return;
    case FrontOpening::Buttons:
    case FrontOpening::Wrap:
      addThroughFront(panel, kind.opening == FrontOpening::Buttons, hem, measures);
      return;
  }
}

}  // namespace

void addBodyDetails(PanelShape& panel, const GarmentKind& kind, const Measures& measures) {
  const BodyPoints body = bodyPoints(panel.name, measures);
  if (kind.sleeve != SleeveForm::None) {
    addSleeves(panel, kind, body, measures);
  }
  if (kind.hem == HemForm::Straight) {
    addHem(panel, kind, body, measures);
  }
  if (panel.name != PanelName::Front) {
    return;
  }
  addPocketLines(panel, kind, measures);
  addOpening(panel, kind, body.hem.y, measures);
}

}  // namespace creaseline::garment
