// SPDX-License-Identifier: MIT
// Whether a hull stays inside a convex shape while it turns from one place to another. Each point
// runs along an arc around the centre. Both ends of an arc lie inside, so the arc leaves the shape
// only where it runs square to a boundary normal in between: one comparison for each such place.
#include <numbers>

#include "shape/opening_part.h"

namespace creaseline {

namespace {

// Far below kTouchMm, by which the shape was let out: rounding, but nothing that could be seen.
constexpr double kRounding = 1e-11;

struct PointArc {
  Point from, to;  // from the centre
  double squared = 0.0;
  [[nodiscard]] bool passes(Point way) const {
    return cross(from, way) > 0.0 && cross(way, to) > 0.0;
  }
};

// Written so that a far centre costs no digits: radius - along = across^2 / (radius + along).
bool staysBehind(const PointArc& arc, Point normal, double reach, Point centre) {
  const double along = dot(arc.from, normal);
  const double across = cross(arc.from, normal);
  const double room = reach - dot(normal, centre + arc.from);
  return across * across / (std::sqrt(arc.squared) + along) <= room + kRounding;
}

bool cornerHolds(const PointArc& arc, Point way, Point sign, double radius) {
  const double distance = norm(way);
  if (-way.x * sign.x < 0.0 || -way.y * sign.y < 0.0 || (distance > 0.0 && !arc.passes(-way))) {
    return true;
  }
  return std::sqrt(arc.squared) + distance <= radius + kRounding;
}

template <class Holds>
bool allArcs(const RigidTurn& turn, double nearest, Holds holds) {
  for (std::size_t i = 0; i < turn.before.size(); ++i) {
    PointArc arc{turn.before[i] - turn.centre, turn.after[i] - turn.centre, 0.0};
    arc.squared = dot(arc.from, arc.from);
    const bool near = nearest >= 0.0 && arc.squared <= nearest * nearest;
    if (!near && !holds(arc)) {
      return false;
    }
  }
  return true;
}

}  // namespace

bool holdsIn(const RoundedShape& shape, const RigidTurn& turn) {
  const Point centre = turn.centre;
  const Point corner{shape.halfWidth - shape.radius, shape.halfHeight - shape.radius};
  return allArcs(turn, depthIn(shape, centre), [&](const PointArc& arc) {
    for (const Point normal : {Point{-1, 0}, Point{1, 0}}) {
      if (arc.passes(normal) && !staysBehind(arc, normal, shape.halfWidth, centre)) {
        return false;
      }
    }
    for (const Point normal : {Point{0, -1}, Point{0, 1}}) {
      if (arc.passes(normal) && !staysBehind(arc, normal, shape.halfHeight, centre)) {
        return false;
      }
    }
    for (const Point sign : {Point{-1, -1}, Point{1, -1}, Point{1, 1}, Point{-1, 1}}) {
      const Point way = Point{corner.x * sign.x, corner.y * sign.y} - centre;
      if (shape.radius > 0.0 && !cornerHolds(arc, way, sign, shape.radius)) {
        return false;
      }
    }
    return true;
  });
}

bool holdsIn(const FacetedShape& shape, double inset, const RigidTurn& turn) {
  const auto& faces = shape.faces;
  return allArcs(turn, depthIn(shape, turn.centre) - inset, [&](const PointArc& arc) {
    const double start = std::atan2(arc.from.y, arc.from.x);
    double end = start + turn.angle;
    auto face = std::partition_point(faces.begin(), faces.end(),
                                     [start](const auto& each) { return each.angle <= start; });
    for (std::size_t count = 0; count < faces.size(); ++count, ++face) {
      if (face == faces.end()) {
        face = faces.begin();
        end -= 2.0 * std::numbers::pi;
      }
      if (face->angle >= end) {
        return true;
      }
      if (!staysBehind(arc, face->normal, face->offset - inset, turn.centre)) {
        return false;
      }
    }
    return true;
  });
}

}  // namespace creaseline
