// SPDX-License-Identifier: MIT
// The plan's numbers as words, used alike by report, sheets and desk so that they cannot differ.
#pragma once

#include <string>
#include <vector>

#include "creaseline/base/money.h"
#include "creaseline/base/units.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

// "7 7/8 × 9 in": width times height, the unit once.
[[nodiscard]] std::string sizePhrase(Length width, Length height, const UnitChoice& units);
// The same of what is open inside, such as a frame's window: to the last mark that it reaches.
[[nodiscard]] std::string windowPhrase(const Window& window, const UnitChoice& units);
// Room, rounded down to the ruler mark so that no more is promised than there is: "1/4 in",
// "under 1/8 in", "none".
[[nodiscard]] std::string roomPhrase(Length room, const UnitChoice& units);
// How much one length goes beyond another: "1 3/8 in", and for less than half a ruler mark "under
// 1/8 in", since a difference is never "0 in".
[[nodiscard]] std::string differencePhrase(Length by, const UnitChoice& units);
// Side of the design from which the drop is measured: "top of the design", "left side of the
// design", or "nearest point of the design" if it is turned otherwise than by quarter turns.
[[nodiscard]] std::string nearSidePhrase(const PlacementPlan& plan);
// "the centre crease", "the middle of the zip", "the fold of the sleeve"
[[nodiscard]] std::string centreLinePhrase(const PlacementPlan& plan);
// The same beside a drawn line, without an article: "centre crease"
[[nodiscard]] std::string centreLineLabel(const PlacementPlan& plan);
// "A and B"
[[nodiscard]] std::string bothPhrase(const std::string& one, const std::string& other);
// "below the collar seam", "above the cuff edge", "from the face edge"
[[nodiscard]] std::string landmarkPhrase(Landmark from);
// "on the centre crease", "3 1/2 in to the wearer's left of the centre crease (viewer's right)"
[[nodiscard]] std::string lateralPhrase(const PlacementPlan& plan, const UnitChoice& units);
// The same without the distance, for a centre that lies off the line: "to the wearer's left of the
// centre crease (viewer's right)".
[[nodiscard]] std::string lateralDirection(const PlacementPlan& plan);
// As the panel is drawn; on a hood, which is drawn the other way up than it is worn, the end that
// lies on top is named. "none, top of the design towards the collar seam", "180° against upright as
// worn, top of the design towards the face edge"
[[nodiscard]] std::string turnPhrase(const PlacementPlan& plan);
// "15° clockwise", "0.5° anticlockwise"
[[nodiscard]] std::string wayPhrase(Angle turn);
// What a direction on a panel points at; 0 is towards the datum, clockwise to the viewer: "towards
// the collar seam", "mostly towards the hem" if it is no quarter turn.
[[nodiscard]] std::string facingPhrase(const PlacementPlan& plan, Angle direction);
[[nodiscard]] std::string facingPhrase(const PanelShape& panel, Angle direction);
// "the collar seam", "the face edge", "the cuff": where the panel's coordinates begin.
[[nodiscard]] std::string datumPhrase(const PlacementPlan& plan);
// Side of a panel that lies towards +x (`right`) or -x, as one says it at the hooping table. The
// front faces the viewer, so its right is the wearer's left; back and hood are seen from behind.
// A sleeve lies on its fold with the cuff on top: there the sides are the garment's front and back.
[[nodiscard]] std::string sideOfPanel(PanelName panel, bool right);
// "front, wearer's left (viewer's right)"
[[nodiscard]] std::string sidePhrase(const Location& location);
// "left 6 mm, right 6 mm, up 8 mm, down 3 mm, turned 2.1°", each rounded down
[[nodiscard]] std::string slackPhrase(const Slack& slack, const UnitChoice& units);
// "cut-away, at least 85 g/m², 1 layer, floated"
[[nodiscard]] std::string backingPhrase(const BackingChoice& backing, const UnitChoice& units);
// "12.40 EUR" and "12.40", in the language spoken; files have Money's own text.
[[nodiscard]] std::string moneyPhrase(Money amount, const Currency& currency);
[[nodiscard]] std::string amountPhrase(Money amount, const Currency& currency);
// "75 ball point"
[[nodiscard]] std::string needlePhrase(const BackingChoice& backing);
// "Large magnetic (200 × 230 mm window), turned 90° on the garment"
[[nodiscard]] std::string framePhrase(const Frame& frame, const FrameChoice& choice,
                                      const UnitChoice& units);
// "body width", "front neck drop"
[[nodiscard]] std::string measurePhrase(Measure measure);
[[nodiscard]] std::string panelPhrase(PanelName panel);
// The location's name, or its id if the rules lack it.
[[nodiscard]] std::string locationPhrase(const LocationId& id, const Rules& rules);
[[nodiscard]] std::string edgePhrase(EdgeName edge);
[[nodiscard]] std::string keepOutPhrase(KeepOutName name);
// "S M L", or "S to XL" for four neighbours in the chart and more. Sizes come out in the chart's
// order, once each; a size that the chart lacks comes last.
[[nodiscard]] std::string sizesPhrase(const std::vector<SizeName>& sizes, const SizeChart& chart);

}  // namespace creaseline
