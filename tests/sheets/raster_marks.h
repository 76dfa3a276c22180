// SPDX-License-Identifier: MIT
// Finds lines and filled marks on a rasterised page, to a fraction of a pixel where shapes allow.
#pragma once

#include <QImage>
#include <QPointF>
#include <QRectF>
#include <vector>

namespace creaseline::probe {

// A set of dark pixels that touch each other by their sides. Millimetres.
struct Blob {
  QRectF box;
  QPointF middle;  // of its pixels
  double area = 0.0;
};
std::vector<Blob> blobs(const QImage& gray, double dotsPerInch);
// Those that are filled discs of that radius.
std::vector<QPointF> discs(const QImage& gray, double dotsPerInch, double radius);

// Middles of all dark straight lines along rows (or columns) with an unbroken run of that length,
// from the top (left) of the page. Millimetres.
std::vector<double> lines(const QImage& gray, double dotsPerInch, bool alongRows, double length);

// Middles of the dark runs along one column, between two heights. Millimetres.
std::vector<double> darkRuns(const QImage& gray, double dotsPerInch, double x, double from,
                             double to);

}  // namespace creaseline::probe
