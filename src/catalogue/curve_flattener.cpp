// SPDX-License-Identifier: MIT
// Even steps in the curve's parameter. A chord over a step h of a curve with second derivative at
// most M is at most M h^2 / 8 away from it (error of linear interpolation).
#include "catalogue/curve_flattener.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace creaseline {
namespace {

constexpr double kFullSweep = 2.0 * std::numbers::pi;

// An ellipse turned by a fixed angle, by its eccentric angle.
struct TurnedEllipse {
  Point centre;
  double radiusX, radiusY;
  double cosine, sine;
  [[nodiscard]] Point at(double angle) const {
    const double x = radiusX * std::cos(angle);
    const double y = radiusY * std::sin(angle);
    return {centre.x + cosine * x - sine * y, centre.y + sine * x + cosine * y};
  }
};

double angleOf(Point p) {
  return std::atan2(p.y, p.x);
}

}  // namespace

std::size_t CurveFlattener::withinBounds(double steps, std::size_t used) const {
  // Not a number compares false; std::max() keeps it, as it stands first.
  return steps + static_cast<double>(used) <= static_cast<double>(mostPoints_)
             ? static_cast<std::size_t>(steps)
             : 0;
}

std::size_t CurveFlattener::stepsForBend(double bend, std::size_t used) const {
  return withinBounds(std::max(std::ceil(std::sqrt(bend / (8.0 * tolerance_))), 1.0), used);
}

std::size_t CurveFlattener::stepsForSweep(double radius, double sweep, std::size_t used) const {
  // The sagitta of a step is radius (1 - cos(step / 2)); an ellipse is a circle of its larger
  // radius, squeezed, so that its chords are no further away. Never more than a quarter turn.
  const double cosine = std::max(1.0 - tolerance_ / radius, std::sqrt(0.5));
  const double step = 2.0 * std::acos(std::min(cosine, 1.0));
  return withinBounds(std::max(std::ceil(std::abs(sweep) / step), 1.0), used);
}

bool CurveFlattener::line(Polyline& chain, Point end) const {
  if (chain.size() >= mostPoints_) {
    return false;
  }
  chain.push_back(end);
  return true;
}

bool CurveFlattener::quadratic(Polyline& chain, Point control, Point end) const {
  const Point start = chain.back();
  const double bend = 2.0 * norm(start - control * 2.0 + end);
  const std::size_t steps = stepsForBend(bend, chain.size());
  for (std::size_t i = 1; i < steps; ++i) {
    const double t = static_cast<double>(i) / static_cast<double>(steps);
    const double s = 1.0 - t;
    chain.push_back(start * (s * s) + control * (2.0 * s * t) + end * (t * t));
  }
  return steps > 0 && line(chain, end);
}

bool CurveFlattener::cubic(Polyline& chain, Point control1, Point control2, Point end) const {
  const Point start = chain.back();
  const double bend = 6.0 * std::max(norm(start - control1 * 2.0 + control2),
                                     norm(control1 - control2 * 2.0 + end));
  const std::size_t steps = stepsForBend(bend, chain.size());
  for (std::size_t i = 1; i < steps; ++i) {
    const double t = static_cast<double>(i) / static_cast<double>(steps);
    const double s = 1.0 - t;
    chain.push_back(start * (s * s * s) + control1 * (3.0 * s * s * t) +
                    control2 * (3.0 * s * t * t) + end * (t * t * t));
  }
  return steps > 0 && line(chain, end);
}

// W3C, SVG 1.1 (Second Edition), appendix F.6.5 and F.6.6: from end points to centre.
bool CurveFlattener::arc(Polyline& chain, const EndpointArc& arc) const {
  const Point start = chain.back();
  double radiusX = std::abs(arc.radiusX);
  double radiusY = std::abs(arc.radiusY);
  if (radiusX == 0.0 || radiusY == 0.0 || start == arc.end) {
    return line(chain, arc.end);
  }
  const double turn = std::remainder(arc.rotationDegrees, 360.0) * std::numbers::pi / 180.0;
  const double cosine = std::cos(turn);
  const double sine = std::sin(turn);
  const Point half = (start - arc.end) * 0.5;
  const Point local{cosine * half.x + sine * half.y, -sine * half.x + cosine * half.y};
  const double reach = std::hypot(local.x / radiusX, local.y / radiusY);
  if (reach > 1.0) {
    radiusX *= reach;
    radiusY *= reach;
  }
  // On the unit circle the chord's middle is `scaled` away from an end and `height` from the
  // centre.
  const Point scaled{local.x / radiusX, local.y / radiusY};
  const double chord = norm(scaled);
  const double height = std::sqrt(std::max(0.0, 1.0 - chord * chord)) / chord;
  const double side = arc.large == arc.clockwise ? -height : height;
  const Point centre{side * scaled.y, -side * scaled.x};  // of the unit circle
  const double from = angleOf(scaled - centre);
  double sweep = angleOf(-scaled - centre) - from;
  if (arc.clockwise && sweep < 0.0) {
    sweep += kFullSweep;
  } else if (!arc.clockwise && sweep > 0.0) {
    sweep -= kFullSweep;
  }
  const Point middle = (start + arc.end) * 0.5;
  const Point away{radiusX * centre.x, radiusY * centre.y};
  const TurnedEllipse ellipse{
      {middle.x + cosine * away.x - sine * away.y, middle.y + sine * away.x + cosine * away.y},
      radiusX,
      radiusY,
      cosine,
      sine};
  const std::size_t steps = stepsForSweep(std::max(radiusX, radiusY), sweep, chain.size());
  for (std::size_t i = 1; i < steps; ++i) {
    chain.push_back(ellipse.at(from + sweep * static_cast<double>(i) / static_cast<double>(steps)));
  }
  return steps > 0 && line(chain, arc.end);
}

bool CurveFlattener::ellipse(Ring& ring, Point centre, double radiusX, double radiusY) const {
  const TurnedEllipse ellipse{centre, radiusX, radiusY, 1.0, 0.0};
  const std::size_t needed = stepsForSweep(std::max(radiusX, radiusY), kFullSweep, 0);
  // A multiple of four, so that the four outermost points are among them and the size is true.
  const std::size_t steps = (needed + 3) / 4 * 4;
  if (needed == 0 || steps > mostPoints_) {
    return false;
  }
  for (std::size_t i = 0; i < steps; ++i) {
    ring.push_back(ellipse.at(kFullSweep * static_cast<double>(i) / static_cast<double>(steps)));
  }
  return true;
}

}  // namespace creaseline
