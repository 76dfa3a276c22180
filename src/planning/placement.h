// SPDX-License-Identifier: MIT
// Where the design goes: the rule that applies, and the place it gives on this size.
#pragma once

#include "creaseline/planning/plan.h"
#include "planning/request.h"

namespace creaseline {

// The first rule that matches, the shop's own before the shipped ones; null if there is none. A
// rule that measures from a mark that the garment lacks does not match.
const PlacementRule* findPlacementRule(const PlacementRequest& request, const Workshop& workshop);

// What would win over the rule: "a house rule of the shop".
std::string ruleChanger(const PlacementRule& rule);

// Tells in the reasons which rules `rule` won over, and which of the shop's own were passed over
// for want of their mark: what would apply if it were not there.
void addBeatenRules(Placed& placed, const PlacementRule& rule, const PlacementRequest& request,
                    const Workshop& workshop);

// Which way along the panel's y axis `distance` leads: +1 away from the datum, -1 towards it.
double landmarkDirection(Landmark from);

// `outline` is the design as sewn, in its own coordinates.
Placed placeDesign(const PlacementRequest& request, const PlacementRule& rule,
                   const Location& location, const PanelShape& panel, const Outline& outline,
                   const UnitChoice& units);

// The panel's extent along the row at y; nothing if the row misses the panel.
std::optional<Region::Interval> rowExtent(const Ring& ring, double y);

}  // namespace creaseline
