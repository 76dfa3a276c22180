// SPDX-License-Identifier: MIT
#include "creaseline/shape/separation.h"

#include <catch2/catch.hpp>

#include "creaseline/shape/outline.h"
#include "shape/geos_oracle.h"
#include "shape/random_shapes.h"

using namespace creaseline;
using namespace creaseline::test;

namespace {

constexpr std::uint32_t kSeparationSeed = 907;

Ring boxRing(double left, double top, double right, double bottom) {
  return {{left, top}, {right, top}, {right, bottom}, {left, bottom}};
}

}  // namespace

TEST_CASE("Two boxes apart, corner to corner", "[shape][separation]") {
  const Separation apart = separation(boxRing(0, 0, 2, 2), boxRing(5, 6, 7, 8));
  CHECK(apart.distance == Approx(5.0));  // 3-4-5
  CHECK(apart.direction.x == Approx(-0.6));
  CHECK(apart.direction.y == Approx(-0.8));
}

TEST_CASE("Two boxes that overlap say the shortest way out", "[shape][separation]") {
  // 8 wide and 3 high in common: up is shortest.
  const Separation overlap = separation(boxRing(0, 0, 10, 10), boxRing(2, 7, 20, 20));
  CHECK(overlap.distance == Approx(-3.0));
  CHECK(overlap.direction == Point{0, -1});
  // One inside the other: to the nearest side and out, 2 + 2.
  const Separation inside = separation(boxRing(2, 4, 4, 6), boxRing(0, 0, 20, 10));
  CHECK(inside.distance == Approx(-4.0));
  CHECK(inside.direction == Point{-1, 0});
}

TEST_CASE("Bodies that touch have no distance", "[shape][separation]") {
  CHECK(separation(boxRing(0, 0, 2, 2), boxRing(2, 0, 4, 2)).distance == Approx(0.0).margin(1e-12));
  CHECK(separation(boxRing(0, 0, 2, 2), boxRing(2, 2, 4, 4)).distance == Approx(0.0).margin(1e-12));
}

TEST_CASE("A body inside a panel has room to each side", "[shape][separation]") {
  const auto rooms = roomToSides(boxRing(2, 3, 4, 5), boxRing(0, 0, 10, 10));
  REQUIRE(rooms.size() == 4);
  CHECK(rooms[0].distance == Approx(3));
  CHECK(rooms[1].distance == Approx(6));
  CHECK(rooms[2].distance == Approx(5));
  CHECK(rooms[3].distance == Approx(2));
  CHECK(rooms[0].direction == Point{0, 1});
  CHECK(rooms[1].direction == Point{-1, 0});
  // The winding of the panel does not matter to the directions.
  Ring panel = boxRing(0, 0, 10, 10);
  std::reverse(panel.begin(), panel.end());
  const auto reversed = roomToSides(boxRing(2, 3, 4, 5), panel);
  CHECK(reversed[0].direction == Point{0, -1});
  CHECK(reversed[0].distance == Approx(5));
}

TEST_CASE("A body that crosses a side says how deep", "[shape][separation]") {
  const auto rooms = roomToSides(boxRing(-3, 4, 2, 6), boxRing(0, 0, 10, 10));
  CHECK(rooms[3].side == 3);
  CHECK(rooms[3].distance == Approx(-3));
  CHECK(rooms[3].direction == Point{1, 0});
  CHECK(rooms[0].distance == Approx(4));
}

TEST_CASE("A body that touches a side has no room and crosses nothing", "[shape][separation]") {
  CHECK(roomToSides(boxRing(0, 4, 2, 6), boxRing(0, 0, 10, 10))[3].distance ==
        Approx(0.0).margin(1e-12));
}

