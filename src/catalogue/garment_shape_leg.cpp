// SPDX-License-Identifier: MIT
// A leg of trousers or shorts: its front half, laid on the crease, waist seam on top.
//
// The cloth is not symmetric about its crease: the crotch reaches further in than the hip goes out.
// The model takes both sides alike and stays within the cloth: a quarter of the waist on each side
// of the crease on top, half of the leg's flat width from the level of the crotch down.
#include <algorithm>

#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

// Stitching and elastic of the waistband reach a little below its seam, from memory.
constexpr double kWaistSeamReach = 8.0;

// Topstitching of a fly beside the crotch seam, and how much of the rise it runs down; both from
// memory. It may close either way, so that both legs keep clear.
constexpr double kFlyWidth = 40.0;
constexpr double kFlyShare = 0.75;
// A side pocket's opening: how far in from the side it begins at the waist seam, where it meets the
// side seam, and the facing on both sides of its edge. From memory; less on small legs.
constexpr double kPocketIn = 40.0;
constexpr double kPocketInShare = 0.35;
constexpr double kPocketDown = 160.0;
constexpr double kPocketDownShare = 0.9;
constexpr double kPocketFacing = 6.0;

// A ring or line drawn for the viewer's right, at the side where it belongs.
Ring ringAt(const Ring& ring, bool right) {
  return right ? ring : mirroredBack(ring);
}

void addFly(PanelShape& panel, const Polyline& side, const Measures& measures) {
  const Polyline seam = partDownTo(side, kFlyShare * measures.mm(Measure::FrontRise));
  Ring fly = seam;
  fly.push_back({seam.back().x - kFlyWidth, seam.back().y});
  fly.push_back({seam.front().x - kFlyWidth, seam.front().y});
  fly = ringAt(fly, panel.name == PanelName::RightLeg);
  panel.keepOuts.push_back(
      {KeepOutName::Fly, fly, true, true,
       measures.anyAssumed({Measure::FrontRise, Measure::WaistWidth, Measure::ThighWidth})});
  fly.push_back(fly.front());
  addLine(panel, DetailKind::ZipLine, fly);
}

void addSidePocket(PanelShape& panel, const Polyline& side, const Measures& measures) {
  const double waist = side.front().x;
  const double down = std::min(kPocketDown, kPocketDownShare * measures.mm(Measure::FrontRise));
  const Point top{waist - std::min(kPocketIn, kPocketInShare * waist), 0.0};
  const Point bottom = partDownTo(side, down).back();
  const Ring opening = {{top.x - kPocketFacing, top.y},
                        {top.x + kPocketFacing, top.y},
                        bottom,
                        {bottom.x - 2.0 * kPocketFacing, bottom.y}};
  const bool right = panel.name == PanelName::LeftLeg;
  // The bag is pinned back, so that rings may lie across; a needle would sew the opening shut.
  panel.keepOuts.push_back(
      {KeepOutName::PocketOpening, ringAt(opening, right), true, false,
       measures.anyAssumed({Measure::FrontRise, Measure::WaistWidth, Measure::ThighWidth})});
  addLine(panel, DetailKind::PocketLine, ringAt({top, bottom}, right));
}

// Both sides are drawn as the outer one. On the left leg that is on the viewer's right.
void nameInnerSide(PanelShape& panel, double rise) {
  const bool outerIsRight = panel.name == PanelName::LeftLeg;
  for (std::size_t i = 0; i < panel.sides.size(); ++i) {
    PanelSide& side = panel.sides[i];
    if (side.name == EdgeName::SideSeam && side.viewerRight != outerIsRight) {
      const double lower =
          std::max(panel.outline[i].y, panel.outline[(i + 1) % panel.outline.size()].y);
      side.name = lower <= rise ? EdgeName::CrotchSeam : EdgeName::Inseam;
    }
  }
}

}  // namespace

PanelShape legPanel(const GarmentKind& kind, PanelName name, const Measures& measures) {
  PanelShape panel;
  panel.name = name;
  panel.measures = {Measure::BodyLength, Measure::WaistWidth,  Measure::FrontRise,
                    Measure::ThighWidth, Measure::LegHemWidth, Measure::WaistbandHeight};
  const double length = measures.mm(Measure::BodyLength);
  const double rise = measures.mm(Measure::FrontRise);
  const double waist = measures.mm(Measure::WaistWidth) / 4.0;
  const double thigh = measures.mm(Measure::ThighWidth) / 2.0;
  const double hem = measures.mm(Measure::LegHemWidth) / 2.0;
  panel.centreBackOrFront = Length::fromMm(length);

  HalfOutline half({waist, 0.0});
  const Polyline side = curve({waist, 0.0}, {waist + 0.4 * (thigh - waist), 0.3 * rise},
                              {thigh, 0.75 * rise}, {thigh, rise});
  half.along(side, EdgeName::SideSeam);
  half.lineTo({hem, length}, EdgeName::SideSeam);
  half.drawInto(panel, EdgeName::Hem);
  panel.sides.back().name = EdgeName::WaistSeam;
  nameInnerSide(panel, rise);

  panel.keepOuts.push_back({KeepOutName::Waistband, box(-waist, 0.0, waist, kWaistSeamReach), true,
                            true, measures.anyAssumed({Measure::WaistWidth})});
  if (kind.legs.fly) {
    addFly(panel, side, measures);
  }
  if (kind.legs.sidePockets) {
    addSidePocket(panel, side, measures);
  }
  addArea(panel, DetailKind::Neighbour,
          box(-waist, -measures.mm(Measure::WaistbandHeight), waist, 0.0));
  const double inset = std::min(20.0, (length - rise) / 4.0);
  const double atInset = hem + (thigh - hem) * inset / (length - rise);
  addLine(panel, DetailKind::Seam, {{-atInset, length - inset}, {atInset, length - inset}});
  return panel;
}

}  // namespace creaseline::garment
