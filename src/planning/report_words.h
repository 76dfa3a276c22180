// SPDX-License-Identifier: MIT
// Words and figures of the report alone.
#pragma once

#include <cstddef>
#include <string>

#include "creaseline/base/units.h"
#include "creaseline/planning/finding.h"

namespace creaseline {

// "Stops: cannot be sewn as asked"
[[nodiscard]] std::string headingOf(Severity severity);
// "5/8 in (14.7 mm)": a ruler's mark is too coarse for what is too much or too little by a hair.
[[nodiscard]] std::string amount(Length value, const UnitChoice& units);
// Percent, rounded down so that what is said to fit fits.
[[nodiscard]] std::string percentDown(double factor);
// Wide enough for the words that are longest in most languages.
[[nodiscard]] std::size_t labelColumns();

}  // namespace creaseline
