// SPDX-License-Identifier: MIT
// The words of a run card for what lies how in the frame and at the machine.
#pragma once

#include <string>

#include "creaseline/base/units.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

// Side of the frame where the bracket is, in the frame's own view: "top", "left and right".
std::string bracketAtMachine(BracketSide side);
// The same as it lies on the panel: "towards the collar seam".
std::string bracketOnGarment(BracketSide side, const PlacementPlan& plan, Angle frameTurn);
// "the collar seam at the frame's left side"
std::string loadingPhrase(const PlacementPlan& plan, Angle frameTurn);
// Turn of the design in the frame: "none, its top at the frame's top", "90° clockwise, ...".
std::string turnInFramePhrase(Angle turn);

// From the frame's centre to the design's, in the frame's own view, to the millimetre.
struct StartPoint {
  Length right, down;
  bool operator==(const StartPoint&) const = default;
};
// Precondition: plan.frame.
StartPoint startPoint(const PlacementPlan& plan);
// "on the frame's centre", "1/2 in (13 mm) right of and 1/8 in (3 mm) above the frame's centre"
std::string startPhrase(const StartPoint& start, const UnitChoice& units);

}  // namespace creaseline
