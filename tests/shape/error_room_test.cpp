// SPDX-License-Identifier: MIT
// Room for error at a chosen place: worked examples, and GEOS on random cases.
#include <catch2/catch.hpp>

#include "creaseline/shape/fit.h"
#include "shape/geos_oracle.h"
#include "shape/openings.h"
#include "shape/random_shapes.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::test;

namespace {

constexpr std::uint32_t kErrorRoomSeed = 20270303;
constexpr int kTurns = 30;  // looked at to either side

Ring square(Point middle, double half) {
  return {{middle.x - half, middle.y - half},
          {middle.x + half, middle.y - half},
          {middle.x + half, middle.y + half},
          {middle.x - half, middle.y + half}};
}

}  // namespace

TEST_CASE("A shift and a turn at once need more room than each alone", "[shape][fit][error]") {
  // 40 x 20 in 100 x 60. Turned by up to 10 degrees its half extents grow to
  // 20 cos 10 + 10 sin 10 = 21.4326 and 10 cos 10 + 20 sin 10 = 13.3210, which leaves 28.5674
  // sideways and 16.6790 along.
  const FrameOpening frame(*Window::rectangle(100_mm, 60_mm), {}, {});
  const Ring hull = rectangle(40, 20);
  const Region region = frame.translations(hull);
  CHECK(frame.bearsError(region, hull, {0, 0}, 28.567_mm, 16.678_mm, 10_deg));
  CHECK_FALSE(frame.bearsError(region, hull, {0, 0}, 28.568_mm, 16.678_mm, 10_deg));
  CHECK_FALSE(frame.bearsError(region, hull, {0, 0}, 28.567_mm, 16.680_mm, 10_deg));
  CHECK_FALSE(frame.bearsError(region, hull, {0, 0}, 28.567_mm, 16.678_mm, 10.1_deg));
  CHECK(frame.bearsError(region, hull, {5, 0}, 23.567_mm, 16.678_mm, -10_deg));
  CHECK_FALSE(frame.bearsError(region, hull, {5, 0}, 23.568_mm, 16.678_mm, 10_deg));
  // Without a turn: 100 / 2 - 20 and 60 / 2 - 10.
  CHECK(frame.bearsError(region, hull, {0, 0}, 30_mm, 20_mm, {}));
  CHECK_FALSE(frame.bearsError(region, hull, {0, 0}, 30.001_mm, 20_mm, {}));
  CHECK_FALSE(frame.bearsError(region, hull, {0, 0}, {}, {}, 50_deg));
  CHECK_FALSE(frame.bearsError(region, hull, {31, 0}, {}, {}, {}));
}

TEST_CASE("The largest square and disc of error around a place", "[shape][region][error]") {
  // The translations of a point in 100 x 60 with r = 20: that window itself.
  const FrameOpening frame(*Window::rectangle(100_mm, 60_mm, 20_mm), {}, {});
  const Region region = frame.translations({{{0, 0}}});
  CHECK(region.discAround({0, 0}) == Approx(30));
  CHECK(region.discAround({20, 5}) == Approx(25));
  // From (36, 18), 6 and 8 beyond the arc's centre (30, 10): 20 - 10.
  CHECK(region.discAround({36, 18}) == Approx(10));
  CHECK(region.discAround({-36, -18}) == Approx(10));
  // A square of half side s around the middle reaches the flat side at 30: its corner (30, 30)
  // stays left of the arc's centre.
  CHECK(region.squareAround({0, 0}) == Approx(30));
  // From (30, 10) the corner runs along the arc's diagonal: 20 / sqrt(2).
  CHECK(region.squareAround({30, 10}) == Approx(20.0 / std::sqrt(2.0)));
  CHECK(region.squareAround({-30, 10}) == Approx(20.0 / std::sqrt(2.0)));
  CHECK(region.squareAround({60, 0}) == 0.0);
  CHECK(region.discAround({60, 0}) == 0.0);
  CHECK(Region().discAround({0, 0}) == 0.0);
}

