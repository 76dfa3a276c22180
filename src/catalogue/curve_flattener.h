// SPDX-License-Identifier: MIT
// Replaces curves by chains of points that lie on them, no further away than a tolerance.
#pragma once

#include <cstddef>

#include "creaseline/shape/point.h"

namespace creaseline {

// An elliptical arc as SVG writes it: from the chain's last point to `end`.
struct EndpointArc {
  double radiusX = 0.0, radiusY = 0.0;
  double rotationDegrees = 0.0;
  bool large = false;      // the longer of the two ways
  bool clockwise = false;  // SVG's sweep flag; to the viewer, +y down
  Point end;
};

// Appends curves to a chain that must not be empty. Each function returns false, and may have
// appended part of the curve, if the chain would have more than `mostPoints` points or the
// coordinates are too large to compute with.
class CurveFlattener {
 public:
  // Precondition: tolerance > 0, in the units of the coordinates.
  CurveFlattener(double tolerance, std::size_t mostPoints)
      : tolerance_(tolerance), mostPoints_(mostPoints) {}

  [[nodiscard]] bool line(Polyline& chain, Point end) const;
  [[nodiscard]] bool quadratic(Polyline& chain, Point control, Point end) const;
  [[nodiscard]] bool cubic(Polyline& chain, Point control1, Point control2, Point end) const;
  [[nodiscard]] bool arc(Polyline& chain, const EndpointArc& arc) const;
  // The whole ellipse as a ring; `ring` must be empty.
  [[nodiscard]] bool ellipse(Ring& ring, Point centre, double radiusX, double radiusY) const;

 private:
  // Nothing fits: zero. `bend` is the largest second derivative over the unit interval.
  [[nodiscard]] std::size_t stepsForBend(double bend, std::size_t used) const;
  [[nodiscard]] std::size_t stepsForSweep(double radius, double sweep, std::size_t used) const;
  [[nodiscard]] std::size_t withinBounds(double steps, std::size_t used) const;

  double tolerance_;
  std::size_t mostPoints_;
};

}  // namespace creaseline
