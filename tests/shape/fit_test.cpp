// SPDX-License-Identifier: MIT
// Worked examples of the fit engine, each with its numbers.
#include "creaseline/shape/fit.h"

#include <catch2/catch.hpp>
#include <numbers>

#include "shape/openings.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::test;

namespace {

constexpr double kTouch = 1e-8;

}  // namespace

TEST_CASE("A rectangle in a square-cornered window may move by the difference of sizes",
          "[shape][fit]") {
  const auto frame = opening(Window::rectangle(100_mm, 60_mm), 5_mm);
  const Ring hull = rectangle(40, 30);
  const Region region = frame.translations(hull);
  // (100 - 10 - 40) / 2 = 25 and (60 - 10 - 30) / 2 = 10.
  CHECK(region.bounds().min.x == Approx(-25));
  CHECK(region.bounds().max.y == Approx(10));
  const Slack slack = frame.slack(region, hull, {5, -2});
  CHECK(slack.left == 30_mm);
  CHECK(slack.right == 20_mm);
  CHECK(slack.up == 8_mm);
  CHECK(slack.down == 12_mm);
  CHECK(slack.least() == 8_mm);
  CHECK(frame.depth(hull, {5, -2}) == Approx(8));
  CHECK(frame.depth(hull, {30, 0}) == Approx(-5));
  CHECK(frame.margin(hull) == Approx(10).margin(1e-6));
  // 90 / 40 is more than 50 / 30.
  CHECK(frame.largestScale(hull) == Approx(50.0 / 30.0).margin(1e-9));
}

TEST_CASE("A design that is not centred on its origin moves the region with it", "[shape][fit]") {
  const auto frame = opening(Window::rectangle(100_mm, 60_mm, 10_mm));
  const Region centred = frame.translations(rectangle(40, 30));
  const Region moved = frame.translations(transformedRing(rectangle(40, 30), {}, {7, -3}));
  CHECK(moved.bounds().min.x == Approx(centred.bounds().min.x - 7));
  CHECK(moved.bounds().max.y == Approx(centred.bounds().max.y + 3));
}

TEST_CASE("Rounded corners take the corners of a full-size rectangle", "[shape][fit]") {
  // Its corners lie 20 mm both ways beyond the arc's centre: 20 * sqrt(2) = 28.2843 from it.
  const auto frame = opening(Window::rectangle(100_mm, 180_mm, 20_mm));
  const Ring full = rectangle(100, 180);
  CHECK(frame.translations(full).empty());
  CHECK(frame.margin(full) == Approx(20.0 - 28.284271247).margin(1e-6));
  CHECK(frame.depth(full, {0, 0}) == Approx(20.0 - 28.284271247));
  // The largest scale s has its corner on the arc: (50 s - 30)^2 + (90 s - 70)^2 = 400.
  const double s = frame.largestScale(full);
  CHECK(std::hypot(50 * s - 30, 90 * s - 70) == Approx(20.0).margin(1e-6));
}

TEST_CASE("A design too wide fits turned", "[shape][fit]") {
  const auto frame = opening(Window::rectangle(100_mm, 180_mm, 20_mm));
  CHECK(frame.translations(rectangle(120, 60)).empty());
  CHECK_FALSE(frame.translations(transformedRing(rectangle(120, 60), 90_deg, {})).empty());
  // In a window where the corners do not matter: 120 cos a + 60 sin a = 100 has its least
  // solution at a = atan(1/2) + acos(100 / sqrt(120^2 + 60^2)) = 68.376 degrees.
  const double angle =
      (std::atan(0.5) + std::acos(100.0 / std::hypot(120, 60))) * 180.0 / std::numbers::pi;
  const auto turn = frame.smallestTurn(rectangle(120, 60), 90_deg);
  REQUIRE(turn);
  CHECK(std::abs(turn->degrees()) == Approx(angle).margin(2e-3));
  CHECK_FALSE(frame.smallestTurn(rectangle(120, 60), 60_deg));
  CHECK_FALSE(frame.smallestTurn(rectangle(190, 60), 90_deg));
  CHECK(frame.smallestTurn(rectangle(60, 120), 90_deg) == 0_deg);
}

