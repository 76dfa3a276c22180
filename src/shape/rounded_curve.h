// SPDX-License-Identifier: MIT
// The curve |x / a|^f + |y / b|^f = 1, between an ellipse (f = 2) and a rectangle: Lamé's curve.
#pragma once

#include "creaseline/shape/point.h"

namespace creaseline {

// Corners on the curve, clockwise to the viewer, such that the curve is nowhere further than the
// tolerance outside. Between two corners it lies in the triangle of their chord and their tangents
// (it is convex), so the height of that triangle bounds the error; where it is too high, the curve
// is cut at the normal half way. Millimetres; 2 <= fullness.
[[nodiscard]] Ring roundedCurve(double halfWidth, double halfHeight, double fullness,
                                double tolerance);

}  // namespace creaseline
