// SPDX-License-Identifier: MIT
// What the hands and the machine do, in order: the checklist of a placement.
#pragma once

#include <string>
#include <vector>

#include "creaseline/planning/plan.h"
#include "planning/workshop.h"

namespace creaseline {

// Precondition: the placement, frame and backing of `plan` are decided.
std::vector<Step> stepsFor(const PlacementPlan& plan, const Location& location,
                           const GarmentKind& kind, const UnitChoice& units);

// What the hands do after a block before the next one starts: "Piece K: lay navy twill over the
// line". Empty if nothing.
std::string handStepAfter(const ThreadBlock& block, const Design& design);

// The cautions that this placement calls for, in the order of the rules.
std::vector<const Caution*> cautionsFor(const PlacementPlan& plan, const Blank& blank,
                                        const GarmentKind& kind, const Workshop& workshop);

}  // namespace creaseline
