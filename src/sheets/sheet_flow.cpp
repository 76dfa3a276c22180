// SPDX-License-Identifier: MIT
// Newspaper columns for sheets.
#include "sheets/sheet_flow.h"

#include <limits>

#include "sheets/typography.h"

namespace creaseline {

using lettering::TextStyle;
using typography::kStrong;

namespace {

constexpr double kAboveHeading = 1.8;
constexpr double kRounding = 1e-6;

}  // namespace

std::size_t fillColumn(const FlowRows& rows, std::size_t first, double height) {
  double used = 0.0;
  std::size_t last = first;
  while (last < rows.size() && used + rows[last].height <= height + kRounding) {
    used += rows[last].height;
    ++last;
  }
  if (last == rows.size()) {
    return last;
  }
  std::size_t end = last;
  while (end > first && rows[end - 1].keepWithNext) {
    --end;
  }
  // Nothing but headings, or a row higher than the column: take it all the same.
  return end > first ? end : std::max(last, first + 1);
}

std::size_t fillColumns(const FlowRows& rows, std::size_t first, int columns, double height) {
  for (int column = 0; column < columns && first < rows.size(); ++column) {
    first = fillColumn(rows, first, height);
  }
  return first;
}

double balancedHeight(const FlowRows& rows, std::size_t first, int columns, double most) {
  double whole = 0.0;
  for (std::size_t i = first; i < rows.size(); ++i) {
    whole += rows[i].height;
  }
  constexpr double kStep = 1.0;
  for (double height = whole / columns; height <= most + kRounding; height += kStep) {
    if (fillColumns(rows, first, columns, height) == rows.size()) {
      return height;
    }
  }
  return fillColumns(rows, first, columns, most) == rows.size()
             ? most
             : std::numeric_limits<double>::infinity();
}

void paintColumns(QPainter& painter, const FlowRows& rows, std::size_t first, std::size_t last,
                  int columns, double gap, const QRectF& area) {
  const double width = (area.width() - gap * (columns - 1)) / columns;
  for (int column = 0; column < columns && first < last; ++column) {
    const std::size_t end = std::min(last, fillColumn(rows, first, area.height()));
    double y = area.top();
    for (; first < end; ++first) {
      rows[first].paint(painter, {area.left() + column * (width + gap), y});
      y += rows[first].height;
    }
  }
}

FlowRow headingRow(const QString& text, double width) {
  FlowRow row;
  row.height = kAboveHeading + lettering::wrappedHeight(text, kStrong, width) + 0.4;
  row.keepWithNext = true;
  row.paint = [text, width](QPainter& painter, QPointF at) {
    painter.setPen(QPen(Qt::black, 0.25));
    painter.drawLine(at + QPointF(0.0, 0.8), at + QPointF(width, 0.8));
    lettering::drawWrapped(painter, at + QPointF(0.0, kAboveHeading), width, text, kStrong,
                           Qt::black);
  };
  return row;
}

void addText(FlowRows& rows, const QString& text, TextStyle style, double width, double indent,
             double after, FlowMark mark) {
  const QStringList lines = lettering::wrapped(text, style, width - indent);
  for (qsizetype i = 0; i < lines.size(); ++i) {
    FlowRow row;
    row.height = lettering::lineHeight(style) + (i + 1 == lines.size() ? after : 0.0);
    // The first two lines stay together, so that a mark is not left alone.
    row.keepWithNext = i == 0 && lines.size() > 1;
    row.paint = [line = lines[i], style, indent, mark, i](QPainter& painter, QPointF at) {
      if (mark && i == 0) {
        mark(painter, at);
      }
      lettering::draw(painter, at + QPointF(indent, 0.0), line, style, Qt::black);
    };
    rows.push_back(row);
  }
}

}  // namespace creaseline