TEST_CASE("Only the part of the body abreast of a side counts", "[shape][separation]") {
  // An L-shaped panel with its inner corner in (4, 6); the body reaches over the inner side
  // (4, 0)-(4, 6) by 1 and lies lower than it for the rest.
  const Ring panel{{0, 0}, {4, 0}, {4, 6}, {10, 6}, {10, 10}, {0, 10}};
  const Ring slanting{{3, 5}, {5, 5}, {9, 9}, {3, 9}};
  const auto rooms = roomToSides(slanting, panel);
  // Down to y = 6 the body's right side, x = y, reaches x = 6: 2 beyond.
  CHECK(rooms[1].distance == Approx(-2.0));
  CHECK(rooms[1].direction == Point{-1, 0});
  CHECK(rooms[2].distance == Approx(-1.0));
  CHECK(rooms[2].direction == Point{0, 1});
  CHECK(rooms[3].distance == Approx(1.0));
}

TEST_CASE("Separation agrees with GEOS, and moving by it makes the bodies touch",
          "[shape][separation][oracle]") {
  const Geos geos;
  Dice dice(kSeparationSeed);
  const int cases = caseCount(5'000);
  int overlapping = 0;
  for (int i = 0; i < cases; ++i) {
    const Ring a = convexRing(dice, 3 + dice.below(20), 40, 30);
    const Ring b = transformedRing(convexRing(dice, 3 + dice.below(20), 30, 50), {},
                                   {dice.between(-50.0, 50.0), dice.between(-50.0, 50.0)});
    if (a.size() < 3 || b.size() < 3) {
      continue;
    }
    const Separation found = separation(a, b);
    CAPTURE(kSeparationSeed, i, found.distance, found.direction.x, found.direction.y);
    REQUIRE(norm(found.direction) == Approx(1.0));
    const double apart = geos.distance(geos.polygon(a), geos.polygon(b));
    REQUIRE(std::max(0.0, found.distance) == Approx(apart).margin(1e-9));
    overlapping += found.distance < 0.0 ? 1 : 0;
    const Point out = found.direction * -found.distance;
    if (found.distance < 0.0) {
      const auto shared = [&](double share) {
        const auto area = geos.own(GEOSIntersection_r(
            geos.handle(), geos.polygon(a, out * share).get(), geos.polygon(b).get()));
        return geos.area(area);
      };
      REQUIRE(shared(1.0) < 1e-6);
      REQUIRE(shared(0.5) > 0.0);
      // No shorter way in any other direction.
      for (int k = 0; k < 24; ++k) {
        const Point way = turned(out * 0.999, Angle::fromDegrees(k * 15.0));
        REQUIRE(geos.distance(geos.polygon(a, way), geos.polygon(b)) == 0.0);
      }
    }
    // The other way round, the direction turns round.
    const Separation swapped = separation(b, a);
    REQUIRE(swapped.distance == Approx(found.distance).margin(1e-9));
  }
  CHECK(overlapping > cases / 10);
}

TEST_CASE("Room to sides agrees with GEOS for bodies inside and across",
          "[shape][separation][oracle]") {
  const Geos geos;
  Dice dice(kSeparationSeed + 1);
  const int cases = caseCount(2'000);
  int crossed = 0;
  for (int i = 0; i < cases; ++i) {
    const Ring panel = starRing(dice, 4 + dice.below(10), 40, 100);
    const Ring body = transformedRing(convexRing(dice, 4 + dice.below(12), 40, 30), {},
                                      {dice.between(-60.0, 60.0), dice.between(-60.0, 60.0)});
    const auto rooms = roomToSides(body, panel);
    REQUIRE(rooms.size() == panel.size());
    const auto bodyGeometry = geos.polygon(body);
    for (const SideRoom& room : rooms) {
      const Point from = panel[room.side];
      const Point to = panel[(room.side + 1) % panel.size()];
      const double distance = geos.distance(bodyGeometry, geos.segment(from, to));
      CAPTURE(kSeparationSeed, i, room.side, room.distance, distance);
      REQUIRE(std::max(0.0, room.distance) == Approx(distance).margin(1e-9));
      REQUIRE((distance == 0.0) == (room.distance <= 1e-9));
      if (room.distance >= -1e-6) {
        continue;
      }
      ++crossed;
      // Moved out by the depth, no part abreast of the side is beyond it any more.
      const Point beyond = room.direction * -1000.0;
      const auto strip = geos.polygon({from, to, to + beyond, from + beyond});
      const auto left = geos.own(GEOSIntersection_r(
          geos.handle(), geos.polygon(body, room.direction * -room.distance).get(), strip.get()));
      REQUIRE(geos.area(left) < 1e-6);
      const auto before = geos.own(GEOSIntersection_r(
          geos.handle(), geos.polygon(body, room.direction * (-room.distance * 0.9)).get(),
          strip.get()));
      REQUIRE(geos.area(before) > 0.0);
    }
  }
  CHECK(crossed > cases / 10);
}

TEST_CASE("A side within reach says how far off it is and the way to be further",
          "[shape][separation]") {
  const Ring panel = boxRing(0, 0, 10, 10);
  const Ring body = boxRing(2, 3, 4, 5);
  const SideMeter meter(body, panel, true);
  CHECK_FALSE(meter.within(3, 2.0));  // exactly as far off as asked for
  const auto near = meter.within(3, 2.5);
  REQUIRE(near);
  CHECK(near->distance == Approx(2.0));
  CHECK(near->direction == Point{1, 0});
  // A side that is crossed comes with its depth, whatever the reach; one that is touched has its
  // way into the panel.
  const Ring across = boxRing(-3, 4, 2, 6);
  CHECK(SideMeter(across, panel, true).within(3, 0.0)->distance == Approx(-3.0));
  CHECK(SideMeter(across, panel, true).within(3, 7.0)->distance == Approx(-3.0));
  const Ring touching = boxRing(0, 4, 2, 6);
  const SideMeter touched(touching, panel, true);
  CHECK_FALSE(touched.within(3, 0.0));
  CHECK(touched.within(3, 1.0)->direction == Point{1, 0});
  // Past the inner corner of an L the way out is straight from the corner: 3-4-5.
  const Ring inL = boxRing(-6, 10, 1, 14);
  const Ring cornered{{-9, 0}, {4, 0}, {4, 6}, {10, 6}, {10, 20}, {-9, 20}};
  const auto corner = SideMeter(inL, cornered, true).within(1, 6.0);
  REQUIRE(corner);
  CHECK(corner->distance == Approx(5.0));
  CHECK(corner->direction.x == Approx(-0.6));
  CHECK(corner->direction.y == Approx(0.8));
}

TEST_CASE(
    "Sides within reach are those that GEOS finds in the buffer, and moving gets clear of them",
    "[shape][separation][oracle]") {
  const Geos geos;
  Dice dice(kSeparationSeed + 2);
  const int cases = caseCount(1'000);
  int near = 0;
  for (int i = 0; i < cases; ++i) {
    const Ring panel = starRing(dice, 4 + dice.below(10), 60, 120);
    const Ring body = transformedRing(convexRing(dice, 4 + dice.below(12), 40, 30), {},
                                      {dice.between(-40.0, 40.0), dice.between(-40.0, 40.0)});
    const double reach = dice.between(0.5, 30.0);
    const SideMeter meter(body, panel, true);  // a star's corners come at rising angles
    const auto geometry = geos.polygon(body);
    // With so many points to a quarter the buffer ends less than a ten thousandth short.
    const auto buffer = geos.own(GEOSBuffer_r(geos.handle(), geometry.get(), reach, 128));
    for (std::size_t side = 0; side < panel.size(); ++side) {
      const auto segment = geos.segment(panel[side], panel[(side + 1) % panel.size()]);
      const double distance = geos.distance(geometry, segment);
      const auto room = meter.within(side, reach);
      CAPTURE(kSeparationSeed, i, side, reach, distance);
      if (std::abs(distance - reach) > 1e-3 * reach) {
        REQUIRE(room.has_value() == (geos.distance(buffer, segment) == 0.0));
      }
      if (!room || room->distance < 0.0) {
        continue;
      }
      ++near;
      REQUIRE(room->distance == Approx(distance).margin(1e-9));
      REQUIRE(norm(room->direction) == Approx(1.0));
      if (distance > 1e-6) {
        const Point out = room->direction * (reach - room->distance);
        REQUIRE(geos.distance(geos.polygon(body, out), segment) >= reach - 1e-9);
      }
    }
  }
  CHECK(near > cases / 10);
}
