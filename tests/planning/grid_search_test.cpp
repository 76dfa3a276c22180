// SPDX-License-Identifier: MIT
#include "planning/grid_search.h"

#include <catch2/catch.hpp>

#include <map>
#include <optional>
#include <set>

#include "planning/grid_strip.h"
#include "planning/split_candidates.h"
#include "split_checks.h"

using namespace creaseline;
using namespace creaseline::test;

namespace {

const SplitFigures& kGridFigures = kSplitFigures;

// Two words above two others.
Outline fourWords() {
  return {{block(-150, -110, -10, -10), block(10, -110, 150, -10), block(-150, 10, -10, 110),
           block(10, 10, 150, 110)}};
}

// A frame of that size about sewing and marks.
PartFits frameOf(double width, double height) {
  return [=](const Outline& sewing, const std::vector<Point>& marks) {
    Box box = sewing.bounds();
    for (const Point mark : marks) {
      box.add(mark + Point{-kGridFigures.markHalf, -kGridFigures.markHalf});
      box.add(mark + Point{kGridFigures.markHalf, kGridFigures.markHalf});
    }
    return box.width() <= width && box.height() <= height;
  };
}

void checkTied(const Split& split) {
  std::map<std::size_t, std::set<std::size_t>> tiedTo;
  std::map<std::size_t, std::vector<Point>> marksOf;
  for (const Seam& seam : split.seams) {
    REQUIRE(seam.first < seam.second);
    REQUIRE(seam.second < split.parts.size());
    REQUIRE(seam.along.length() > 0.0);
    if (!seam.marks.empty()) {
      REQUIRE(seam.marks.size() == 2);
      REQUIRE(norm(seam.marks[1] - seam.marks[0]) >= kGridFigures.marksApart);
      tiedTo[seam.second].insert(seam.first);
      for (const std::size_t part : {seam.first, seam.second}) {
        marksOf[part].insert(marksOf[part].end(), seam.marks.begin(), seam.marks.end());
      }
    }
  }
  for (std::size_t i = 1; i < split.parts.size(); ++i) {
    REQUIRE(tiedTo[i].size() == 1);
  }
  const auto same = [](const std::vector<Point>& a, const std::vector<Point>& b) {
    return std::is_permutation(a.begin(), a.end(), b.begin(), b.end());
  };
  for (std::size_t i = 0; i < split.parts.size(); ++i) {
    REQUIRE(same(split.parts[i].marks, marksOf[i]));
  }
}

// Fewest parts, then least crossed, of every choice of cuts of a small family.
struct Best {
  int parts = 0;
  double crossed = 0.0;
  bool operator<(const Best& other) const {
    return parts != other.parts ? parts < other.parts : crossed < other.crossed - 1e-6;
  }
};

void keepBetter(std::optional<Best>& best, const std::optional<Best>& other) {
  if (other && (!best || *other < *best)) {
    best = other;
  }
}

// Goes through all choices of cuts of one direction. `piece` answers for what lies between two of
// them, `usable` how far beside a cut its marks have to lie, and nothing if there is no room.
template <class Piece, class Usable>
std::optional<Best> leastOver(const std::vector<CutPlace>& ends,
                              const std::vector<CutPlace>& places, int most, bool whole,
                              const Piece& piece, const Usable& usable) {
  std::vector<CutPlace> all = {ends[0]};
  std::vector<double> reach = {0.0};
  for (const CutPlace& place : places) {
    if (const auto beside = usable(place)) {
      all.push_back(place);
      reach.push_back(*beside);
    }
  }
  all.push_back(ends[1]);
  reach.push_back(0.0);
  std::vector<std::optional<Best>> least(all.size());
  least[0] = Best{};
  for (std::size_t to = 1; to < all.size(); ++to) {
    for (std::size_t from = 0; from < to; ++from) {
      const bool end = from == 0 || to + 1 == all.size();
      const bool wholeOf = from == 0 && to + 1 == all.size();
      const double apart = all[to].at - all[from].at;
      if (!least[from] || (wholeOf && !whole) ||
          apart <= (end ? 1e-6 : kGridFigures.marksClear() + reach[from] + reach[to])) {
        continue;
      }
      const std::optional<Best> between =
          piece(all[from], all[to], from == 0, to + 1 == all.size());
      if (between && least[from]->parts + between->parts <= most) {
        keepBetter(least[to], Best{least[from]->parts + between->parts,
                                   least[from]->crossed + between->crossed + all[to].crossed});
      }
    }
  }
  return least.back();
}

std::optional<Best> bestGrid(const Outline& outline, CutDirection first, const PartFits& fits) {
  const CutDirection second = otherWay(first);
  const Box box = outline.bounds();
  const auto letOutBy = [](const CutPlace& place) {
    return place.crossed > 0.0 ? kGridFigures.overlap / 2.0 : 0.0;
  };
  const auto strip = [&](const CutPlace& a, const CutPlace& b, bool low,
                         bool high) -> std::optional<Best> {
    Box section;
    section.min = pointOnCut(first, a.at - letOutBy(a), alongCut(box.min, first));
    section.max = pointOnCut(first, b.at + letOutBy(b), alongCut(box.max, first));
    const Outline sewing = clipped(outline, section);
    if (sewing.empty()) {
      return std::nullopt;
    }
    const auto part = [&](const CutPlace& c, const CutPlace& d, bool, bool) -> std::optional<Best> {
      Box cell = section;
      cell.min = pointOnCut(second, c.at - letOutBy(c), alongCut(section.min, second));
      cell.max = pointOnCut(second, d.at + letOutBy(d), alongCut(section.max, second));
      const Outline sewn = clipped(sewing, cell);
      return !sewn.empty() && fits(sewn, {}) ? std::optional(Best{1, 0.0}) : std::nullopt;
    };
    const MarkRange range = markRange({a.at, b.at}, low, high, kGridFigures);
    const auto usable = [&](const CutPlace& place) -> std::optional<double> {
      if (range.allowed.length() >= kGridFigures.marksApart &&
          !closePairs(outline, place.at, second, range, kGridFigures).empty()) {
        return 0.0;
      }
      return low || high ? std::optional(kGridFigures.marksApart / 2.0) : std::nullopt;
    };
    return leastOver({{acrossCut(box.min, second), 0.0}, {acrossCut(box.max, second), 0.0}},
                     allPlaces(sewing, second, kGridFigures.mostParts), kGridFigures.mostParts,
                     true, part, usable);
  };
  const MarkRange range =
      markRange({alongCut(box.min, first), alongCut(box.max, first)}, true, true, kGridFigures);
  const auto usable = [&](const CutPlace& place) -> std::optional<double> {
    const bool onIt = !closePairs(outline, place.at, first, range, kGridFigures).empty();
    return onIt ? 0.0 : kGridFigures.marksApart / 2.0;
  };
  return leastOver({{acrossCut(box.min, first), 0.0}, {acrossCut(box.max, first), 0.0}},
                   allPlaces(outline, first, kGridFigures.mostParts), kGridFigures.mostParts, false,
                   strip, usable);
}

}  // namespace

