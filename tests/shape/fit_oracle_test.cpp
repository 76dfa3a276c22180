// SPDX-License-Identifier: MIT
// The fit engine against GEOS, which knows nothing of translations: it is asked whether a fine
// polygon of the window covers the moved outline.
#include <catch2/catch.hpp>

#include "creaseline/shape/fit.h"
#include "shape/geos_oracle.h"
#include "shape/random_shapes.h"

using namespace creaseline;
using namespace creaseline::test;

namespace {

constexpr int kCases = 10'000;
constexpr std::uint32_t kFitOracleSeed = 20261204;
// Both sides approximate curves: agreement is asked for beyond one micrometre from touching.
constexpr double kOneMicrometre = 1e-3;

struct FitCase {
  Window window;
  Length clearance;
  std::optional<Window> field;
  Outline outline;
  Ring hull;
};

FitCase randomCase(Dice& dice, Window (*windowOf)(Dice&)) {
  FitCase result{windowOf(dice), {}, {}, randomOutline(dice), {}};
  if (dice.oneIn(2)) {
    result.clearance = Length::fromMm(dice.between(0.0, 15.0));
  }
  if (dice.oneIn(3)) {
    result.field = windowOf(dice);
  }
  result.outline =
      result.outline.transformed(Angle::fromDegrees(dice.between(-180.0, 180.0)), 1.0, {});
  result.hull = result.outline.hull();
  return result;
}

// GEOS's own view of the opening: a fine polygon of the window, from whose boundary the outline
// must keep the clearance, and one of the field. Its buffer would be no judge to the micrometre: it
// simplifies what it shrinks.
class OpeningByGeos {
 public:
  OpeningByGeos(const Geos& geos, const FitCase& fit)
      : geos_(geos),
        clearance_(fit.clearance.mm()),
        window_(geos.polygon(fit.window.boundary(fine()))),
        boundary_(geos.own(GEOSBoundary_r(geos.handle(), window_.get()))),
        preparedWindow_(geos.prepare(window_)),
        preparedBoundary_(geos.prepare(boundary_)) {
    if (fit.field) {
      field_ = geos.polygon(fit.field->boundary(fine()));
      preparedField_ = geos.prepare(field_);
    }
  }
  [[nodiscard]] bool holds(const Outline& outline, Point at) const {
    for (const Piece& piece : outline.pieces) {
      const auto moved = geos_.polygon(piece.outer, at);
      if (!geos_.covers(preparedWindow_, moved) ||
          (field_ && !geos_.covers(preparedField_, moved))) {
        return false;
      }
      double distance = 0.0;
      REQUIRE(GEOSPreparedDistance_r(geos_.handle(), preparedBoundary_.get(), moved.get(),
                                     &distance) == 1);
      if (distance < clearance_) {
        return false;
      }
    }
    return true;
  }

 private:
  static Length fine() { return Length::fromMm(5e-5); }

  const Geos& geos_;
  double clearance_ = 0.0;  // millimetres
  Geos::Geometry window_, boundary_;
  Geos::Prepared preparedWindow_, preparedBoundary_;
  Geos::Geometry field_{nullptr, {}};
  Geos::Prepared preparedField_;
};

// Points around a region: inside, near its boundary and outside.
std::vector<Point> samples(Dice& dice, const Region& region) {
  std::vector<Point> points{{0, 0}, {dice.between(-30, 30), dice.between(-30, 30)}};
  if (region.empty()) {
    return points;
  }
  const Box box = region.bounds();
  points.push_back(region.balancedPoint());
  for (int i = 0; i < 2; ++i) {
    const Point wild{dice.between(box.min.x - 5.0, box.max.x + 5.0),
                     dice.between(box.min.y - 5.0, box.max.y + 5.0)};
    const Point near = region.nearest(wild);
    points.push_back(wild);
    // A little to this and that side of the boundary.
    points.push_back(near + (near - region.balancedPoint()) * dice.between(-0.01, 0.01));
  }
  return points;
}

// Climbs from a start towards the greatest depth, as a search without our region would.
Point climbed(const FrameOpening& opening, const Ring& hull, Point at) {
  for (double step = 16.0; step > 1e-4; step /= 2.0) {
    for (bool moved = true; moved;) {
      moved = false;
      for (const Point way : {Point{1, 0}, Point{-1, 0}, Point{0, 1}, Point{0, -1}, Point{1, 1},
                              Point{1, -1}, Point{-1, 1}, Point{-1, -1}}) {
        const Point next = at + way * step;
        if (opening.depth(hull, next) > opening.depth(hull, at)) {
          at = next;
          moved = true;
        }
      }
    }
  }
  return at;
}

}  // namespace

TEST_CASE("Every translation agrees with GEOS, but for a micrometre around touching",
          "[shape][fit][oracle]") {
  const Geos geos;
  Dice dice(kFitOracleSeed);
  INFO("seed " << kFitOracleSeed);
  int fitting = 0;
  int inside = 0;
  int asked = 0;
  int closeCalls = 0;
  const int cases = caseCount(kCases, 100'000);
  for (int i = 0; i < cases; ++i) {
    const FitCase fit = randomCase(dice, anyWindow);
    const FrameOpening opening(fit.window, fit.clearance, fit.field);
    const Region region = opening.translations(fit.hull);
    const OpeningByGeos oracle(geos, fit);
    fitting += region.empty() ? 0 : 1;
    for (const Point& at : samples(dice, region)) {
      const double depth = opening.depth(fit.hull, at);
      const bool ours = region.contains(at, 1e-9);
      inside += ours ? 1 : 0;
      ++asked;
      const bool theirs = oracle.holds(fit.outline, at);
      if (std::abs(depth) <= kOneMicrometre) {
        closeCalls += ours != theirs ? 1 : 0;
        continue;
      }
      if (ours != theirs || ours != (depth > 0.0)) {
        CAPTURE(i, at.x, at.y, depth, ours, theirs, region.empty());
        FAIL("disagreement beyond a micrometre");
      }
    }
  }
  CAPTURE(cases, fitting, asked, inside, closeCalls);
  // The cases must be worth the name: plenty that fit, plenty that do not.
  CHECK(fitting > cases / 5);
  CHECK(fitting < cases - cases / 5);
  CHECK(inside > asked / 10);
  CHECK(closeCalls <= asked / 10);
}

TEST_CASE("Where the region is empty, a search asking GEOS finds nothing either",
          "[shape][fit][oracle]") {
  const Geos geos;
  Dice dice(kFitOracleSeed + 1);
  INFO("seed " << kFitOracleSeed + 1);
  const int cases = caseCount(1'000);
  int empties = 0;
  for (int i = 0; i < cases; ++i) {
    const FitCase fit = randomCase(dice, randomWindow);
    const FrameOpening opening(fit.window, fit.clearance, fit.field);
    const Region region = opening.translations(fit.hull);
    const double margin = opening.margin(fit.hull);
    CAPTURE(i, margin, region.empty());
    const Point best = climbed(opening, fit.hull, {0, 0});
    const double found = opening.depth(fit.hull, best);
    // A search from outside finds no more room than the margin says.
    REQUIRE(found <= margin + 1e-6);
    if (std::abs(margin) <= kOneMicrometre) {
      continue;
    }
    REQUIRE(region.empty() == (margin < 0.0));
    const OpeningByGeos oracle(geos, fit);
    if (region.empty()) {
      ++empties;
      REQUIRE_FALSE(oracle.holds(fit.outline, best));
    } else {
      REQUIRE(oracle.holds(fit.outline, region.balancedPoint()));
    }
  }
  CHECK(empties > cases / 10);
}
