// SPDX-License-Identifier: MIT
#include "creaseline/sheets/sheet_set.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "creaseline/base/error.h"
#include "creaseline/planning/planner.h"

using namespace creaseline;

namespace {

SheetDocument documentOf(int pages) {
  SheetDocument document;
  document.title = QStringLiteral("three pages");
  document.order = QStringLiteral("Order 1");
  for (int i = 0; i < pages; ++i) {
    document.pages.push_back({QStringLiteral("Page"), {}, [](QPainter&, const QRectF&) {}});
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
  SheetDocument document = documentOf(1);
  const QRectF brief = sheetBody(document, document.pages.front());
  document.order = QString(400, u'x');
  const QRectF lengthy = sheetBody(document, document.pages.front());
  CHECK(lengthy.top() > brief.top());
  CHECK(lengthy.bottom() == brief.bottom());
  CHECK(brief.left() >= 10.0);
  CHECK(brief.right() <= paperSize(Paper::A4).width() - 10.0);
}
