// SPDX-License-Identifier: MIT
// A sheet that is read from top to bottom: big numbers, headings, texts and tables that flow over
// as many pages as they need. A row never splits, and a table's headings stand on each of its
// pages.
#pragma once

#include <QString>
#include <memory>
#include <vector>

#include "creaseline/planning/finding.h"
#include "creaseline/sheets/sheet.h"
#include "sheets/table.h"

namespace creaseline {

// One of the numbers on top of a sheet, read at arm's length.
struct LabelledNumber {
  QString label, value;
};

class SheetList {
 public:
  // Lays out for the body of that page; its title, detail and code stand on all further ones.
  SheetList(const SheetHead& head, SheetPage page);

  void numbers(const std::vector<LabelledNumber>& numbers);
  void heading(const QString& text);
  void text(const QString& text, lettering::TextStyle style = typography::kText);
  // A text that stays with what follows.
  void lead(const QString& text);
  // A text behind the mark of its severity, which needs no colour.
  void marked(Severity severity, const QString& text,
              lettering::TextStyle style = typography::kText);
  // A text that stands under a marked one.
  void under(const QString& text);
  void gap(double height);
  // Begins a table; its headings come with the first row.
  void table(TableColumns columns, bool headings = true);
  void row(std::vector<TableCell> cells, bool keepWithNext = false);
  // Label and value side by side, twice in a row.
  void facts(const std::vector<LabelledNumber>& facts);
  // Anything else of that height.
  void add(FlowRow row);

  [[nodiscard]] double width() const { return width_; }
  [[nodiscard]] std::vector<SheetPage> pages() const;

 private:
  struct Row {
    FlowRow row;
    std::shared_ptr<const FlowRow> header;  // of its table
  };
  [[nodiscard]] SheetPage continued() const;
  void endTable();

  SheetHead head_;
  SheetPage page_;
  double width_ = 0.0;
  std::vector<Row> rows_;
  TableColumns columns_;
  std::shared_ptr<const FlowRow> header_;
  bool headerDue_ = false;
  bool inTable_ = false;  // the last row is one of a table
};

}  // namespace creaseline
