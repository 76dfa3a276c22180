// SPDX-License-Identifier: MIT
// Front and back panel: outline and keep-outs.
#include <algorithm>
#include <utility>

#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

// Cloth below the collar seam that the seam's own layers and topstitching take, from memory: a
// narrow rib seam, the stand of a collar, the double layer of a hood.
double seamDepth(NeckForm neck) {
  switch (neck) {
    case NeckForm::None:
      return 0.0;
    case NeckForm::Crew:
    case NeckForm::Vee:
      return 6.0;
    case NeckForm::Collar:
    case NeckForm::Stand:
    case NeckForm::CollarOnStand:
      return 8.0;
    case NeckForm::Hood:
      return 10.0;
  }
  return 0.0;
}

double neckDrop(PanelName panel, const Measures& measures) {
  return measures.mm(panel == PanelName::Back ? Measure::BackNeckDrop : Measure::FrontNeckDrop);
}

std::vector<Measure> collarMeasures(PanelName panel) {
  return {Measure::NeckWidth,
          panel == PanelName::Back ? Measure::BackNeckDrop : Measure::FrontNeckDrop};
}

std::vector<Measure> shapingMeasures(PanelName panel) {
  std::vector<Measure> shaping = {Measure::BodyWidth, Measure::BodyLength, Measure::ShoulderWidth,
                                  Measure::ShoulderDrop, Measure::ArmholeDepth};
  for (const Measure measure : collarMeasures(panel)) {
    shaping.push_back(measure);
  }
  return shaping;
}

// The strip under the collar seam as convex pieces, few enough that checks stay quick: their
// chords leave the curve by less than a millimetre on any adult neck.
void addCollarSeam(PanelShape& panel, const GarmentKind& kind, const Measures& measures,
                   Point shoulderEnd) {
  const double depth = seamDepth(kind.neck);
  constexpr std::size_t kPieces = 8;
  const Polyline seam = neckline(kind, panel.name, measures);
  const std::size_t last = seam.size() - 1;
  const bool assumed = measures.anyAssumed(collarMeasures(panel.name));
  const auto lower = [&](std::size_t i) {
    if (i == 0) {
      return seam[0] + Point{0.0, depth};
    }
    // At its end the strip runs into the shoulder seam, not past it.
    const Point along = i == last ? shoulderEnd - seam[last] : seam[i + 1] - seam[i - 1];
    const Point into = i == last ? along : Point{-along.y, along.x};
    return seam[i] + into * (depth / norm(into));
  };
  for (std::size_t piece = 0; piece < kPieces; ++piece) {
    const std::size_t a = piece * last / kPieces;
    const std::size_t b = (piece + 1) * last / kPieces;
    if (a == b) {
      continue;
    }
    const Ring right{seam[a], seam[b], lower(b), lower(a)};
    panel.keepOuts.push_back({KeepOutName::CollarSeam, right, true, true, assumed});
    panel.keepOuts.push_back({KeepOutName::CollarSeam, mirroredBack(right), true, true, assumed});
  }
}

// A keep-out of full needle and frame whose shape these measures give.
void addKeepOut(PanelShape& panel, KeepOutName name, Ring area, const std::vector<Measure>& shaping,
                const Measures& measures, bool frame = true) {
  for (const Measure measure : shaping) {
    if (std::find(panel.measures.begin(), panel.measures.end(), measure) == panel.measures.end()) {
      panel.measures.push_back(measure);
    }
  }
  panel.keepOuts.push_back({name, std::move(area), true, frame, measures.anyAssumed(shaping)});
}

void addOpening(PanelShape& panel, const GarmentKind& kind, const Measures& measures, double hem) {
  const auto strip = [&](KeepOutName name, Measure width, double bottom,
                         const std::vector<Measure>& shaping) {
    const double half = measures.mm(width) / 2.0;
    addKeepOut(panel, name, box(-half, 0.0, half, bottom), shaping, measures);
  };
  switch (kind.opening) {
    case FrontOpening::None:
      return;
    case FrontOpening::Placket:
      strip(KeepOutName::Placket, Measure::PlacketWidth, measures.mm(Measure::PlacketLength),
            {Measure::PlacketLength, Measure::PlacketWidth});
      return;
    case FrontOpening::Buttons:
    case FrontOpening::Wrap:
      strip(KeepOutName::Placket, Measure::PlacketWidth, hem, {Measure::PlacketWidth});
      return;
    case FrontOpening::FullZip:
      strip(KeepOutName::Zip, Measure::ZipWidth, hem, {Measure::ZipWidth});
      return;
    case FrontOpening::QuarterZip:
      strip(KeepOutName::Zip, Measure::ZipWidth, measures.mm(Measure::ZipLength),
            {Measure::ZipLength, Measure::ZipWidth});
      return;
  }
}

// Two layers and their topstitching, from memory. Rings may lie across a flat seam, a needle that
// runs along it would sink beside it.
constexpr double kSeamReach = 3.0;

void addYokeSeam(PanelShape& panel, const BodyPoints& points, const Measures& measures) {
  const double y = measures.mm(Measure::YokeDepth);
  // The armhole is scooped a little inside the shoulder's end (armhole()).
  const double half = 0.94 * points.shoulderEnd.x;
  addKeepOut(panel, KeepOutName::YokeSeam, box(-half, y - kSeamReach, half, y + kSeamReach),
             {Measure::YokeDepth}, measures, false);
  addLine(panel, DetailKind::Seam, {{-half, y}, {half, y}});
}

