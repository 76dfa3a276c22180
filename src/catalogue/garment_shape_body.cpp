// SPDX-License-Identifier: MIT
// Front and back panel: outline and keep-outs.
#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

// Cloth below the collar seam that the seam's own layers and topstitching take, from memory: a
// narrow rib seam, the stand of a collar, the double layer of a hood.
double seamDepth(NeckForm neck) {
  switch (neck) {
    case NeckForm::Crew:
      return 6.0;
    case NeckForm::Collar:
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

Ring box(double left, double top, double right, double bottom) {
  return {{left, top}, {right, top}, {right, bottom}, {left, bottom}};
}

// The strip under the collar seam as convex pieces, few enough that checks stay quick: their
// chords leave the curve by less than a millimetre on any adult neck.
void addCollarSeam(PanelShape& panel, double depth, const Measures& measures, Point shoulderEnd) {
  constexpr std::size_t kPieces = 8;
  const Polyline seam = neckline(panel.name, measures);
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

void addFrontKeepOuts(PanelShape& panel, const GarmentKind& kind, const Measures& measures,
                      double hem) {
  if (kind.pocket != PocketForm::None) {
    const std::vector<Measure> shaping = {Measure::PocketWidth, Measure::PocketTopWidth,
                                          Measure::PocketHeight, Measure::PocketAboveHem};
    panel.measures.insert(panel.measures.end(), shaping.begin(), shaping.end());
    // The whole pocket: sewing through it would close it, and a frame cannot close over it.
    for (const Ring& area : pocketAreas(kind, measures)) {
      panel.keepOuts.push_back(
          {KeepOutName::PocketEdge, area, true, true, measures.anyAssumed(shaping)});
    }
  }
  if (kind.opening == FrontOpening::Placket) {
    const std::vector<Measure> shaping = {Measure::PlacketLength, Measure::PlacketWidth};
    panel.measures.insert(panel.measures.end(), shaping.begin(), shaping.end());
    const double half = measures.mm(Measure::PlacketWidth) / 2.0;
    panel.keepOuts.push_back({KeepOutName::Placket,
                              box(-half, 0.0, half, measures.mm(Measure::PlacketLength)), true,
                              true, measures.anyAssumed(shaping)});
  }
  if (kind.opening == FrontOpening::FullZip) {
    panel.measures.push_back(Measure::ZipWidth);
    const double half = measures.mm(Measure::ZipWidth) / 2.0;
    panel.keepOuts.push_back({KeepOutName::Zip, box(-half, 0.0, half, hem), true, true,
                              measures.anyAssumed({Measure::ZipWidth})});
  }
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

Polyline neckline(PanelName panel, const Measures& measures) {
  const Point end = bodyPoints(panel, measures).shoulderPoint;
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

std::vector<Ring> pocketAreas(const GarmentKind& kind, const Measures& measures) {
  // The hand opening slants over the upper part; below it the edge is upright, from memory.
  constexpr double kUprightShare = 0.3;
  const double bottom =
      bodyPoints(PanelName::Front, measures).hem.y - measures.mm(Measure::PocketAboveHem);
  const double height = measures.mm(Measure::PocketHeight);
  const double top = bottom - height;
  const double outer = measures.mm(Measure::PocketWidth) / 2.0;
  const double upper = measures.mm(Measure::PocketTopWidth) / 2.0;
  const bool split = kind.pocket == PocketForm::SplitKangaroo;
  const double inner =
      split && kind.opening == FrontOpening::FullZip ? measures.mm(Measure::ZipWidth) / 2.0 : 0.0;
  Polyline rightHalf{{inner, top}, {upper, top}};
  if (upper < outer) {
    rightHalf.push_back({outer, bottom - kUprightShare * height});
  }
  rightHalf.push_back({outer, bottom});
  if (split) {
    rightHalf.push_back({inner, bottom});
    return {rightHalf, mirroredBack(rightHalf)};
  }
  Ring whole(rightHalf.begin() + 1, rightHalf.end());
  append(whole, mirroredBack(whole));
  return {whole};
}

PanelShape bodyPanel(const GarmentKind& kind, PanelName name, const Measures& measures) {
  PanelShape panel;
  panel.name = name;
  panel.measures = shapingMeasures(name);
  const BodyPoints points = bodyPoints(name, measures);
  panel.centreBackOrFront = Length::fromMm(points.hem.y);

  HalfOutline half({0.0, 0.0});
  half.along(neckline(name, measures), EdgeName::CollarSeam);
  half.lineTo(points.shoulderEnd, EdgeName::ShoulderSeam);
  half.along(armhole(points), EdgeName::Armhole);
  half.lineTo(points.hem, EdgeName::SideSeam);
  half.drawInto(panel, EdgeName::Hem);

  addCollarSeam(panel, seamDepth(kind.neck), measures, points.shoulderEnd);
  if (kind.hemRib) {
    panel.measures.push_back(Measure::RibHeight);
    const double rib = measures.mm(Measure::RibHeight);
    if (rib > 0.0) {
      panel.keepOuts.push_back({KeepOutName::HemRib,
                                box(-points.hem.x, points.hem.y - rib, points.hem.x, points.hem.y),
                                true, true, measures.anyAssumed({Measure::RibHeight})});
    }
  }
  if (name == PanelName::Front) {
    addFrontKeepOuts(panel, kind, measures, points.hem.y);
  }
  addBodyDetails(panel, kind, measures);
  addNeckDetails(panel, kind, measures);
  return panel;
}

}  // namespace creaseline::garment
