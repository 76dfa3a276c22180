// SPDX-License-Identifier: MIT
#include "creaseline/shape/cut.h"

#include <catch2/catch.hpp>

#include "shape/geos_oracle.h"
#include "shape/random_shapes.h"

using namespace creaseline;
using namespace creaseline::test;

namespace {

Piece block(double left, double top, double right, double bottom) {
  return {{{left, top}, {right, top}, {right, bottom}, {left, bottom}}, {}};
}

// Stars beside each other, some with a hole, some overlapping their neighbour.
Outline manyPieces(Dice& dice) {
  Outline outline;
  const int count = 1 + dice.below(5);
  for (int i = 0; i < count; ++i) {
    const double size = dice.between(10.0, 40.0);
    const Point at{i * dice.between(25.0, 60.0), dice.between(-20.0, 20.0)};
    Piece piece{starRing(dice, 5 + dice.below(30), size * 0.5, size), {}};
    if (dice.oneIn(2)) {
      // Chords of an outer ring of n corners at rising angles stay outside this radius.
      piece.holes.push_back(starRing(dice, 4 + dice.below(6), size * 0.02, size * 0.08));
    }
    for (Point& point : piece.outer) {
      point = point + at;
    }
    for (Ring& hole : piece.holes) {
      for (Point& point : hole) {
        point = point + at;
      }
    }
    outline.pieces.push_back(std::move(piece));
  }
  return outline;
}

Geos::Geometry areaOf(const Geos& geos, const Piece& piece) {
  Geos::Geometry area = geos.polygon(piece.outer);
  for (const Ring& hole : piece.holes) {
    area = geos.own(GEOSDifference_r(geos.handle(), area.get(), geos.polygon(hole).get()));
  }
  return area;
}

double geosCrossed(const Geos& geos, const Outline& outline, CutDirection direction, double at,
                   Region::Interval along = {-1000.0, 1000.0}) {
  const auto line =
      geos.segment(pointOnCut(direction, at, along.low), pointOnCut(direction, at, along.high));
  double sum = 0.0;
  for (const Piece& piece : outline.pieces) {
    const auto inside =
        geos.own(GEOSIntersection_r(geos.handle(), areaOf(geos, piece).get(), line.get()));
    double length = 0.0;
    GEOSLength_r(geos.handle(), inside.get(), &length);
    sum += length;
  }
  return sum;
}

CutDirection eitherDirection(Dice& dice) {
  return dice.oneIn(2) ? CutDirection::Upright : CutDirection::Level;
}

}  // namespace

TEST_CASE("A cut through the gap between two letters crosses nothing", "[shape][cut]") {
  const Outline letters{{block(-50, -20, -5, 20), block(9, -20, 50, 20)}};
  const auto places = cutPlaces(letters, CutDirection::Upright);
  REQUIRE(places.size() == 1);
  CHECK(places[0].at == Approx(2.0));  // the middle of -5 and 9
  CHECK(places[0].crossed == 0.0);
  CHECK(cutPlaces(letters, CutDirection::Level).empty());
}

TEST_CASE("A waist is where a cut crosses least", "[shape][cut]") {
  // Two blocks of 40 mm joined by a bar of 6 mm: the bar's whole length is one place.
  const Outline dumbbell{{{{{-50, -20},
                            {-10, -20},
                            {-10, -3},
                            {20, -3},
                            {20, -20},
                            {50, -20},
                            {50, 20},
                            {20, 20},
                            {20, 3},
                            {-10, 3},
                            {-10, 20},
                            {-50, 20}},
                           {}}}};
  const auto places = cutPlaces(dumbbell, CutDirection::Upright);
  REQUIRE(places.size() == 1);
  CHECK(places[0].at == Approx(5.0));
  CHECK(places[0].crossed == Approx(6.0));
  CHECK(crossedLength(dumbbell, CutDirection::Upright, 0.0) == Approx(6.0));
  CHECK(crossedLength(dumbbell, CutDirection::Upright, -10.0) == Approx(6.0));
  CHECK(crossedLength(dumbbell, CutDirection::Upright, -30.0) == Approx(40.0));
  CHECK(crossedLength(dumbbell, CutDirection::Level, 0.0) == Approx(100.0));
}