TEST_CASE("A turn by exactly the limit is still found", "[shape][fit]") {
  const auto frame = opening(Window::rectangle(50_mm, 90_mm));
  const auto turn = frame.smallestTurn(rectangle(90, 50), 90_deg);
  REQUIRE(turn);
  CHECK(std::abs(turn->degrees()) == Approx(90.0));
  CHECK_FALSE(frame.smallestTurn(rectangle(90, 50), 89.9_deg));
}

TEST_CASE("A clearance beyond the corner radius leaves square corners", "[shape][fit]") {
  const auto frame = opening(Window::rectangle(100_mm, 80_mm, 5_mm), 10_mm);
  const Region region = frame.translations(rectangle(80, 60));
  REQUIRE_FALSE(region.empty());
  CHECK(region.bounds().width() == Approx(0.0).margin(kTouch));
  CHECK(frame.translations(rectangle(80.00001, 60)).empty());
}

TEST_CASE("A clearance that eats the window holds nothing", "[shape][fit]") {
  for (const auto& window : {Window::rectangle(100_mm, 20_mm, 5_mm), Window::ellipse(100_mm, 20_mm),
                             Window::polygon({{0, 0}, {100, 0}, {100, 20}, {0, 20}})}) {
    const auto frame = opening(window, 11_mm);
    CHECK(frame.translations({{{0, 0}}}).empty());
    CHECK(frame.largestScale(rectangle(10, 10)) == 0.0);
    CHECK(frame.margin({{{0, 0}}}) == Approx(-1.0).margin(1e-3));
    CHECK_FALSE(frame.smallestTurn(rectangle(1, 1), 90_deg));
  }
}

TEST_CASE("A touching fit is a fit, in every kind of window", "[shape][fit]") {
  CHECK_FALSE(opening(Window::rectangle(100_mm, 60_mm)).translations(rectangle(100, 60)).empty());
  CHECK(opening(Window::rectangle(100_mm, 60_mm)).translations(rectangle(100, 60.00001)).empty());
  const auto polygon = Window::polygon({{0, 0}, {40, 0}, {0, 30}});
  const Ring self = {{-20, -15}, {20, -15}, {-20, 15}};
  CHECK_FALSE(opening(polygon).translations(self).empty());
  CHECK(opening(polygon).translations(transformedRing(self, 1_deg, {})).empty());
  // A disc's worth of points in the same round window.
  const auto round = Window::rectangle(50_mm, 50_mm, 25_mm);
  Ring circle;
  for (int i = 0; i < 60; ++i) {
    const double angle = i * std::numbers::pi / 30.0;
    circle.push_back({25.0 * std::cos(angle), 25.0 * std::sin(angle)});
  }
  const Region region = opening(round).translations(convexHull(circle));
  REQUIRE_FALSE(region.empty());
  CHECK(region.bounds().width() < 1e-6);
  CHECK(opening(round).largestScale(convexHull(circle)) == Approx(1.0).margin(1e-9));
}

TEST_CASE("A point may go wherever the window is", "[shape][fit]") {
  const auto frame = opening(Window::rectangle(100_mm, 60_mm, 20_mm), 5_mm);
  const Region region = frame.translations({{{0, 0}}});
  // The corner's arc: centre (30, 10), radius 15. 30 + 9, 10 + 12 lies on it (3-4-5).
  CHECK(region.column(39)->high == Approx(22));
  CHECK(region.column(-39)->low == Approx(-22));
  CHECK(region.row(22)->low == Approx(-39));
  CHECK(region.column(0)->length() == Approx(50));
  CHECK(std::isinf(frame.largestScale({{{0, 0}}})));
  CHECK(frame.margin({{{3, 4}}}) == Approx(25).margin(1e-6));
}

