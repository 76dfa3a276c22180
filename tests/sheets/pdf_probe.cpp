// SPDX-License-Identifier: MIT
#include "sheets/pdf_probe.h"

#include <QImageReader>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

namespace creaseline::probe {
namespace {

constexpr double kMmPerPoint = 25.4 / 72.0;
constexpr int kDarkStroke = 110;

QString unescaped(QString text) {
  return text.replace(QStringLiteral("&lt;"), QStringLiteral("<"))
      .replace(QStringLiteral("&gt;"), QStringLiteral(">"))
      .replace(QStringLiteral("&quot;"), QStringLiteral("\""))
      .replace(QStringLiteral("&amp;"), QStringLiteral("&"));
}

}  // namespace

QString run(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  INFO(program.toStdString() << " " << arguments.join(u' ').toStdString());
  REQUIRE(process.waitForFinished(120'000));
  INFO(process.readAllStandardError().toStdString());
  REQUIRE(process.exitStatus() == QProcess::NormalExit);
  REQUIRE(process.exitCode() == 0);
  return QString::fromUtf8(process.readAllStandardOutput());
}

std::vector<PageWords> words(const QString& pdf) {
  const QString text =
      run(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), pdf, QStringLiteral("-")});
  static const QRegularExpression kTag(
      QStringLiteral("<page width=\"([0-9.]+)\" height=\"([0-9.]+)\">|<word xMin=\"([-0-9.]+)\" "
                     "yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">(.*?)</word>"));
  std::vector<PageWords> pages;
  auto matches = kTag.globalMatch(text);
  while (matches.hasNext()) {
    const QRegularExpressionMatch match = matches.next();
    const auto number = [&](int group) { return match.captured(group).toDouble() * kMmPerPoint; };
    if (!match.captured(1).isEmpty()) {
      pages.push_back({QSizeF(number(1), number(2)), {}});
    } else {
      pages.back().words.push_back(
          {unescaped(match.captured(7)),
           QRectF(QPointF(number(3), number(4)), QPointF(number(5), number(6)))});
    }
  }
  return pages;
}

QString pageText(const QString& pdf, int page) {
  const QString number = QString::number(page);
  return run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), QStringLiteral("-f"), number,
                                           QStringLiteral("-l"), number, pdf, QStringLiteral("-")})
      .simplified();
}

QImage raster(const QString& pdf, int page, int dotsPerInch) {
  const QTemporaryDir folder;
  const QString base = folder.filePath(QStringLiteral("page"));
  const QString number = QString::number(page);
  run(QStringLiteral("pdftoppm"),
      {QStringLiteral("-gray"), QStringLiteral("-r"), QString::number(dotsPerInch),
       QStringLiteral("-f"), number, QStringLiteral("-l"), number, QStringLiteral("-singlefile"),
       pdf, base});
  QImageReader::setAllocationLimit(512);  // megabytes; the reader counts four bytes a pixel
  const QImage image(base + QStringLiteral(".pgm"));
  REQUIRE_FALSE(image.isNull());
  return image.convertToFormat(QImage::Format_Grayscale8);
}

Run longestDarkRun(const QImage& gray, int fixed, bool alongRow) {
  const int count = alongRow ? gray.width() : gray.height();
  Run best;
  int start = 0;
  for (int i = 0; i <= count; ++i) {
    const bool dark = i < count && (alongRow ? gray.constScanLine(fixed)[i]
                                             : gray.constScanLine(i)[fixed]) < kDarkStroke;
    if (!dark) {
      if (i - start > best.length) {
        best = {start, i - start};
      }
      start = i + 1;
    }
  }
  return best;
}

double checkBarLength(const QImage& page, int dotsPerInch) {
  const int thick = static_cast<int>(1.5 * dotsPerInch / 25.4);
  const int from = page.height() - static_cast<int>(35.0 * dotsPerInch / 25.4);
  int best = 0;
  for (int y = from; y + thick < page.height(); ++y) {
    const Run top = longestDarkRun(page, y, true);
    const Run bottom = longestDarkRun(page, y + thick, true);
    if (top.first == bottom.first && top.length == bottom.length) {
      best = std::max(best, top.length);
    }
  }
  return best * 25.4 / dotsPerInch;
}

}  // namespace creaseline::probe
