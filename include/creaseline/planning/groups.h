// SPDX-License-Identifier: MIT
// Sizes whose numbers agree to the ruler mark share a page, a card, a template.
#pragma once

#include <cstddef>
#include <vector>

#include "creaseline/base/units.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

// Indices into Plan::placements of one line and location, in order; never empty. All agree in
// drop, centre offset, lateral offset and the frame's place on the design to the ruler mark, and
// exactly in turn, frame, frame turn and backing; all have a rule and a frame or none has.
using SizeGroup = std::vector<std::size_t>;

// In the order of the plan.
[[nodiscard]] std::vector<SizeGroup> groupSizes(const Plan& plan, const UnitChoice& units);

// Whether a finding is about that size of that line and location. One about the whole order is
// about none of them.
[[nodiscard]] bool concerns(const Finding& finding, const PlacementPlan& plan);

}  // namespace creaseline
