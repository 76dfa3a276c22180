// SPDX-License-Identifier: MIT
// The one typographic system of all sheets: one family (lettering.h), three sizes, two weights.
#pragma once

#include "sheets/lettering.h"

namespace creaseline::typography {

using lettering::points;
using lettering::TextStyle;

// Everything that is read close by.
inline constexpr TextStyle kText{points(9.0), false};
inline constexpr TextStyle kStrong{points(9.0), true};
// Titles, sizes, what is looked for from a step away.
inline constexpr TextStyle kHeading{points(13.0), true};
inline constexpr TextStyle kHeadingLight{points(13.0), false};
// The numbers that are measured by, read at arm's length (at least 24 pt).
inline constexpr TextStyle kNumber{points(26.0), true};

}  // namespace creaseline::typography
