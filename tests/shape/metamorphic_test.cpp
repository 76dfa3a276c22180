// SPDX-License-Identifier: MIT
// What must not change when the question is put in another way, and what can only grow: no oracle
// is needed for that.
#include <catch2/catch.hpp>

#include "creaseline/shape/fit.h"
#include "shape/random_shapes.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::test;

namespace {

constexpr std::uint32_t kMetamorphicSeed = 20270404;

struct Question {
  Ring window;  // a polygon, so that it can be mirrored, turned and scaled to the last digit or so
  Ring hull;
};

Question randomQuestion(Dice& dice) {
  const Window window = polygonWindow(dice, dice.between(40.0, 180.0), dice.between(40.0, 180.0));
  const Ring hull = hardOutline(dice).hull();
  const double scale = FrameOpening(window, {}, {}).largestScale(hull);
  Question question{std::get<Window::Polygon>(window.form()).points, {}};
  for (const Point& point : hull) {
    question.hull.push_back(point * (std::isfinite(scale) ? scale * dice.between(0.6, 1.1) : 1.0));
  }
  return question;
}

template <class Change>
Question changed(const Question& question, Change change) {
  Question result = question;
  for (Ring* ring : {&result.window, &result.hull}) {
    for (Point& point : *ring) {
      point = change(point);
    }
  }
  return result;
}

FittingAngles anglesOf(const Question& question) {
  return FrameOpening(*Window::polygon(question.window), {}, {})
      .fittingAngles(convexHull(question.hull));
}

// The ranges of two answers are the same, each range of the second one mapped by `map`.
template <class Map>
void checkAlike(const FittingAngles& a, const FittingAngles& b, double tolerance, Map map) {
  CAPTURE(a.ranges().size(), b.ranges().size());
  // A range narrower than the tolerance may come and go with the last digit.
  for (const auto& range : a.ranges()) {
    if (range.width() > 3.0 * tolerance) {
      CAPTURE(range.from, range.to);
      REQUIRE(b.contains(map(range.from + (range.width() < 360.0 ? tolerance : 0.0))));
      REQUIRE(b.contains(map(range.to - (range.width() < 360.0 ? tolerance : 0.0))));
      REQUIRE(b.contains(map((range.from + range.to) / 2.0)));
    }
  }
  REQUIRE(b.total() == Approx(a.total()).margin(tolerance * 50.0));
}

constexpr double kTolerance = 1e-4;  // degrees; touching fits lie flat, see the worked examples

}  // namespace

TEST_CASE("Mirrored, turned, scaled and in other units, a design fits at the same angles",
          "[shape][fit][angles][metamorphic]") {
  Dice dice(kMetamorphicSeed);
  const int cases = caseCount(500, 20'000);
  int partly = 0;
  for (int i = 0; i < cases; ++i) {
    const Question question = randomQuestion(dice);
    const FittingAngles angles = anglesOf(question);
    CAPTURE(kMetamorphicSeed, i);
    partly += !angles.empty() && !angles.all() ? 1 : 0;
    const auto same = [](double degrees) { return degrees; };
    const auto mirror = [](Point p) { return Point{-p.x, p.y}; };
    checkAlike(angles, anglesOf(changed(question, mirror)), kTolerance,
               [](double degrees) { return -degrees; });
    const auto half = [](Point p) { return -p; };
    checkAlike(angles, anglesOf(changed(question, half)), kTolerance, same);
    const double factor = dice.between(0.5, 4.0);
    const auto scale = [factor](Point p) { return p * factor; };
    checkAlike(angles, anglesOf(changed(question, scale)), kTolerance, same);
    const auto inches = [](Point p) { return p * (1.0 / 25.4); };
    checkAlike(angles, anglesOf(changed(question, inches)), kTolerance, same);
    // The design alone upside down fits at the opposite angles; turned, at angles less the turn.
    Question turned = question;
    const Angle by = Angle::fromDegrees(dice.between(-180.0, 180.0));
    turned.hull = transformedRing(question.hull, by, {});
    checkAlike(angles, anglesOf(turned), kTolerance,
               [by](double degrees) { return degrees - by.degrees(); });
  }
  CHECK(partly > cases / 2);
}

TEST_CASE("More room never turns a fit into none: angles, places and error borne",
          "[shape][fit][angles][metamorphic]") {
  Dice dice(kMetamorphicSeed + 1);
  const int cases = caseCount(500, 20'000);
  int fitting = 0;
  int borne = 0;
  for (int i = 0; i < cases; ++i) {
    const Question question = randomQuestion(dice);
    const Window window = *Window::polygon(question.window);
    const Ring hull = convexHull(question.hull);
    const Length clearance = Length::fromMm(dice.between(0.5, 6.0));
    const FrameOpening tight(window, clearance, {});
    const FrameOpening wide(window, clearance - Length::fromMm(dice.between(0.0, 0.5)), {});
    CAPTURE(kMetamorphicSeed, i, clearance.mm());
    const FittingAngles few = tight.fittingAngles(hull);
    const FittingAngles more = wide.fittingAngles(hull);
    for (const auto& range : few.ranges()) {
      CAPTURE(range.from, range.to);
      REQUIRE(more.contains(range.from));
      REQUIRE(more.contains(range.to));
      REQUIRE(more.contains((range.from + range.to) / 2.0));
    }
    REQUIRE(more.total() >= few.total() - 1e-6);
    const Region less = tight.translations(hull);
    if (less.empty()) {
      continue;
    }
    ++fitting;
    const Region larger = wide.translations(hull);
    const Point at = less.balancedPoint();
    REQUIRE(larger.discAround(at) >= less.discAround(at) - 1e-9);
    REQUIRE(larger.squareAround(at) >= less.squareAround(at) - 1e-9);
    const Length error = Length::fromMm(dice.between(0.0, 1.0) * less.squareAround(at));
    const Angle turn = Angle::fromDegrees(dice.between(0.0, 3.0));
    if (tight.bearsError(less, hull, at, error, error, turn)) {
      ++borne;
      REQUIRE(wide.bearsError(larger, hull, at, error, error, turn));
      REQUIRE(tight.bearsError(less, hull, at, error * 0.9, error * 0.5, {}));
    }
  }
  CHECK(fitting > cases / 20);
  CHECK(borne > cases / 50);
}
