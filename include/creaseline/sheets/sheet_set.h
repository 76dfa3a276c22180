// SPDX-License-Identifier: MIT
// Writes a document of sheets in true scale, page by page: as a PDF, or as SVG pictures.
#pragma once

#include <atomic>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "creaseline/sheets/sheet.h"

namespace creaseline {

struct SheetOptions {
  int firstPage = 0, lastPage = 0;  // both counted from 1; 0: from the first, to the last
  // Called with the share of pages written, 0 to 1, from the calling thread.
  std::function<void(double)> progress;
  const std::atomic<bool>* cancel = nullptr;  // when it turns true, writing throws Cancelled
};

struct WrittenSheets {
  int pages = 0;
  std::vector<std::string> notes;  // such as a missing font; empty if all is as it should be
};

// Writes the pages as one PDF with the font embedded, bookmarks for each kind and section, the
// language stated, and the wish that no viewer scales it. The same document gives the same file,
// byte for byte. The file is replaced in one step at the end; on any failure or cancelling an old
// file stays as it was. Pages are made one section at a time. Throws OutputError if the file
// cannot be written or there is no page (of the range) to write. Needs a QGuiApplication (any
// platform, also "offscreen").
WrittenSheets writeSheets(const SheetDocument& document, const std::filesystem::path& path,
                          const SheetOptions& options = {});

// Writes each page as an SVG picture "page-001.svg" into a folder, which is made if it is not
// there; older page pictures in it are removed. Text stays text, in the family of the sheets. All
// pages appear in one step at the end; errors as above.
WrittenSheets writeSheetPictures(const SheetDocument& document, const std::filesystem::path& folder,
                                 const SheetOptions& options = {});

}  // namespace creaseline