TEST_CASE("Two corner arcs may meet without a straight side between them", "[shape][fit]") {
  // A wide bar, 70 mm, in a round window of 50 mm radius: its ends touch at a height of
  // sqrt(50^2 - 35^2) = 35.707.
  const auto frame = opening(Window::rectangle(100_mm, 100_mm, 50_mm));
  const Region region = frame.translations({{{-35, 0}, {35, 0}}});
  CHECK(region.column(0)->high == Approx(std::sqrt(50.0 * 50.0 - 35.0 * 35.0)));
  CHECK(region.bounds().max.x == Approx(15));
  CHECK(region.row(0)->high == Approx(15));
}

TEST_CASE("A sewing field cuts the translations", "[shape][fit]") {
  const auto frame =
      opening(Window::rectangle(100_mm, 60_mm, 10_mm), 5_mm, *Window::rectangle(70_mm, 200_mm));
  const Ring hull = rectangle(40, 30);
  const Region region = frame.translations(hull);
  CHECK(region.bounds().max.x == Approx(15));
  CHECK(region.bounds().max.y == Approx(10));
  CHECK(frame.depth(hull, {12, 0}) == Approx(3));
  CHECK(frame.largestScale(hull) == Approx(50.0 / 30.0).margin(1e-9));
  CHECK(frame.translations(rectangle(71, 10)).empty());
  CHECK(frame.margin(rectangle(71, 10)) == Approx(-0.5).margin(1e-6));
}

TEST_CASE("Triangles in a triangle: half-planes moved by the support", "[shape][fit]") {
  // Window: legs 80 and 60, hypotenuse 100, clearance 5. A point may lie in the triangle shrunk
  // by 5: inradius 20, so it is the similar triangle of inradius 15, with legs 60 and 45.
  const auto frame = opening(Window::polygon({{0, 0}, {80, 0}, {0, 60}}), 5_mm);
  const Region region = frame.translations({{{0, 0}}});
  CHECK(region.bounds().width() == Approx(60));
  CHECK(region.bounds().height() == Approx(45));
  CHECK(frame.margin({{{0, 0}}}) == Approx(15).margin(1e-6));
  // The similar triangle of half that size.
  CHECK(frame.largestScale({{{0, 0}, {30, 0}, {0, 22.5}}}) == Approx(2.0).margin(1e-9));
}

TEST_CASE("An ellipse is met within its tolerance, on the safe side", "[shape][fit]") {
  const auto frame = opening(Window::ellipse(200_mm, 120_mm));
  // A rectangle with corners on the ellipse: (60 / 100)^2 + (48 / 60)^2 = 1.
  const double scale = frame.largestScale(rectangle(120, 96));
  CHECK(scale <= 1.0);
  CHECK(scale == Approx(1.0).margin(1e-5));
  const Region region = frame.translations({{{0, 0}}});
  CHECK(region.column(60)->high <= 48.0 + kTouch);
  CHECK(region.column(60)->high == Approx(48.0).margin(1e-3));
}

TEST_CASE("The turn slack of a bar in a slot", "[shape][fit]") {
  // A bar 80 x 0 turns until its ends reach half the height, 20: asin(20 / 40) = 30 degrees.
  const auto frame = opening(Window::rectangle(100_mm, 40_mm));
  const Ring bar{{-40, 0}, {40, 0}};
  const Region region = frame.translations(bar);
  CHECK(frame.slack(region, bar, {0, 0}).turn == 30_deg);
  // Moved down by 10, the other end has only 10 left: asin(10 / 40).
  CHECK(frame.slack(region, bar, {0, 10}).turn.degrees() ==
        Approx(std::asin(0.25) * 180.0 / std::numbers::pi).margin(1e-3));
  // Short enough to turn all round: the limit is told.
  const Ring shortBar{{-15, 0}, {15, 0}};
  CHECK(frame.slack(region, shortBar, {0, 0}).turn == FrameOpening::kLargestTurnSlack);
}

