// SPDX-License-Identifier: MIT
// Hull, containment, distance and self-crossing of single rings against GEOS.
#include <catch2/catch.hpp>

#include "creaseline/shape/outline.h"
#include "shape/geos_oracle.h"
#include "shape/random_shapes.h"

using namespace creaseline;
using namespace creaseline::test;

namespace {

constexpr std::uint32_t kRingSeed = 1670;

}  // namespace

TEST_CASE("Hulls agree with GEOS in area and contain every point", "[shape][hull][oracle]") {
  const Geos geos;
  Dice dice(kRingSeed);
  const int cases = caseCount(2'000);
  for (int i = 0; i < cases; ++i) {
    const Ring ring = starRing(dice, 3 + dice.below(60), 5, 50);
    const Ring hull = convexHull(ring);
    CAPTURE(kRingSeed, i);
    const auto theirs = geos.own(GEOSConvexHull_r(geos.handle(), geos.polygon(ring).get()));
    REQUIRE(ringArea(hull) == Approx(geos.area(theirs)).epsilon(1e-12));
    REQUIRE(isConvex(hull));
    for (std::size_t k = 0; k < hull.size(); ++k) {
      const Point along = hull[(k + 1) % hull.size()] - hull[k];
      for (const Point& point : ring) {
        REQUIRE(cross(along, point - hull[k]) >= -1e-9);
      }
    }
  }
}

TEST_CASE("Hulls of points on a grid, full of points in line, agree with GEOS",
          "[shape][hull][oracle]") {
  const Geos geos;
  Dice dice(kRingSeed + 1);
  const int cases = caseCount(2'000);
  for (int i = 0; i < cases; ++i) {
    std::vector<Point> points;
    for (int k = 0; k < 30; ++k) {
      points.push_back({static_cast<double>(dice.below(6)), static_cast<double>(dice.below(6))});
    }
    const Ring hull = convexHull(points);
    REQUIRE(hull.size() >= 3);
    const auto theirs = geos.own(GEOSConvexHull_r(geos.handle(), geos.linearRing(points).get()));
    CAPTURE(kRingSeed, i);
    REQUIRE(ringArea(hull) == geos.area(theirs));
    // As few corners: GEOS's ring repeats its first point.
    const GEOSGeometry* ring = GEOSGetExteriorRing_r(geos.handle(), theirs.get());
    REQUIRE(static_cast<int>(hull.size()) == GEOSGeomGetNumPoints_r(geos.handle(), ring) - 1);
  }
}

TEST_CASE("Containment and distance to the boundary agree with GEOS", "[shape][ring][oracle]") {
  const Geos geos;
  Dice dice(kRingSeed + 2);
  const int cases = caseCount(2'000);
  for (int i = 0; i < cases; ++i) {
    const Ring ring = starRing(dice, 3 + dice.below(30), 5, 50);
    const auto polygon = geos.polygon(ring);
    const auto prepared = geos.prepare(polygon);
    const auto boundary = geos.linearRing(ring);
    for (int k = 0; k < 10; ++k) {
      Point point{dice.between(-55.0, 55.0), dice.between(-55.0, 55.0)};
      if (k == 0) {
        point = ring[static_cast<std::size_t>(dice.below(static_cast<int>(ring.size())))];
      }
      CAPTURE(kRingSeed, i, point.x, point.y);
      const auto asGeometry = geos.point(point);
      REQUIRE(contains(ring, point) == geos.covers(prepared, asGeometry));
      REQUIRE(nearestSide(ring, point).distance ==
              Approx(geos.distance(boundary, asGeometry)).margin(1e-9));
    }
  }
}

TEST_CASE("Self-crossing agrees with GEOS's isSimple", "[shape][ring][oracle]") {
  const Geos geos;
  Dice dice(kRingSeed + 3);
  const int cases = caseCount(5'000);
  int crossing = 0;
  for (int i = 0; i < cases; ++i) {
    // Half of them on a coarse grid, where touches and overlaps abound.
    Ring ring = starRing(dice, 4 + dice.below(20), 5, 50);
    const bool grid = dice.oneIn(2);
    for (Point& point : ring) {
      if (grid) {
        point = {std::round(point.x / 10.0), std::round(point.y / 10.0)};
      }
    }
    if (dice.oneIn(2)) {
      std::swap(ring[1], ring[3]);
    }
    const auto first = selfCrossing(ring);
    CAPTURE(kRingSeed, i, grid, first.has_value());
    REQUIRE(first.has_value() == (GEOSisSimple_r(geos.handle(), geos.linearRing(ring).get()) == 0));
    if (first) {
      ++crossing;
      // The place is on the ring, on two sides at once.
      int sides = 0;
      for (std::size_t k = 0; k < ring.size(); ++k) {
        const Ring side{ring[k], ring[(k + 1) % ring.size()]};
        sides += nearestSide(side, *first).distance < 1e-9 ? 1 : 0;
      }
      REQUIRE(sides >= 2);
    }
  }
  CHECK(crossing > cases / 5);
  CHECK(crossing < cases - cases / 5);
}

TEST_CASE("A long outline is checked for crossings in good time", "[shape][ring]") {
  // 40,000 sides around a circle, all but two of them far from each other: a check of every pair
  // would be 800 million tests.
  Dice dice(kRingSeed + 4);
  Ring ring = starRing(dice, 40'000, 99.99, 100.0);
  CHECK_FALSE(selfCrossing(ring));
  // One corner thrown over to the far side: its two sides cross the ring over there.
  ring[20'000] = ring[20'000] * -1.5;
  const auto crossing = selfCrossing(ring);
  REQUIRE(crossing);
  CHECK(norm(*crossing) == Approx(100.0).margin(0.1));
}
