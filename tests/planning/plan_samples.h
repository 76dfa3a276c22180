// SPDX-License-Identifier: MIT
// Small plans made by hand, for tests of words, groups and reports. No planner is involved.
#pragma once

#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/plan.h"

namespace creaseline::samples {

inline constexpr UnitChoice kInches{LengthUnit::Inch, RulerMark::Eighth,
                                    WeightUnit::GramsPerSquareMetre};
inline constexpr UnitChoice kMillimetres{LengthUnit::Millimetre, RulerMark::Eighth,
                                         WeightUnit::GramsPerSquareMetre};

// A chart of the sizes YS YM S M L XL 2XL, without measures.
SizeChart chart();
// An order of one line of hoodies (S, M, 2XL) with one design on the centre chest.
Order order();
// One magnetic frame, 200 by 230 mm inside.
Shop shop();
// One location (centre chest) and one caution.
Rules rules();
// Centre chest, size M, three garments: drop 3 in, centre 6 in, framed.
PlacementPlan placement();
// S, M and 2XL of that order: the first two alike, the third an inch lower and without a frame;
// one stop with a remedy and one watch. Cautions point into `rules`.
Plan plan(const Rules& rules);

}  // namespace creaseline::samples
