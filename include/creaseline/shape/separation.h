// SPDX-License-Identifier: MIT
// How far two shapes on the cloth are apart, or overlap, and which way out is shortest.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "creaseline/shape/point.h"

namespace creaseline {

// distance > 0: apart by that much. distance < 0: overlapping; moving the first shape by
// -distance along `direction` (a unit vector) is the shortest way to make them touch.
struct Separation {
  double distance = 0.0;
  Point direction;
};

// Both convex, any winding, at least three points each. Exact up to rounding: distance between
// sides when apart, separating-axis test over all side normals when not.
[[nodiscard]] Separation separation(const Ring& convexA, const Ring& convexB);
// The same where they overlap, and nothing where they do not: cheaper if the gap is not wanted.
[[nodiscard]] std::optional<Separation> overlap(const Ring& convexA, const Ring& convexB);

// How a convex body lies against one side of a panel that should hold it.
struct SideRoom {
  std::size_t side = 0;   // index of the panel side's first point
  double distance = 0.0;  // >= 0: least distance between body and side; < 0: the body crosses it
  Point direction;        // unit vector, the side's normal into the panel
};

// Measures a convex body against single sides of a panel, so that sides that are surely further
// away than what has been found already need not be measured. Keeps references to both rings,
// which must have three points at least; which way the panel runs is told, not found out again for
// every body.
class SideMeter {
 public:
  SideMeter(const Ring& convexBody, const Ring& panel, bool panelIsClockwise);
  // A lower bound of the distance, from bounding boxes; above 0 the body does not cross the side.
  [[nodiscard]] double atLeast(std::size_t side) const;
  // The side's entry if the body crosses it, and nothing if it does not: cheaper than measure().
  [[nodiscard]] std::optional<SideRoom> crossing(std::size_t side) const;
  // As roomToSides() says.
  [[nodiscard]] SideRoom measure(std::size_t side) const;
  // The side's entry if the body crosses it or is nearer to it than `reach` (0 or more), else
  // nothing. Where the body is near and does not cross, the direction leads straight away from the
  // side, on whichever side of it the body lies: moving by reach - distance along it gets the body
  // out of reach, and no shorter way does. A body that touches moves into the panel.
  [[nodiscard]] std::optional<SideRoom> within(std::size_t side, double reach) const;

 private:
  const Ring& body_;
  const Ring& panel_;
  Box bodyBox_;
  double bodyWinding_;
  double panelWinding_;
};

// One entry for each side of the panel, in order; the panel may be concave, either winding.
// A side that the body crosses gets minus the depth: how far the body must move along `direction`
// until no part of it that lies abreast of the side (within the strip at right angles to it) is
// beyond it. A body wholly outside crosses nothing: ask contains() as well.
[[nodiscard]] std::vector<SideRoom> roomToSides(const Ring& convexBody, const Ring& panel);

}  // namespace creaseline
