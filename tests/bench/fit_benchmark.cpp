// SPDX-License-Identifier: MIT
// One exact fit (all translations and the slack, one rotation) against GEOS.
#include "benchmarks.h"

#include <fmt/format.h>

#include <ostream>

#include "creaseline/shape/fit.h"
#include "shape/geos_oracle.h"
#include "shape/random_shapes.h"
#include "timing.h"

using namespace creaseline;
using namespace creaseline::test;

namespace {

constexpr int kRounds = 201;
constexpr int kCalls = 200;
constexpr int kHullPoints = 50;
// Chord error of 16 segments a quarter at the corner radius used here.
constexpr double kCornerRadiusMm = 25.0;
const double kSixteenSegments = kCornerRadiusMm * (1.0 - std::cos(3.14159265358979 / 64.0));

// A convex outline of exactly 50 corners: on an egg, so that every corner of the window has its
// share of them.
Ring fiftyPointHull() {
  Dice dice(50);
  Ring ring;
  for (int i = 0; i < kHullPoints; ++i) {
    const double angle = 2.0 * std::numbers::pi * (i + dice.between(0.0, 0.5)) / kHullPoints;
    ring.push_back({(40.0 + 4.0 * std::cos(angle)) * std::cos(angle), 62.0 * std::sin(angle)});
  }
  return convexHull(ring);
}

struct Setup {
  const char* name;
  Window window;
  Length clearance;
  Ring hull;
};

Setup setup(const char* name, double width, double height) {
  return {name,
          *Window::rectangle(Length::fromMm(width), Length::fromMm(height),
                             Length::fromMm(kCornerRadiusMm)),
          Length::fromMm(10.0), fiftyPointHull()};
}

// Asks GEOS at every point of a 1 mm grid over the range of sensible translations.
int gridHits(const Geos& geos, const Geos::Prepared& opening, const Setup& setup, Box range) {
  int hits = 0;
  for (double y = std::ceil(range.min.y); y <= range.max.y; y += 1.0) {
    for (double x = std::ceil(range.min.x); x <= range.max.x; x += 1.0) {
      hits += geos.covers(opening, geos.polygon(setup.hull, {x, y})) ? 1 : 0;
    }
  }
  return hits;
}

// Times and prints one setup.
void measure(const Setup& setup, std::ostream& out) {
  const FrameOpening opening(setup.window, setup.clearance, {});
  const Region region = opening.translations(setup.hull);
  const Point at = region.balancedPoint();

  const Geos geos;
  const auto window = geos.own(GEOSBuffer_r(
      geos.handle(), geos.polygon(setup.window.boundary(Length::fromMm(kSixteenSegments))).get(),
      -setup.clearance.mm(), 16));
  const auto prepared = geos.prepare(window);
  const auto outline = geos.polygon(setup.hull, at);
  const auto fit = [&] {
    return opening.slack(opening.translations(setup.hull), setup.hull, at).turn.degrees();
  };
  const auto contains = [&] {
    return static_cast<double>(
        GEOSPreparedContains_r(geos.handle(), prepared.get(), outline.get()));
  };
  const bench::Paired single = bench::pairedMedians(kRounds, kCalls, fit, contains);
  // The grid covers the box of the translations: a search that does not know the answer would
  // have to look further.
  int hits = 0;
  const auto grid = [&] {
    hits = gridHits(geos, prepared, setup, region.bounds());
    return static_cast<double>(hits);
  };
  const bench::Paired whole = bench::pairedMedians(5, 1, grid, [&] {
    double sum = 0.0;
    for (int i = 0; i < kCalls; ++i) {
      sum += fit();
    }
    return sum;
  });
  out << fmt::format("{:<10}{:>9.2f}{:>11.2f}{:>12.1f}{:>9}{:>14.2f}{:>12.0f}\n", setup.name,
                     single.first * 1e6, single.second * 1e6, whole.first * 1e6, hits, single.ratio,
                     whole.ratio * kCalls);
}

}  // namespace

void benchmarkFit(std::ostream& out) {
  out << "Exact fit: hull of 50 points (87 x 124 mm), rounded window (r 25 mm), clearance 10 mm\n"
         "Times in microseconds; fit = all translations and the slack with turn, one rotation\n"
      << fmt::format("{:<10}{:>9}{:>11}{:>12}{:>9}{:>14}{:>12}\n", "room", "fit", "contains",
                     "1 mm grid", "of it in", "fit/contains", "grid/fit");
  for (const Setup& each :
       {setup("wide", 140, 190), setup("medium", 116, 154), setup("narrow", 109, 146)}) {
    measure(each, out);
  }
  out << "target: fit/contains at most 4, grid/fit at least 100\n\n";
}