TEST_CASE("The largest square and disc agree with GEOS", "[shape][region][error][oracle]") {
  const Geos geos;
  Dice dice(kErrorRoomSeed);
  const int cases = caseCount(1'000, 20'000);
  int inside = 0;
  for (int i = 0; i < cases; ++i) {
    const FrameOpening frame(anyWindow(dice), Length::fromMm(dice.between(0.0, 8.0)), {});
    const Region region = frame.translations(hardOutline(dice).hull());
    if (region.empty() || region.bounds().width() < 1.0 || region.bounds().height() < 1.0) {
      continue;
    }
    const Point at = dice.oneIn(2) ? region.balancedPoint()
                                   : region.nearest({dice.between(-40, 40), dice.between(-40, 40)});
    const double disc = region.discAround(at);
    const double half = region.squareAround(at);
    CAPTURE(kErrorRoomSeed, i, at.x, at.y, disc, half);
    const Ring boundary = region.boundary(1e-5);
    const auto theirs = geos.linearRing(boundary);
    REQUIRE(disc == Approx(geos.distance(theirs, geos.point(at))).margin(1e-4));
    const auto area = geos.polygon(boundary);
    const auto prepared = geos.prepare(area);
    if (half > 1e-2) {
      ++inside;
      REQUIRE(geos.covers(prepared, geos.polygon(square(at, half - 1e-3))));
      REQUIRE_FALSE(geos.covers(prepared, geos.polygon(square(at, half + 1e-3))));
    }
  }
  CHECK(inside > cases / 8);
}

TEST_CASE("Whether an error is borne agrees with GEOS asked at many places and turns",
          "[shape][fit][error][oracle]") {
  const Geos geos;
  Dice dice(kErrorRoomSeed + 1);
  const int cases = caseCount(300, 20'000);
  int borne = 0;
  int refused = 0;
  for (int i = 0; i < cases; ++i) {
    const Window window = polygonWindow(dice, dice.between(60.0, 180.0), dice.between(60.0, 180.0));
    const FrameOpening frame(window, {}, {});
    Outline outline = hardOutline(dice);
    const double scale = frame.largestScale(outline.hull());
    outline = outline.transformed({}, std::min(1.0, scale * dice.between(0.4, 0.95)), {});
    const Ring hull = outline.hull();
    const Region region = frame.translations(hull);
    if (region.empty()) {
      continue;
    }
    const Point at = region.balancedPoint();
    const double sideways = dice.between(0.0, 1.2) * region.squareAround(at);
    const double along = dice.between(0.0, 1.2) * region.squareAround(at);
    const Angle most =
        Angle::fromDegrees(dice.between(0.0, 0.6) * frame.slack(region, hull, at).turn.degrees());
    const double turn = most.degrees();
    const Length x = Length::fromMm(sideways);
    const Length y = Length::fromMm(along);
    const bool ours = frame.bearsError(region, hull, at, x, y, most);
    CAPTURE(kErrorRoomSeed, i, at.x, at.y, sideways, along, turn, ours);
    (ours ? borne : refused) += 1;
    // Where the error is borne, GEOS finds every place and turn inside, but for a nanometre. Where
    // it is not, some place is outside a window smaller by what a point moves between two turns.
    double reach = 0.0;
    for (const Point& point : hull) {
      reach = std::max(reach, norm(point));
    }
    const double step = turn / kTurns;
    const double grown = ours ? 1e-6 : -(reach * step * std::numbers::pi / 180.0 + 1e-6);
    const auto whole = geos.polygon(window.boundary(1_mm));
    const auto area = geos.own(GEOSBuffer_r(geos.handle(), whole.get(), grown, 8));
    const auto prepared = geos.prepare(area);
    bool all = true;
    for (int k = -kTurns; k <= kTurns && all; ++k) {
      const double radians = step * k * std::numbers::pi / 180.0;
      for (const Point corner : {Point{-1, -1}, Point{1, -1}, Point{1, 1}, Point{-1, 1}}) {
        Ring turned;
        for (const Point& p : hull) {
          turned.push_back({p.x * std::cos(radians) - p.y * std::sin(radians),
                            p.x * std::sin(radians) + p.y * std::cos(radians)});
        }
        const Point place = at + Point{corner.x * x.mm(), corner.y * y.mm()};
        all = all && geos.covers(prepared, geos.polygon(turned, place));
      }
    }
    REQUIRE(all == ours);
  }
  CHECK(borne > cases / 10);
  CHECK(refused > cases / 10);
}
