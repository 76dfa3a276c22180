// SPDX-License-Identifier: MIT
// Points, vectors and boxes of the geometry kernel. Coordinates are double millimetres, +x to the
// viewer's right, +y down (see docs/conventions.md). Only this layer computes in bare doubles.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "creaseline/base/angle.h"

namespace creaseline {

struct Point {
  double x = 0.0;
  double y = 0.0;
  constexpr bool operator==(const Point&) const = default;
  constexpr Point operator+(Point o) const { return {x + o.x, y + o.y}; }
  constexpr Point operator-(Point o) const { return {x - o.x, y - o.y}; }
  constexpr Point operator-() const { return {-x, -y}; }
  constexpr Point operator*(double k) const { return {x * k, y * k}; }
};

[[nodiscard]] constexpr double dot(Point a, Point b) {
  return a.x * b.x + a.y * b.y;
}
[[nodiscard]] constexpr double cross(Point a, Point b) {
  return a.x * b.y - a.y * b.x;
}
// Millimetres of cloth are far from overflow, so the plain root serves; std::hypot is slow.
[[nodiscard]] inline double norm(Point a) {
  return std::sqrt(a.x * a.x + a.y * a.y);
}

// Turns about the origin; a positive angle is clockwise to the viewer. Exact for multiples of 90.
[[nodiscard]] Point turned(Point point, Angle angle);

// An axis-parallel box. A default one is empty (min > max) and grows with add().
struct Box {
  Point min{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
  Point max{-std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  bool operator==(const Box&) const = default;
  [[nodiscard]] bool empty() const { return min.x > max.x || min.y > max.y; }
  [[nodiscard]] double width() const { return max.x - min.x; }
  [[nodiscard]] double height() const { return max.y - min.y; }
  [[nodiscard]] Point centre() const { return {(min.x + max.x) / 2.0, (min.y + max.y) / 2.0}; }
  void add(Point p) {
    min = {std::min(min.x, p.x), std::min(min.y, p.y)};
    max = {std::max(max.x, p.x), std::max(max.y, p.y)};
  }
  [[nodiscard]] Box grown(double by) const {
    return {{min.x - by, min.y - by}, {max.x + by, max.y + by}};
  }
};

// A lower bound of the distance between what lies in two boxes; negative where they overlap.
[[nodiscard]] inline double gapBetween(const Box& a, const Box& b) {
  return std::max({a.min.x - b.max.x, b.min.x - a.max.x, a.min.y - b.max.y, b.min.y - a.max.y});
}

// A closed polygon without a repeated last point. Either winding unless a function says otherwise.
using Ring = std::vector<Point>;
// An open chain of points.
using Polyline = std::vector<Point>;

}  // namespace creaseline
