// SPDX-License-Identifier: MIT
#include "creaseline/shape/region.h"

#include <catch2/catch.hpp>
#include <numbers>

#include "creaseline/shape/outline.h"

using namespace creaseline;

namespace {

Region::Span line(double from, double to, double slope, double intercept) {
  return {from, to, slope, intercept, {}, 0.0};
}
Region::Span arc(double from, double to, Point centre, double radius) {
  return {from, to, 0.0, 0.0, centre, radius};
}

Region box(double left, double top, double right, double bottom) {
  return {{line(left, right, 0, top)}, {line(left, right, 0, bottom)}};
}
Region disc(Point centre, double radius) {
  const auto span = arc(centre.x - radius, centre.x + radius, centre, radius);
  return {{span}, {span}};
}
// Corners (0, 0), (8, 0), (0, 8): the lower edge falls from left to right.
Region triangle() {
  return {{line(0, 8, 0, 0)}, {line(0, 8, -1, 8)}};
}

}  // namespace

TEST_CASE("An empty region has nothing", "[shape][region]") {
  const Region none;
  CHECK(none.empty());
  CHECK_FALSE(none.contains({0, 0}, 1.0));
  CHECK(none.bounds().empty());
  CHECK_FALSE(none.row(0));
  CHECK_FALSE(none.column(0));
  CHECK(none.boundary(0.1).empty());
  CHECK(none.intersected(box(0, 0, 1, 1)).empty());
  CHECK(box(0, 0, 1, 1).intersected(none).empty());
}

TEST_CASE("Rows and columns of a disc", "[shape][region]") {
  const Region region = disc({10, 20}, 5);
  CHECK(region.bounds().min.x == Approx(5));
  CHECK(region.bounds().max.y == Approx(25));
  // 3-4-5 triangle.
  CHECK(region.row(23)->low == Approx(6));
  CHECK(region.row(23)->high == Approx(14));
  CHECK(region.column(13)->low == Approx(16));
  CHECK(region.column(13)->high == Approx(24));
  CHECK_FALSE(region.row(25.001));
  CHECK_FALSE(region.column(4.999));
  CHECK(region.contains({13, 24}, 1e-9));
  CHECK_FALSE(region.contains({14, 24}));
}

TEST_CASE("Containment with a tolerance measures the distance", "[shape][region]") {
  const Region region = box(0, 0, 4, 2);
  CHECK(region.contains({7, 6}, 5.0 + 1e-9));  // 3-4-5 from the corner (4, 2)
  CHECK_FALSE(region.contains({7, 6}, 4.99));
  CHECK(disc({0, 0}, 1).contains({2, 0}, 1.0 + 1e-9));
}

TEST_CASE("The nearest point of a region", "[shape][region]") {
  CHECK(box(0, 0, 4, 2).nearest({7, 6}) == Point{4, 2});
  CHECK(box(0, 0, 4, 2).nearest({1, 1}) == Point{1, 1});
  const Point onArc = disc({0, 0}, 5).nearest({6, 8});
  CHECK(onArc.x == Approx(3));
  CHECK(onArc.y == Approx(4));
  // (6, 6) projects on the middle of the slanting side.
  const Point onSide = triangle().nearest({6, 6});
  CHECK(onSide.x == Approx(4));
  CHECK(onSide.y == Approx(4));
  CHECK(triangle().nearest({-3, 5}) == Point{0, 5});
}

TEST_CASE("The balanced point has equal room both ways", "[shape][region]") {
  const Point middle = triangle().balancedPoint();
  // In the triangle x = (8 - y) / 2 and y = (8 - x) / 2 meet in 8/3.
  CHECK(middle.x == Approx(8.0 / 3.0));
  CHECK(middle.y == Approx(8.0 / 3.0));
  CHECK(box(2, 4, 8, 6).balancedPoint() == Point{5, 5});
}

TEST_CASE("Boxes intersect in a box, or in nothing", "[shape][region]") {
  const Region both = box(0, 0, 10, 10).intersected(box(4, -5, 20, 7));
  CHECK(both.bounds() == Box{{4, 0}, {10, 7}});
  CHECK(box(0, 0, 1, 1).intersected(box(2, 0, 3, 1)).empty());
  CHECK(box(0, 0, 1, 1).intersected(box(0, 2, 1, 3)).empty());
}

