// SPDX-License-Identifier: MIT
// The angles at which a design fits, against CGAL (exact linear programme; exact smallest circle)
// and GEOS (intersection of the moved windows). Neither knows of events or of hulls.
#include <catch2/catch.hpp>

#include "creaseline/shape/fit.h"
#include "shape/cgal_oracle.h"
#include "shape/geos_oracle.h"
#include "shape/random_shapes.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::test;

namespace {

constexpr std::uint32_t kAnglesOracleSeed = 20270114;
// Openings are let out by half a nanometre in a thousand: a fit may be short by that.
constexpr double kLetOut = 6e-10;

std::vector<Point> allPoints(const Outline& outline) {
  std::vector<Point> points;
  for (const Piece& piece : outline.pieces) {
    points.insert(points.end(), piece.outer.begin(), piece.outer.end());
  }
  return points;
}

std::vector<Point> turnedBy(std::vector<Point> points, double degrees) {
  const double cosine = std::cos(degrees * std::numbers::pi / 180.0);
  const double sine = std::sin(degrees * std::numbers::pi / 180.0);
  for (Point& point : points) {
    point = {point.x * cosine - point.y * sine, point.x * sine + point.y * cosine};
  }
  return points;
}

// Brought to the size that fits at some angle by a hair, just not, or with some room: elsewhere
// few angles are worth asking.
Outline broughtNear(Dice& dice, const FrameOpening& opening, const Outline& outline) {
  const Outline turned =
      outline.transformed(Angle::fromDegrees(dice.between(-180.0, 180.0)), 1.0, {});
  const double scale = opening.largestScale(turned.hull());
  if (scale <= 0.0 || !std::isfinite(scale)) {
    return turned;
  }
  const double factors[] = {1.0, 1.0 - 1e-9, 1.0 + 1e-6, dice.between(0.7, 1.05)};
  return outline.transformed({}, scale * factors[dice.below(4)], {});
}

// Angles worth asking: the ends of the ranges, a little within and beyond, and any.
std::vector<double> anglesToAsk(Dice& dice, const FittingAngles& angles) {
  std::vector<double> asked{dice.between(-180.0, 180.0), dice.between(-180.0, 180.0)};
  for (const auto& range : angles.ranges()) {
    asked.insert(asked.end(), {range.from, range.to, range.from - 1e-5, range.to + 1e-5,
                               range.from - 0.5, range.to + 0.5, (range.from + range.to) / 2.0,
                               dice.between(range.from, range.to)});
  }
  return asked;
}

}  // namespace

TEST_CASE("The angles at which a design fits a polygon are those of CGAL's linear programme",
          "[shape][fit][angles][oracle]") {
  Dice dice(kAnglesOracleSeed);
  const int cases = caseCount(1'000, 40'000);
  int asked = 0;
  int held = 0;
  int ends = 0;
  for (int i = 0; i < cases; ++i) {
    const Window window = polygonWindow(dice, dice.between(40.0, 180.0), dice.between(40.0, 180.0));
    const FrameOpening opening(window, {}, {});
    const Outline outline = broughtNear(dice, opening, hardOutline(dice));
    const FittingAngles angles = opening.fittingAngles(outline.hull());
    const std::vector<Point> points = allPoints(outline);
    const Ring& sides = std::get<Window::Polygon>(window.form()).points;
    ends += static_cast<int>(angles.all() ? 0 : angles.ranges().size());
    for (const double degrees : anglesToAsk(dice, angles)) {
      const double margin = marginByCgal(sides, turnedBy(points, degrees));
      CAPTURE(kAnglesOracleSeed, i, degrees, margin, angles.ranges().size());
      ++asked;
      if (angles.contains(degrees)) {
        ++held;
        REQUIRE(margin >= -kLetOut);
      } else {
        REQUIRE(margin < 0.0);
      }
    }
  }
  CAPTURE(cases, asked, held, ends);
  CHECK(held > asked / 4);
  CHECK(held < asked - asked / 4);
  CHECK(ends > cases / 2);
}

