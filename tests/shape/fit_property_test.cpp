// SPDX-License-Identifier: MIT
// Properties of the fit engine over seeded random cases, and independent methods for the same
// questions: smallest enclosing circle, brute force over angles.
#include <catch2/catch.hpp>
#include <numbers>

#include "creaseline/shape/fit.h"
#include "shape/random_shapes.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::test;

namespace {

constexpr std::uint32_t kFitPropertySeed = 118;

Ring scaled(const Ring& ring, double factor) {
  Ring result;
  for (const Point& point : ring) {
    result.push_back(point * factor);
  }
  return result;
}

Ring randomHull(Dice& dice) {
  return randomOutline(dice)
      .transformed(Angle::fromDegrees(dice.between(-180.0, 180.0)), 1.0, {})
      .hull();
}

std::optional<Window> randomField(Dice& dice) {
  return dice.oneIn(3) ? std::optional(randomWindow(dice)) : std::nullopt;
}

struct Circle {
  Point centre;
  double radius = -1.0;
  [[nodiscard]] bool holds(Point p) const { return norm(p - centre) <= radius * (1.0 + 1e-12); }
};

Circle circleThrough(Point a, Point b) {
  return {(a + b) * 0.5, norm(a - b) / 2.0};
}

Circle circleThrough(Point a, Point b, Point c) {
  const Point ab = b - a;
  const Point ac = c - a;
  const double twice = 2.0 * cross(ab, ac);
  const Point off{(ac.y * dot(ab, ab) - ab.y * dot(ac, ac)) / twice,
                  (ab.x * dot(ac, ac) - ac.x * dot(ab, ab)) / twice};
  return {a + off, norm(off)};
}

// Smallest enclosing circle, incremental form of E. Welzl, "Smallest enclosing disks (balls and
// ellipsoids)", LNCS 555, 1991.
Circle smallestCircle(const Ring& points) {
  Circle circle{points[0], 0.0};
  for (std::size_t i = 1; i < points.size(); ++i) {
    if (circle.holds(points[i])) {
      continue;
    }
    circle = {points[i], 0.0};
    for (std::size_t j = 0; j < i; ++j) {
      if (circle.holds(points[j])) {
        continue;
      }
      circle = circleThrough(points[i], points[j]);
      for (std::size_t k = 0; k < j; ++k) {
        if (!circle.holds(points[k])) {
          circle = circleThrough(points[i], points[j], points[k]);
        }
      }
    }
  }
  return circle;
}

// Whether a hull fits a rounded rectangle, without the engine: the overhang f(t) = max over points
// of the distance to the rectangle of the corners' centres is convex in t, so two nested golden
// searches find its least value.
double overhang(const Ring& hull, Point at, double halfWidth, double halfHeight) {
  double most = 0.0;
  for (const Point& point : hull) {
    const Point p = point + at;
    most = std::max(most, std::hypot(std::max(0.0, std::abs(p.x) - halfWidth),
                                     std::max(0.0, std::abs(p.y) - halfHeight)));
  }
  return most;
}

template <class Function>
double leastOf(Function function, double low, double high) {
  for (int i = 0; i < 40; ++i) {
    const double a = low + (high - low) * 0.381966;
    const double b = high - (high - low) * 0.381966;
    const bool lower = function(a) < function(b);
    (lower ? high : low) = lower ? b : a;
  }
  return function((low + high) / 2.0);
}

double leastOverhang(const Ring& hull, double halfWidth, double halfHeight) {
  return leastOf(
      [&](double x) {
        return leastOf(
            [&](double y) {
              return overhang(hull, {x, y}, halfWidth, halfHeight);
            },
            -40.0, 40.0);
      },
      -40.0, 40.0);
}

}  // namespace

