// SPDX-License-Identifier: MIT
#include "desk/sheet_output.h"

#include <QProcess>
#include <QSignalSpy>

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

// Pages as an independent reader counts them (pdfinfo of poppler).
int pagesOf(const QString& pdf) {
  QProcess info;
  info.start(QStringLiteral("pdfinfo"), {pdf});
  REQUIRE(info.waitForFinished(kWaitMs));
  for (const QByteArray& line : info.readAllStandardOutput().split('\n')) {
    if (line.startsWith("Pages:")) {
      return line.mid(6).trimmed().toInt();
    }
  }
  return -1;
}

}  // namespace

TEST_CASE("Saved sheets have as many pages as an independent reader counts", "[desk][sheets]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("sheets.pdf"));
  SheetSaver saver;
  const QSignalSpy saved(&saver, &SheetSaver::saved);
  REQUIRE(saver.save(plannedDemo(), SheetChoice{}, file));
  CHECK_FALSE(saver.save(plannedDemo(), SheetChoice{}, file));
  REQUIRE(waitFor([&] { return !saver.busy(); }));
  REQUIRE(saved.size() == 1);
  CHECK(pagesOf(file) == saved.first().at(1).toInt());
  CHECK(pagesOf(file) > 0);
}

TEST_CASE("Sheets that cannot be written are said to have failed", "[desk][sheets]") {
  const QTemporaryDir folder;
  SheetSaver saver;
  const QSignalSpy failed(&saver, &SheetSaver::failed);
  saver.save(plannedDemo(), SheetChoice{}, folder.filePath(QStringLiteral("no/such/folder.pdf")));
  REQUIRE(waitFor([&] { return !saver.busy(); }));
  CHECK(failed.size() == 1);
}

TEST_CASE("Saving that is stopped leaves no file", "[desk][sheets]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("sheets.pdf"));
  {
    SheetSaver saver;
    REQUIRE(saver.save(plannedDemo(), SheetChoice{}, file));
  }
  // Either stopped in time or wholly written; never half.
  CHECK(QDir(folder.path()).entryList(QDir::Files).size() <= 1);
  if (QFile::exists(file)) {
    CHECK(pagesOf(file) > 0);
  }
}

TEST_CASE("A page range is printed and no more", "[desk][sheets][print]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("printed.pdf"));
  const auto planned = plannedDemo();
  SheetPager sheets(sheetsOf(*planned, {{"placement"}, Paper::Letter, {}}));
  REQUIRE(sheets.count() > 3);
  QPrinter printer(QPrinter::HighResolution);
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(file);
  prepare(printer, Paper::Letter);
  CHECK(printWarnings(printer, Paper::Letter).isEmpty());
  printer.setFromTo(2, 3);
  CHECK(printSheets(printer, sheets) == 2);
  CHECK(pagesOf(file) == 2);
}

TEST_CASE("Other paper or the driver's own margins are warned about", "[desk][sheets][print]") {
  QPrinter printer(QPrinter::HighResolution);
  printer.setOutputFormat(QPrinter::PdfFormat);
  prepare(printer, Paper::A4);
  REQUIRE(printWarnings(printer, Paper::A4).isEmpty());
  SECTION("other paper") {
    printer.setPageSize(QPageSize(QPageSize::A5));
    CHECK(printWarnings(printer, Paper::A4).size() == 1);
  }
  SECTION("paper on its side") {
    printer.setPageOrientation(QPageLayout::Landscape);
    CHECK(printWarnings(printer, Paper::A4).size() == 1);
  }
  SECTION("margins") {
    printer.setFullPage(false);
    CHECK(printWarnings(printer, Paper::A4).size() == 1);
  }
}