TEST_CASE("Four words are cut apart both ways, each part tied to one that is sewn before it",
          "[planning][split][grid]") {
  const SplitSearch search = findSplit(fourWords(), kGridFigures, frameOf(180, 140));
  REQUIRE(search.split);
  const Split& split = *search.split;
  CHECK(split.bothWays);
  REQUIRE(split.parts.size() == 4);
  CHECK(split.crossed() == 0.0);
  CHECK(split.seams.size() == 4);
  checkTied(split);
  for (const SplitPart& part : split.parts) {
    CHECK(clipped(fourWords(), part.section).pieces.size() == 1);
  }
  // The first is at the start of the first strip, the last in the second.
  CHECK(split.parts[0].strip == 1);
  CHECK(split.parts[0].place == 1);
  CHECK(split.parts[3].strip == 2);
}

TEST_CASE("A strip that a frame holds is not cut across", "[planning][split][grid]") {
  // One word above two that are together too wide, all together too high.
  const Outline words{
      {block(-70, -110, 70, -10), block(-150, 10, -10, 110), block(10, 10, 150, 110)}};
  const SplitSearch search = findSplit(words, kGridFigures, frameOf(180, 140));
  REQUIRE(search.split);
  CHECK(search.split->bothWays);
  CHECK(search.split->direction == CutDirection::Level);
  REQUIRE(search.split->parts.size() == 3);
  REQUIRE(search.split->cuts.size() == 2);
  CHECK(search.split->cuts[1].direction == CutDirection::Upright);
  // All meet: the word above both of those below.
  CHECK(search.split->seams.size() == 3);
  checkTied(*search.split);
}

