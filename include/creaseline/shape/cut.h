// SPDX-License-Identifier: MIT
// Straight cuts through a design: how much sewing they cross, where they cross least, and what lies
// between them. Cuts are parallel to the axes of the design's coordinates.
#pragma once

#include <vector>

#include "creaseline/shape/outline.h"
#include "creaseline/shape/region.h"

namespace creaseline {

// A cut runs along the line on which one coordinate is constant.
enum class CutDirection {
  Upright,  // x is constant: parts lie side by side
  Level     // y is constant: parts lie one below the other
};

// The coordinate that is constant along such a cut, and the one that runs along it.
[[nodiscard]] double acrossCut(Point point, CutDirection direction);
[[nodiscard]] double alongCut(Point point, CutDirection direction);
[[nodiscard]] Point pointOnCut(CutDirection direction, double across, double along);

struct CutPlace {
  double at = 0.0;       // the constant coordinate, millimetres
  double crossed = 0.0;  // length of sewing that the cut crosses, millimetres; pieces that overlap
                         // count twice, as they do in Outline::area()
  bool meets = false;    // sewing lies on both sides of the cut right up to it: sewing is crossed,
                         // or pieces touch there
};

// The cuts inside the outline's extent that cross less than those on either side of them, in order
// of their coordinate. A gap between pieces is one place, its middle, and so is any stretch along
// which the crossed length does not change; so is a line along which pieces touch, such as blocks
// of thread that are drawn side by side: it crosses neither. Exact: between two corners of the
// outline the crossed length is linear, so that corners alone decide. n log n in the number of
// corners, but for places where pieces touch or lie apart, each of which looks at all corners.
[[nodiscard]] std::vector<CutPlace> cutPlaces(const Outline& outline, CutDirection direction);

// Length of sewing crossed by one cut, as in CutPlace. Where a side of a piece lies along the cut
// the smaller of that piece's lengths just before and just after it.
[[nodiscard]] double crossedLength(const Outline& outline, CutDirection direction, double at);

// The same on a stretch of the cut alone.
[[nodiscard]] double crossedLength(const Outline& outline, CutDirection direction, double at,
                                   Region::Interval along);

// Whether sewing lies on both sides of that stretch of the cut right up to it, as in CutPlace.
[[nodiscard]] bool sewingMeets(const Outline& outline, CutDirection direction, double at,
                               Region::Interval along);

// What lies in the box. Pieces that the box cuts apart become pieces of their own; slivers below
// 1e-6 square millimetres are dropped. Boost.Geometry does the clipping.
[[nodiscard]] Outline clipped(const Outline& outline, const Box& box);

// A box that the bounds of what clipped() leaves hold, without the clipping: that of the outline
// within the box less a hundredth of a millimetre on each side, which leaves out slivers. Empty
// where nothing lies there.
[[nodiscard]] Box boundsWithin(const Outline& outline, const Box& box);

// The stretches along the cut, within `range`, on which no sewing lies nearer to the cut than
// `clearance` millimetres: where a mark may be set. In order; each longer than 0.
[[nodiscard]] std::vector<Region::Interval> clearStretches(const Outline& outline,
                                                           CutDirection direction, double at,
                                                           double clearance,
                                                           Region::Interval range);

}  // namespace creaseline
