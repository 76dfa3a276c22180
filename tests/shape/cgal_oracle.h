// SPDX-License-Identifier: MIT
// CGAL, a second independent geometry library, as an oracle: exact arithmetic over the numbers
// that it is given.
#pragma once

#include "creaseline/shape/point.h"
#include "creaseline/shape/window.h"

namespace creaseline::test {

// How much further the sides of a convex polygon could move in and the points still be brought
// inside by a translation; negative if they cannot be now, and then by how much each side would
// have to move out. Millimetres. CGAL's linear programme in exact rational numbers: largest m
// with normal . (p + t) + m <= offset for every side and point.
[[nodiscard]] double marginByCgal(const Ring& convexClockwise, const std::vector<Point>& points);

// Radius of the smallest circle around the points, by CGAL in exact rational numbers.
[[nodiscard]] double smallestRadiusByCgal(const std::vector<Point>& points);

}  // namespace creaseline::test
