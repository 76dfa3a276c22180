// SPDX-License-Identifier: MIT
// Distances and overlaps of convex bodies, and of a convex body with the sides of a panel.
#include "creaseline/shape/separation.h"

#include <cmath>
#include <limits>
#include <optional>

#include "creaseline/shape/outline.h"
#include "shape/nearest.h"

namespace creaseline {

namespace {

// Overlaps shallower than this are a touch: rounding alone makes them.
constexpr double kTouchDepthMm = 1e-9;

double leastAlong(const Ring& ring, Point axis) {
  double least = std::numeric_limits<double>::infinity();
  for (const Point& point : ring) {
    least = std::min(least, dot(point, axis));
  }
  return least;
}

// Outward unit normal of a side, given the sign of the ring's winding.
std::optional<Point> outwardNormal(Point from, Point to, double winding) {
  const Point along = to - from;
  const double length = norm(along);
  if (length == 0.0) {
    return std::nullopt;
  }
  const double scale = (winding < 0.0 ? -1.0 : 1.0) / length;
  return Point{along.y * scale, -along.x * scale};
}

// Tries every side of `ring` as the axis along which the moved ring leaves the other soonest, until
// one leaves a gap of `enough`. `sign` is -1 if the ring is the moved one: it leaves against its
// own outward normal. A convex ring's own reach along the normal of a side is that side.
void trySides(const Ring& ring, const Ring& facing, double sign, Separation& best,
              double enough = std::numeric_limits<double>::infinity()) {
  const double winding = windingSum(ring);
  for (std::size_t i = 0; i < ring.size() && best.distance < enough; ++i) {
    const auto normal = outwardNormal(ring[i], ring[(i + 1) % ring.size()], winding);
    if (!normal) {
      continue;
    }
    const double gap = leastAlong(facing, *normal) - dot(ring[i], *normal);
    if (gap > best.distance) {
      best = {gap, *normal * sign};
    }
  }
}

// Nearest pair of points of two bodies that do not overlap: in the plane one of the two is
// always a corner. Keeps the vector from the body with the sides to the corner.
void tryCorners(const Ring& corners, const Ring& sides, double sign, Separation& best) {
  double least = best.distance * best.distance;
  Point nearest;
  for (const Point& corner : corners) {
    for (std::size_t i = 0; i < sides.size(); ++i) {
      const Point on = nearestOnSegment(sides[i], sides[(i + 1) % sides.size()], corner);
      const Point apart = corner - on;
      const double squared = dot(apart, apart);
      if (squared < least && squared > 0.0) {
        least = squared;
        nearest = apart * sign;
      }
    }
  }
  if (nearest != Point{}) {
    best = {std::sqrt(least), nearest * (1.0 / std::sqrt(least))};
  }
}

// The part of a segment inside a convex ring, as shares of its length.
struct Share {
  double from = 0.0, to = 1.0;
};
std::optional<Share> shareInside(Point from, Point to, const Ring& ring, double winding) {
  Share share;
  const double sign = winding < 0.0 ? -1.0 : 1.0;
  Point corner = ring.back();
  for (const Point next : ring) {
    // Shares do not depend on the length of the normal.
    const Point along = next - corner;
    const Point normal{along.y * sign, -along.x * sign};
    const double start = dot(from - corner, normal);
    const double end = start + dot(to - from, normal);
    corner = next;
    if (start > 0.0 && end > 0.0) {
      return std::nullopt;
    }
    if (end > 0.0) {
      share.to = std::min(share.to, start / (start - end));
    } else if (start > 0.0) {
      share.from = std::max(share.from, start / (start - end));
    }
  }
  if (share.from >= share.to) {
    return std::nullopt;
  }
  return share;
}

// Whether a point lies deeper inside the ring than `depth`, 0 or more.
bool isDeeperThan(double depth, Point point, const Ring& ring, double winding) {
  const double sign = winding < 0.0 ? -1.0 : 1.0;
  Point corner = ring.back();
  for (const Point next : ring) {
    const Point along = next - corner;
    // The depth below the side, as many times larger as the side is long.
    const double below = dot(corner - point, Point{along.y * sign, -along.x * sign});
    const double squared = dot(along, along);
    if (squared > 0.0 && (below <= 0.0 || below * below <= depth * depth * squared)) {
      return false;
    }
    corner = next;
  }
  return true;
}

// The point of the segment that lies deepest is the middle of the shared part or near it; a
// crossing through the inside has its middle inside.
bool crosses(Point from, Point to, const Ring& body, double winding) {
  const auto share = shareInside(from, to, body, winding);
  if (!share) {
    return false;
  }
  const Point middle = from + (to - from) * ((share->from + share->to) / 2.0);
  return isDeeperThan(kTouchDepthMm, middle, body, winding);
}

// Least height above the side's line of the part of the body that lies abreast of the side.
double leastHeightAbreast(const Ring& body, Point from, Point to, Point inward) {
  const Point along = to - from;
  const double squared = dot(along, along);
  double least = std::numeric_limits<double>::infinity();
  // How far along the side, as many times further as the side is long; and how high above it.
  double before = dot(body.back() - from, along);
  double heightBefore = dot(body.back() - from, inward);
  for (const Point corner : body) {
    const double here = dot(corner - from, along);
    const double height = dot(corner - from, inward);
    if (here >= 0.0 && here <= squared) {
      least = std::min(least, height);
    }
    for (const double end : {0.0, squared}) {
      if ((before < end) != (here < end)) {
        const double part = (end - before) / (here - before);
        least = std::min(least, heightBefore + part * (height - heightBefore));
      }
    }
    before = here;
    heightBefore = height;
  }
  return least;
}

// From the segment's point that is nearest to the body to the body's that is nearest to it, where
// the two do not cross: one of the two points is a corner of the body or an end of the segment.
Point shortestFromSegment(const Ring& body, Point from, Point to) {
  const Point along = to - from;
  const double length = dot(along, along);
  const double inverse = length > 0.0 ? 1.0 / length : 0.0;
  double least = std::numeric_limits<double>::infinity();
  Point shortest;
  const auto consider = [&](Point apart) {
    if (const double squared = dot(apart, apart); squared < least) {
      least = squared;
      shortest = apart;
    }
  };
  // An end beyond the stretch of a side is nearer to a corner, which is asked for itself.
  const auto considerEnd = [&](Point fromEnd, Point side, double sideLength) {
    const double share = -dot(fromEnd, side);
    if (share > 0.0 && share < sideLength) {
      consider(fromEnd + side * (share / sideLength));
    }
  };
  Point corner = body.back();
  for (const Point next : body) {
    const Point fromStart = corner - from;
    const double share = std::clamp(dot(fromStart, along) * inverse, 0.0, 1.0);
    consider(fromStart - along * share);
    const Point side = next - corner;
    const double sideLength = dot(side, side);
    considerEnd(fromStart, side, sideLength);
    considerEnd(corner - to, side, sideLength);
    corner = next;
  }
  return shortest;
}

}  // namespace

std::optional<Separation> overlap(const Ring& convexA, const Ring& convexB) {
  Separation best{-std::numeric_limits<double>::infinity(), {}};
  // One axis that keeps them apart is enough to know.
  trySides(convexA, convexB, -1.0, best, -kTouchDepthMm);
  trySides(convexB, convexA, 1.0, best, -kTouchDepthMm);
  return best.distance < -kTouchDepthMm ? std::optional(best) : std::nullopt;
}

Separation separation(const Ring& convexA, const Ring& convexB) {
  Separation best{-std::numeric_limits<double>::infinity(), {}};
  trySides(convexA, convexB, -1.0, best);
  trySides(convexB, convexA, 1.0, best);
  if (best.distance > kTouchDepthMm) {
    // The widest gap along a normal is a lower bound; corner to corner can be further apart.
    Separation apart{std::numeric_limits<double>::infinity(), {}};
    tryCorners(convexA, convexB, 1.0, apart);
    tryCorners(convexB, convexA, -1.0, apart);
    return apart;
  }
  return best;
}

SideMeter::SideMeter(const Ring& convexBody, const Ring& panel, bool panelIsClockwise)
    : body_(convexBody),
      panel_(panel),
      bodyBox_(ringBounds(convexBody)),
      bodyWinding_(windingSum(convexBody)),
      panelWinding_(panelIsClockwise ? 1.0 : -1.0) {
}

double SideMeter::atLeast(std::size_t side) const {
  Box box;
  box.add(panel_[side]);
  box.add(panel_[(side + 1) % panel_.size()]);
  return gapBetween(box, bodyBox_);
}

std::optional<SideRoom> SideMeter::crossing(std::size_t side) const {
  const Point from = panel_[side];
  const Point to = panel_[(side + 1) % panel_.size()];
  if (!crosses(from, to, body_, bodyWinding_)) {
    return std::nullopt;
  }
  const auto outward = outwardNormal(from, to, panelWinding_);
  const Point inward = outward ? -*outward : Point{};
  return SideRoom{side, leastHeightAbreast(body_, from, to, inward), inward};
}

SideRoom SideMeter::measure(std::size_t side) const {
  if (const auto crossed = crossing(side)) {
    return *crossed;
  }
  const Point from = panel_[side];
  const Point to = panel_[(side + 1) % panel_.size()];
  const auto outward = outwardNormal(from, to, panelWinding_);
  return {side, norm(shortestFromSegment(body_, from, to)), outward ? -*outward : Point{}};
}

std::optional<SideRoom> SideMeter::within(std::size_t side, double reach) const {
  if (atLeast(side) >= reach) {
    return std::nullopt;
  }
  const auto crossed = crossing(side);
  if (crossed || reach <= 0.0) {
    return crossed;
  }
  const Point from = panel_[side];
  const Point to = panel_[(side + 1) % panel_.size()];
  const Point shortest = shortestFromSegment(body_, from, to);
  const double distance = norm(shortest);
  if (distance >= reach) {
    return std::nullopt;
  }
  if (distance > kTouchDepthMm) {
    return SideRoom{side, distance, shortest * (1.0 / distance)};
  }
  const auto outward = outwardNormal(from, to, panelWinding_);
  return SideRoom{side, distance, outward ? -*outward : Point{}};
}

std::vector<SideRoom> roomToSides(const Ring& convexBody, const Ring& panel) {
  const SideMeter meter(convexBody, panel, windingSum(panel) >= 0.0);
  std::vector<SideRoom> rooms;
  rooms.reserve(panel.size());
  for (std::size_t side = 0; side < panel.size(); ++side) {
    rooms.push_back(meter.measure(side));
  }
  return rooms;
}

}  // namespace creaseline
