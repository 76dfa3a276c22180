// SPDX-License-Identifier: MIT
// Single rings: hull, area, convexity, self-crossing, containment, nearest side.
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/register/point.hpp>
#include <boost/geometry/index/rtree.hpp>
#include <numbers>

#include "creaseline/shape/outline.h"
#include "shape/nearest.h"

BOOST_GEOMETRY_REGISTER_POINT_2D(creaseline::Point, double, cs::cartesian, x, y)

namespace creaseline {

namespace {

namespace bg = boost::geometry;
using Side = bg::model::segment<Point>;
using Bounds = bg::model::box<Point>;
using IndexedBounds = std::pair<Bounds, std::size_t>;
using OpenRing = bg::model::ring<Point, true, false>;

// Turns no sharper than this (as a sine) are taken for straight on: coordinates in files are
// rounded, and a point in the middle of a side must not make a window concave.
constexpr double kStraightSine = 1e-9;

bool before(Point a, Point b) {
  return a.x < b.x || (a.x == b.x && a.y < b.y);
}

// Appends one half of the hull: points in order, every one a turn to the same side.
void appendHalf(Ring& hull, const std::vector<Point>& points, bool forwards) {
  const std::size_t start = hull.size();
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Point& point = forwards ? points[i] : points[points.size() - 1 - i];
    while (hull.size() >= start + 2 &&
           cross(hull.back() - hull[hull.size() - 2], point - hull.back()) <= 0.0) {
      hull.pop_back();
    }
    hull.push_back(point);
  }
  hull.pop_back();  // the last point starts the other half
}

Ring withoutRepeats(const Ring& ring) {
  Ring result;
  for (const Point& point : ring) {
    if (result.empty() || !(result.back() == point)) {
      result.push_back(point);
    }
  }
  while (result.size() > 1 && result.front() == result.back()) {
    result.pop_back();
  }
  return result;
}

bool neighbours(std::size_t a, std::size_t b, std::size_t count) {
  return a == b || (a + 1) % count == b || (b + 1) % count == a;
}

// A triangle has neighbouring sides only; it crosses itself if it is folded flat.
std::optional<Point> foldOfTriangle(const Ring& ring) {
  for (std::size_t i = 0; i < 3; ++i) {
    const Point back = ring[(i + 2) % 3] - ring[i];
    const Point on = ring[(i + 1) % 3] - ring[i];
    if (cross(back, on) == 0.0 && dot(back, on) < 0.0) {
      return ring[i];
    }
  }
  return std::nullopt;
}

std::optional<Point> meetingPoint(const Side& a, const Side& b) {
  std::vector<Point> points;
  if (!bg::intersects(a, b)) {
    return std::nullopt;
  }
  bg::intersection(a, b, points);
  return points.empty() ? a.first : points.front();
}

}  // namespace

Ring convexHull(std::vector<Point> points) {
  std::sort(points.begin(), points.end(), before);
  points.erase(std::unique(points.begin(), points.end()), points.end());
  if (points.size() < 3) {
    return points;
  }
  Ring hull;
  appendHalf(hull, points, true);
  appendHalf(hull, points, false);
  return hull;
}

double ringArea(const Ring& ring) {
  return std::abs(bg::area(OpenRing(ring.begin(), ring.end())));
}

Box ringBounds(const Ring& ring) {
  Box box;
  for (const Point& point : ring) {
    box.add(point);
  }
  return box;
}

Ring transformedRing(const Ring& ring, Angle turn, Point shift) {
  Ring result;
  result.reserve(ring.size());
  for (const Point& point : ring) {
    result.push_back(turned(point, turn) + shift);
  }
  return result;
}

bool isConvex(const Ring& ring) {
  const Ring points = withoutRepeats(ring);
  const std::size_t count = points.size();
  if (count < 3) {
    return false;
  }
  double total = 0.0;
  int direction = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const Point in = points[(i + 1) % count] - points[i];
    const Point out = points[(i + 2) % count] - points[(i + 1) % count];
    const double sine = cross(in, out) / (norm(in) * norm(out));
    total += std::atan2(cross(in, out), dot(in, out));
    if (std::abs(sine) <= kStraightSine) {
      if (dot(in, out) < 0.0) {
        return false;
      }
      continue;
    }
    const int turn = sine > 0.0 ? 1 : -1;
    if (direction != 0 && turn != direction) {
      return false;
    }
    direction = turn;
  }
  // Once around, not twice as a star does.
  return direction != 0 && std::abs(std::abs(total) - 2.0 * std::numbers::pi) < 1e-6;
}

std::optional<Point> selfCrossing(const Ring& ring) {
  const Ring points = withoutRepeats(ring);
  const std::size_t count = points.size();
  if (count < 3) {
    return std::nullopt;
  }
  if (count == 3) {
    return foldOfTriangle(points);
  }
  std::vector<IndexedBounds> sides;
  sides.reserve(count);
  const auto side = [&](std::size_t i) { return Side(points[i], points[(i + 1) % count]); };
  for (std::size_t i = 0; i < count; ++i) {
    sides.emplace_back(bg::return_envelope<Bounds>(side(i)), i);
  }
  const bg::index::rtree<IndexedBounds, bg::index::rstar<16>> index(sides);
  std::vector<IndexedBounds> near;
  for (std::size_t i = 0; i < count; ++i) {
    near.clear();
    index.query(bg::index::intersects(sides[i].first), std::back_inserter(near));
    for (const IndexedBounds& other : near) {
      if (other.second > i && !neighbours(i, other.second, count)) {
        if (const auto point = meetingPoint(side(i), side(other.second))) {
          return point;
        }
      }
    }
  }
  return std::nullopt;
}

bool contains(const Ring& ring, Point point) {
  bool inside = false;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    const double turn = cross(b - a, point - a);
    if (turn == 0.0 && dot(point - a, point - b) <= 0.0) {
      return true;
    }
    if ((a.y > point.y) != (b.y > point.y) && (turn > 0.0) == (b.y > a.y)) {
      inside = !inside;
    }
  }
  return inside;
}

NearestSide nearestSide(const Ring& ring, Point point) {
  NearestSide best{std::numeric_limits<double>::infinity(), 0, {}};
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point on = nearestOnSegment(ring[i], ring[(i + 1) % ring.size()], point);
    const double squared = dot(point - on, point - on);
    if (squared < best.distance) {
      best = {squared, i, on};
    }
  }
  best.distance = std::sqrt(best.distance);
  return best;
}

}  // namespace creaseline
