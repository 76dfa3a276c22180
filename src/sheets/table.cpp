// SPDX-License-Identifier: MIT
#include "sheets/table.h"

#include <algorithm>
#include <memory>

namespace creaseline {

using lettering::TextStyle;
using typography::kHeading;
using typography::kHeadingLight;
using typography::kStrong;
using typography::kText;

namespace {

constexpr double kPaddingAcross = 1.0;
constexpr double kPaddingAlong = 1.4;
constexpr double kAfterNumber = 3.0;  // between a number at the right and the next column
constexpr double kSwatchWidth = 5.5;
constexpr double kSwatchHeight = 3.4;
constexpr double kMarkGap = 1.6;
constexpr double kChipGap = 5.0;
constexpr double kHairline = 0.12;
constexpr double kHeaderLine = 0.35;
constexpr double kRowRounding = 0.01;
constexpr double kLeastText = 6.0;  // room that marks always leave for text

double markWidth(const TableCell& cell) {
  return (cell.tick ? kTickBox + kMarkGap : 0.0) + (cell.swatch ? kSwatchWidth + kMarkGap : 0.0);
}

double textRoom(const TableCell& cell, double width) {
  return std::max(kLeastText, width - 2.0 * kPaddingAcross - markWidth(cell));
}

// ---- Chips
// ---------------------------------------------------------------------------------------

// One chip's lines and place within the cell.
struct PlacedChip {
  QPointF at;
  QStringList strong;
  QString light;
  double lightX = 0.0;
};
struct PlacedChips {
  std::vector<PlacedChip> chips;
  double height = 0.0;
};

PlacedChips placeChips(const std::vector<TableChip>& chips, double width) {
  PlacedChips placed;
  const double line = std::max(kTickRow, lettering::lineHeight(kHeading));
  QPointF at;
  double rowHeight = line;
  for (const TableChip& chip : chips) {
    const double light =
        chip.light.isEmpty() ? 0.0 : lettering::textWidth(chip.light, kHeadingLight) + kMarkGap;
    const double room = std::max(kLeastText, width - kTickBox - kMarkGap - light);
    PlacedChip entry;
    entry.strong = lettering::wrapped(chip.strong, kHeading, room);
    entry.light = chip.light;
    double text = 0.0;
    for (const QString& part : entry.strong) {
      text = std::max(text, lettering::textWidth(part, kHeading));
    }
    entry.lightX = kTickBox + kMarkGap + text + kMarkGap;
    const double whole = kTickBox + kMarkGap + text + light;
    if (at.x() > 0.0 && at.x() + whole > width) {
      at = QPointF(0.0, at.y() + rowHeight);
      rowHeight = line;
    }
    entry.at = at;
    rowHeight = std::max(
        rowHeight, static_cast<double>(entry.strong.size()) * lettering::lineHeight(kHeading));
    at += QPointF(whole + kChipGap, 0.0);
    placed.chips.push_back(entry);
  }
  placed.height = chips.empty() ? 0.0 : at.y() + rowHeight;
  return placed;
}

void paintChips(QPainter& painter, const PlacedChips& placed, QPointF at) {
  const double lift = (kTickRow - lettering::lineHeight(kHeading)) / 2.0;
  for (const PlacedChip& chip : placed.chips) {
    const QPointF corner = at + chip.at;
    paintTickBox(painter, corner + QPointF(0.0, (kTickRow - kTickBox) / 2.0));
    double y = lift;
    for (const QString& line : chip.strong) {
      lettering::draw(painter, corner + QPointF(kTickBox + kMarkGap, y), line, kHeading, Qt::black);
      y += lettering::lineHeight(kHeading);
    }
    const double sameBaseline =
        lift + lettering::baseline(kHeading) - lettering::baseline(kHeadingLight);
    lettering::draw(painter, corner + QPointF(chip.lightX, sameBaseline), chip.light, kHeadingLight,
                    Qt::black);
  }
}

// ---- Rows
// ----------------------------------------------------------------------------------------

// A cell with its place in the row.
struct LaidCell {
  TableCell cell;
  double left = 0.0, width = 0.0;
  bool right = false;
  QStringList lines;
  PlacedChips chips;
};
struct LaidRow {
  std::vector<LaidCell> cells;
  double width = 0.0;
  double baseline = 0.0;  // of the first line of all cells
  double height = 0.0;
};

// Of a column that takes no share: what it asks for, or what the widest word of its heading needs.
double fixedWidth(const TableColumns& columns, std::size_t index) {
  const TableColumn& column = columns[index];
  if (column.width <= 0.0) {
    return 0.0;
  }
  const double after = column.right && index + 1 < columns.size() ? kAfterNumber : 0.0;
  return std::max(column.width, lettering::widestWord(column.heading, kStrong) +
                                    2.0 * kPaddingAcross + after + kRowRounding);
}

LaidCell layCell(const TableCell& cell, double left, double width, bool right) {
  LaidCell laid{cell, left, width, right, {}, {}};
  if (!cell.chips.empty()) {
    laid.chips = placeChips(cell.chips, width - 2.0 * kPaddingAcross);
  } else if (!cell.text.isEmpty()) {
    laid.lines = lettering::wrapped(cell.text, cell.style, textRoom(cell, width));
  }
  return laid;
}

bool isHandled(const TableCell& cell) {
  return cell.tick || cell.write || !cell.chips.empty();
}

LaidRow layRow(const TableColumns& columns, const std::vector<TableCell>& cells, double width) {
  LaidRow row;
  row.width = width;
  const std::vector<double> edges = columnEdges(columns, width);
  std::size_t column = 0;
  TextStyle tallest = kText;
  bool handled = false;
  for (const TableCell& cell : cells) {
    const std::size_t end =
        std::min(columns.size(), column + static_cast<std::size_t>(std::max(1, cell.span)));
    if (column >= end) {
      break;
    }
    const bool right = columns[column].right;
    const double gap = right && end < columns.size() ? kAfterNumber : 0.0;
    row.cells.push_back(layCell(cell, edges[column], edges[end] - edges[column] - gap, right));
    if (lettering::baseline(cell.style) > lettering::baseline(tallest)) {
      tallest = cell.style;
    }
    handled = handled || isHandled(cell);
    column = end;
  }
  const double least = handled ? kTickRow : kReadRow;
  const double lift = std::max(kPaddingAlong, (least - lettering::lineHeight(tallest)) / 2.0);
  row.baseline = lift + lettering::baseline(tallest);
  row.height = least;
  for (const LaidCell& cell : row.cells) {
    const double text =
        static_cast<double>(cell.lines.size()) * lettering::lineHeight(cell.cell.style);
    const double top = row.baseline - lettering::baseline(cell.cell.style);
    row.height =
        std::max({row.height, text > 0.0 ? top + text + kPaddingAlong : 0.0, cell.chips.height});
  }
  return row;
}

void paintCell(QPainter& painter, const LaidRow& row, const LaidCell& cell, QPointF at) {
  const QPointF corner = at + QPointF(cell.left + kPaddingAcross, 0.0);
  if (!cell.cell.chips.empty()) {
    paintChips(painter, cell.chips, corner);
    return;
  }
  // Marks stand on the middle of the capitals of the first line.
  const double middle = row.baseline - 0.36 * cell.cell.style.size;
  double x = 0.0;
  if (cell.cell.tick) {
    paintTickBox(painter, corner + QPointF(x, middle - kTickBox / 2.0));
    x += kTickBox + kMarkGap;
  }
  if (cell.cell.swatch) {
    painter.setPen(QPen(Qt::black, 0.25));
    painter.setBrush(*cell.cell.swatch);
    painter.drawRect(QRectF(corner + QPointF(x, middle - kSwatchHeight / 2.0),
                            QSizeF(kSwatchWidth, kSwatchHeight)));
    painter.setBrush(Qt::NoBrush);
    x += kSwatchWidth + kMarkGap;
  }
  if (cell.cell.write) {
    painter.setPen(QPen(Qt::black, 0.2));
    const double y = row.height - 1.8;
    painter.drawLine(corner + QPointF(x, y),
                     corner + QPointF(cell.width - 2.0 * kPaddingAcross - 1.0, y));
  }
  double y = row.baseline - lettering::baseline(cell.cell.style);
  for (const QString& line : cell.lines) {
    const double indent =
        cell.right ? textRoom(cell.cell, cell.width) - lettering::textWidth(line, cell.cell.style)
                   : 0.0;
    lettering::draw(painter, corner + QPointF(x + indent, y), line, cell.cell.style, Qt::black);
    y += lettering::lineHeight(cell.cell.style);
  }
}

FlowRow flowRow(LaidRow laid, double line) {
  FlowRow row;
  row.height = laid.height;
  row.paint = [shared = std::make_shared<const LaidRow>(std::move(laid)), line](QPainter& painter,
                                                                                QPointF at) {
    for (const LaidCell& cell : shared->cells) {
      paintCell(painter, *shared, cell, at);
    }
    painter.setPen(QPen(Qt::black, line));
    painter.drawLine(at + QPointF(0.0, shared->height),
                     at + QPointF(shared->width, shared->height));
  };
  return row;
}

}  // namespace

TableCell strongCell(const QString& text) {
  TableCell cell;
  cell.text = text;
  cell.style = kStrong;
  return cell;
}

TableCell headingCell(const QString& text) {
  TableCell cell;
  cell.text = text;
  cell.style = kHeading;
  return cell;
}

TableCell tickCell(const QString& text) {
  TableCell cell;
  cell.text = text;
  cell.tick = true;
  return cell;
}

TableCell writeCell() {
  TableCell cell;
  cell.write = true;
  return cell;
}

TableCell swatchCell(const QString& text, const QColor& colour) {
  TableCell cell;
  cell.text = text;
  cell.swatch = colour;
  return cell;
}

TableCell chipsCell(std::vector<TableChip> chips) {
  TableCell cell;
  cell.chips = std::move(chips);
  return cell;
}

std::vector<double> columnEdges(const TableColumns& columns, double width) {
  double fixed = 0.0;
  double shares = 0.0;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    fixed += fixedWidth(columns, i);
    shares += columns[i].width > 0.0 ? 0.0 : columns[i].share;
  }
  std::vector<double> edges{0.0};
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const double own = columns[i].width > 0.0
                           ? fixedWidth(columns, i)
                           : std::max(0.0, width - fixed) * columns[i].share / shares;
    edges.push_back(edges.back() + own);
  }
  return edges;
}

FlowRow tableHeader(const TableColumns& columns, double width) {
  std::vector<TableCell> cells;
  for (const TableColumn& column : columns) {
    cells.push_back(strongCell(column.heading));
  }
  FlowRow row = flowRow(layRow(columns, cells, width), kHeaderLine);
  row.keepWithNext = true;
  return row;
}

FlowRow tableRow(const TableColumns& columns, std::vector<TableCell> cells, double width) {
  return flowRow(layRow(columns, cells, width), kHairline);
}

void paintTickBox(QPainter& painter, QPointF at) {
  painter.setPen(QPen(Qt::black, 0.35, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(at, QSizeF(kTickBox, kTickBox)));
}

}  // namespace creaseline