TEST_CASE("A solid block is cut both ways through its sewing, with marks in the margin around it",
          "[planning][split][grid][oracle]") {
  // Each part is 150 mm wide and high. One cut's marks lie 10 mm on either side of it, half a mark
  // more, and another's 3 mm off the sewing and a whole mark: 150 + 14 + 11 = 175.
  const Outline solid = Outline::rectangle(Length::fromMm(300), Length::fromMm(300));
  const SplitSearch search = findSplit(solid, kGridFigures, frameOf(176, 176));
  REQUIRE(search.split);
  CHECK(search.split->bothWays);
  REQUIRE(search.split->parts.size() == 4);
  // One cut through all, one through each strip, which is let out by half the overlap.
  CHECK(search.split->crossed() == Approx(300.0 + 2.0 * (150.0 + kGridFigures.overlap / 2.0)));
  checkTied(*search.split);
  const Geos geos;
  requireCovered(geos, solid, *search.split);
  for (const Seam& seam : search.split->seams) {
    CHECK(seam.crossed == Approx(150.0));
    if (!seam.marks.empty()) {
      requireInPlace(geos, solid, seam);
      CHECK(seam.marksBeside());
    }
  }
}

TEST_CASE("A grid whose parts no marks can tie is refused, not given up",
          "[planning][split][grid]") {
  // Neither inside the block nor beside it is there room for marks that a part reaches.
  const Outline solid = Outline::rectangle(Length::fromMm(300), Length::fromMm(300));
  const SplitSearch search = findSplit(solid, kGridFigures, frameOf(158, 158));
  CHECK_FALSE(search.split);
  CHECK_FALSE(search.gaveUp);
  CHECK(search.questions < kGridFigures.mostGridQuestions);
}

// Early refusal beside the search without it, where frames are in the way of something as well.
TEST_CASE("What reaches beyond every frame is refused unasked, and the answer stays the same",
          "[planning][split][grid]") {
  Dice dice(3307);
  INFO("seed 3307");
  int compared = 0, found = 0, none = 0, spared = 0;
  for (int i = 0; i < caseCount(40); ++i) {
    Outline outline = randomLettering(dice, 4, 3);
    if (dice.oneIn(3)) {
      outline.pieces = {{starRing(dice, 12, 60.0, 90.0), {}}};
      outline = outline.centred();
    }
    const Box box = outline.bounds();
    SplitFigures figures = kGridFigures;
    figures.mostParts = 4;
    figures.mostQuestions = figures.mostGridQuestions = 1500;
    std::vector<Extent> frames;
    for (int j = 0; j < 2; ++j) {
      frames.push_back(
          {box.width() * dice.between(0.35, 0.75), box.height() * dice.between(0.35, 0.75)});
    }
    const Point inTheWay{box.width() * dice.between(-0.7, 0.7),
                         box.height() * dice.between(-0.7, 0.7)};
    const PartFits fits = [&](const Outline& sewing, const std::vector<Point>& marks) {
      const Box whole = withMarks(sewing.bounds(), marks, figures);
      return !liesIn({inTheWay, inTheWay}, whole) &&
             std::any_of(frames.begin(), frames.end(), [&](const Extent& frame) {
               return whole.width() <= frame.width && whole.height() <= frame.height;
             });
    };
    const SplitSearch full = findSplit(outline, figures, fits);
    figures.largest = frames;
    const SplitSearch early = findSplit(outline, figures, fits);
    CAPTURE(i, full.questions, early.questions);
    if (full.gaveUp) {
      continue;  // it does not know
    }
    ++compared;
    spared += full.questions - early.questions;
    REQUIRE_FALSE(early.gaveUp);
    REQUIRE(early.split.has_value() == full.split.has_value());
    (early.split ? found : none) += 1;
    if (early.split) {
      REQUIRE(early.split->parts.size() == full.split->parts.size());
      REQUIRE(early.split->bothWays == full.split->bothWays);
      REQUIRE(early.split->crossed() == Approx(full.split->crossed()).margin(1e-6));
    }
  }
  CHECK(compared > 0);
  CHECK(found > 0);
  CHECK(none > 0);
  CHECK(spared > 0);
}