TEST_CASE("A cut between blocks that touch crosses neither, and they meet there", "[shape][cut]") {
  // The left block is higher than the right one, so that no length is lost in the sum of both.
  const Outline blocks{{block(-50, -20, -8, 20), block(-8, -30, 50, 5)}};
  const auto places = cutPlaces(blocks, CutDirection::Upright);
  REQUIRE(places.size() == 1);
  CHECK(places[0].at == Approx(-8.0));
  CHECK(places[0].crossed == 0.0);
  CHECK(places[0].meets);
  CHECK(crossedLength(blocks, CutDirection::Upright, -8.0) == 0.0);
  CHECK(crossedLength(blocks, CutDirection::Upright, -8.0, {-100.0, 100.0}) == 0.0);
  // They share the border from -20 to 5 alone.
  CHECK(sewingMeets(blocks, CutDirection::Upright, -8.0, {-30.0, 30.0}));
  CHECK_FALSE(sewingMeets(blocks, CutDirection::Upright, -8.0, {5.0, 30.0}));
  CHECK_FALSE(sewingMeets(blocks, CutDirection::Upright, -8.0, {-40.0, -20.0}));
  CHECK(sewingMeets(blocks, CutDirection::Upright, 20.0, {-30.0, 30.0}));
  // A band that lies over both is crossed all the same.
  Outline banded = blocks;
  banded.pieces.push_back(block(-40, -3, 40, 3));
  const auto crossed = cutPlaces(banded, CutDirection::Upright);
  const auto border = std::find_if(crossed.begin(), crossed.end(), [](const CutPlace& place) {
    return std::abs(place.at + 8.0) < 1e-6;
  });
  REQUIRE(border != crossed.end());
  CHECK(border->crossed == Approx(6.0));
  CHECK(border->meets);
}

TEST_CASE("Blocks that end and begin on one line without touching do not meet", "[shape][cut]") {
  const Outline steps{{block(-50, -20, 0, -5), block(0, 5, 50, 20)}};
  const auto places = cutPlaces(steps, CutDirection::Upright);
  REQUIRE(places.size() == 1);
  CHECK(places[0].at == Approx(0.0));
  CHECK(places[0].crossed == 0.0);
  CHECK_FALSE(places[0].meets);
}

// A square sawn by random level and upright lines: its tiles touch, and GEOS says that the inside
// of none is crossed by the line between two columns, which share a border there.
TEST_CASE("Where columns of tiles touch, a cut crosses the inside of none, by GEOS",
          "[shape][cut][oracle]") {
  const Geos geos;
  Dice dice(4711);
  INFO("seed 4711");
  int met = 0;
  for (int i = 0; i < caseCount(200); ++i) {
    Outline tiles;
    std::vector<double> borders{0.0};
    const int columns = 2 + dice.below(4);
    for (int column = 0; column < columns; ++column) {
      const double left = borders.back();
      const double right = left + dice.between(8.0, 40.0);
      borders.push_back(right);
      double top = dice.between(-20.0, 20.0);
      for (int row = 1 + dice.below(3); row > 0; --row) {
        const double bottom = top + dice.between(5.0, 30.0);
        tiles.pieces.push_back(block(left, top, right, bottom));
        top = bottom + (dice.oneIn(2) ? 0.0 : dice.between(1.0, 10.0));
      }
    }
    const auto places = cutPlaces(tiles, CutDirection::Upright);
    REQUIRE(places.size() == borders.size() - 2);
    for (std::size_t j = 0; j < places.size(); ++j) {
      CAPTURE(i, j);
      REQUIRE(places[j].at == Approx(borders[j + 1]).margin(1e-9));
      CHECK(places[j].crossed == 0.0);
      const auto cut = geos.segment({places[j].at, -1000.0}, {places[j].at, 1000.0});
      double shared = 0.0;
      for (const Piece& one : tiles.pieces) {
        const auto tile = areaOf(geos, one);
        CHECK(GEOSRelatePattern_r(geos.handle(), tile.get(), cut.get(), "F********") == 1);
        for (const Piece& other : tiles.pieces) {
          const auto both =
              geos.own(GEOSIntersection_r(geos.handle(), tile.get(), areaOf(geos, other).get()));
          const auto common = geos.own(GEOSIntersection_r(geos.handle(), both.get(), cut.get()));
          double length = 0.0;
          GEOSLength_r(geos.handle(), common.get(), &length);
          const bool acrossIt = ringBounds(one.outer).max.x < ringBounds(other.outer).max.x;
          shared += acrossIt ? length : 0.0;
        }
      }
      CHECK(places[j].meets == (shared > 1e-6));
      met += places[j].meets ? 1 : 0;
    }
  }
  CHECK(met > caseCount(200) / 2);
}

