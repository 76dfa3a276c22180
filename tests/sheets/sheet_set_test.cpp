// SPDX-License-Identifier: MIT
#include "creaseline/sheets/sheet_set.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <catch2/catch.hpp>

#include "creaseline/base/error.h"
#include "creaseline/planning/planner.h"
#include "sheets/pdf_probe.h"

using namespace creaseline;

namespace {

SheetDocument documentOf(int pages) {
  SheetDocument document;
  document.head.title = QStringLiteral("three pages");
  document.head.order = QStringLiteral("Order 1");
  document.head.orderId = QStringLiteral("1");
  for (int i = 0; i < pages; ++i) {
    SheetPage page;
    page.title = QStringLiteral("Page");
    document.sections.push_back({QStringLiteral("Kind"), QStringLiteral("Section %1").arg(i + 1),
                                 [page] { return std::vector<SheetPage>{page}; }});
  }
  return document;
}

QByteArray contentOf(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

}  // namespace

TEST_CASE("progress ends at the whole and pages are counted", "[sheets][writing]") {
  const QTemporaryDir folder;
  std::vector<double> shares;
  SheetOptions options;
  options.progress = [&](double share) { shares.push_back(share); };
  const auto written =
      writeSheets(documentOf(3), folder.filePath(QStringLiteral("a.pdf")).toStdString(), options);
  CHECK(written.pages == 3);
  REQUIRE(shares.size() == 3);
  CHECK(shares[0] == Approx(1.0 / 3.0));
  CHECK(shares[2] == Approx(1.0));
}

TEST_CASE("a cancelled or failed writing leaves the old file alone and nothing beside it",
          "[sheets][writing]") {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("a.pdf"));
  {
    QFile old(path);
    REQUIRE(old.open(QIODevice::WriteOnly));
    old.write("old");
  }
  SECTION("cancelled between two pages") {
    std::atomic<bool> cancel{false};
    SheetOptions options;
    options.cancel = &cancel;
    options.progress = [&](double) { cancel = true; };
    CHECK_THROWS_AS(writeSheets(documentOf(3), path.toStdString(), options), Cancelled);
  }
  SECTION("nothing to write") {
    CHECK_THROWS_AS(writeSheets(documentOf(0), path.toStdString()), OutputError);
  }
  CHECK(contentOf(path) == "old");
  CHECK(QDir(folder.path()).entryList(QDir::Files).size() == 1);
}

TEST_CASE("a folder that is not there is reported by name", "[sheets][writing]") {
  const QTemporaryDir folder;
  const std::string path = folder.filePath(QStringLiteral("missing/a.pdf")).toStdString();
  CHECK_THROWS_AS(writeSheets(documentOf(1), path), OutputError);
  CHECK_THROWS_WITH(writeSheets(documentOf(1), path), Catch::Contains("missing/a.pdf"));
}

TEST_CASE("header and foot leave less room the longer the header's texts are", "[sheets]") {
  SheetHead head;
  head.order = QStringLiteral("Order 1");
  SheetPage page;
  page.title = QStringLiteral("Page");
  const QRectF brief = sheetBody(head, page);
  head.order = QString(800, u'x');
  const QRectF lengthy = sheetBody(head, page);
  CHECK(lengthy.top() > brief.top());
  CHECK(lengthy.bottom() == brief.bottom());
  CHECK(brief.left() >= 10.0);
  CHECK(brief.right() <= paperSize(Paper::A4).width() - 10.0);
}

TEST_CASE("papers have the sizes of their standards", "[sheets]") {
  // ISO 216:2007: the long side of the next smaller size is the short side, and half the long side
  // (rounded down) is its short side. ANSI/ASME Y14.1: A 8.5 x 11, B 11 x 17, C 17 x 22 in.
  CHECK(paperSize(Paper::A4) == QSizeF(210.0, 297.0));
  for (const auto& [larger, smaller] :
       {std::pair{Paper::A2, Paper::A3}, std::pair{Paper::A3, Paper::A4}}) {
    CHECK(paperSize(smaller).height() == paperSize(larger).width());
    CHECK(paperSize(smaller).width() == std::floor(paperSize(larger).height() / 2.0));
  }
  CHECK(paperSize(Paper::Letter) == QSizeF(8.5, 11.0) * 25.4);
  CHECK(paperSize(Paper::Tabloid) == QSizeF(11.0, 17.0) * 25.4);
  CHECK(paperSize(Paper::AnsiC) == QSizeF(17.0, 22.0) * 25.4);
}

