// SPDX-License-Identifier: MIT
#include "planning/split_search.h"

#include <catch2/catch.hpp>

#include <optional>

#include "split_checks.h"

using namespace creaseline;
using namespace creaseline::test;

namespace {

const SplitFigures& kFigures = kSplitFigures;

// The least crossed length of any choice of `cuts` places, one after the other tried in full.
std::optional<double> leastCrossed(const Outline& outline, CutDirection direction,
                                   const std::vector<CutPlace>& places, std::size_t first,
                                   const CutPlace& from, int cuts, double width, double height) {
  const Box box = outline.bounds();
  const auto fits = [&](const CutPlace& a, const CutPlace& b) {
    Box part = box;
    const double low = a.at - (a.crossed > 0.0 ? kFigures.overlap / 2.0 : 0.0);
    const double high = b.at + (b.crossed > 0.0 ? kFigures.overlap / 2.0 : 0.0);
    part.min = pointOnCut(direction, low, alongCut(box.min, direction));
    part.max = pointOnCut(direction, high, alongCut(box.max, direction));
    const Outline sewing = clipped(outline, part);
    return !sewing.empty() && boxFits(sewing, width, height);
  };
  if (cuts == 0) {
    return fits(from, {acrossCut(box.max, direction), 0.0}) ? std::optional(0.0) : std::nullopt;
  }
  std::optional<double> least;
  for (std::size_t i = first; i < places.size(); ++i) {
    if (places[i].at <= from.at + 1e-6 || !fits(from, places[i])) {
      continue;
    }
    const auto rest =
        leastCrossed(outline, direction, places, i + 1, places[i], cuts - 1, width, height);
    if (rest && (!least || places[i].crossed + *rest < *least)) {
      least = places[i].crossed + *rest;
    }
  }
  return least;
}

}  // namespace

TEST_CASE("Two words are cut apart between them, with marks at both ends of the cut",
          "[planning][split]") {
  const Outline words{{block(-150, -40, -10, 40), block(10, -40, 150, 40)}};
  const SplitSearch search =
      findSplit(words, kFigures, [](const Outline& sewing, const std::vector<Point>& marks) {
        return boxFits(sewing, 180, 120) && (marks.empty() || marks.size() == 2);
      });
  REQUIRE(search.split);
  REQUIRE(search.split->cuts.size() == 1);
  const Cut& cut = search.split->cuts.front();
  CHECK(cut.direction == CutDirection::Upright);
  CHECK(cut.at == Approx(0.0).margin(1e-9));
  CHECK(cut.crossed == 0.0);
  REQUIRE(cut.marks.size() == 2);
  // Nothing is in the way, so they lie within the words' height: 40 less half a mark.
  CHECK(cut.marks[0].y == Approx(-36.0));
  CHECK(cut.marks[1].y == Approx(36.0));
}

TEST_CASE("A solid block is cut across its shorter way, into equal parts that overlap",
          "[planning][split]") {
  const Outline solid = Outline::rectangle(Length::fromMm(200), Length::fromMm(90));
  const SplitSearch search = findSplit(
      solid, kFigures,
      [](const Outline& sewing, const std::vector<Point>&) { return boxFits(sewing, 120, 120); });
  REQUIRE(search.split);
  REQUIRE(search.split->parts.size() == 2);
  CHECK(search.split->crossed() == Approx(90.0));
  CHECK(search.split->parts[0].section.max.x == Approx(0.75));
  CHECK(search.split->parts[1].section.min.x == Approx(-0.75));
  // Above and below the block: 45 + 3 clear + 4 for half the mark.
  CHECK(search.split->cuts[0].marks[0].y == Approx(-52.0));
  CHECK(search.split->cuts[0].marks[1].y == Approx(52.0));
}

TEST_CASE("What no part can hold is not split, and nothing is cut without need",
          "[planning][split]") {
  const Outline solid = Outline::rectangle(Length::fromMm(200), Length::fromMm(90));
  const SplitSearch none =
      findSplit(solid, kFigures, [](const Outline&, const std::vector<Point>&) { return false; });
  CHECK_FALSE(none.split);
  CHECK_FALSE(none.gaveUp);
  CHECK(none.questions > 0);
  const SplitSearch whole =
      findSplit(solid, kFigures, [](const Outline&, const std::vector<Point>&) { return true; });
  REQUIRE(whole.split);
  CHECK(whole.split->cuts.empty());
  CHECK_FALSE(findSplit({}, kFigures, [](const Outline&, const std::vector<Point>&) {
                return true;
              }).split);
}

// Exhaustion over every choice of cuts; the search itself takes a shortest path.
TEST_CASE("Fewest parts and least crossed sewing are those of trying every choice",
          "[planning][split]") {
  Dice dice(8208);
  INFO("seed 8208");
  int split = 0;
  for (int i = 0; i < caseCount(150); ++i) {
    const Outline outline = randomLettering(dice);
    const Box box = outline.bounds();
    const double width = box.width() * dice.between(0.22, 1.1);
    const double height = box.height() * dice.between(0.3, 1.2);
    const SplitSearch search =
        findSplit(outline, kFigures, [&](const Outline& sewing, const std::vector<Point>&) {
          return boxFits(sewing, width, height);
        });
    std::optional<double> least;
    int parts = 1;
    for (; parts <= kFigures.mostParts && !least; ++parts) {
      for (const CutDirection direction : {CutDirection::Upright, CutDirection::Level}) {
        const auto found =
            leastCrossed(outline, direction, allPlaces(outline, direction, kFigures.mostParts), 0,
                         {acrossCut(box.min, direction), 0.0}, parts - 1, width, height);
        if (found && (!least || *found < *least)) {
          least = found;
        }
      }
    }
    CAPTURE(i, width, height);
    // What parallel cuts divide is not cut both ways; what they do not may be.
    REQUIRE((search.split && !search.split->bothWays) == least.has_value());
    if (least) {
      REQUIRE(static_cast<int>(search.split->parts.size()) == parts - 1);
      REQUIRE(search.split->crossed() == Approx(*least).margin(1e-4));
      split += search.split->cuts.empty() ? 0 : 1;
    }
  }
  CHECK(split > 0);
}

// GEOS (libgeos) measures what the search only decides.
TEST_CASE("Parts cover the design, and marks lie on their cut clear of all sewing",
          "[planning][split][oracle]") {
  const Geos geos;
  Dice dice(4471);
  INFO("seed 4471");
  int marks = 0;
  for (int i = 0; i < caseCount(150); ++i) {
    const Outline outline = randomLettering(dice);
    const Box box = outline.bounds();
    const SplitSearch search =
        findSplit(outline, kFigures, [&](const Outline& sewing, const std::vector<Point>&) {
          return boxFits(sewing, box.width() * 0.55, box.height() * 1.2);
        });
    if (!search.split) {
      continue;
    }
    CAPTURE(i);
    requireCovered(geos, outline, *search.split);
    for (const Seam& seam : search.split->seams) {
      requireInPlace(geos, outline, seam);
      REQUIRE_FALSE(seam.marksBeside());
      ++marks;
    }
  }
  CHECK(marks > 0);
}
