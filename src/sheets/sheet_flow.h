// SPDX-License-Identifier: MIT
// Rows of a sheet that flow down a column, into the next column and onto the next page.
#pragma once

#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <functional>
#include <vector>

#include "sheets/lettering.h"

namespace creaseline {

struct FlowRow {
  double height = 0.0;
  bool keepWithNext = false;                      // a heading never ends a column
  std::function<void(QPainter&, QPointF)> paint;  // at its top left corner
};
using FlowRows = std::vector<FlowRow>;

// Index after the last row that goes into a column of that height from `first` on. At least one
// row is taken, however high, so that a flow always ends.
[[nodiscard]] std::size_t fillColumn(const FlowRows& rows, std::size_t first, double height);
// Index after the last row that goes into `columns` equal columns.
[[nodiscard]] std::size_t fillColumns(const FlowRows& rows, std::size_t first, int columns,
                                      double height);
// The least height at which `columns` equal columns hold all rows from `first` on; infinity if
// more than `most` is needed.
[[nodiscard]] double balancedHeight(const FlowRows& rows, std::size_t first, int columns,
                                    double most);
// Paints rows [first, last) into equal columns of the area; they must have been counted for its
// height by fillColumns().
void paintColumns(QPainter& painter, const FlowRows& rows, std::size_t first, std::size_t last,
                  int columns, double gap, const QRectF& area);

// A heading with a rule above.
[[nodiscard]] FlowRow headingRow(const QString& text, double width);
// One row for each line of a text that wraps `indent` to the right, so that it can break across
// columns; `mark` is painted beside the first line; `after` is the space behind the last.
using FlowMark = std::function<void(QPainter&, QPointF)>;
void addText(FlowRows& rows, const QString& text, lettering::TextStyle style, double width,
             double indent, double after, FlowMark mark = {});

}  // namespace creaseline
