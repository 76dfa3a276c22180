// SPDX-License-Identifier: MIT
// Region: a bounded convex set whose boundary is made of straight pieces and circular arcs. The
// exact set of translations that keep a design inside a frame is such a region.
#pragma once

#include <optional>
#include <vector>

#include "creaseline/shape/point.h"

namespace creaseline {

// Kept as two chains over [xMin, xMax]: the upper edge (smallest y, convex) and the lower edge
// (largest y, concave); +y is down. Empty if no point satisfies all constraints.
class Region {
 public:
  // One piece of a chain over [from, to]: a straight line (radius 0: y = slope * x + intercept)
  // or an arc of the circle with that centre.
  struct Span {
    double from = 0.0, to = 0.0;
    double slope = 0.0, intercept = 0.0;
    Point centre;
    double radius = 0.0;
    bool operator==(const Span&) const = default;
  };
  struct Interval {
    double low = 0.0, high = 0.0;  // low <= high
    [[nodiscard]] double middle() const { return (low + high) / 2.0; }
    [[nodiscard]] double length() const { return high - low; }
  };

  Region() = default;  // empty
  // Chains must cover the same interval, pieces in order of x. For shape/fit.cpp.
  Region(std::vector<Span> top, std::vector<Span> bottom);

  [[nodiscard]] bool empty() const { return top_.empty(); }
  // True if inside or within `tolerance` millimetres of it.
  [[nodiscard]] bool contains(Point point, double tolerance = 0.0) const;
  [[nodiscard]] Box bounds() const;
  // The y values at that x, and the x values at that y; nothing if the line misses the region.
  [[nodiscard]] std::optional<Interval> column(double x) const;
  [[nodiscard]] std::optional<Interval> row(double y) const;
  // A point with equal room left and right and equal room up and down, found from the middle of
  // the bounding box by alternating middles. Precondition: not empty.
  [[nodiscard]] Point balancedPoint() const;
  // The point of the region nearest to the given one. Precondition: not empty.
  [[nodiscard]] Point nearest(Point point) const;
  // Radius of the largest disc around the point that lies inside, and half the side of the largest
  // square with sides along the axes; 0 if the point is not inside. Both exact up to rounding: the
  // nearest line or arc, and the first that one of the four diagonals meets.
  [[nodiscard]] double discAround(Point point) const;
  [[nodiscard]] double squareAround(Point point) const;
  // Boundary as a polygon for drawing, arcs within `tolerance` millimetres.
  [[nodiscard]] Ring boundary(double tolerance) const;
  // Points in both. Exact up to rounding: arcs and lines are met in closed form.
  [[nodiscard]] Region intersected(const Region& other) const;

  [[nodiscard]] const std::vector<Span>& top() const { return top_; }
  [[nodiscard]] const std::vector<Span>& bottom() const { return bottom_; }

  bool operator==(const Region&) const = default;

 private:
  std::vector<Span> top_;
  std::vector<Span> bottom_;
};

}  // namespace creaseline
