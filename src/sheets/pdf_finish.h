// SPDX-License-Identifier: MIT
// What a PDF of ours has that Qt 6.4 does not write: bookmarks, language, the wish not to be
// scaled, and no trace of the clock. Done with the library qpdf on the finished file.
#pragma once

#include <QIODevice>
#include <QString>
#include <vector>

namespace creaseline {

struct PdfBookmark {
  QString title;
  int page = 0;  // index of its page
  std::vector<PdfBookmark> children;
};

// Reads the PDF at `raw` and writes the finished one to `out`, which is open. Pages' contents are
// passed through as they are. Throws std::exception with the library's or the device's words.
void finishPdf(const QString& raw, QIODevice& out, const std::vector<PdfBookmark>& bookmarks);

}  // namespace creaseline
