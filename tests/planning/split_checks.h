// SPDX-License-Identifier: MIT
// What GEOS (libgeos) measures of a split that the search only decides.
#pragma once

#include <catch2/catch.hpp>

#include "planning/split_search.h"
#include "shape/geos_oracle.h"
#include "split_samples.h"

namespace creaseline::test {

inline void requireCovered(const Geos& geos, const Outline& outline, const Split& split) {
  for (const Piece& piece : outline.pieces) {
    Geos::Geometry left = geos.polygon(piece.outer);
    for (const SplitPart& part : split.parts) {
      const Box& s = part.section;
      const auto window = geos.polygon({s.min, {s.max.x, s.min.y}, s.max, {s.min.x, s.max.y}});
      left = geos.own(GEOSDifference_r(geos.handle(), left.get(), window.get()));
    }
    REQUIRE(geos.area(left) == Approx(0.0).margin(1e-6));
  }
}

inline void requireClearOfSewing(const Geos& geos, const Outline& outline,
                                 const std::vector<Point>& marks) {
  const double least = kSplitFigures.markHalf + kSplitFigures.markClearance - 1e-6;
  for (const Point mark : marks) {
    for (const Piece& piece : outline.pieces) {
      REQUIRE(geos.distance(geos.polygon(piece.outer), geos.point(mark)) >= least);
    }
  }
}

inline double crossedByGeos(const Geos& geos, const Outline& outline, const Seam& seam) {
  const auto stretch = geos.segment(pointOnCut(seam.direction, seam.at, seam.along.low),
                                    pointOnCut(seam.direction, seam.at, seam.along.high));
  double crossed = 0.0;
  for (const Piece& piece : outline.pieces) {
    double length = 0.0;
    const auto inside =
        geos.own(GEOSIntersection_r(geos.handle(), geos.polygon(piece.outer).get(), stretch.get()));
    GEOSLength_r(geos.handle(), inside.get(), &length);
    crossed += length;
  }
  return crossed;
}

// Of the two marks of a seam: on it, or beyond the sewing at an end of it, one on either side.
inline void requireInPlace(const Geos& geos, const Outline& outline, const Seam& seam) {
  REQUIRE(seam.marks.size() == 2);
  REQUIRE(norm(seam.marks[1] - seam.marks[0]) >= kSplitFigures.marksApart);
  const double first = acrossCut(seam.marks[0], seam.direction) - seam.at;
  const double second = acrossCut(seam.marks[1], seam.direction) - seam.at;
  REQUIRE(first + second == Approx(0.0).margin(1e-9));
  REQUIRE(seam.marksBeside() == (std::abs(first) > 1e-6));
  requireClearOfSewing(geos, outline, seam.marks);
}

}  // namespace creaseline::test
