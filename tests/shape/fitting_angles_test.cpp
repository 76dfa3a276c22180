// SPDX-License-Identifier: MIT
// Worked examples of the angles at which a design fits.
#include "creaseline/shape/fitting_angles.h"

#include <catch2/catch.hpp>
#include <numbers>

#include "creaseline/shape/fit.h"
#include "shape/openings.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::test;
using Range = FittingAngles::Range;

namespace {

double inDegrees(double radians) {
  return radians * 180.0 / std::numbers::pi;
}

void checkRanges(const FittingAngles& angles, const std::vector<Range>& wanted,
                 double margin = 1e-8) {
  REQUIRE(angles.ranges().size() == wanted.size());
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    CAPTURE(i);
    CHECK(angles.ranges()[i].from == Approx(wanted[i].from).margin(margin));
    CHECK(angles.ranges()[i].to == Approx(wanted[i].to).margin(margin));
  }
}

}  // namespace

TEST_CASE("A bar in a slot fits while its height stays below the slot's", "[shape][fit][angles]") {
  // 80 sin a <= 40: up to 30 degrees either way, and the same upside down.
  const FittingAngles angles =
      opening(Window::rectangle(100_mm, 40_mm)).fittingAngles(Ring{{-40, 0}, {40, 0}});
  checkRanges(angles, {{-30, 30}, {150, 210}});
  CHECK(angles.total() == Approx(120));
  CHECK(angles.contains(30.0));
  CHECK(angles.contains(-180.0));
  CHECK(angles.contains(725.0));
  CHECK_FALSE(angles.contains(30.00001));
  CHECK(angles.around(-170_deg)->from == Approx(-210));
  CHECK(angles.around(-170_deg)->to == Approx(-150));
  CHECK_FALSE(angles.around(90_deg));
}

TEST_CASE("A rectangle in a larger one: the sinusoids of its width and height",
          "[shape][fit][angles]") {
  // 120 cos a + 60 sin a <= 100 from a = atan(1/2) + acos(100 / sqrt(120^2 + 60^2)) on, the height
  // never binds; symmetric around 90 degrees.
  const double from = inDegrees(std::atan(0.5) + std::acos(100.0 / std::hypot(120, 60)));
  const auto angles = opening(Window::rectangle(100_mm, 180_mm)).fittingAngles(rectangle(120, 60));
  checkRanges(angles, {{from - 180, -from}, {from, 180 - from}});
  CHECK(angles.nearest(0_deg)->degrees() == Approx(from).margin(1e-3));
  CHECK(*angles.nearest(0_deg) > 0_deg);
  CHECK(angles.nearest(-10_deg)->degrees() == Approx(-from).margin(1e-3));
  CHECK(angles.nearest(90_deg) == 90_deg);
}

TEST_CASE("A design as large as the window fits at its own angles alone", "[shape][fit][angles]") {
  checkRanges(opening(Window::rectangle(100_mm, 60_mm)).fittingAngles(rectangle(100, 60)),
              {{0, 0}, {180, 180}});
  const auto square = opening(Window::rectangle(60_mm, 60_mm)).fittingAngles(rectangle(60, 60));
  checkRanges(square, {{-90, -90}, {0, 0}, {90, 90}, {180, 180}});
  CHECK(square.nearest(50_deg) == 90_deg);
  CHECK(square.nearest(-46_deg) == -90_deg);
  CHECK(square.contains(-180.0));
  // A triangle without any symmetry in itself: one angle.
  const Ring self = {{-20, -15}, {20, -15}, {-20, 15}};
  checkRanges(opening(Window::polygon(self)).fittingAngles(self), {{0, 0}});
}

TEST_CASE("What fits at every angle says so, and what fits at none", "[shape][fit][angles]") {
  // The diagonal of 30 x 40 is 50.
  const auto round = opening(Window::rectangle(50_mm, 50_mm, 25_mm));
  CHECK(round.fittingAngles(rectangle(30, 40)).all());
  CHECK(round.fittingAngles(rectangle(30, 40)).contains(123.456));
  CHECK(round.fittingAngles(rectangle(30.001, 40)).empty());
  CHECK_FALSE(round.fittingAngles(rectangle(30.001, 40)).nearest(0_deg));
  CHECK(round.fittingAngles({}).empty());
  CHECK(opening(Window::polygon({{0, 0}, {60, 0}, {0, 80}})).fittingAngles({{{0, 0}}}).all());
  // The inscribed circle of that triangle has radius 20.
  CHECK(
      opening(Window::polygon({{0, 0}, {60, 0}, {0, 80}})).fittingAngles(rectangle(24, 32)).all());
}

