// SPDX-License-Identifier: MIT
#include "sheets/raster_marks.h"

#include <cmath>
#include <numbers>
#include <numeric>

namespace creaseline::probe {
namespace {

constexpr int kDark = 128;

struct Piece {
  int row = 0, first = 0, last = 0;  // dark pixels [first, last) of a row
};

std::vector<Piece> darkPieces(const QImage& gray) {
  std::vector<Piece> pieces;
  for (int row = 0; row < gray.height(); ++row) {
    const uchar* line = gray.constScanLine(row);
    for (int x = 0; x < gray.width(); ++x) {
      if (line[x] < kDark) {
        const int first = x;
        while (x < gray.width() && line[x] < kDark) {
          ++x;
        }
        pieces.push_back({row, first, x});
      }
    }
  }
  return pieces;
}

std::size_t rootOf(std::vector<std::size_t>& parents, std::size_t index) {
  while (parents[index] != index) {
    parents[index] = parents[parents[index]];
    index = parents[index];
  }
  return index;
}

// Each piece's blob, named by one of its pieces.
std::vector<std::size_t> joined(const std::vector<Piece>& pieces) {
  std::vector<std::size_t> parents(pieces.size());
  std::iota(parents.begin(), parents.end(), std::size_t{0});
  std::size_t above = 0;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    while (above < i &&
           (pieces[above].row < pieces[i].row - 1 ||
            (pieces[above].row == pieces[i].row - 1 && pieces[above].last <= pieces[i].first))) {
      ++above;
    }
    for (std::size_t k = above;
         k < i && pieces[k].row == pieces[i].row - 1 && pieces[k].first < pieces[i].last; ++k) {
      parents[rootOf(parents, k)] = rootOf(parents, i);
    }
  }
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    parents[i] = rootOf(parents, i);
  }
  return parents;
}

}  // namespace

std::vector<Blob> blobs(const QImage& gray, double dotsPerInch) {
  const double pixel = 25.4 / dotsPerInch;
  const std::vector<Piece> pieces = darkPieces(gray);
  const std::vector<std::size_t> roots = joined(pieces);
  std::vector<Blob> all(pieces.size());
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Piece& piece = pieces[i];
    Blob& blob = all[roots[i]];
    const double count = piece.last - piece.first;
    blob.box |= QRectF(piece.first * pixel, piece.row * pixel, count * pixel, pixel);
    blob.area += count * pixel * pixel;
    blob.middle += QPointF((piece.first + piece.last) / 2.0, piece.row + 0.5) *
                   (count * pixel * pixel * pixel);
  }
  std::vector<Blob> found;
  for (Blob& blob : all) {
    if (blob.area > 0.0) {
      blob.middle /= blob.area;
      found.push_back(blob);
    }
  }
  return found;
}

std::vector<QPointF> discs(const QImage& gray, double dotsPerInch, double radius) {
  std::vector<QPointF> found;
  const double area = std::numbers::pi * radius * radius;
  for (const Blob& blob : blobs(gray, dotsPerInch)) {
    if (std::abs(blob.box.width() - 2.0 * radius) < 0.15 &&
        std::abs(blob.box.height() - 2.0 * radius) < 0.15 &&
        std::abs(blob.area - area) < 0.04 * area) {
      found.push_back(blob.middle);
    }
  }
  return found;
}

std::vector<double> lines(const QImage& gray, double dotsPerInch, bool alongRows, double length) {
  const double pixel = 25.4 / dotsPerInch;
  const int count = alongRows ? gray.height() : gray.width();
  const int along = alongRows ? gray.width() : gray.height();
  std::vector<double> found;
  int first = -1;
  for (int i = 0; i <= count; ++i) {
    bool line = false;
    int run = 0;
    for (int k = 0; i < count && k < along && !line; ++k) {
      const uchar value = alongRows ? gray.constScanLine(i)[k] : gray.constScanLine(k)[i];
      run = value < kDark ? run + 1 : 0;
      line = run * pixel >= length;
    }
    if (line && first < 0) {
      first = i;
    } else if (!line && first >= 0) {
      found.push_back((first + i) / 2.0 * pixel);
      first = -1;
    }
  }
  return found;
}

std::vector<double> darkRuns(const QImage& gray, double dotsPerInch, double x, double from,
                             double to) {
  const double pixel = 25.4 / dotsPerInch;
  const int column = static_cast<int>(x / pixel);
  std::vector<double> found;
  int first = -1;
  for (int row = static_cast<int>(from / pixel); row <= static_cast<int>(to / pixel); ++row) {
    const bool dark = gray.constScanLine(row)[column] < kDark;
    if (dark && first < 0) {
      first = row;
    } else if (!dark && first >= 0) {
      found.push_back((first + row) / 2.0 * pixel);
      first = -1;
    }
  }
  return found;
}

}  // namespace creaseline::probe