TEST_CASE("Two boxes that share a side, or a corner, intersect in it", "[shape][region]") {
  const Region side = box(0, 0, 4, 4).intersected(box(4, 0, 8, 4));
  REQUIRE_FALSE(side.empty());
  CHECK(side.bounds() == Box{{4, 0}, {4, 4}});
  CHECK(side.row(2)->length() == 0.0);
  const Region level = box(0, 0, 4, 4).intersected(box(0, 4, 4, 8));
  REQUIRE_FALSE(level.empty());
  CHECK(level.bounds() == Box{{0, 4}, {4, 4}});
  const Region corner = box(0, 0, 4, 4).intersected(box(4, 4, 8, 8));
  REQUIRE_FALSE(corner.empty());
  CHECK(corner.balancedPoint() == Point{4, 4});
}

TEST_CASE("Two discs intersect in a lens", "[shape][region]") {
  // Radius 5, centres 6 apart: the lens is 4 wide and 8 high.
  const Region lens = disc({-3, 0}, 5).intersected(disc({3, 0}, 5));
  CHECK(lens.bounds().min.x == Approx(-2));
  CHECK(lens.bounds().max.x == Approx(2));
  CHECK(lens.bounds().min.y == Approx(-4));
  CHECK(lens.bounds().max.y == Approx(4));
  // Area 2 r^2 acos(d / 2r) - d / 2 sqrt(4 r^2 - d^2), d = 6.
  const double area = 50.0 * std::acos(0.6) - 3.0 * 8.0;
  CHECK(ringArea(lens.boundary(1e-5)) == Approx(area).epsilon(1e-4));
  // The other way round: one above the other.
  const Region level = disc({0, -3}, 5).intersected(disc({0, 3}, 5));
  CHECK(level.bounds().min.x == Approx(-4));
  CHECK(level.bounds().max.y == Approx(2));
  CHECK(disc({0, 0}, 5).intersected(disc({7.1, 7.1}, 5)).empty());
}

TEST_CASE("A disc in a disc is itself, a disc in a box is cut", "[shape][region]") {
  const Region inner = disc({1, 1}, 2).intersected(disc({0, 0}, 20));
  CHECK(inner.bounds().min.x == Approx(-1));
  CHECK(inner.bounds().max.y == Approx(3));
  const Region cut = disc({0, 0}, 5).intersected(box(-10, 3, 10, 10));
  CHECK(cut.bounds().min.x == Approx(-4));
  CHECK(cut.bounds().max.x == Approx(4));
  CHECK(cut.bounds().min.y == Approx(3));
  CHECK(cut.bounds().max.y == Approx(5));
}

TEST_CASE("A line may cut a disc twice between two ends", "[shape][region]") {
  // The slanting side of the triangle, x + y = 8, meets the circle around (0, 0) with radius 6.5
  // in x = 4 +- sqrt(6.5^2 / 2 - 16).
  const Region both = triangle().intersected(disc({0, 0}, 6.5));
  const double half = std::sqrt(6.5 * 6.5 / 2.0 - 16.0);
  CHECK(both.column(4.0)->high == Approx(4.0));
  CHECK(both.column(4.0 - half - 0.1)->high ==
        Approx(std::sqrt(6.5 * 6.5 - std::pow(4.0 - half - 0.1, 2))));
  CHECK(both.column(4.0 + half + 0.1)->high ==
        Approx(std::sqrt(6.5 * 6.5 - std::pow(4.0 + half + 0.1, 2))));
}

TEST_CASE("A boundary is closed, clockwise, and as fine as asked", "[shape][region]") {
  const Ring ring = disc({0, 0}, 10).boundary(0.01);
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point middle = (ring[i] + ring[(i + 1) % ring.size()]) * 0.5;
    CHECK(norm(ring[i]) == Approx(10.0));
    CHECK(norm(middle) >= 10.0 - 0.01 - 1e-9);
    CHECK(cross(ring[i], ring[(i + 1) % ring.size()]) >= 0.0);
  }
}
