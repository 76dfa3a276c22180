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

constexpr int kRepeats = 15;
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
  Window window = *Window::rectangle(Length::fromMm(130.0), Length::fromMm(180.0),
                                     Length::fromMm(kCornerRadiusMm));
  Length clearance = Length::fromMm(10.0);
  Ring hull = fiftyPointHull();
};

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

}  // namespace

void benchmarkFit(std::ostream& out) {
  using bench::medianSeconds;
  const Setup setup;
  const FrameOpening opening(setup.window, setup.clearance, {});
  const auto fit = [&] {
    const Region region = opening.translations(setup.hull);
    return opening.slack(region, setup.hull, {0.5, 0.5}).turn.degrees();
  };
  const double exact = medianSeconds(kRepeats, 2'000, fit);
  const double translations = medianSeconds(
      kRepeats, 2'000, [&] { return opening.translations(setup.hull).bounds().max.x; });

  const Geos geos;
  const auto window = geos.own(GEOSBuffer_r(
      geos.handle(), geos.polygon(setup.window.boundary(Length::fromMm(kSixteenSegments))).get(),
      -setup.clearance.mm(), 16));
  const auto prepared = geos.prepare(window);
  const auto outline = geos.polygon(setup.hull, {0.5, 0.5});
  const double contains = medianSeconds(kRepeats, 500, [&] {
    return static_cast<double>(
        GEOSPreparedContains_r(geos.handle(), prepared.get(), outline.get()));
  });
  // GEOS with the outline moved and made anew, as each further translation needs.
  const double moved = medianSeconds(kRepeats, 500, [&] {
    return geos.covers(prepared, geos.polygon(setup.hull, {0.25, 0.5})) ? 1.0 : 0.0;
  });
  // The grid covers the box of the translations: a search that does not know the answer would
  // have to look further.
  const Box range = opening.translations(setup.hull).bounds();
  int hits = 0;
  const double grid = medianSeconds(3, 1, [&] {
    hits = gridHits(geos, prepared, setup, range);
    return static_cast<double>(hits);
  });

  const auto line = [&](const char* what, double seconds) {
    out << fmt::format("{:<58}{:>12.2f} us\n", what, seconds * 1e6);
  };
  out << fmt::format(
      "Exact fit: hull of {} points, window 130 x 180 mm, r 25 mm, clearance 10 mm\n",
      setup.hull.size());
  line("all translations", translations);
  line("one exact fit: all translations, slack with turn", exact);
  line("GEOS: one prepared contains", contains);
  line("GEOS: one prepared covers, outline moved there", moved);
  line(fmt::format("GEOS: 1 mm grid of translations, {} of them fit", hits).c_str(), grid);
  out << fmt::format("{:<58}{:>12.2f}   (target: at most 4)\n", "fit / one prepared contains",
                     exact / contains);
  out << fmt::format("{:<58}{:>12.0f}   (target: at least 100)\n\n", "grid / fit", grid / exact);
}
