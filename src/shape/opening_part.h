// SPDX-License-Identifier: MIT
// One of the convex shapes that a design must stay inside: a frame's window, or a sewing field.
#pragma once

#include <span>
#include <variant>
#include <vector>

#include "creaseline/shape/window.h"
#include "shape/chain.h"

namespace creaseline {

// A design that only just touches counts as inside: every limit is let out by this much, which
// is a thousand times less than the finest length the program keeps.
inline constexpr double kTouchMm = 5e-10;

// Half the opening and its corner radius, in millimetres.
struct RoundedShape {
  double halfWidth = 0.0;
  double halfHeight = 0.0;
  double radius = 0.0;
  // Inner parallel shape; an outer one for a negative inset. Square corners stay square.
  [[nodiscard]] RoundedShape inset(double by) const {
    return {halfWidth - by, halfHeight - by, radius > 0.0 ? std::max(radius - by, 0.0) : 0.0};
  }
};

// Points with normal . p <= offset for every face. Normals are unit vectors, sorted by angle from
// the one that points left, over up and right, to down: top faces from left to right first.
struct FacetedShape {
  struct Face {
    Point normal;
    double offset = 0.0;
    double slope = 0.0;    // of the face as a line y = slope * x + offset / normal.y
    double inverse = 0.0;  // 1 / normal.y, or 0 for an upright face, which limits x alone
    double angle = 0.0;    // of the normal, radians, in [-pi, pi): what the faces are sorted by
  };
  std::vector<Face> faces;
};

// A rigid turn about a centre, clockwise, by less than a half turn: where the points are before
// and after it.
struct RigidTurn {
  std::span<const Point> before, after;  // as many, in the same order
  Point centre;
  double angle = 0.0;  // radians
};

class OpeningPart {
 public:
  OpeningPart(const Window& window, double clearance, double ellipseTolerance);

  // Translations of the hull inside the part after a further inset, not yet known to be empty.
  // Precondition: the hull has a point.
  [[nodiscard]] OpenRegion translations(std::span<const Point> hull, double furtherInset) const;

  // Least distance of a point from the boundary, negative outside.
  [[nodiscard]] double depth(Point point) const;

  // Radians by which the hull, with its origin at `at`, can be turned either way before a point
  // meets the boundary; at most `limit` (no more than a quarter of a half turn).
  [[nodiscard]] double turnLimit(std::span<const Point> hull, Point at, double limit) const;

  // Whether every point stays inside while all turn about a centre; all are inside at both ends.
  [[nodiscard]] bool holds(const RigidTurn& turn) const;

  // Half the smaller side after the clearance: no inset beyond this leaves anything.
  [[nodiscard]] double mostInset() const { return mostInset_; }
  // True if a half turn brings the shape onto itself.
  [[nodiscard]] bool symmetric() const;
  // Width and height before the clearance.
  [[nodiscard]] Point size() const { return size_; }

 private:
  std::variant<RoundedShape, FacetedShape> shape_;  // before the clearance
  double clearance_ = 0.0;
  double mostInset_ = 0.0;
  Point size_;
};

// The two kinds of shape.
[[nodiscard]] double depthIn(const RoundedShape& shape, Point point);
[[nodiscard]] double depthIn(const FacetedShape& shape, Point point);
[[nodiscard]] OpenRegion translationsIn(const RoundedShape& shape, std::span<const Point> hull);
[[nodiscard]] OpenRegion translationsIn(const FacetedShape& shape, double inset,
                                        std::span<const Point> hull);
[[nodiscard]] double turnLimitIn(const RoundedShape& shape, std::span<const Point> hull, Point at,
                                 double limit);
[[nodiscard]] double turnLimitIn(const FacetedShape& shape, double inset,
                                 std::span<const Point> hull, Point at, double limit);
[[nodiscard]] bool holdsIn(const RoundedShape& shape, const RigidTurn& turn);
[[nodiscard]] bool holdsIn(const FacetedShape& shape, double inset, const RigidTurn& turn);

}  // namespace creaseline
