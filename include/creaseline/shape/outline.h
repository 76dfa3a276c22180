// SPDX-License-Identifier: MIT
// The outline of a design: one or more pieces, each a ring with holes.
#pragma once

#include <optional>
#include <vector>

#include "creaseline/base/length.h"
#include "creaseline/shape/point.h"

namespace creaseline {

// Nearer to the origin than this, a centre lies on it. Centring again must not move a shape by the
// rounding of its coordinates, or a shape that is written and read back would not be the same.
inline constexpr double kCentredMm = 1e-9;

// One connected part of a design, such as one letter.
struct Piece {
  Ring outer;
  std::vector<Ring> holes;
  bool operator==(const Piece&) const = default;
};

// Coordinates are the design's own: origin at the centre of the bounding box, +y down.
struct Outline {
  std::vector<Piece> pieces;
  bool operator==(const Outline&) const = default;

  [[nodiscard]] static Outline rectangle(Length width, Length height);

  [[nodiscard]] bool empty() const { return pieces.empty(); }
  [[nodiscard]] Box bounds() const;
  // Sum of the pieces' areas less their holes; overlapping pieces count twice.
  [[nodiscard]] Area area() const;
  // Turned about the origin, then scaled about it, then moved.
  [[nodiscard]] Outline transformed(Angle turn, double scale, Point shift) const;
  // Moved so that the bounding box is centred on the origin.
  [[nodiscard]] Outline centred() const;
  // Convex hull of all pieces. For a convex window only the hull matters, and exactly so.
  [[nodiscard]] Ring hull() const;
};

// Convex hull, in order of increasing angle (clockwise to the viewer), no three points collinear
// (monotone chain: A. M. Andrew, Information Processing Letters 9(5), 1979). Fewer than three
// points come back for degenerate input.
[[nodiscard]] Ring convexHull(std::vector<Point> points);

// Enclosed area in square millimetres, positive for either winding.
[[nodiscard]] double ringArea(const Ring& ring);
[[nodiscard]] Box ringBounds(const Ring& ring);
[[nodiscard]] Ring transformedRing(const Ring& ring, Angle turn, Point shift);
// True for a ring of three or more points that turns one way only and encloses an area.
[[nodiscard]] bool isConvex(const Ring& ring);

// Where two sides of the ring cross or touch although they are not neighbours, if anywhere.
// Sweep over sides sorted by x; near n log n for outlines as drawn.
[[nodiscard]] std::optional<Point> selfCrossing(const Ring& ring);

// Inside or on the boundary (even-odd rule).
[[nodiscard]] bool contains(const Ring& ring, Point point);
// Distance from a point to the ring's boundary, never negative; the side index is that of its
// first point.
struct NearestSide {
  double distance = 0.0;
  std::size_t side = 0;
  Point on;
};
[[nodiscard]] NearestSide nearestSide(const Ring& ring, Point point);

}  // namespace creaseline
