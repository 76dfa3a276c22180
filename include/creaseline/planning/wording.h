// SPDX-License-Identifier: MIT
// The plan's numbers as words, used alike by report, sheets and desk so that they cannot differ.
#pragma once

#include <string>

#include "creaseline/base/units.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

// "below the collar seam", "above the cuff edge", "from the face edge"
[[nodiscard]] std::string landmarkPhrase(Landmark from);
// "on the centre crease", "3 1/2 in to the wearer's left of the centre crease (viewer's right)"
[[nodiscard]] std::string lateralPhrase(const PlacementPlan& plan, const UnitChoice& units);
// "none, top of the design towards the collar", "180° ..., top of the design towards the face edge"
[[nodiscard]] std::string turnPhrase(const PlacementPlan& plan);
// "front, wearer's left (viewer's right)"
[[nodiscard]] std::string sidePhrase(const Location& location);
// "left 6 mm, right 6 mm, up 8 mm, down 3 mm, turned 2.1°"
[[nodiscard]] std::string slackPhrase(const Slack& slack, const UnitChoice& units);
// "cut-away, at least 85 g/m², 1 layer, floated"
[[nodiscard]] std::string backingPhrase(const BackingChoice& backing, const UnitChoice& units);
// "75 ball point"
[[nodiscard]] std::string needlePhrase(const BackingChoice& backing);
// "200 × 230 mm window": name and sizes, "turned 90° on the garment" if it is
[[nodiscard]] std::string framePhrase(const Frame& frame, const FrameChoice& choice,
                                      const UnitChoice& units);
// "body width", "front neck drop"
[[nodiscard]] std::string measurePhrase(Measure measure);
[[nodiscard]] std::string panelPhrase(PanelName panel);
[[nodiscard]] std::string edgePhrase(EdgeName edge);
[[nodiscard]] std::string keepOutPhrase(KeepOutName name);
// "S M L" or "S to XL" for neighbours in the chart.
[[nodiscard]] std::string sizesPhrase(const std::vector<SizeName>& sizes, const SizeChart& chart);

}  // namespace creaseline
