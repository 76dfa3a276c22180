// SPDX-License-Identifier: MIT
#include "creaseline/shape/outline.h"

#include <catch2/catch.hpp>

using namespace creaseline;
using namespace creaseline::literals;

namespace {

const Ring kSquare{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
// An L: 10 x 10 with the upper right 6 x 6 cut out; area 100 - 36.
const Ring kL{{0, 0}, {4, 0}, {4, 6}, {10, 6}, {10, 10}, {0, 10}};

}  // namespace

TEST_CASE("A quarter turn clockwise takes right to down, exactly", "[shape][point]") {
  CHECK(turned({3, 0}, 90_deg) == Point{0, 3});
  CHECK(turned({3, 4}, 180_deg) == Point{-3, -4});
  CHECK(turned({0, 5}, -90_deg) == Point{5, 0});
  const Point diagonal = turned({2, 0}, 45_deg);
  CHECK(diagonal.x == Approx(std::sqrt(2.0)));
  CHECK(diagonal.y == Approx(std::sqrt(2.0)));
}

TEST_CASE("The hull of points is clockwise to the viewer and has no points in line",
          "[shape][hull]") {
  const Ring hull = convexHull({{0, 0}, {5, 0}, {10, 0}, {10, 10}, {0, 10}, {3, 4}, {0, 0}});
  CHECK(hull == Ring{{0, 0}, {10, 0}, {10, 10}, {0, 10}});
}

TEST_CASE("Hulls of degenerate input have fewer than three points", "[shape][hull]") {
  CHECK(convexHull({}).empty());
  CHECK(convexHull({{1, 2}, {1, 2}}) == Ring{{1, 2}});
  CHECK(convexHull({{0, 0}, {1, 1}, {2, 2}, {3, 3}}) == Ring{{0, 0}, {3, 3}});
}

TEST_CASE("An outline's area is its pieces less their holes", "[shape][outline]") {
  const Outline outline{{Piece{kSquare, {{{2, 2}, {4, 2}, {4, 4}, {2, 4}}}}, Piece{kL, {}}}};
  CHECK(outline.area().squareMm() == Approx(100.0 - 4.0 + 64.0));
  CHECK(Outline().area().squareMm() == 0.0);
}

TEST_CASE("Area does not depend on winding", "[shape][outline]") {
  CHECK(ringArea(kL) == Approx(64.0));
  CHECK(ringArea(Ring(kL.rbegin(), kL.rend())) == Approx(64.0));
}

TEST_CASE("An outline is turned, then scaled, then moved, with its holes", "[shape][outline]") {
  const Outline outline{{Piece{{{0, 0}, {4, 0}, {4, 2}}, {{{3, 0}, {3, 1}, {2, 0}}}}}};
  const Outline moved = outline.transformed(90_deg, 2.0, {10, 1});
  // (4, 0) turns to (0, 4), doubles to (0, 8), moves to (10, 9).
  CHECK(moved.pieces[0].outer[1] == Point{10, 9});
  CHECK(moved.pieces[0].holes[0][0] == Point{10, 7});
}

TEST_CASE("A centred outline has its bounding box on the origin", "[shape][outline]") {
  const Box box = Outline{{Piece{{{5, 5}, {15, 5}, {9, 25}}, {}}}}.centred().bounds();
  CHECK(box.min == Point{-5, -10});
  CHECK(box.max == Point{5, 10});
  CHECK(Outline().centred() == Outline());
}

TEST_CASE("Convexity: once around, one way, an area", "[shape][ring]") {
  CHECK(isConvex(kSquare));
  CHECK(isConvex(Ring(kSquare.rbegin(), kSquare.rend())));
  CHECK(isConvex({{0, 0}, {5, 0}, {10, 0}, {10, 10}}));  // a point in the middle of a side
  CHECK_FALSE(isConvex(kL));
  CHECK_FALSE(isConvex({{0, 0}, {10, 0}}));
  CHECK_FALSE(isConvex({{0, 0}, {10, 0}, {20, 0}}));
  CHECK_FALSE(isConvex({{0, 0}, {10, 0}, {10, 10}, {10, 5}}));  // doubles back
  // A five-pointed star turns one way only, but twice around.
  Ring star;
  for (int i = 0; i < 5; ++i) {
    const double angle = i * 144.0 * 3.14159265358979 / 180.0;
    star.push_back({std::cos(angle), std::sin(angle)});
  }
  CHECK_FALSE(isConvex(star));
}

TEST_CASE("A ring that crosses or touches itself is found out", "[shape][ring]") {
  CHECK_FALSE(selfCrossing(kSquare));
  CHECK_FALSE(selfCrossing(kL));
  // A bow tie: its diagonals cross in (5, 5).
  const auto crossing = selfCrossing({{0, 0}, {10, 10}, {10, 0}, {0, 10}});
  REQUIRE(crossing);
  CHECK(crossing->x == Approx(5.0));
  CHECK(crossing->y == Approx(5.0));
  // A corner that touches another side.
  const auto touch = selfCrossing({{0, 0}, {10, 0}, {10, 10}, {5, 0}, {0, 10}});
  REQUIRE(touch);
  CHECK(*touch == Point{5, 0});
  CHECK(selfCrossing({{0, 0}, {10, 0}, {4, 0}, {4, 5}}));  // a spike
  CHECK(selfCrossing({{0, 0}, {10, 0}, {4, 0}}));          // a triangle folded flat
}

TEST_CASE("A point given twice in a row is no self-crossing", "[shape][ring][regression]") {
  CHECK_FALSE(selfCrossing({{0, 0}, {10, 0}, {10, 0}, {10, 10}, {0, 10}, {0, 0}}));
}

TEST_CASE("Containment follows the even-odd rule and includes the boundary", "[shape][ring]") {
  CHECK(contains(kL, {2, 2}));
  CHECK(contains(kL, {4, 3}));
  CHECK(contains(kL, {10, 10}));
  CHECK_FALSE(contains(kL, {7, 3}));
  CHECK_FALSE(contains(kL, {-1, 10}));
  CHECK_FALSE(contains({}, {0, 0}));
}

TEST_CASE("The nearest side of a ring is told with the point on it", "[shape][ring]") {
  const NearestSide side = nearestSide(kSquare, {9, 5});
  CHECK(side.distance == Approx(1.0));
  CHECK(side.side == 1);
  CHECK(side.on == Point{10, 5});
  CHECK(nearestSide(kSquare, {13, 14}).distance == Approx(5.0));  // 3-4-5 from the corner
}
