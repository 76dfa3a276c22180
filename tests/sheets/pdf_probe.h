// SPDX-License-Identifier: MIT
// Looks at a PDF with independent programs: poppler's tools and qpdf.
#pragma once

#include <QImage>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>
#include <vector>

namespace creaseline::probe {

struct Word {
  QString text;
  QRectF box;  // millimetres from the page's top left corner
};
struct PageWords {
  QSizeF size;  // millimetres
  std::vector<Word> words;
};

// Standard output of a program; fails the test if it cannot run or exits with an error.
QString run(const QString& program, const QStringList& arguments);
// pdftotext -bbox
std::vector<PageWords> words(const QString& pdf);
// pdftotext -layout of one page, counted from 1, blanks simplified
QString pageText(const QString& pdf, int page);
// pdftoppm -gray of one page, counted from 1
QImage raster(const QString& pdf, int page, int dotsPerInch);

// Longest run of dark pixels in a row or column.
struct Run {
  int first = 0;
  int length = 0;
};
Run longestDarkRun(const QImage& gray, int fixed, bool alongRow);
// Length in millimetres of the longest horizontal dark bar at least 1.5 mm thick in the lowest
// 35 mm of a page.
double checkBarLength(const QImage& page, int dotsPerInch);

}  // namespace creaseline::probe
