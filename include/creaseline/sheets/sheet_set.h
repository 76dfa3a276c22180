// SPDX-License-Identifier: MIT
// Writes a document of sheets as a PDF in true scale, page by page.
#pragma once

#include <atomic>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "creaseline/sheets/sheet.h"

namespace creaseline {

struct SheetOptions {
  // Called with the share of pages written, 0 to 1, from the calling thread.
  std::function<void(double)> progress;
  const std::atomic<bool>* cancel = nullptr;  // when it turns true, writing throws Cancelled
};

struct WrittenSheets {
  int pages = 0;
  std::vector<std::string> notes;  // such as a missing font; empty if all is as it should be
};

// Writes all pages with the font embedded. The file is replaced in one step at the end; on any
// failure or cancelling an old file stays as it was. Throws OutputError if the file cannot be
// written or the document has no page. Needs a QGuiApplication (any platform, also "offscreen").
WrittenSheets writeSheets(const SheetDocument& document, const std::filesystem::path& path,
                          const SheetOptions& options = {});

}  // namespace creaseline
