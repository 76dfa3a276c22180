// SPDX-License-Identifier: MIT
#include "desk/sheet_output.h"

#include <QPrintEngine>
#include <QSignalSpy>

#include "desk_fixture.h"
#include "poppler.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

SheetJob wholeSet() {
  return {plannedDemo(), {{"placement"}, Paper::A4, {}}, 0, 0};
}

QStringList picturesIn(const QTemporaryDir& folder) {
  return QDir(folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
}

}  // namespace

TEST_CASE("Saved sheets have as many pages as an independent reader counts", "[desk][sheets]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("sheets.pdf"));
  SheetOutput output;
  const QSignalSpy saved(&output, &SheetOutput::saved);
  REQUIRE(output.savePdf(wholeSet(), file));
  CHECK_FALSE(output.savePdf(wholeSet(), file));
  REQUIRE(waitFor([&] { return !output.busy(); }));
  REQUIRE(saved.size() == 1);
  CHECK(pdfPages(file) == saved.first().at(1).toInt());
  CHECK(pdfPages(file) > 0);
}

TEST_CASE("A page range is saved and no more", "[desk][sheets]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("sheets.pdf"));
  SheetJob job = wholeSet();
  job.firstPage = 2;
  job.lastPage = 4;
  SheetOutput output;
  REQUIRE(output.savePdf(job, file));
  REQUIRE(waitFor([&] { return !output.busy(); }));
  CHECK(pdfPages(file) == 3);
}

TEST_CASE("Pictures are saved into a folder, one a page, in place of older ones",
          "[desk][sheets]") {
  const QTemporaryDir folder;
  SheetJob job = wholeSet();
  job.firstPage = 1;
  job.lastPage = 3;
  SheetOutput output;
  const QSignalSpy saved(&output, &SheetOutput::saved);
  CHECK(pagePictures(folder.path()).isEmpty());
  REQUIRE(output.savePictures(job, folder.path()));
  REQUIRE(waitFor([&] { return !output.busy(); }));
  REQUIRE(saved.size() == 1);
  CHECK(saved.first().at(1).toInt() == 3);
  // The very files that saving would replace, so that the question beforehand counts them.
  CHECK(pagePictures(folder.path()) == picturesIn(folder));
  CHECK(pagePictures(folder.path()).size() == 3);
  job.firstPage = job.lastPage = 2;
  REQUIRE(output.savePictures(job, folder.path()));
  REQUIRE(waitFor([&] { return !output.busy(); }));
  CHECK(picturesIn(folder) == QStringList{QStringLiteral("page-002.svg")});
}

TEST_CASE("Sheets that cannot be written are said to have failed", "[desk][sheets]") {
  const QTemporaryDir folder;
  SheetOutput output;
  const QSignalSpy failed(&output, &SheetOutput::failed);
  output.savePdf(wholeSet(), folder.filePath(QStringLiteral("no/such/folder.pdf")));
  REQUIRE(waitFor([&] { return !output.busy(); }));
  CHECK(failed.size() == 1);
}

TEST_CASE("Saving that is stopped leaves no file", "[desk][sheets]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("sheets.pdf"));
  {
    SheetOutput output;
    REQUIRE(output.savePdf(wholeSet(), file));
  }
  // Either stopped in time or wholly written; never half.
  CHECK(QDir(folder.path()).entryList(QDir::Files).size() <= 1);
  if (QFile::exists(file)) {
    CHECK(pdfPages(file) > 0);
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
  CHECK(pdfPages(file) == 2);
}

TEST_CASE("Printing goes on beside the window, and can be stopped", "[desk][sheets][print]") {
  const QTemporaryDir folder;
  const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setOutputFormat(QPrinter::PdfFormat);
  const QString file = folder.filePath(QStringLiteral("printed.pdf"));
  printer->setOutputFileName(file);
  prepare(*printer, Paper::A4);
  SheetOutput output;
  const QSignalSpy printed(&output, &SheetOutput::printed);
  const QSignalSpy cancelled(&output, &SheetOutput::cancelled);
  REQUIRE(output.print(wholeSet(), printer));
  CHECK(output.form() == SheetOutput::Form::Paper);
  SECTION("to its end") {
    REQUIRE(waitFor([&] { return !output.busy(); }));
    REQUIRE(printed.size() == 1);
    CHECK(pdfPages(file) == printed.first().first().toInt());
    CHECK(pdfPages(file) > 3);
  }
  SECTION("stopped, and no half file stays") {
    output.cancel();
    REQUIRE(waitFor([&] { return !output.busy(); }));
    REQUIRE(cancelled.size() == 1);
    CHECK(picturesIn(folder).isEmpty());
  }
}

namespace {

// Stands for a printer whose settings are those of the print system CUPS.
class CupsEngine : public QPrintEngine {
 public:
  void setProperty(PrintEnginePropertyKey key, const QVariant& value) override {
    values_[key] = value;
  }
  QVariant property(PrintEnginePropertyKey key) const override { return values_.value(key); }
  bool newPage() override { return true; }
  bool abort() override { return true; }
  int metric(QPaintDevice::PaintDeviceMetric) const override { return 1; }
  QPrinter::PrinterState printerState() const override { return QPrinter::Idle; }

 private:
  QMap<PrintEnginePropertyKey, QVariant> values_;
};

class CupsPrinter : public QPrinter {
 public:
  CupsPrinter(const QStringList& options, const QMarginsF& least) {
    QPageLayout layout(QPageSize(QPageSize::A4), QPageLayout::Portrait, QMarginsF(),
                       QPageLayout::Millimeter, least);
    layout.setMode(QPageLayout::FullPageMode);
    engine_.setProperty(QPrintEngine::PPK_QPageLayout, QVariant::fromValue(layout));
    engine_.setProperty(QPrintEngine::PPK_FullPage, true);
    engine_.setProperty(QPrintEngine::PrintEnginePropertyKey(0xfe00), options);
    setEngines(&engine_, QPrinter::paintEngine());
  }

 private:
  CupsEngine engine_;
};

}  // namespace

TEST_CASE("Settings of the printer that scale or gather pages are warned about",
          "[desk][sheets][print]") {
  const auto warnings = [](const QStringList& options) {
    const CupsPrinter printer(options, QMarginsF(4, 4, 4, 4));
    return printWarnings(printer, Paper::A4).size();
  };
  const auto option = [](const char* name, const char* value) {
    return QStringList{QStringLiteral("sides"), QStringLiteral("one-sided"),
                       QString::fromLatin1(name), QString::fromLatin1(value)};
  };
  CHECK(warnings({}) == 0);
  CHECK(warnings(option("number-up", "1")) == 0);
  CHECK(warnings(option("print-scaling", "none")) == 0);
  CHECK(warnings(option("number-up", "2")) == 1);
  CHECK(warnings(option("fit-to-page", "true")) == 1);
  CHECK(warnings(option("print-scaling", "fit")) == 1);
  CHECK(warnings(option("scaling", "95")) == 1);
}

TEST_CASE("A printer that does not reach far enough is warned about", "[desk][sheets][print]") {
  const CupsPrinter printer({}, QMarginsF(4, 4, 4, 15));
  const QStringList warnings = printWarnings(printer, Paper::A4);
  REQUIRE(warnings.size() == 1);
  CHECK(warnings.first().contains(QStringLiteral("15 mm")));
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
