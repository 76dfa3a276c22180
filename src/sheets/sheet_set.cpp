// SPDX-License-Identifier: MIT
// The PDF writer. Scale is kept true by three habits: 1270 dots per inch, which are exactly 50
// device units a millimetre; zero page margins, because the writer rounds margins to points; and
// one scaling of the painter, never derived from the page's pixel size.
#include "creaseline/sheets/sheet_set.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTemporaryFile>

#include "base/worded.h"
#include "creaseline/base/error.h"
#include "sheets/pdf_finish.h"
#include "sheets/sheet_writing.h"

namespace creaseline {
namespace {

constexpr int kPaperDotsPerInch = 1270;
constexpr double kPaperUnitsPerMm = kPaperDotsPerInch / 25.4;

QPageLayout pageLayout(Paper paper) {
  // Exact: otherwise a size near to a standard one is taken for it.
  QPageLayout layout(
      QPageSize(paperSize(paper), QPageSize::Millimeter, QString(), QPageSize::ExactMatch),
      QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter);
  layout.setMode(QPageLayout::FullPageMode);
  return layout;
}

void paintPages(QPdfWriter& writer, SheetPager& pager, const PageRange& range,
                const std::string& name, const SheetOptions& options) {
  QPainter painter;
  if (!painter.begin(&writer)) {
    throw OutputError(name, worded("the PDF could not be begun"));
  }
  forEachPage(range, options, [&](int number) {
    if (number > range.first && !writer.newPage()) {
      throw OutputError(name, worded("a page could not be added"));
    }
    painter.save();
    painter.scale(kPaperUnitsPerMm, kPaperUnitsPerMm);
    pager.paint(painter, number);
    painter.restore();
  });
  if (!painter.end()) {
    throw OutputError(name, worded("the PDF could not be ended"));
  }
}

// A bookmark for each section that has pages in the range, under one for each kind.
std::vector<PdfBookmark> bookmarks(const SheetPager& pager, const PageRange& range) {
  std::vector<PdfBookmark> marks;
  const std::vector<SheetSection>& sections = pager.document().sections;
  for (std::size_t i = 0; i < sections.size(); ++i) {
    const int first = std::max(pager.firstPage(i), range.first);
    const int last = std::min(pager.firstPage(i + 1) - 1, range.last);
    if (first > last) {
      continue;
    }
    const int index = first - range.first;
    if (marks.empty() || marks.back().title != sections[i].group) {
      marks.push_back({sections[i].group, index, {}});
    }
    marks.back().children.push_back({sections[i].title, index, {}});
  }
  return marks;
}

}  // namespace

WrittenSheets writeSheets(const SheetDocument& document, const std::filesystem::path& path,
                          const SheetOptions& options) {
  const std::string name = path.string();
  stopIfCancelled(options);
  SheetPager pager(document);
  const PageRange range = pageRange(pager, options, name);
  // Left uncommitted, the temporary file is removed and the old one stays.
  QSaveFile file(QString::fromStdU16String(path.u16string()));
  if (!file.open(QIODevice::WriteOnly)) {
    throw OutputError(name, file.errorString().toStdString());
  }
  QTemporaryFile raw;
  if (!raw.open()) {
    throw OutputError(name, raw.errorString().toStdString());
  }
  {
    QPdfWriter writer(&raw);
    writer.setResolution(kPaperDotsPerInch);
    writer.setPageLayout(pageLayout(document.head.paper));
    writer.setTitle(document.head.title);
    writer.setCreator(QStringLiteral("Creaseline"));
    paintPages(writer, pager, range, name, options);
  }
  raw.close();
  try {
    finishPdf(raw.fileName(), file, bookmarks(pager, range));
  } catch (const std::exception& error) {
    throw OutputError(name, error.what());
  }
  if (!file.commit()) {
    throw OutputError(name, file.errorString().toStdString());
  }
  return writtenPages(range);
}

}  // namespace creaseline
