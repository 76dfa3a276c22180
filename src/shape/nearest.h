// SPDX-License-Identifier: MIT
// The point of a straight side nearest to a given point.
#pragma once

#include <algorithm>

#include "creaseline/shape/point.h"

namespace creaseline {

inline Point nearestOnSegment(Point from, Point to, Point point) {
  const Point along = to - from;
  const double squared = dot(along, along);
  if (squared == 0.0) {
    return from;
  }
  return from + along * std::clamp(dot(point - from, along) / squared, 0.0, 1.0);
}

// Twice the signed area: positive if the ring runs clockwise to the viewer (+y down).
template <class Points>
double windingSum(const Points& ring) {
  double sum = 0.0;
  for (std::size_t i = 0, count = ring.size(); i < count; ++i) {
    sum += cross(ring[i] - ring[0], ring[i + 1 == count ? 0 : i + 1] - ring[0]);
  }
  return sum;
}

}  // namespace creaseline
