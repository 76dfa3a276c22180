// SPDX-License-Identifier: MIT
// First pages of each kind against pictures that were looked at by eye. With
// CREASELINE_ACCEPT_PAGES=1 in the environment the pictures are written anew; look at them before
// you commit them.
#include <QDir>
#include <QFile>
#include <catch2/catch.hpp>

#include "sheets/pdf_probe.h"
#include "sheets/sheet_samples.h"

using namespace creaseline;

namespace {

constexpr int kGoldenDots = 50;  // enough to see what has moved, and small to keep
// Rounding of edges differs between versions of the rasteriser; what has moved or is missing
// differs by more than half of black over a whole stroke or word.
constexpr int kDifferent = 100;
constexpr double kMostDifferent = 0.002;  // of the page

double shareThatDiffers(const QImage& a, const QImage& b) {
  int different = 0;
  for (int y = 0; y < a.height(); ++y) {
    for (int x = 0; x < a.width(); ++x) {
      different += std::abs(a.constScanLine(y)[x] - b.constScanLine(y)[x]) > kDifferent ? 1 : 0;
    }
  }
  return static_cast<double>(different) / (static_cast<double>(a.width()) * a.height());
}

}  // namespace

TEST_CASE("the first page of each kind looks as it did when it was accepted", "[sheets][golden]") {
  const QDir accepted(QStringLiteral(TEST_DATA "/sheets"));
  for (const SheetKind& kind : sheetKinds()) {
    CAPTURE(kind.id);
    const auto sheets =
        sample::written(sample::chestOrder(), sample::chestShop(), Paper::A4, kind.id);
    const QImage page = probe::raster(sheets->pdf, 1, kGoldenDots);
    const QString name =
        accepted.filePath(QString::fromStdString(kind.id) + QStringLiteral(".png"));
    if (qEnvironmentVariableIntValue("CREASELINE_ACCEPT_PAGES") != 0) {
      REQUIRE(page.save(name));
    }
    REQUIRE(QFile::exists(name));
    const QImage golden = QImage(name).convertToFormat(QImage::Format_Grayscale8);
    REQUIRE(golden.size() == page.size());
    const double share = shareThatDiffers(page, golden);
    if (share > kMostDifferent) {
      page.save(QString::fromStdString(kind.id) + QStringLiteral("-now.png"));
    }
    INFO("the page as it is now: " << QDir::currentPath().toStdString() << "/" << kind.id
                                   << "-now.png");
    CHECK(share <= kMostDifferent);
  }
}

TEST_CASE("a moved word or a missing stroke is told from rounding", "[sheets][golden]") {
  const auto sheets = sample::written(sample::chestOrder(), sample::chestShop());
  const QImage page = probe::raster(sheets->pdf, 1, kGoldenDots);
  QImage moved = page;
  QPainter painter(&moved);
  painter.drawImage(QPoint(0, 1), page);  // by half a millimetre
  painter.end();
  CHECK(shareThatDiffers(page, moved) > kMostDifferent);
  CHECK(shareThatDiffers(page, page) == 0.0);
}