TEST_CASE("A rounded corner limits the turn too", "[shape][fit]") {
  // In a round window nothing but the arcs limits, and turning about the centre is free.
  const auto round = opening(Window::rectangle(100_mm, 100_mm, 50_mm));
  const Ring square = rectangle(70, 70);
  CHECK(round.slack(round.translations(square), square, {0, 0}).turn ==
        FrameOpening::kLargestTurnSlack);
  // A 60 x 60 window with r = 20: the arc around (10, 10) is 10 sqrt(2) + 20 = 34.14 away on the
  // diagonal. A lever of 33 along the diagonal passes there, but not further on: by the law of
  // cosines in the triangle origin, (10, 10), meeting point.
  const auto frame = opening(Window::rectangle(60_mm, 60_mm, 20_mm));
  const Ring lever{{0, 0}, turned({33, 0}, 45_deg)};
  const Region region = frame.translations(lever);
  REQUIRE(region.contains({0, 0}));
  const double cosine = (33.0 * 33.0 + 200.0 - 400.0) / (2.0 * 33.0 * std::sqrt(200.0));
  CHECK(frame.slack(region, lever, {0, 0}).turn.degrees() ==
        Approx(std::acos(cosine) * 180.0 / std::numbers::pi).margin(1e-3));
  // One of 29 passes everywhere.
  const Ring shortLever{{0, 0}, {29, 0}};
  CHECK(frame.slack(frame.translations(shortLever), shortLever, {0, 0}).turn ==
        FrameOpening::kLargestTurnSlack);
}

TEST_CASE("A rounded corner limits the turn about a centre within the corner", "[shape][fit]") {
  // Window 60 x 60 with r = 20, so arc centre (10, 10). A lever of 8 from (20, 20): it meets the
  // arc where |(10, 10) + 8 u| = 20, at acos(136 / (16 sqrt(200))) = 53.05 degrees from the
  // diagonal; 30 degrees further on it has 30 degrees to go.
  const auto frame = opening(Window::rectangle(60_mm, 60_mm, 20_mm));
  const double meeting = std::acos(136.0 / (16.0 * std::sqrt(200.0))) * 180.0 / std::numbers::pi;
  const Ring lever{{0, 0}, turned({8, 0}, Angle::fromDegrees(45.0 + meeting + 30.0))};
  const Region region = frame.translations(lever);
  REQUIRE(region.contains({20, 20}));
  CHECK(frame.slack(region, lever, {20, 20}).turn.degrees() == Approx(30.0).margin(2e-3));
}

TEST_CASE("A design without points fits nowhere and breaks nothing", "[shape][fit]") {
  const auto frame = opening(Window::rectangle(100_mm, 60_mm, 10_mm));
  CHECK(frame.translations({}).empty());
  CHECK(frame.largestScale({}) == 0.0);
  CHECK(frame.margin({}) == 0.0);
  CHECK_FALSE(frame.smallestTurn({}, 90_deg));
}

TEST_CASE("Tiny designs and huge ones give finite answers", "[shape][fit]") {
  const auto frame = opening(Window::rectangle(100_mm, 60_mm, 10_mm), 1_mm);
  for (const double size : {1e-6, 1e-3, 1e3, 1e5}) {
    CAPTURE(size);
    const Ring hull = rectangle(size, size);
    CHECK(frame.translations(hull).empty() == (size > 58.0));
    const double scale = frame.largestScale(hull);
    CHECK(scale * size <= 58.0 + 1e-6);
    CHECK(scale * size >= 58.0 - 1e-6 - size * 1e-9);
    CHECK(std::isfinite(frame.margin(hull)));
  }
}
