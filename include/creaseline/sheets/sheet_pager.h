// SPDX-License-Identifier: MIT
// The pages of a document by number, with at most one section of them in memory.
#pragma once

#include <vector>

#include "creaseline/sheets/sheet.h"

namespace creaseline {

class SheetPager {
 public:
  // Makes every section once, to count its pages. What the document refers to must outlive this.
  explicit SheetPager(SheetDocument document);

  [[nodiscard]] const SheetDocument& document() const { return document_; }
  [[nodiscard]] const SheetHead& head() const { return document_.head; }
  [[nodiscard]] int count() const { return firstPages_.back() - 1; }
  // Numbers count from 1. The page is valid until the next call. Throws std::out_of_range.
  [[nodiscard]] const SheetPage& page(int number);
  // Number of the first page of a section; equal to the next one's where a section is empty.
  [[nodiscard]] int firstPage(std::size_t section) const { return firstPages_.at(section); }

  // paintSheetPage() of that page.
  void paint(QPainter& painter, int number);

 private:
  SheetDocument document_;
  std::vector<int> firstPages_;  // of each section, and one past the last page
  std::size_t made_ = 0;         // section that `pages_` holds
  std::vector<SheetPage> pages_;
};

}  // namespace creaseline