TEST_CASE("A hole spares the cut its width", "[shape][cut]") {
  Outline ring{{block(-30, -30, 30, 30)}};
  ring.pieces[0].holes.push_back({{-10, -10}, {10, -10}, {10, 10}, {-10, 10}});
  const auto places = cutPlaces(ring, CutDirection::Level);
  REQUIRE(places.size() == 1);
  CHECK(places[0].at == Approx(0.0));
  CHECK(places[0].crossed == Approx(40.0));
}

TEST_CASE("Clipping takes concave pieces apart and keeps whole ones as they are", "[shape][cut]") {
  const Outline comb{
      {{{{0, 0}, {50, 0}, {50, 30}, {40, 30}, {40, 10}, {10, 10}, {10, 30}, {0, 30}}, {}},
       block(60, 0, 70, 10)}};
  const Outline teeth = clipped(comb, {{-5, 20}, {80, 40}});
  REQUIRE(teeth.pieces.size() == 2);
  CHECK(teeth.area().squareMm() == Approx(200.0));
  CHECK(clipped(comb, {{-5, -5}, {80, 40}}) == comb);
  // What only touches the box has no area in it.
  CHECK(clipped(comb, {{50, 0}, {60, 40}}).empty());
}

TEST_CASE("Marks may be set where no sewing is near the cut", "[shape][cut]") {
  const Outline blocks{{block(-20, -40, 20, -10), block(-20, 30, 20, 60)}};
  const auto clear = clearStretches(blocks, CutDirection::Upright, 0.0, 8.0, {-70.0, 90.0});
  REQUIRE(clear.size() == 3);
  CHECK(clear[0].low == Approx(-70.0));
  CHECK(clear[0].high == Approx(-48.0));
  CHECK(clear[1].low == Approx(-2.0));
  CHECK(clear[1].high == Approx(22.0));
  CHECK(clear[2].low == Approx(68.0));
  // 25 mm beside the cut there is nothing within 4 mm.
  CHECK(clearStretches(blocks, CutDirection::Upright, 25.0, 4.0, {-70.0, 90.0}).size() == 1);
}

// GEOS (libgeos) knows nothing of this code.
TEST_CASE("Clipped outlines cover what GEOS says", "[shape][cut][oracle]") {
  const Geos geos;
  Dice dice(26118);
  INFO("seed 26118");
  for (int i = 0; i < caseCount(3000); ++i) {
    const Outline outline = manyPieces(dice);
    const Box all = outline.bounds();
    Box box;
    box.add({dice.between(all.min.x - 5, all.max.x), dice.between(all.min.y - 5, all.max.y)});
    box.add({dice.between(all.min.x, all.max.x + 5), dice.between(all.min.y, all.max.y + 5)});
    // Now and then through a corner, where degenerate pieces come from.
    if (dice.oneIn(4)) {
      box.min.x = outline.pieces[0].outer[0].x;
    }
    if (box.width() < 0.1 || box.height() < 0.1) {
      continue;
    }
    const auto clip =
        geos.polygon({box.min, {box.max.x, box.min.y}, box.max, {box.min.x, box.max.y}});
    double expected = 0.0;
    for (const Piece& piece : outline.pieces) {
      expected += geos.area(
          geos.own(GEOSIntersection_r(geos.handle(), areaOf(geos, piece).get(), clip.get())));
    }
    const Outline part = clipped(outline, box);
    CAPTURE(i);
    REQUIRE(part.area().squareMm() == Approx(expected).margin(1e-5));
    const Box extent = part.bounds();
    if (!part.empty()) {
      REQUIRE(extent.min.x >= box.min.x - 1e-9);
      REQUIRE(extent.max.x <= box.max.x + 1e-9);
      REQUIRE(extent.min.y >= box.min.y - 1e-9);
      REQUIRE(extent.max.y <= box.max.y + 1e-9);
    }
  }
}

