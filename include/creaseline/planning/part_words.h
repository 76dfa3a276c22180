// SPDX-License-Identifier: MIT
// The words for a design that is sewn in several hoopings, used alike by lists and sheets.
#pragma once

#include <string>
#include <vector>

#include "creaseline/base/units.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

// "part 1 of 2"
[[nodiscard]] std::string partPhrase(int number, int of);
// Where a part lies in a grid, the strip first: "row 2, column 1".
[[nodiscard]] std::string cellPhrase(const GridCell& cell);
// ", part 1 of 2", in a grid ", part 3 of 4 (row 2, column 1)", to follow a name; empty for a
// design that is sewn at once.
[[nodiscard]] std::string partSuffix(const PlacementPlan& plan);
// The marks that a part is aligned on: "register marks A and B of part 1"; empty for the first.
[[nodiscard]] std::string alignedMarksPhrase(const DesignPart& part);
// The marks that it sews: "register marks A and B for part 2, C and D for part 3"; empty where no
// part is aligned on this one.
[[nodiscard]] std::string sewnMarksPhrase(const DesignPart& part);
// "the join with part 2 lies 3 1/8 in from this part's centre, towards the hem; the parts overlap
// there by 1/16 in"
[[nodiscard]] std::string joinPhrase(const PlacementPlan& plan, const PartJoin& join,
                                     const UnitChoice& units);

// Where a mark lies, for one who makes the design or checks the sheet: "93.0 mm right of and 155.2
// mm above this part's centre, as the design reads; sewn by part 1".
[[nodiscard]] std::string markPhrase(const PlacementPlan& plan, const RegisterMark& mark,
                                     const UnitChoice& units);

// What the hands do before a part is sewn, so that it meets what is sewn already; empty for the
// first.
[[nodiscard]] std::string alignStep(const DesignPart& part);
// What the machine does at the end of a part, for those that are aligned on it; empty where none
// is.
[[nodiscard]] std::string sewMarksStep(const DesignPart& part);
// What the hands do with the marks that have served; empty for the first.
[[nodiscard]] std::string pickOutStep(const DesignPart& part);

}  // namespace creaseline
