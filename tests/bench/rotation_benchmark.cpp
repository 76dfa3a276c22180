// SPDX-License-Identifier: MIT
// One placement as it is dragged, with all angles at which the design fits; and the questions "does
// it fit at this angle" and "at which angles does it fit" against GEOS and CGAL.
#include <fmt/format.h>

#include <numbers>
#include <ostream>

#include "benchmarks.h"
#include "creaseline/planning/planner.h"
#include "creaseline/shape/fit.h"
#include "shape/cgal_oracle.h"
#include "shape/geos_oracle.h"
#include "shape/random_shapes.h"
#include "support/sample.h"
#include "timing.h"

using namespace creaseline;
using namespace creaseline::test;

namespace {

constexpr int kPoints = 200;
constexpr int kRounds = 101;

// 200 corners, all on the hull: on an egg of about 87 x 124 mm.
Outline egg() {
  Dice dice(200);
  Ring ring;
  for (int i = 0; i < kPoints; ++i) {
    const double angle = 2.0 * std::numbers::pi * (i + dice.between(0.0, 0.5)) / kPoints;
    ring.push_back({(40.0 + 4.0 * std::cos(angle)) * std::cos(angle), 62.0 * std::sin(angle)});
  }
  Outline outline;
  outline.pieces.push_back({std::move(ring), {}});
  return outline.centred();
}

void measureDrag(const Outline& outline, std::ostream& out) {
  const Box box = outline.bounds();
  Design design = sample::design("egg", Length::fromMm(box.width()), Length::fromMm(box.height()));
  design.outline = outline;
  const Order order = sample::order(sample::blank("pullover-hoodie"), design, "full-back", {"M"});
  const std::vector<Frame> frames = twelveFrames();
  const Shop shop = sample::shop(frames);
  const Ring hull = outline.hull();
  std::vector<FrameOpening> openings;
  for (const Frame& frame : frames) {
    openings.emplace_back(frame.window, Length::fromMm(10.0), std::nullopt);
  }
  LivePlanner planner(order, shop, sample::shippedRules());
  OrderPlacement dragged = order.lines[0].placements[0];
  const auto plan = [&] {
    dragged.moveDown += Length::fromNanometres(100'000);
    const PlacementPlan answer = planner.plan({0, 0, order.lines[0].sizes[0].size}, dragged);
    return answer.frame ? answer.frame->slack.turn.degrees() : -1.0;
  };
  const auto angles = [&] {
    double sum = 0.0;
    for (const FrameOpening& opening : openings) {
      sum += opening.fittingAngles(hull).total();
    }
    return sum;
  };
  const auto turns = [&] {
    double sum = 0.0;
    for (const FrameOpening& opening : openings) {
      const auto turn = opening.smallestTurn(hull, Angle::fromDegrees(180.0));
      sum += turn ? turn->degrees() : 0.0;
    }
    return sum;
  };
  const bench::Paired times = bench::pairedMedians(kRounds, 1, plan, angles);
  const bench::Paired least = bench::pairedMedians(kRounds, 1, turns, plan);
  out << fmt::format(
      "One placement, outline of {} points, 12 frames in 4 turns each; medians of {}\n"
      "  dragged by 0.1 mm: planned anew, slack with turn included {:>6.3f} ms\n"
      "  nearest turn that holds it, all 12 frames               {:>8.3f} ms\n"
      "  all angles at which it fits, all 12 frames              {:>8.3f} ms\n"
      "target: planned anew with the turning slack below 2 ms\n\n",
      kPoints, kRounds, times.first * 1e3, least.first * 1e3, times.second * 1e3);
}

Ring turnedBy(const Ring& ring, double radians) {
  Ring turned;
  for (const Point& p : ring) {
    turned.push_back({p.x * std::cos(radians) - p.y * std::sin(radians),
                      p.x * std::sin(radians) + p.y * std::cos(radians)});
  }
  return turned;
}

void measureAgainst(const Outline& outline, std::ostream& out) {
  const Window window = twelveFrames()[3].window;  // an octagon
  const Ring sides = window.boundary(Length::fromMm(1.0));
  const FrameOpening opening(window, {}, {});
  const Ring hull = outline.hull();
  const Geos geos;
  int step = 0;
  const auto next = [&step] { return (step++ % 360) * std::numbers::pi / 180.0; };
  const auto ours = [&] {
    return opening.translations(turnedBy(hull, next())).empty() ? 0.0 : 1.0;
  };
  const auto byGeos = [&] { return fitsByGeos(geos, {sides}, turnedBy(hull, next())) ? 1.0 : 0.0; };
  const auto byCgal = [&] {
    return marginByCgal(sides, turnedBy(hull, next())) >= 0.0 ? 1.0 : 0.0;
  };
  const auto all = [&] { return opening.fittingAngles(hull).total(); };
  const bench::Paired geosTimes = bench::pairedMedians(11, 36, byGeos, ours);
  const bench::Paired cgalTimes = bench::pairedMedians(11, 36, byCgal, ours);
  const bench::Paired whole = bench::pairedMedians(11, 36, all, ours);
  out << fmt::format(
      "The same outline in an octagon of {:.0f} x {:.0f} mm, times in microseconds\n"
      "  fits at one angle       {:>10.2f}   GEOS {:>10.1f} ({:.0f} times)   CGAL, exact numbers "
      "{:>8.1f} ({:.0f} times)\n"
      "  all angles, exact       {:>10.2f}   as much as {:.0f} single angles\n"
      "  a table of 360 degrees, by those single angles: GEOS {:.0f} times, CGAL {:.0f} times all "
      "angles\n\n",
      window.width().mm(), window.height().mm(), geosTimes.second * 1e6, geosTimes.first * 1e6,
      geosTimes.ratio, cgalTimes.first * 1e6, cgalTimes.ratio, whole.first * 1e6, whole.ratio,
      geosTimes.first * 360.0 / whole.first, cgalTimes.first * 360.0 / whole.first);
}

}  // namespace

void benchmarkRotation(std::ostream& out) {
  const Outline outline = egg();
  measureDrag(outline, out);
  measureAgainst(outline, out);
}
