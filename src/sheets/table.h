// SPDX-License-Identifier: MIT
// Rows of a table: columns aligned on one baseline, cells that wrap, boxes to tick with a wet
// hand, swatches that always stand beside a name. Millimetres of paper.
#pragma once

#include <QColor>
#include <QString>
#include <optional>
#include <vector>

#include "sheets/sheet_flow.h"
#include "sheets/typography.h"

namespace creaseline {

struct TableColumn {
  QString heading;
  // 0: a share of what the others leave. Where a word of the heading needs more, the column is as
  // wide as that.
  double width = 0.0;
  double share = 1.0;
  bool right = false;  // numbers end at the right
};
using TableColumns = std::vector<TableColumn>;

// A short entry with a box of its own, many of which stand in one cell: "☐ XL × 3".
struct TableChip {
  QString strong, light;
};

struct TableCell {
  QString text;
  lettering::TextStyle style = typography::kText;
  std::optional<QColor> swatch;  // before the text
  bool tick = false;             // a box before the text
  bool write = false;            // a line to write on instead of a text
  std::vector<TableChip> chips;  // instead of a text
  int span = 1;                  // columns that it takes
};

[[nodiscard]] TableCell strongCell(const QString& text);
[[nodiscard]] TableCell headingCell(const QString& text);
[[nodiscard]] TableCell tickCell(const QString& text = {});
[[nodiscard]] TableCell writeCell();
[[nodiscard]] TableCell swatchCell(const QString& text, const QColor& colour);
[[nodiscard]] TableCell chipsCell(std::vector<TableChip> chips);

// Side of a box to tick: a thick pen and a wet hand hit it.
inline constexpr double kTickBox = 4.6;
// Heights of rows that are read, and of rows that are ticked or written on.
inline constexpr double kReadRow = 6.4;
inline constexpr double kTickRow = 8.6;

// Where each column begins, and the table's width at the end.
[[nodiscard]] std::vector<double> columnEdges(const TableColumns& columns, double width);
// The columns' headings with a line below.
[[nodiscard]] FlowRow tableHeader(const TableColumns& columns, double width);
// A row with a hairline below; as high as its highest cell, at least kReadRow, or kTickRow if
// something is to be ticked or written. Missing cells at the end are empty.
[[nodiscard]] FlowRow tableRow(const TableColumns& columns, std::vector<TableCell> cells,
                               double width);

void paintTickBox(QPainter& painter, QPointF at);

}  // namespace creaseline
