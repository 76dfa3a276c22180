// SPDX-License-Identifier: MIT
#include "creaseline/sheets/sheet_pager.h"

#include <algorithm>
#include <stdexcept>

namespace creaseline {

SheetPager::SheetPager(SheetDocument document)
    : document_(std::move(document)), made_(document_.sections.size()) {
  int next = 1;
  for (const SheetSection& section : document_.sections) {
    firstPages_.push_back(next);
    next += static_cast<int>(section.pages().size());
  }
  firstPages_.push_back(next);
}

const SheetPage& SheetPager::page(int number) {
  if (number < 1 || number > count()) {
    throw std::out_of_range("no page of that number");
  }
  // The last section that begins at or before it; empty ones begin where the next one does.
  const auto after = std::upper_bound(firstPages_.begin(), firstPages_.end(), number);
  const auto section = static_cast<std::size_t>(after - firstPages_.begin()) - 1;
  if (section != made_) {
    pages_ = document_.sections[section].pages();
    made_ = section;
  }
  return pages_.at(static_cast<std::size_t>(number - firstPages_[section]));
}

void SheetPager::paint(QPainter& painter, int number) {
  paintSheetPage(painter, head(), page(number), number, count());
}

}  // namespace creaseline