TEST_CASE("The angles at which a design fits an ellipse are those of CGAL's smallest circle",
          "[shape][fit][angles][oracle]") {
  // Scaled so that the ellipse becomes the unit circle, the design fits if its smallest circle is
  // no larger.
  Dice dice(kAnglesOracleSeed + 1);
  const int cases = caseCount(40, 4'000);
  int held = 0;
  int asked = 0;
  for (int i = 0; i < cases; ++i) {
    const Window window = *Window::ellipse(Length::fromMm(dice.between(40.0, 180.0)),
                                           Length::fromMm(dice.between(40.0, 180.0)));
    const FrameOpening opening(window, {}, {});
    const Outline outline = broughtNear(dice, opening, hardOutline(dice));
    const FittingAngles angles = opening.fittingAngles(outline.hull());
    const std::vector<Point> points = allPoints(outline);
    for (const double degrees : anglesToAsk(dice, angles)) {
      std::vector<Point> unit = turnedBy(points, degrees);
      for (Point& point : unit) {
        point = {point.x / (window.width().mm() / 2.0), point.y / (window.height().mm() / 2.0)};
      }
      const double radius = smallestRadiusByCgal(unit);
      CAPTURE(kAnglesOracleSeed, i, degrees, radius);
      ++asked;
      // The inscribed polygon costs at most 250 nm at a half axis of 20 mm or more.
      if (angles.contains(degrees)) {
        ++held;
        REQUIRE(radius <= 1.0 + 1e-9);
      } else {
        REQUIRE(radius > 1.0 - 2e-5);
      }
    }
  }
  CHECK(held > asked / 5);
}

TEST_CASE("The angles at which a design fits are those at which GEOS finds a place",
          "[shape][fit][angles][oracle]") {
  const Geos geos;
  Dice dice(kAnglesOracleSeed + 2);
  const int cases = caseCount(60, 6'000);
  const Length fine = Length::fromMm(5e-3);
  int held = 0;
  int asked = 0;
  for (int i = 0; i < cases; ++i) {
    const Window window = anyWindow(dice);
    const auto field = dice.oneIn(3) ? std::optional(anyWindow(dice)) : std::nullopt;
    const FrameOpening opening(window, {}, field);
    const Outline outline = broughtNear(dice, opening, hardOutline(dice));
    const Ring hull = outline.hull();
    const FittingAngles angles = opening.fittingAngles(hull);
    std::vector<Ring> windows{window.boundary(fine)};
    if (field) {
      windows.push_back(field->boundary(fine));
    }
    for (const double degrees : anglesToAsk(dice, angles)) {
      const std::vector<Point> points = turnedBy(hull, degrees);
      // GEOS sees curves as polygons five micrometres within.
      const double margin = opening.margin(points);
      if (std::abs(margin) < 1.2e-2) {
        continue;
      }
      CAPTURE(kAnglesOracleSeed, i, degrees, margin);
      ++asked;
      held += angles.contains(degrees) ? 1 : 0;
      REQUIRE(fitsByGeos(geos, windows, points) == angles.contains(degrees));
    }
  }
  CHECK(held > asked / 5);
  CHECK(held < asked - asked / 5);
}

TEST_CASE("The turn of least size is the nearest of the angles that fit",
          "[shape][fit][angles][property]") {
  Dice dice(kAnglesOracleSeed + 3);
  const int cases = caseCount(300, 6'000);
  int turned = 0;
  for (int i = 0; i < cases; ++i) {
    const FrameOpening opening(anyWindow(dice), Length::fromMm(dice.between(0.0, 10.0)), {});
    const Ring hull = broughtNear(dice, opening, hardOutline(dice)).hull();
    const FittingAngles angles = opening.fittingAngles(hull);
    const auto least = opening.smallestTurn(hull, 180_deg);
    const auto nearest = angles.nearest(0_deg);
    CAPTURE(kAnglesOracleSeed, i, angles.ranges().size());
    REQUIRE(least.has_value() == nearest.has_value());
    if (least) {
      CAPTURE(least->degrees(), nearest->degrees());
      REQUIRE(std::abs(least->millidegrees()) == std::abs(nearest->millidegrees()));
      turned += *least != 0_deg ? 1 : 0;
    }
  }
  CHECK(turned > cases / 5);
}
