// SPDX-License-Identifier: MIT
// The PDF writer. Scale is kept true by three habits: 1270 dots per inch, which are exactly 50
// device units a millimetre; zero page margins, because the writer rounds margins to points; and
// one scaling of the painter, never derived from the page's pixel size.
#include "creaseline/sheets/sheet_set.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

#include "creaseline/base/error.h"
#include "creaseline/planning/planner.h"
#include "sheets/lettering.h"

namespace creaseline {
namespace {

constexpr int kDotsPerInch = 1270;
constexpr double kUnitsPerMm = kDotsPerInch / 25.4;

QPageLayout pageLayout(Paper paper) {
  QPageLayout layout(QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter),
                     QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter);
  layout.setMode(QPageLayout::FullPageMode);
  return layout;
}

void stopIfCancelled(const SheetOptions& options) {
  if (options.cancel != nullptr && options.cancel->load()) {
    throw Cancelled{};
  }
}

void paintPages(QPdfWriter& writer, const SheetDocument& document, const std::string& name,
                const SheetOptions& options) {
  QPainter painter;
  if (!painter.begin(&writer)) {
    throw OutputError(name, "the PDF could not be begun");
  }
  for (std::size_t index = 0; index < document.pages.size(); ++index) {
    stopIfCancelled(options);
    if (index > 0 && !writer.newPage()) {
      throw OutputError(name, "a page could not be added");
    }
    painter.save();
    painter.scale(kUnitsPerMm, kUnitsPerMm);
    paintSheetPage(painter, document, index);
    painter.restore();
    if (options.progress) {
      options.progress(static_cast<double>(index + 1) / static_cast<double>(document.pages.size()));
    }
  }
  if (!painter.end()) {
    throw OutputError(name, "the PDF could not be ended");
  }
}

}  // namespace

WrittenSheets writeSheets(const SheetDocument& document, const std::filesystem::path& path,
                          const SheetOptions& options) {
  const std::string name = path.string();
  if (document.pages.empty()) {
    throw OutputError(name, "there is no page to write");
  }
  stopIfCancelled(options);
  // Left uncommitted, the temporary file is removed and the old one stays.
  QSaveFile file(QString::fromStdU16String(path.u16string()));
  if (!file.open(QIODevice::WriteOnly)) {
    throw OutputError(name, file.errorString().toStdString());
  }
  {
    QPdfWriter writer(&file);
    writer.setResolution(kDotsPerInch);
    writer.setPageLayout(pageLayout(document.paper));
    writer.setTitle(document.title);
    writer.setCreator(QStringLiteral("Creaseline"));
    paintPages(writer, document, name, options);
  }
  if (!file.commit()) {
    throw OutputError(name, file.errorString().toStdString());
  }
  WrittenSheets written;
  written.pages = static_cast<int>(document.pages.size());
  const std::string note = lettering::missingFontNote();
  if (!note.empty()) {
    written.notes.push_back(note);
  }
  return written;
}

}  // namespace creaseline
