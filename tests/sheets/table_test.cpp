// SPDX-License-Identifier: MIT
// Tables and lists as laid out and as painted.
#include "sheets/table.h"

#include <QImage>
#include <catch2/catch.hpp>

#include "sheets/sheet_list.h"

using namespace creaseline;

namespace {

constexpr double kWidth = 150.0;
constexpr int kDotsPerMm = 20;

TableColumns threeColumns() {
  return {{QStringLiteral("Sewn"), 12.0},
          {QStringLiteral("What"), 0.0, 1.0},
          {QStringLiteral("Count"), 0.0, 0.5, true}};
}

QImage painted(const FlowRow& row) {
  QImage image(static_cast<int>(kWidth * kDotsPerMm),
               static_cast<int>((row.height + 1.0) * kDotsPerMm), QImage::Format_Grayscale8);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(kDotsPerMm, kDotsPerMm);
  row.paint(painter, {0.0, 0.0});
  return image;
}

bool dark(const QImage& image, int x, int y) {
  return image.constScanLine(y)[x] < 128;
}

// First and last dark pixel of a row between two columns, in millimetres.
std::pair<double, double> darkSpan(const QImage& image, int y, int from, int to) {
  int first = -1;
  int last = -1;
  for (int x = from; x < to; ++x) {
    if (dark(image, x, y)) {
      first = first < 0 ? x : first;
      last = x;
    }
  }
  return {static_cast<double>(first) / kDotsPerMm, static_cast<double>(last + 1) / kDotsPerMm};
}

}  // namespace

TEST_CASE("columns take their width, and share what is left", "[table]") {
  const std::vector<double> edges = columnEdges(threeColumns(), 132.0);
  REQUIRE(edges.size() == 4);
  CHECK(edges[1] == Approx(12.0));
  CHECK(edges[2] == Approx(92.0));  // two thirds of 120
  CHECK(edges[3] == Approx(132.0));
}

TEST_CASE("a box to tick is at least 4 mm wide and high, in a row with room for a hand",
          "[table]") {
  const FlowRow row = tableRow(threeColumns(), {tickCell()}, kWidth);
  CHECK(row.height >= 8.0);
  const QImage image = painted(row);
  const int middle = static_cast<int>(row.height / 2.0 * kDotsPerMm);
  const auto [left, right] = darkSpan(image, middle, 0, 12 * kDotsPerMm);
  CHECK(right - left >= 4.0);
  CHECK(right - left <= 6.0);
  // Up and down likewise: the column through the middle of the box.
  const int x = static_cast<int>((left + right) / 2.0 * kDotsPerMm);
  int first = -1;
  int last = -1;
  for (int y = 0; y < static_cast<int>((row.height - 0.4) * kDotsPerMm); ++y) {
    if (dark(image, x, y)) {
      first = first < 0 ? y : first;
      last = y;
    }
  }
  CHECK(static_cast<double>(last + 1 - first) / kDotsPerMm >= 4.0);
}

TEST_CASE("a row is as high as its highest cell, and everything in it is painted", "[table]") {
  TableCell longCell;
  longCell.text = QString(QStringLiteral("Wärmeschutzverordnung ")).repeated(12);
  const FlowRow one = tableRow(threeColumns(), {strongCell(QStringLiteral("a"))}, kWidth);
  const FlowRow row = tableRow(threeColumns(), {{}, longCell}, kWidth);
  CHECK(row.height > 3.0 * one.height);
  const double room = columnEdges(threeColumns(), kWidth)[2] - 12.0;
  CHECK(row.height >= lettering::wrappedHeight(longCell.text, longCell.style, room));
  // Ink in the last quarter, above the line.
  const QImage image = painted(row);
  bool ink = false;
  for (int y = static_cast<int>(row.height * 0.75 * kDotsPerMm);
       y < static_cast<int>((row.height - 0.5) * kDotsPerMm); ++y) {
    ink = ink || darkSpan(image, y, 0, image.width()).first >= 0.0;
  }
  CHECK(ink);
}

TEST_CASE("numbers end at the right edge of their column", "[table]") {
  const auto end = [](const char* number) {
    const FlowRow row =
        tableRow(threeColumns(), {{}, {}, strongCell(QString::fromLatin1(number))}, kWidth);
    const QImage image = painted(row);
    double most = 0.0;
    for (int y = 0; y < static_cast<int>((row.height - 0.5) * kDotsPerMm); ++y) {
      most = std::max(most, darkSpan(image, y, 0, image.width()).second);
    }
    return most;
  };
  CHECK(end("8") == Approx(end("10,888")).margin(0.2));
  CHECK(end("8") < kWidth);
  CHECK(end("8") > kWidth - 2.5);
}

TEST_CASE("chips wrap to further rows of the cell", "[table]") {
  std::vector<TableChip> chips;
  for (int i = 0; i < 30; ++i) {
    chips.push_back({QStringLiteral("XL"), QStringLiteral("× 3")});
  }
  const FlowRow few =
      tableRow(threeColumns(), {{}, chipsCell({chips.begin(), chips.begin() + 2})}, kWidth);
  const FlowRow many = tableRow(threeColumns(), {{}, chipsCell(chips)}, kWidth);
  CHECK(many.height >= 4.0 * few.height);
}

TEST_CASE("a list loses no row, splits none, and repeats the table's headings", "[table]") {
  SheetHead head;
  head.order = QStringLiteral("Order 1");
  head.orderId = QStringLiteral("1");
  SheetPage page;
  page.title = QStringLiteral("List");
  SheetList list(head, page);
  list.table(threeColumns());
  // Every row paints its own number of pixels wide mark, so that rows can be counted.
  int rows = 0;
  for (; rows < 100; ++rows) {
    list.row({tickCell(), strongCell(QString::number(rows))});
  }
  const std::vector<SheetPage> pages = list.pages();
  REQUIRE(pages.size() > 2);
  const double body = sheetBody(head, page).height();
  const double header = tableHeader(threeColumns(), list.width()).height;
  const auto perPage = static_cast<std::size_t>((body - header) / kTickRow);
  CHECK(pages.size() == (100 + perPage - 1) / perPage);
  CHECK(pages[1].title == QStringLiteral("List, continued"));
}

TEST_CASE("an empty list is one empty page", "[table]") {
  SheetPage page;
  page.title = QStringLiteral("List");
  CHECK(SheetList({}, page).pages().size() == 1);
}
