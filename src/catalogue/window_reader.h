// SPDX-License-Identifier: MIT
// Reads convex windows and rings of points.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/shape/window.h"

namespace creaseline {

// {"rectangle":["200 mm","230 mm"],"corner-radius":"20 mm"?} | {"ellipse":["100 mm","120 mm"]} |
// {"unit":"mm","polygon":[[x,y],...]}
[[nodiscard]] Window readWindow(const JsonCursor& at);

// Millimetres of one of the unit's steps: "mm", "cm", "in".
[[nodiscard]] double readUnit(const JsonCursor& at);

// A ring of [x, y] pairs in steps of `unitMm`. Repeated points and a repeated first point at the
// end are dropped; what is left has at least three points, at most `most`, encloses an area and
// does not cross itself.
[[nodiscard]] Ring readRing(const JsonCursor& at, double unitMm, std::size_t most);

}  // namespace creaseline