TEST_CASE("a page range is written and no more", "[sheets][writing]") {
  const QTemporaryDir folder;
  const std::string path = folder.filePath(QStringLiteral("a.pdf")).toStdString();
  SheetOptions options;
  options.firstPage = 2;
  options.lastPage = 3;
  CHECK(writeSheets(documentOf(5), path, options).pages == 2);
  CHECK(probe::words(QString::fromStdString(path)).size() == 2);
  CHECK(probe::pageText(QString::fromStdString(path), 1).contains(QStringLiteral("page 2 of 5")));
  options.firstPage = 6;
  options.lastPage = 0;
  CHECK_THROWS_WITH(writeSheets(documentOf(5), path, options), Catch::Contains("5 pages"));
}

TEST_CASE("the PDF has title, language, bookmarks and the wish not to be scaled",
          "[sheets][writing]") {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("a.pdf"));
  writeSheets(documentOf(3), path.toStdString());
  // qpdf's own view of the file.
  const auto json = QJsonDocument::fromJson(probe::run(QStringLiteral("qpdf"),
                                                       {QStringLiteral("--json=2"),
                                                        QStringLiteral("--json-key=outlines"),
                                                        QStringLiteral("--json-key=qpdf"), path})
                                                .toUtf8())
                        .object();
  const QJsonArray kinds = json[QStringLiteral("outlines")].toArray();
  REQUIRE(kinds.size() == 1);
  CHECK(kinds[0].toObject()[QStringLiteral("title")].toString() == QStringLiteral("Kind"));
  const QJsonArray sections = kinds[0].toObject()[QStringLiteral("kids")].toArray();
  REQUIRE(sections.size() == 3);
  for (int i = 0; i < 3; ++i) {
    const QJsonObject section = sections[i].toObject();
    CHECK(section[QStringLiteral("title")].toString() == QStringLiteral("Section %1").arg(i + 1));
    CHECK(section[QStringLiteral("destpageposfrom1")].toInt() == i + 1);
  }
  const QJsonObject objects = json[QStringLiteral("qpdf")].toArray()[1].toObject();
  QJsonObject catalogue;
  for (const QJsonValue& object : objects) {
    const QJsonObject value = object.toObject()[QStringLiteral("value")].toObject();
    if (value[QStringLiteral("/Type")].toString() == QStringLiteral("/Catalog")) {
      catalogue = value;
    }
  }
  CHECK(catalogue[QStringLiteral("/Lang")].toString() == QStringLiteral("u:en"));
  CHECK(catalogue[QStringLiteral("/ViewerPreferences")]
            .toObject()[QStringLiteral("/PrintScaling")]
            .toString() == QStringLiteral("/None"));
  CHECK(probe::run(QStringLiteral("pdfinfo"), {path}).contains(QStringLiteral("three pages")));
}

TEST_CASE("the same document gives the same file", "[sheets][writing]") {
  const QTemporaryDir folder;
  const QString first = folder.filePath(QStringLiteral("a.pdf"));
  const QString second = folder.filePath(QStringLiteral("b.pdf"));
  writeSheets(documentOf(3), first.toStdString());
  writeSheets(documentOf(3), second.toStdString());
  CHECK(contentOf(first) == contentOf(second));
}

TEST_CASE("pictures have the paper's size and replace older ones", "[sheets][writing]") {
  const QTemporaryDir folder;
  const QString pictures = folder.filePath(QStringLiteral("pictures"));
  CHECK(writeSheetPictures(documentOf(4), pictures.toStdString()).pages == 4);
  CHECK(writeSheetPictures(documentOf(2), pictures.toStdString()).pages == 2);
  const QStringList files =
      QDir(pictures).entryList(QDir::AllEntries | QDir::NoDotAndDotDot, QDir::Name);
  CHECK(files == QStringList{QStringLiteral("page-001.svg"), QStringLiteral("page-002.svg")});
  QXmlStreamReader reader(contentOf(QDir(pictures).filePath(files.front())));
  REQUIRE(reader.readNextStartElement());
  CHECK(reader.attributes().value(QStringLiteral("width")) == QStringLiteral("210mm"));
  CHECK(reader.attributes().value(QStringLiteral("height")) == QStringLiteral("297mm"));
  CHECK(contentOf(QDir(pictures).filePath(files.back())).contains("page 2 of 2"));
}

TEST_CASE("cancelled pictures leave the folder as it was", "[sheets][writing]") {
  const QTemporaryDir folder;
  const QString pictures = folder.filePath(QStringLiteral("pictures"));
  writeSheetPictures(documentOf(1), pictures.toStdString());
  const QByteArray before = contentOf(QDir(pictures).filePath(QStringLiteral("page-001.svg")));
  std::atomic<bool> cancel{false};
  SheetOptions options;
  options.cancel = &cancel;
  options.progress = [&](double) { cancel = true; };
  CHECK_THROWS_AS(writeSheetPictures(documentOf(3), pictures.toStdString(), options), Cancelled);
  CHECK(QDir(pictures).entryList(QDir::AllEntries | QDir::NoDotAndDotDot).size() == 1);
  CHECK(contentOf(QDir(pictures).filePath(QStringLiteral("page-001.svg"))) == before);
}
