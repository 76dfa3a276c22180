// SPDX-License-Identifier: MIT
// Designs and figures for the tests of cutting a design into parts.
#pragma once

#include <algorithm>
#include <vector>

#include "planning/split_search.h"
#include "shape/random_shapes.h"

namespace creaseline::test {

inline const SplitFigures kSplitFigures{1.5, 4.0, 3.0, 20.0, 5, 4000, 4000};

inline Piece block(double left, double top, double right, double bottom) {
  return {{{left, top}, {right, top}, {right, bottom}, {left, bottom}}, {}};
}

// Letters and blobs beside and above each other, now and then joined.
inline Outline randomLettering(Dice& dice, int mostColumns = 5, int mostRows = 3) {
  Outline outline;
  const int columns = 1 + dice.below(mostColumns);
  const int rows = 1 + dice.below(mostRows);
  for (int i = 0; i < columns; ++i) {
    for (int j = 0; j < rows; ++j) {
      Piece piece{starRing(dice, 5 + dice.below(8), 12.0, 24.0), {}};
      const Point at{i * dice.between(35.0, 60.0), j * dice.between(35.0, 60.0)};
      for (Point& point : piece.outer) {
        point = point + at;
      }
      outline.pieces.push_back(std::move(piece));
    }
  }
  return outline.centred();
}

inline bool boxFits(const Outline& sewing, double width, double height) {
  const Box box = sewing.bounds();
  return box.width() <= width && box.height() <= height;
}

// Where the design is crossed least, and where it falls into equal parts.
inline std::vector<CutPlace> allPlaces(const Outline& outline, CutDirection direction,
                                       int mostParts) {
  std::vector<CutPlace> places = cutPlaces(outline, direction);
  const Box box = outline.bounds();
  const double from = acrossCut(box.min, direction);
  const double length = acrossCut(box.max, direction) - from;
  for (int parts = 2; parts <= mostParts; ++parts) {
    for (int i = 1; i < parts; ++i) {
      const double at = from + length * i / parts;
      places.push_back({at, crossedLength(outline, direction, at)});
    }
  }
  std::sort(places.begin(), places.end(),
            [](const CutPlace& a, const CutPlace& b) { return a.at < b.at; });
  return places;
}

}  // namespace creaseline::test