// Snaps close the crotch over a tape of 2 cm, from memory.
void addSnaps(PanelShape& panel, const BodyPoints& points, const Measures& measures) {
  constexpr double kTape = 20.0;
  const double half = measures.mm(Measure::CrotchWidth) / 2.0;
  addKeepOut(panel, KeepOutName::Snaps,
             box(-half, points.hem.y - std::min(kTape, measures.mm(Measure::LegRise) / 2.0), half,
                 points.hem.y),
             {Measure::CrotchWidth}, measures);
}

// Eyelets of a drawcord, in the front ends of the hood just above the collar seam: metal, so that
// no ring closes there and magnets are drawn to it. Size and place from memory.
void addEyelets(PanelShape& panel, const Measures& measures) {
  constexpr double kShareOfNeck = 0.15;
  constexpr double kAboveSeam = 18.0;
  constexpr double kHalf = 7.0;
  const double x = kShareOfNeck * measures.mm(Measure::NeckWidth);
  const Ring eyelet = box(x - kHalf, -kAboveSeam - kHalf, x + kHalf, -kAboveSeam + kHalf);
  addKeepOut(panel, KeepOutName::Eyelet, eyelet, {Measure::NeckWidth}, measures);
  addKeepOut(panel, KeepOutName::Eyelet, mirroredBack(eyelet), {Measure::NeckWidth}, measures);
}

// From the side seam round the leg to the crotch.
Polyline legOpening(const BodyPoints& points, const Measures& measures) {
  const double rise = measures.mm(Measure::LegRise);
  const Point crotch{measures.mm(Measure::CrotchWidth) / 2.0, points.hem.y};
  const Point top{points.hem.x, points.hem.y - rise};
  return curve(top, {crotch.x + 0.45 * (top.x - crotch.x), top.y + 0.25 * rise},
               {crotch.x + 0.05 * (top.x - crotch.x), crotch.y - 0.45 * rise}, crotch);
}

}  // namespace

BodyPoints bodyPoints(PanelName panel, const Measures& measures) {
  const double top = -neckDrop(panel, measures);
  const double side = measures.mm(Measure::BodyWidth) / 2.0;
  return {{measures.mm(Measure::NeckWidth) / 2.0, top},
          {measures.mm(Measure::ShoulderWidth) / 2.0, top + measures.mm(Measure::ShoulderDrop)},
          {side, top + measures.mm(Measure::ArmholeDepth)},
          {side, top + measures.mm(Measure::BodyLength)}};
}

Polyline neckline(const GarmentKind& kind, PanelName panel, const Measures& measures) {
  const Point end = bodyPoints(panel, measures).shoulderPoint;
  if (kind.neck == NeckForm::Vee && panel == PanelName::Front) {
    // Straight from the point of the V, bending a little towards the shoulder.
    return curve({0.0, 0.0}, end * (1.0 / 3.0), {0.75 * end.x, 0.60 * end.y}, end);
  }
  // A front neck comes down almost straight and turns late; a back neck is a shallow dish.
  const bool back = panel == PanelName::Back;
  return curve({0.0, 0.0}, {(back ? 0.60 : 0.55) * end.x, 0.0},
               {(back ? 0.90 : 0.95) * end.x, (back ? 0.50 : 0.45) * end.y}, end);
}

Polyline armhole(const BodyPoints& points) {
  const Point from = points.shoulderEnd;
  const Point across = points.pit - from;
  // Scooped a little inside the shoulder's end, then out to the pit.
  return curve(from, {from.x - 0.06 * across.y, from.y + 0.50 * across.y},
               {from.x + 0.20 * across.x, from.y + 0.94 * across.y}, points.pit);
}

PanelShape bodyPanel(const GarmentKind& kind, PanelName name, const Measures& measures) {
  PanelShape panel;
  panel.name = name;
  panel.measures = shapingMeasures(name);
  const BodyPoints points = bodyPoints(name, measures);
  panel.centreBackOrFront = Length::fromMm(points.hem.y);

  HalfOutline half({0.0, 0.0});
  half.along(neckline(kind, name, measures), EdgeName::CollarSeam);
  half.lineTo(points.shoulderEnd, EdgeName::ShoulderSeam);
  half.along(armhole(points),
             kind.sleeve == SleeveForm::None ? EdgeName::ArmOpening : EdgeName::Armhole);
  if (kind.hem == HemForm::Legs) {
    const Polyline leg = legOpening(points, measures);
    half.lineTo(leg.front(), EdgeName::SideSeam);
    half.along(leg, EdgeName::LegOpening);
    panel.measures.insert(panel.measures.end(), {Measure::LegRise, Measure::CrotchWidth});
  } else {
    half.lineTo(points.hem, EdgeName::SideSeam);
  }
  half.drawInto(panel, EdgeName::Hem);

  addCollarSeam(panel, kind, measures, points.shoulderEnd);
  if (kind.hemRib && measures.mm(Measure::RibHeight) > 0.0) {
    addKeepOut(panel, KeepOutName::HemRib,
               box(-points.hem.x, points.hem.y - measures.mm(Measure::RibHeight), points.hem.x,
                   points.hem.y),
               {Measure::RibHeight}, measures);
  }
  if (kind.hem == HemForm::Legs) {
    addSnaps(panel, points, measures);
  }
  if (name == PanelName::Front) {
    addPocketKeepOuts(panel, kind, measures);
    addOpening(panel, kind, measures, points.hem.y);
    if (kind.drawcord) {
      addEyelets(panel, measures);
    }
  } else if (kind.yoke) {
    addYokeSeam(panel, points, measures);
  }
  addBodyDetails(panel, kind, measures);
  addNeckDetails(panel, kind, measures);
  return panel;
}

}  // namespace creaseline::garment