TEST_CASE("Rounded corners bound the angles by where a corner meets an arc",
          "[shape][fit][angles]") {
  // A bar of 100 in a window 100 x 60 with r = 30, a stadium: turned by a, its ends lie on the end
  // circles around (20, 0) when (50 cos a - 20)^2 + (50 sin a)^2 = 900, so only at 0; one of 90 at
  // 45^2 - 1800 cos a + 400 = 900.
  const auto stadium = opening(Window::rectangle(100_mm, 60_mm, 30_mm));
  // Near 0 the overhang grows with the square of the angle, so the half nanometre in a thousand by
  // which a touching design is let in shows.
  checkRanges(stadium.fittingAngles(Ring{{-50, 0}, {50, 0}}), {{0, 0}, {180, 180}}, 4e-4);
  const double end = inDegrees(std::acos((45.0 * 45.0 + 400.0 - 900.0) / 1800.0));
  checkRanges(stadium.fittingAngles(Ring{{-45, 0}, {45, 0}}),
              {{-end, end}, {180 - end, 180 + end}});
}

TEST_CASE("A window without symmetry gives angles without any", "[shape][fit][angles]") {
  // The longest chord of a triangle in a direction times its extent across is twice its area:
  // with legs 60 along x and 80 along y, 4800. A bar of 90 fits while the extent is 53.333 at most.
  const auto frame = opening(Window::polygon({{0, 0}, {60, 0}, {0, 80}}));
  const auto extent = [](double degrees) {
    const double turn = degrees * std::numbers::pi / 180.0;
    const double x = -60.0 * std::sin(turn);
    const double y = 80.0 * std::cos(turn);
    return std::max({x, y, 0.0}) - std::min({x, y, 0.0});
  };
  const auto angles = frame.fittingAngles(Ring{{-45, 0}, {45, 0}});
  // Along the hypotenuse and opposite; the hypotenuse points to 180 - atan(80 / 60) = 126.87.
  REQUIRE(angles.ranges().size() == 2);
  CHECK(angles.contains(180.0 - inDegrees(std::atan2(80.0, 60.0))));
  for (const Range& range : angles.ranges()) {
    CHECK(range.width() > 10.0);
    CHECK(extent(range.from) == Approx(4800.0 / 90.0).margin(1e-7));
    CHECK(extent(range.to) == Approx(4800.0 / 90.0).margin(1e-7));
  }
}

TEST_CASE("Concave outlines, holes and several pieces count by their hull",
          "[shape][fit][angles]") {
  const auto frame = opening(Window::rectangle(100_mm, 60_mm, 15_mm));
  // A cross, and its hull of eight corners.
  const Outline cross{{{{{-10, -40},
                         {10, -40},
                         {10, -10},
                         {40, -10},
                         {40, 10},
                         {10, 10},
                         {10, 40},
                         {-10, 40},
                         {-10, 10},
                         {-40, 10},
                         {-40, -10},
                         {-10, -10}},
                        {{{-5, -5}, {5, -5}, {5, 5}, {-5, 5}}}}}};
  const Ring hull{{-10, -40}, {10, -40}, {40, -10}, {40, 10},
                  {10, 40},   {-10, 40}, {-40, 10}, {-40, -10}};
  CHECK(frame.fittingAngles(cross.hull()) == frame.fittingAngles(convexHull(hull)));
  // Three letters 20 wide in a row of 90: as the bar of their common hull, 90 x 20.
  Outline letters;
  for (const double x : {-35.0, 0.0, 35.0}) {
    letters.pieces.push_back({{{x - 10, -10}, {x + 10, -10}, {x + 10, 10}, {x - 10, 10}}, {}});
  }
  const auto angles = frame.fittingAngles(letters.hull());
  CHECK(angles == frame.fittingAngles(rectangle(90, 20)));
  CHECK(angles.contains(0));
  CHECK_FALSE(angles.contains(90));
}

TEST_CASE("A range too narrow for a thousandth of a degree is told but not offered",
          "[shape][fit][angles]") {
  // A bar as long as the diagonal of 60 x 80 fits along it alone, at 53.1301 degrees.
  const auto frame = opening(Window::rectangle(60_mm, 80_mm));
  const double diagonal = inDegrees(std::atan2(80.0, 60.0));
  const auto angles = frame.fittingAngles(Ring{{-50, 0}, {50, 0}});
  checkRanges(angles, {{diagonal - 180, diagonal - 180},
                       {-diagonal, -diagonal},
                       {diagonal, diagonal},
                       {180 - diagonal, 180 - diagonal}});
  CHECK_FALSE(angles.nearest(0_deg));
  CHECK_FALSE(frame.smallestTurn(Ring{{-50, 0}, {50, 0}}, 90_deg));
}

TEST_CASE("A sewing field turns the angles round with it", "[shape][fit][angles]") {
  // Window and field cross: 100 x 60 and 60 x 100 leave 60 x 60.
  const FrameOpening frame(*Window::rectangle(100_mm, 60_mm), {},
                           *Window::rectangle(60_mm, 100_mm));
  CHECK(frame.fittingAngles(rectangle(60, 20)) ==
        opening(Window::rectangle(60_mm, 60_mm)).fittingAngles(rectangle(60, 20)));
}
