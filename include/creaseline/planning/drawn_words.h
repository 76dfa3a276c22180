// SPDX-License-Identifier: MIT
// What a sheet says of a placement in the view in which the panel is drawn: as in panel
// coordinates, but sleeves turned by 180 degrees, cuff at the bottom. Words for directions must
// agree with the drawing beside them.
#pragma once

#include <string>

#include "creaseline/base/units.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/groups.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

// The room in the frame, as drawn: for each direction the least of the group's sizes, for the
// tightest garment counts. Precondition: every placement of the group has a frame.
[[nodiscard]] Slack leastSlackAsDrawn(const Plan& plan, const SizeGroup& group);
// Sides of the frame that carry the bracket: "right", "left and right". Precondition: plan.frame,
// which lies at quarter turns.
[[nodiscard]] std::string bracketAsDrawn(const Frame& frame, const PlacementPlan& plan);
// "1/2 in above and 1/4 in left of the design's centre"; empty if frame and design share their
// centre to the ruler mark. Precondition: plan.frame.
[[nodiscard]] std::string frameOffsetAsDrawn(const PlacementPlan& plan, const UnitChoice& units);
// "not turned against the frame", "turned by 90° clockwise". Precondition: plan.frame.
[[nodiscard]] std::string designInFramePhrase(const PlacementPlan& plan);

}  // namespace creaseline
