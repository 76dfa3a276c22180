// SPDX-License-Identifier: MIT
// Turning of points.
#include "creaseline/shape/point.h"

namespace creaseline {

Point turned(Point point, Angle angle) {
  // Quarter turns are by far the most common and must not smear 0 into 6e-17.
  switch (angle.millidegrees()) {
    case 0:
      return point;
    case 90'000:
      return {-point.y, point.x};
    case 180'000:
      return {-point.x, -point.y};
    case -90'000:
      return {point.y, -point.x};
    default:
      break;
  }
  const double cosine = std::cos(angle.radians());
  const double sine = std::sin(angle.radians());
  return {cosine * point.x - sine * point.y, sine * point.x + cosine * point.y};
}

}  // namespace creaseline
