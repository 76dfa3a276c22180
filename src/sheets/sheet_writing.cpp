// SPDX-License-Identifier: MIT
#include "sheets/sheet_writing.h"

#include <algorithm>

#include "base/worded.h"
#include "creaseline/base/error.h"
#include "creaseline/planning/planner.h"
#include "sheets/lettering.h"

namespace creaseline {

PageRange pageRange(const SheetPager& pager, const SheetOptions& options, const std::string& name) {
  if (pager.count() == 0) {
    throw OutputError(name, worded("there is no page to write"));
  }
  PageRange range;
  range.first = std::max(options.firstPage, 1);
  range.last = options.lastPage > 0 ? std::min(options.lastPage, pager.count()) : pager.count();
  if (range.count() < 1) {
    throw OutputError(
        name, worded("there is no page in that range; the sheets have {} pages", pager.count()));
  }
  return range;
}

void stopIfCancelled(const SheetOptions& options) {
  if (options.cancel != nullptr && options.cancel->load()) {
    throw Cancelled{};
  }
}

void forEachPage(const PageRange& range, const SheetOptions& options,
                 const std::function<void(int)>& write) {
  for (int number = range.first; number <= range.last; ++number) {
    stopIfCancelled(options);
    write(number);
    if (options.progress) {
      options.progress(static_cast<double>(number - range.first + 1) / range.count());
    }
  }
  stopIfCancelled(options);
}

WrittenSheets writtenPages(const PageRange& range) {
  WrittenSheets written;
  written.pages = range.count();
  const std::string note = lettering::missingFontNote();
  if (!note.empty()) {
    written.notes.push_back(note);
  }
  return written;
}

}  // namespace creaseline