TEST_CASE("Crossed lengths are those of GEOS", "[shape][cut][oracle]") {
  const Geos geos;
  Dice dice(77);
  INFO("seed 77");
  for (int i = 0; i < caseCount(3000); ++i) {
    const Outline outline = manyPieces(dice);
    const CutDirection direction = eitherDirection(dice);
    const Box box = outline.bounds();
    const double at = dice.between(acrossCut(box.min, direction), acrossCut(box.max, direction));
    CAPTURE(i, at);
    REQUIRE(crossedLength(outline, direction, at) ==
            Approx(geosCrossed(geos, outline, direction, at)).margin(1e-7));
    const double from = alongCut(box.min, direction);
    const double low = dice.between(from, alongCut(box.max, direction));
    const Region::Interval along{low, low + dice.between(0.0, 60.0)};
    REQUIRE(crossedLength(outline, direction, at, along) ==
            Approx(geosCrossed(geos, outline, direction, at, along)).margin(1e-7));
  }
}

TEST_CASE("A corner that touches the cut from one side crosses nothing", "[shape][cut]") {
  const Outline corner{{{{{0, -10}, {20, 0}, {0, 10}}, {}}}};
  CHECK(crossedLength(corner, CutDirection::Upright, 20.0, {-50.0, 50.0}) == 0.0);
  // A side along the cut counts as the smaller of both sides of it, here nothing.
  CHECK(crossedLength(corner, CutDirection::Upright, 0.0, {-50.0, 50.0}) == 0.0);
  CHECK(crossedLength(corner, CutDirection::Upright, 10.0, {0.0, 50.0}) == Approx(5.0));
}

TEST_CASE("Between samples by GEOS no cut is lower than the places found", "[shape][cut][oracle]") {
  const Geos geos;
  Dice dice(5150);
  INFO("seed 5150");
  for (int i = 0; i < caseCount(60); ++i) {
    const Outline outline = manyPieces(dice);
    const CutDirection direction = eitherDirection(dice);
    const Box box = outline.bounds();
    const double from = acrossCut(box.min, direction);
    const double step = (acrossCut(box.max, direction) - from) / 200.0;
    const std::vector<CutPlace> places = cutPlaces(outline, direction);
    std::vector<double> samples;
    for (int s = 1; s < 200; ++s) {
      samples.push_back(geosCrossed(geos, outline, direction, from + s * step));
    }
    for (std::size_t s = 1; s + 1 < samples.size(); ++s) {
      if (samples[s] < samples[s - 1] && samples[s] < samples[s + 1]) {
        const double at = from + static_cast<double>(s + 1) * step;
        CAPTURE(i, at, samples[s]);
        REQUIRE(std::any_of(places.begin(), places.end(), [&](const CutPlace& place) {
          return std::abs(place.at - at) <= step && place.crossed <= samples[s] + 1e-6;
        }));
      }
    }
    for (const CutPlace& place : places) {
      CAPTURE(i, place.at);
      REQUIRE(place.crossed <= geosCrossed(geos, outline, direction, place.at) + 1e-6);
      REQUIRE(place.crossed == Approx(crossedLength(outline, direction, place.at)).margin(1e-6));
    }
  }
}

TEST_CASE("Bounds within a box are no more than those of what clipping leaves", "[shape][cut]") {
  Dice dice(1180);
  INFO("seed 1180");
  int measured = 0;
  for (int i = 0; i < caseCount(300); ++i) {
    const Outline outline = manyPieces(dice);
    const Box whole = outline.bounds();
    Box box;
    for (int corner = 0; corner < 2; ++corner) {
      box.add({dice.between(whole.min.x - 5.0, whole.max.x + 5.0),
               dice.between(whole.min.y - 5.0, whole.max.y + 5.0)});
    }
    const Box bounds = boundsWithin(outline, box);
    CAPTURE(i);
    if (bounds.empty()) {
      continue;
    }
    const Box clipping = clipped(outline, box).bounds();
    REQUIRE(bounds.min.x >= clipping.min.x - 1e-9);
    REQUIRE(bounds.min.y >= clipping.min.y - 1e-9);
    REQUIRE(bounds.max.x <= clipping.max.x + 1e-9);
    REQUIRE(bounds.max.y <= clipping.max.y + 1e-9);
    ++measured;
  }
  CHECK(measured > 0);
  // By hand: an arm of 10 mm that reaches 30 mm into the box, less the hundredth all round.
  const Box arm = boundsWithin({{block(0, 0, 100, 10)}}, {{70, -20}, {140, 40}});
  CHECK(arm.min.x == Approx(70.01));
  CHECK(arm.max.x == Approx(100.0));
  CHECK(arm.min.y == Approx(0.0).margin(1e-12));
  CHECK(arm.max.y == Approx(10.0));
}
