// SPDX-License-Identifier: MIT
// Tiles and what is cut to them, as numbers.
#include "sheets/tiling.h"

#include <QPainterPath>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "sheets/clipping.h"

using namespace creaseline;

namespace {

double areaOf(const QPolygonF& ring) {
  double twice = 0.0;
  for (qsizetype i = 0; i < ring.size(); ++i) {
    const QPointF a = ring[i];
    const QPointF b = ring[(i + 1) % ring.size()];
    twice += a.x() * b.y() - a.y() * b.x();
  }
  return std::abs(twice) / 2.0;
}

double lengthOf(const std::vector<QPolygonF>& parts) {
  double length = 0.0;
  for (const QPolygonF& part : parts) {
    for (qsizetype i = 1; i < part.size(); ++i) {
      length += std::hypot(part[i].x() - part[i - 1].x(), part[i].y() - part[i - 1].y());
    }
  }
  return length;
}

}  // namespace

TEST_CASE("tiles cover all, fit the page and overlap by enough to tape", "[tiling]") {
  const unsigned seed = 20261125;
  CAPTURE(seed);
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> size(20.0, 900.0);
  for (int i = 0; i < 300; ++i) {
    const QSizeF whole(size(random), size(random));
    const QSizeF most(170.0, 200.0);
    const std::vector<QRectF> words = {QRectF(size(random) / 2.0, size(random) / 2.0, 60.0, 4.0)};
    const std::vector<QRectF> exact = {QRectF(size(random), size(random), 10.0, 10.0)};
    const Tiling tiling = tiled(whole, most, words, exact);
    CAPTURE(whole.width(), whole.height(), tiling.rows, tiling.columns);
    REQUIRE(static_cast<int>(tiling.tiles.size()) == tiling.count());
    CHECK(tiling.columns == tilesFor(whole.width(), most.width()));
    CHECK(tiling.rows == tilesFor(whole.height(), most.height()));
    for (const Tile& tile : tiling.tiles) {
      CHECK(tile.window.width() <= most.width() + 1e-9);
      CHECK(tile.window.height() <= most.height() + 1e-9);
      CHECK(tile.window.width() > 0.0);
      CHECK(tile.window.height() > 0.0);
    }
    const QRectF first = tiling.tiles.front().window;
    const QRectF last = tiling.tiles.back().window;
    CHECK(first.topLeft() == QPointF());
    CHECK(last.right() == Approx(whole.width()));
    CHECK(last.bottom() == Approx(whole.height()));
    for (int column = 1; column < tiling.columns; ++column) {
      const auto index = static_cast<std::size_t>(column);
      const double overlap =
          tiling.tiles[index - 1].window.right() - tiling.tiles[index].window.left();
      CHECK(overlap == Approx(kTileOverlap));
      CHECK(overlap >= 10.0);
    }
  }
}

TEST_CASE("no more tiles than a length needs", "[tiling]") {
  CHECK(tilesFor(170.0, 170.0) == 1);
  CHECK(tilesFor(170.1, 170.0) == 2);
  CHECK(tilesFor(2.0 * 170.0 - kTileOverlap, 170.0) == 2);
  CHECK(tilesFor(2.0 * 170.0 - kTileOverlap + 0.1, 170.0) == 3);
}

TEST_CASE("joins keep off crosses and leave words whole where tiles reach", "[tiling]") {
  const QSizeF whole(260.0, 100.0);
  const QSizeF most(170.0, 200.0);
  const QRectF cross(125.0, 45.0, 10.0, 10.0);  // in the very middle
  const QRectF word(90.0, 10.0, 70.0, 4.0);
  const Tiling plain = tiled(whole, most, {}, {});
  CHECK(plain.columnJoins.front() == Approx(130.0));
  const Tiling spared = tiled(whole, most, {word}, {cross});
  const double join = spared.columnJoins.front();
  CHECK((join < cross.left() || join > cross.right()));
  bool whole1 = false;
  for (const Tile& tile : spared.tiles) {
    whole1 = whole1 || tile.window.contains(word);
  }
  CHECK(whole1);
}

TEST_CASE("a join across a long line lies where tiles come out alike", "[tiling]") {
  const QRectF crease(99.0, 60.0, 1.0, 340.0);
  const Tiling tiling = tiled(QSizeF(200.0, 400.0), QSizeF(170.0, 300.0), {}, {crease});
  CHECK(tiling.rowJoins.front() == Approx(200.0));
  CHECK(std::abs(tiling.columnJoins.front() - 99.5) > 3.0);
}

TEST_CASE("a ring cut to windows that share no area keeps its area", "[tiling]") {
  // A comb, so that a window cuts it into several parts. Qt's own paths are the judge of each.
  QPolygonF comb;
  for (int tooth = 0; tooth < 6; ++tooth) {
    comb << QPointF(10.0 * tooth, 0.0) << QPointF(10.0 * tooth + 5.0, 0.0)
         << QPointF(10.0 * tooth + 5.0, 30.0) << QPointF(10.0 * tooth + 10.0, 30.0);
  }
  comb << QPointF(60.0, 40.0) << QPointF(0.0, 40.0);
  double sum = 0.0;
  for (int column = 0; column < 4; ++column) {
    for (int row = 0; row < 3; ++row) {
      sum += areaOf(clippedArea(comb, QRectF(17.0 * column, 15.0 * row, 17.0, 15.0)));
    }
  }
  CHECK(sum == Approx(areaOf(comb)));
  CHECK(clippedArea(comb, QRectF(100.0, 100.0, 5.0, 5.0)).isEmpty());
}

TEST_CASE("a line cut to windows that share no area keeps its length and its windows", "[tiling]") {
  const unsigned seed = 7;
  CAPTURE(seed);
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> place(0.5, 59.5);
  QPolygonF line;
  for (int i = 0; i < 40; ++i) {
    line << QPointF(place(random), place(random));
  }
  double sum = 0.0;
  for (int column = 0; column < 4; ++column) {
    for (int row = 0; row < 3; ++row) {
      const QRectF window(15.0 * column, 20.0 * row, 15.0, 20.0);
      const auto parts = clippedLine(line, window);
      sum += lengthOf(parts);
      for (const QPolygonF& part : parts) {
        for (const QPointF point : part) {
          CHECK(window.adjusted(-1e-9, -1e-9, 1e-9, 1e-9).contains(point));
        }
      }
    }
  }
  CHECK(sum == Approx(lengthOf({line})));
}

TEST_CASE("dashes run on round corners and end with the line", "[tiling]") {
  const QPolygonF corner{QPointF(0.0, 0.0), QPointF(4.0, 0.0), QPointF(4.0, 6.5)};
  const auto parts = dashes(corner, {3.0, 2.0});
  REQUIRE(parts.size() == 3);  // 0 to 3, 5 to 8, 10 to 10.5
  CHECK(parts[0] == QPolygonF({QPointF(0.0, 0.0), QPointF(3.0, 0.0)}));
  CHECK(parts[1] == QPolygonF({QPointF(4.0, 1.0), QPointF(4.0, 4.0)}));
  CHECK(parts[2] == QPolygonF({QPointF(4.0, 6.0), QPointF(4.0, 6.5)}));
  CHECK(lengthOf(dashes(corner, {1.0, 3.0, 1.0, 1.0})) == Approx(3.5));
}
