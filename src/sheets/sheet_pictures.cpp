// SPDX-License-Identifier: MIT
// The SVG writer: one picture a page, in true scale.
#include <QDir>
#include <QSvgGenerator>
#include <QTemporaryDir>

#include "base/worded.h"
#include "creaseline/base/error.h"
#include "creaseline/sheets/sheet_set.h"
#include "sheets/sheet_writing.h"

namespace creaseline {

namespace {

constexpr int kDotsPerInch = 2540;  // exactly 100 units a millimetre
constexpr double kUnitsPerMm = kDotsPerInch / 25.4;

QString pictureName(int number) {
  return QStringLiteral("page-%1.svg").arg(number, 3, 10, QLatin1Char('0'));
}

void paintPicture(SheetPager& pager, int number, const QString& path, const std::string& name) {
  const QSize size = (paperSize(pager.head().paper) * kUnitsPerMm).toSize();
  QSvgGenerator generator;
  generator.setFileName(path);
  generator.setResolution(kDotsPerInch);
  generator.setSize(size);
  generator.setViewBox(QRect(QPoint(), size));
  generator.setTitle(pager.head().title);
  generator.setDescription(pager.page(number).title);
  QPainter painter;
  if (!painter.begin(&generator)) {
    throw OutputError(name, worded("a picture could not be begun"));
  }
  painter.scale(kUnitsPerMm, kUnitsPerMm);
  pager.paint(painter, number);
  if (!painter.end()) {
    throw OutputError(name, worded("a picture could not be ended"));
  }
}

void removeOldPictures(QDir folder) {
  for (const QString& old : folder.entryList(
           {QStringLiteral("page-???.svg"), QStringLiteral("page-????.svg")}, QDir::Files)) {
    folder.remove(old);
  }
}

}  // namespace

WrittenSheets writeSheetPictures(const SheetDocument& document, const std::filesystem::path& folder,
                                 const SheetOptions& options) {
  const std::string name = folder.string();
  stopIfCancelled(options);
  SheetPager pager(document);
  const PageRange range = pageRange(pager, options, name);
  QDir target(QString::fromStdU16String(folder.u16string()));
  if (!target.mkpath(QStringLiteral("."))) {
    throw OutputError(name, worded("the folder cannot be made"));
  }
  // Inside the target, so that moving is renaming; gone with the object on any failure.
  const QTemporaryDir making(target.filePath(QStringLiteral("making-XXXXXX")));
  if (!making.isValid()) {
    throw OutputError(name, making.errorString().toStdString());
  }
  forEachPage(range, options, [&](int number) {
    paintPicture(pager, number, making.filePath(pictureName(number)), name);
  });
  removeOldPictures(target);
  for (int number = range.first; number <= range.last; ++number) {
    if (!QFile::rename(making.filePath(pictureName(number)),
                       target.filePath(pictureName(number)))) {
      throw OutputError(name,
                        worded("{} could not be put there", pictureName(number).toStdString()));
    }
  }
  return writtenPages(range);
}

}  // namespace creaseline