TEST_CASE("At its largest scale a design fits, a little beyond it does not",
          "[shape][fit][property]") {
  Dice dice(kFitPropertySeed);
  const int cases = caseCount(2'000);
  for (int i = 0; i < cases; ++i) {
    const Window window = randomWindow(dice);
    const FrameOpening opening(window, Length::fromMm(dice.between(0.0, 12.0)), randomField(dice));
    const Ring hull = randomHull(dice);
    const double scale = opening.largestScale(hull);
    CAPTURE(kFitPropertySeed, i, scale);
    const bool open = opening.margin({{{0, 0}}}) > 0.0;
    REQUIRE((scale > 0.0) == open);
    if (!open) {
      continue;  // the clearance has eaten the window
    }
    REQUIRE_FALSE(opening.translations(scaled(hull, scale * (1.0 - 1e-6))).empty());
    REQUIRE(opening.translations(scaled(hull, scale * (1.0 + 1e-6))).empty());
    REQUIRE((scale >= 1.0) == (opening.margin(hull) >= -1e-7));
  }
}

TEST_CASE("An ellipse agrees with the smallest enclosing circle in scaled space",
          "[shape][fit][oracle]") {
  Dice dice(kFitPropertySeed + 1);
  const int cases = caseCount(2'000);
  for (int i = 0; i < cases; ++i) {
    const Window window = *Window::ellipse(Length::fromMm(dice.between(40.0, 180.0)),
                                           Length::fromMm(dice.between(40.0, 180.0)));
    const double width = window.width().mm();
    const double height = window.height().mm();
    const FrameOpening opening(window, {}, {});
    const Ring hull = randomHull(dice);
    Ring unit;
    for (const Point& point : hull) {
      unit.push_back({point.x / (width / 2.0), point.y / (height / 2.0)});
    }
    const Circle circle = smallestCircle(unit);
    CAPTURE(kFitPropertySeed, i, width, height, circle.radius);
    // The inscribed polygon costs at most 250 nm at a half axis of 20 mm or more.
    REQUIRE(opening.largestScale(hull) <= (1.0 / circle.radius) * (1.0 + 1e-9));
    REQUIRE(opening.largestScale(hull) >= (1.0 / circle.radius) * (1.0 - 2e-5));
    const Region region = opening.translations(hull);
    if (std::abs(circle.radius - 1.0) > 2e-5) {
      REQUIRE(region.empty() == (circle.radius > 1.0));
    }
    if (circle.radius < 1.0 - 2e-5) {
      // The circle's centre, moved to the origin, is a translation that fits.
      REQUIRE(
          region.contains({-circle.centre.x * width / 2.0, -circle.centre.y * height / 2.0}, 1e-9));
    }
  }
}

TEST_CASE("The least turn agrees with a brute force over angles", "[shape][fit][oracle]") {
  Dice dice(kFitPropertySeed + 2);
  const int cases = caseCount(40);
  int turned90 = 0;
  int found = 0;
  for (int i = 0; i < cases; ++i) {
    const double width = dice.between(60.0, 100.0);
    const double height = dice.between(100.0, 180.0);
    const double radius = dice.between(5.0, 30.0);
    const Ring hull = Outline::rectangle(Length::fromMm(dice.between(80.0, 150.0)),
                                         Length::fromMm(dice.between(20.0, 60.0)))
                          .hull();
    const FrameOpening opening(
        *Window::rectangle(Length::fromMm(width), Length::fromMm(height), Length::fromMm(radius)),
        {}, {});
    const auto turn = opening.smallestTurn(hull, 90_deg);
    CAPTURE(kFitPropertySeed, i, width, height, radius, turn ? turn->degrees() : -1.0);
    const auto missing = [&](double degrees) {
      return leastOverhang(transformedRing(hull, Angle::fromDegrees(degrees), {}),
                           width / 2.0 - radius, height / 2.0 - radius) -
             radius;
    };
    if (turn) {
      ++found;
      turned90 += std::abs(turn->degrees()) > 0.0 ? 1 : 0;
      REQUIRE(missing(turn->degrees()) <= 1e-4);
    }
    // A degree apart, and up to the answer nothing fits, by either sign.
    const double end = turn ? std::abs(turn->degrees()) - 0.01 : 90.0;
    for (double degrees = 0.0; degrees < end; degrees += 1.0) {
      CAPTURE(degrees);
      REQUIRE(missing(degrees) > -1e-3);
      REQUIRE(missing(-degrees) > -1e-3);
    }
    if (turn && std::abs(turn->degrees()) > 0.02) {
      REQUIRE(missing(std::abs(turn->degrees()) - 0.01) > -1e-3);
    }
  }
  if (cases >= 40) {
    CHECK(turned90 > 5);
    CHECK(found < cases);
  }
}

TEST_CASE("Within the turn slack every turn fits, just beyond one way does not",
          "[shape][fit][property]") {
  Dice dice(kFitPropertySeed + 3);
  const int cases = caseCount(3'000);
  int limited = 0;
  for (int i = 0; i < cases; ++i) {
    const FrameOpening opening(randomWindow(dice), Length::fromMm(dice.between(0.0, 5.0)),
                               randomField(dice));
    const Ring hull = randomHull(dice);
    const Region region = opening.translations(hull);
    if (region.empty()) {
      continue;
    }
    const Point at = dice.oneIn(2)
                         ? region.balancedPoint()
                         : region.nearest({dice.between(-20.0, 20.0), dice.between(-20.0, 20.0)});
    const Slack slack = opening.slack(region, hull, at);
    const double most = slack.turn.degrees();
    CAPTURE(kFitPropertySeed, i, at.x, at.y, most);
    const auto depthAt = [&](double degrees) {
      return opening.depth(transformedRing(hull, Angle::fromDegrees(degrees), {}), at);
    };
    for (int step = 0; step <= 20; ++step) {
      REQUIRE(depthAt(most * step / 20.0) >= -1e-8);
      REQUIRE(depthAt(-most * step / 20.0) >= -1e-8);
    }
    if (slack.turn < FrameOpening::kLargestTurnSlack) {
      ++limited;
      REQUIRE(std::min(depthAt(most + 0.01), depthAt(-most - 0.01)) < 1e-6);
    }
    // Moving by the slack still fits, moving further does not.
    REQUIRE(opening.depth(hull, at - Point{slack.left.mm(), 0}) >= -2e-6);
    REQUIRE(opening.depth(hull, at + Point{0, slack.down.mm()}) >= -2e-6);
    REQUIRE(opening.depth(hull, at + Point{slack.right.mm() + 1e-3, 0}) < 0.0);
    REQUIRE(opening.depth(hull, at - Point{0, slack.up.mm() + 1e-3}) < 0.0);
  }
  CHECK(limited > cases / 20);
}

TEST_CASE("Mirror images, half turns and moves change the region alike", "[shape][fit][property]") {
  Dice dice(kFitPropertySeed + 4);
  const int cases = caseCount(2'000);
  for (int i = 0; i < cases; ++i) {
    // Rectangles and ellipses are their own mirror images.
    const Length width = Length::fromMm(dice.between(60.0, 180.0));
    const Length height = Length::fromMm(dice.between(60.0, 180.0));
    const Window window =
        dice.oneIn(2) ? *Window::ellipse(width, height) : *Window::rectangle(width, height, 20_mm);
    const FrameOpening opening(window, Length::fromMm(dice.between(0.0, 8.0)), {});
    const Ring hull = randomHull(dice);
    Ring mirrored;
    for (const Point& point : hull) {
      mirrored.push_back({-point.x, point.y});
    }
    const Point shift{dice.between(-50.0, 50.0), dice.between(-50.0, 50.0)};
    const Region region = opening.translations(hull);
    // The mirrored ring runs the other way round: either winding is understood.
    const Region other = opening.translations(mirrored);
    const Region half = opening.translations(transformedRing(hull, 180_deg, {}));
    const Region moved = opening.translations(transformedRing(hull, {}, shift));
    CAPTURE(kFitPropertySeed, i);
    if (std::abs(opening.margin(hull)) < 1e-6) {
      continue;
    }
    REQUIRE(other.empty() == region.empty());
    REQUIRE(half.empty() == region.empty());
    REQUIRE(moved.empty() == region.empty());
    REQUIRE(opening.margin(moved.empty() ? hull : mirrored) ==
            Approx(opening.margin(hull)).margin(1e-6));
    if (region.empty()) {
      continue;
    }
    const Box box = region.bounds();
    CHECK(other.bounds().min.x == Approx(-box.max.x).margin(1e-6));
    CHECK(other.bounds().min.y == Approx(box.min.y).margin(1e-6));
    CHECK(half.bounds().min.y == Approx(-box.max.y).margin(1e-6));
    CHECK(moved.bounds().max.x == Approx(box.max.x - shift.x).margin(1e-6));
    CHECK(moved.bounds().min.y == Approx(box.min.y - shift.y).margin(1e-6));
  }
}

TEST_CASE("More clearance and a smaller window never help", "[shape][fit][property]") {
  Dice dice(kFitPropertySeed + 5);
  const int cases = caseCount(2'000);
  for (int i = 0; i < cases; ++i) {
    const Window window = randomWindow(dice);
    const double clearance = dice.between(0.0, 10.0);
    const double more = dice.between(0.01, 5.0);
    const FrameOpening wide(window, Length::fromMm(clearance), {});
    const FrameOpening narrow(window, Length::fromMm(clearance + more), {});
    const Ring hull = randomHull(dice);
    CAPTURE(kFitPropertySeed, i, clearance, more);
    const double scale = narrow.largestScale(hull);
    REQUIRE((scale == 0.0 || scale < wide.largestScale(hull)));
    REQUIRE(narrow.margin(hull) == Approx(wide.margin(hull) - more).margin(2e-6));
    const Region inner = narrow.translations(hull);
    if (inner.empty()) {
      continue;
    }
    const Region outer = wide.translations(hull);
    for (const Point& point : inner.boundary(0.01)) {
      REQUIRE(outer.contains(point, 1e-6));
    }
  }
}

TEST_CASE("The depth at a translation never exceeds the margin", "[shape][fit][property]") {
  Dice dice(kFitPropertySeed + 6);
  const int cases = caseCount(2'000);
  for (int i = 0; i < cases; ++i) {
    const FrameOpening opening(randomWindow(dice), Length::fromMm(dice.between(0.0, 10.0)),
                               randomField(dice));
    const Ring hull = randomHull(dice);
    const double margin = opening.margin(hull);
    CAPTURE(kFitPropertySeed, i, margin);
    for (int k = 0; k < 20; ++k) {
      REQUIRE(opening.depth(hull, {dice.between(-30.0, 30.0), dice.between(-30.0, 30.0)}) <=
              margin + 1e-6);
    }
  }
}
