// SPDX-License-Identifier: MIT
#include "sheets/sheet_list.h"

#include <algorithm>

#include "sheets/placement_parts.h"
#include "sheets/text.h"

namespace creaseline {

using lettering::TextStyle;
using typography::kHeading;
using typography::kNumber;
using typography::kStrong;
using typography::kText;

namespace {

constexpr double kFigureGap = 8.0;
constexpr double kMarkRoom = 5.0;
constexpr double kMarkSize = 3.0;
constexpr double kAfterText = 1.2;
constexpr double kAfterTable = 1.6;
constexpr double kLeastFactLabel = 27.0;

struct PlacedNumber {
  QPointF at;
  QString label;
  QStringList value;
};

}  // namespace

SheetList::SheetList(const SheetHead& head, SheetPage page)
    : head_(head), page_(std::move(page)), width_(sheetBody(head_, page_).width()) {
}

void SheetList::numbers(const std::vector<LabelledNumber>& numbers) {
  std::vector<PlacedNumber> placed;
  QPointF at;
  double rowHeight = 0.0;
  for (const LabelledNumber& number : numbers) {
    PlacedNumber entry;
    entry.label = number.label;
    entry.value = lettering::wrapped(number.value, kNumber, width_);
    double wide = lettering::textWidth(number.label, kStrong);
    for (const QString& line : entry.value) {
      wide = std::max(wide, lettering::textWidth(line, kNumber));
    }
    if (at.x() > 0.0 && at.x() + wide > width_) {
      at = QPointF(0.0, at.y() + rowHeight);
      rowHeight = 0.0;
    }
    entry.at = at;
    rowHeight = std::max(
        rowHeight, lettering::lineHeight(kStrong) +
                       static_cast<double>(entry.value.size()) * lettering::lineHeight(kNumber));
    at += QPointF(wide + kFigureGap, 0.0);
    placed.push_back(entry);
  }
  FlowRow row;
  row.height = at.y() + rowHeight + 1.0;
  row.paint = [placed](QPainter& painter, QPointF corner) {
    for (const PlacedNumber& number : placed) {
      QPointF line = corner + number.at;
      lettering::draw(painter, line, number.label, kStrong, Qt::black);
      line += QPointF(0.0, lettering::lineHeight(kStrong));
      for (const QString& value : number.value) {
        lettering::draw(painter, line, value, kNumber, Qt::black);
        line += QPointF(0.0, lettering::lineHeight(kNumber));
      }
    }
  };
  add(std::move(row));
}

void SheetList::heading(const QString& text) {
  constexpr double kAbove = 3.5;
  constexpr double kBelow = 0.8;
  const QStringList lines = lettering::wrapped(text, kHeading, width_);
  FlowRow row;
  row.height =
      kAbove + static_cast<double>(lines.size()) * lettering::lineHeight(kHeading) + kBelow;
  row.keepWithNext = true;
  row.paint = [lines](QPainter& painter, QPointF at) {
    double y = kAbove;
    for (const QString& line : lines) {
      lettering::draw(painter, at + QPointF(0.0, y), line, kHeading, Qt::black);
      y += lettering::lineHeight(kHeading);
    }
  };
  add(std::move(row));
}

// Text does not stand on a table's last line.
void SheetList::endTable() {
  if (inTable_) {
    gap(kAfterTable);
  }
}

void SheetList::text(const QString& text, TextStyle style) {
  endTable();
  FlowRows rows;
  addText(rows, text, style, width_, 0.0, kAfterText);
  for (FlowRow& row : rows) {
    add(std::move(row));
  }
}

void SheetList::lead(const QString& text) {
  FlowRows rows;
  addText(rows, text, kText, width_, 0.0, kAfterText);
  for (FlowRow& row : rows) {
    row.keepWithNext = true;
    add(std::move(row));
  }
}

void SheetList::marked(Severity severity, const QString& text, TextStyle style) {
  endTable();
  FlowRows rows;
  addText(rows, text, style, width_, kMarkRoom, kAfterText,
          [severity, style](QPainter& painter, QPointF at) {
            paintSeverity(painter,
                          at + QPointF(0.0, (lettering::lineHeight(style) - kMarkSize) / 2.0),
                          severity, kMarkSize);
          });
  for (FlowRow& row : rows) {
    add(std::move(row));
  }
}

void SheetList::under(const QString& text) {
  FlowRows rows;
  addText(rows, text, kText, width_, kMarkRoom, kAfterText);
  for (FlowRow& row : rows) {
    add(std::move(row));
  }
}

void SheetList::gap(double height) {
  FlowRow row;
  row.height = height;
  row.paint = [](QPainter&, QPointF) {};
  add(std::move(row));
}

void SheetList::table(TableColumns columns, bool headings) {
  columns_ = std::move(columns);
  header_ = headings ? std::make_shared<const FlowRow>(tableHeader(columns_, width_)) : nullptr;
  headerDue_ = headings;
}

void SheetList::row(std::vector<TableCell> cells, bool keepWithNext) {
  if (headerDue_) {
    rows_.push_back({*header_, nullptr});
    headerDue_ = false;
  }
  FlowRow row = tableRow(columns_, std::move(cells), width_);
  row.keepWithNext = keepWithNext;
  rows_.push_back({std::move(row), header_});
  inTable_ = true;
}

void SheetList::facts(const std::vector<LabelledNumber>& facts) {
  // The headings are not shown: they hold the column open for the labels' widest words.
  QString words;
  for (const LabelledNumber& fact : facts) {
    words += fact.label + u' ';
  }
  table({{words, kLeastFactLabel}, {}, {words, kLeastFactLabel}, {}}, false);
  for (std::size_t i = 0; i < facts.size(); i += 2) {
    std::vector<TableCell> cells{strongCell(facts[i].label), {}};
    cells.back().text = facts[i].value;
    if (i + 1 < facts.size()) {
      cells.push_back(strongCell(facts[i + 1].label));
      cells.emplace_back();
      cells.back().text = facts[i + 1].value;
    }
    row(std::move(cells));
  }
}

void SheetList::add(FlowRow row) {
  rows_.push_back({std::move(row), nullptr});
  inTable_ = false;
}

SheetPage SheetList::continued() const {
  SheetPage page = page_;
  page.title = sheets::printed("%1, continued", page_.title);
  return page;
}

std::vector<SheetPage> SheetList::pages() const {
  std::vector<SheetPage> pages;
  std::size_t first = 0;
  do {
    SheetPage page = pages.empty() ? page_ : continued();
    FlowRows rest;
    if (first > 0 && first < rows_.size() && rows_[first].header) {
      rest.push_back(*rows_[first].header);
    }
    const std::size_t repeated = rest.size();
    const double height = sheetBody(head_, page).height();
    double used = 0.0;
    for (std::size_t i = first; i < rows_.size() && used <= height; ++i) {
      rest.push_back(rows_[i].row);
      used += rows_[i].row.height;
    }
    const std::size_t count =
        std::max(repeated + (rows_.empty() ? 0 : 1), fillColumn(rest, 0, height));
    rest.resize(count);
    first += count - repeated;
    page.body = [rows = std::move(rest)](QPainter& painter, const QRectF& area) {
      double y = area.top();
      for (const FlowRow& row : rows) {
        row.paint(painter, {area.left(), y});
        y += row.height;
      }
    };
    pages.push_back(std::move(page));
  } while (first < rows_.size());
  return pages;
}

}  // namespace creaseline