TEST_CASE("The search for a grid asks no more than it may, and says so",
          "[planning][split][grid]") {
  SplitFigures figures = kGridFigures;
  figures.mostGridQuestions = 3;
  int asked = 0;
  const PartFits fits = frameOf(180, 140);
  const GridSearch search =
      findGrid(fourWords(), figures, [&](const Outline& sewing, const std::vector<Point>& marks) {
        ++asked;
        return fits(sewing, marks);
      });
  CHECK(search.gaveUp);
  CHECK(asked == 3);
  CHECK(search.questions == 3);
}

// Exhaustion over every first cut and every cut across each strip; marks only where there is room.
TEST_CASE("A grid's parts and its crossed sewing are the least of trying every choice",
          "[planning][split][grid]") {
  Dice dice(6021);
  INFO("seed 6021");
  int grids = 0, early = 0;
  for (int i = 0; i < caseCount(50); ++i) {
    const Outline outline = randomLettering(dice, 3, 3);
    const Box box = outline.bounds();
    const double width = box.width() * dice.between(0.3, 0.9);
    const double height = box.height() * dice.between(0.3, 0.9);
    // Something beyond which no frame reaches, most often beyond the design as well.
    const double reach = box.max.x + box.width() * dice.between(-0.1, 0.4);
    const PartFits fits = [&](const Outline& sewing, const std::vector<Point>&) {
      return boxFits(sewing, width, height) && sewing.bounds().max.x <= reach;
    };
    const GridSearch search = findGrid(outline, kGridFigures, fits);
    std::optional<Best> best = bestGrid(outline, CutDirection::Upright, fits);
    keepBetter(best, bestGrid(outline, CutDirection::Level, fits));
    early += search.questions < 8 && !search.split && reach < box.max.x ? 1 : 0;
    CAPTURE(i, width, height, search.questions);
    REQUIRE_FALSE(search.gaveUp);
    REQUIRE(search.split.has_value() == best.has_value());
    if (best) {
      REQUIRE(static_cast<int>(search.split->parts.size()) == best->parts);
      REQUIRE(search.split->crossed() == Approx(best->crossed).margin(1e-4));
      grids += search.split->bothWays ? 1 : 0;
    }
  }
  CHECK(early > 0);
  CHECK(grids > 0);
}

// GEOS (libgeos) measures what the search only decides.
TEST_CASE("A grid's parts cover the design, fit, and are tied by marks clear of all sewing",
          "[planning][split][grid][oracle]") {
  const Geos geos;
  Dice dice(9934);
  INFO("seed 9934");
  int grids = 0, beside = 0;
  for (int i = 0; i < caseCount(60); ++i) {
    const Outline outline = randomLettering(dice, 5, 4);
    const Box box = outline.bounds();
    SplitFigures figures = kGridFigures;
    const double width = box.width() * dice.between(0.4, 0.8);
    const double height = box.height() * dice.between(0.4, 0.8);
    figures.largest = {{width, height}};
    const PartFits fits = frameOf(width, height);
    const SplitSearch search = findSplit(outline, figures, fits);
    if (!search.split || !search.split->bothWays) {
      continue;
    }
    ++grids;
    CAPTURE(i);
    checkTied(*search.split);
    for (const SplitPart& part : search.split->parts) {
      REQUIRE(fits(clipped(outline, part.section), part.marks));
    }
    requireCovered(geos, outline, *search.split);
    std::vector<Point> marks;
    for (const Seam& seam : search.split->seams) {
      REQUIRE(seam.crossed == Approx(crossedByGeos(geos, outline, seam)).margin(1e-4));
      if (!seam.marks.empty()) {
        requireInPlace(geos, outline, seam);
        beside += seam.marksBeside() ? 1 : 0;
      }
      for (const Point mark : seam.marks) {
        for (const Point other : marks) {
          REQUIRE(norm(other - mark) >=
                  std::min(kGridFigures.marksClear(), kGridFigures.marksApart) - 1e-6);
        }
        marks.push_back(mark);
      }
    }
  }
  CHECK(beside > 0);
  CHECK(grids > 0);
}
