// SPDX-License-Identifier: MIT
// Wrapping, columns and labels: the layout under the sheets.
#include <catch2/catch.hpp>
#include <cmath>

#include "sheets/label_layout.h"
#include "sheets/lettering.h"
#include "sheets/sheet_flow.h"

using namespace creaseline;
using lettering::TextStyle;

namespace {

FlowRows rowsOf(std::initializer_list<double> heights) {
  FlowRows rows;
  for (const double height : heights) {
    rows.push_back({height, false, [](QPainter&, QPointF) {}});
  }
  return rows;
}

}  // namespace

TEST_CASE("text width grows with the size and with bold", "[sheets][lettering]") {
  const QString text = QStringLiteral("3 1/2 in");
  CHECK(lettering::textWidth(text, {4.0, false}) ==
        Approx(2.0 * lettering::textWidth(text, {2.0, false})));
  CHECK(lettering::textWidth(text, {4.0, true}) > lettering::textWidth(text, {4.0, false}));
}

TEST_CASE("wrapped lines fit and keep every letter", "[sheets][lettering]") {
  const TextStyle style{3.0, false};
  const QString text = QStringLiteral("a few words and ") + QString(70, u'W') +
                       QStringLiteral(" then\nanother paragraph");
  const QStringList lines = lettering::wrapped(text, style, 40.0);
  CHECK(lines.size() > 3);
  for (const QString& line : lines) {
    CHECK(lettering::textWidth(line, style) <= 40.0);
  }
  const auto letters = [](QString all) { return all.remove(u' ').remove(u'\n'); };
  CHECK(letters(lines.join(QString())) == letters(text));
}

TEST_CASE("elided text fits and ends with an ellipsis", "[sheets][lettering]") {
  const QString cut = lettering::elided(QString(60, u'm'), {3.0, false}, 30.0);
  CHECK(cut.endsWith(u'…'));
  CHECK(lettering::textWidth(cut, {3.0, false}) <= 30.0);
  CHECK(lettering::elided(QStringLiteral("short"), {3.0, false}, 30.0) == QStringLiteral("short"));
}

TEST_CASE("columns fill in order, and a heading never ends one", "[sheets][flow]") {
  FlowRows rows = rowsOf({4.0, 4.0, 4.0, 4.0});
  CHECK(fillColumn(rows, 0, 9.0) == 2);
  CHECK(fillColumns(rows, 0, 2, 8.0) == 4);
  CHECK(balancedHeight(rows, 0, 2, 100.0) == Approx(8.0));
  CHECK(std::isinf(balancedHeight(rows, 0, 2, 7.0)));
  rows[1].keepWithNext = true;
  CHECK(fillColumn(rows, 0, 9.0) == 1);
}

TEST_CASE("a flow always ends, also with a row higher than the column", "[sheets][flow]") {
  const FlowRows rows = rowsOf({50.0, 50.0});
  std::size_t at = 0;
  int pages = 0;
  while (at < rows.size()) {
    at = fillColumns(rows, at, 1, 10.0);
    REQUIRE(++pages <= 2);
  }
  CHECK(pages == 2);
}

TEST_CASE("labels that want one place come to lie beside one another", "[sheets][labels]") {
  const QRectF area(0.0, 0.0, 100.0, 100.0);
  const std::vector<LabelWish> wishes(6, LabelWish{{20.0, 10.0}, {50.0, 50.0}});
  const auto places = placeLabels(wishes, {}, area, 2.0);
  REQUIRE(places.size() == 6);
  REQUIRE(places.front());
  CHECK(places.front()->center() == QPointF(50.0, 50.0));  // the first gets what it wants
  for (std::size_t i = 0; i < places.size(); ++i) {
    REQUIRE(places[i]);
    CHECK(area.contains(*places[i]));
    for (std::size_t j = i + 1; j < places.size(); ++j) {
      CHECK_FALSE(places[i]->intersects(*places[j]));
    }
  }
}

TEST_CASE("a label goes round an obstacle, and gives up where nothing is free",
          "[sheets][labels]") {
  const QRectF area(0.0, 0.0, 100.0, 100.0);
  const QRectF wall(40.0, 40.0, 20.0, 20.0);
  const auto free = placeLabels({{{20.0, 10.0}, {50.0, 50.0}}}, {{wall, 1000.0}}, area, 2.0);
  REQUIRE(free.front());
  CHECK_FALSE(free.front()->intersects(wall));
  CHECK_FALSE(placeLabels({{{120.0, 10.0}, {50.0, 50.0}}}, {}, area, 2.0).front());
}
