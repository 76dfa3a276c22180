// SPDX-License-Identifier: MIT
// The code on each page, read back by an independent reader: the library ZBar.
#include "sheets/page_code.h"

#include <zbar.h>

#include <catch2/catch.hpp>

#include "sheets/pdf_probe.h"
#include "sheets/sheet_samples.h"

using namespace creaseline;

namespace {

constexpr int kScannerDots = 200;  // a common scanner setting

// The one code on a grey image; empty if there is none or more than one.
QString decoded(const QImage& gray) {
  zbar::ImageScanner scanner;
  scanner.set_config(zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
  scanner.set_config(zbar::ZBAR_QRCODE, zbar::ZBAR_CFG_ENABLE, 1);
  QByteArray bytes;
  for (int y = 0; y < gray.height(); ++y) {
    bytes.append(reinterpret_cast<const char*>(gray.constScanLine(y)), gray.width());
  }
  zbar::Image image(static_cast<unsigned>(gray.width()), static_cast<unsigned>(gray.height()),
                    "Y800", bytes.constData(), static_cast<unsigned long>(bytes.size()));
  if (scanner.scan(image) != 1) {
    return {};
  }
  return QString::fromStdString(image.symbol_begin()->get_data());
}

QImage painted(const QString& text) {
  constexpr double kScale = kScannerDots / 25.4;
  QImage image(static_cast<int>(kScale * 30.0), static_cast<int>(kScale * 30.0),
               QImage::Format_Grayscale8);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(kScale, kScale);
  paintPageCode(painter, {6.0, 6.0}, text);
  painter.end();
  return image;
}

}  // namespace

TEST_CASE("each page's code names order, page, line and place", "[sheets][code]") {
  const Paper paper = GENERATE(Paper::A4, Paper::Letter);
  const auto sheets = sample::written(sample::chestOrder(), sample::chestShop(), paper);
  REQUIRE(sheets->written.pages > 1);
  for (int page = 1; page <= sheets->written.pages; ++page) {
    const QString code = decoded(probe::raster(sheets->pdf, page, kScannerDots));
    INFO(page << ": " << code.toStdString());
    CHECK(code.startsWith(QStringLiteral("Creaseline 2026-118 page %1/%2 line 1 centre-chest ")
                              .arg(page)
                              .arg(sheets->written.pages)));
  }
}

TEST_CASE("a code is read with letters of other languages and with long names", "[sheets][code]") {
  const QString text =
      GENERATE(as<QString>{}, QStringLiteral("Creaseline Größe-Ñandú page 1/2"),
               pageCodeText(QString(60, u'W'), 499, 500, QStringLiteral("line 12 left-chest S M")));
  CHECK(decoded(painted(text)) == text);
}

TEST_CASE("what no readable code can carry is cut at its end", "[sheets][code]") {
  const QString text = pageCodeText(QStringLiteral("2026-118"), 3, 9, QString(2000, u'x'));
  const QString code = decoded(painted(text));
  CHECK(code.size() > 100);
  CHECK(text.startsWith(code));
}

TEST_CASE("a code with a quarter of its middle covered is still read", "[sheets][code]") {
  const QString text = pageCodeText(QStringLiteral("7"), 1, 2, QStringLiteral("line 1"));
  QImage image = painted(text);
  const double scale = kScannerDots / 25.4;
  QPainter painter(&image);
  painter.fillRect(QRectF(13.0 * scale, 13.0 * scale, 4.0 * scale, 4.0 * scale), Qt::white);
  painter.end();
  CHECK(decoded(image) == text);
}
