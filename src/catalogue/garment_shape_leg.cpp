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

PanelShape legPanel(PanelName name, const Measures& measures) {
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
  half.along(curve({waist, 0.0}, {waist + 0.4 * (thigh - waist), 0.3 * rise}, {thigh, 0.75 * rise},
                   {thigh, rise}),
             EdgeName::SideSeam);
  half.lineTo({hem, length}, EdgeName::SideSeam);
  half.drawInto(panel, EdgeName::Hem);
  panel.sides.back().name = EdgeName::WaistSeam;
  nameInnerSide(panel, rise);

  panel.keepOuts.push_back({KeepOutName::Waistband, box(-waist, 0.0, waist, kWaistSeamReach), true,
                            true, measures.anyAssumed({Measure::WaistWidth})});
  addArea(panel, DetailKind::Neighbour,
          box(-waist, -measures.mm(Measure::WaistbandHeight), waist, 0.0));
  const double inset = std::min(20.0, (length - rise) / 4.0);
  const double atInset = hem + (thigh - hem) * inset / (length - rise);
  addLine(panel, DetailKind::Seam, {{-atInset, length - inset}, {atInset, length - inset}});
  return panel;
}

}  // namespace creaseline::garment
