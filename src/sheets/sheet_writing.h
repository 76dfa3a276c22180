// SPDX-License-Identifier: MIT
// What the writers of all forms share: the range of pages, progress and cancelling.
#pragma once

#include <functional>
#include <string>

#include "creaseline/sheets/sheet_pager.h"
#include "creaseline/sheets/sheet_set.h"

namespace creaseline {

struct PageRange {
  int first = 1, last = 0;
  [[nodiscard]] int count() const { return last - first + 1; }
};

// Throws OutputError naming `name` if no page of the document is in the asked range.
[[nodiscard]] PageRange pageRange(const SheetPager& pager, const SheetOptions& options,
                                  const std::string& name);
// Throws Cancelled.
void stopIfCancelled(const SheetOptions& options);
// Calls `write` for each page number, tells the progress, and throws Cancelled between pages.
void forEachPage(const PageRange& range, const SheetOptions& options,
                 const std::function<void(int)>& write);
[[nodiscard]] WrittenSheets writtenPages(const PageRange& range);

}  // namespace creaseline
