// SPDX-License-Identifier: MIT
// What a search for cuts chooses from: places for cuts, places for marks on them, and what makes
// one choice better than another.
#pragma once

#include <vector>

#include "planning/split_search.h"

namespace creaseline {

inline constexpr double kSameCutMm = 1e-6;

// The bounds of what is sewn between any two of some cuts, or a little less: never more than
// clipped() leaves there.
class SewnBetween {
 public:
  SewnBetween() = default;
  // `cuts` are coordinates in order, those of the outline's ends included.
  SewnBetween(const Outline& outline, CutDirection direction, const std::vector<double>& cuts);
  [[nodiscard]] const Box& bounds(std::size_t from, std::size_t to) const {
    return bounds_[from * count_ + to];
  }

 private:
  std::size_t count_ = 0;
  std::vector<Box> bounds_;
};

// The box with the marks in it as well.
[[nodiscard]] Box withMarks(Box box, const std::vector<Point>& marks, const SplitFigures& figures);

// Lexicographic: crossed length, to the micrometre, before evenness.
struct CutCost {
  double crossed = 0.0;
  double uneven = 0.0;  // sum of squares of the parts' sizes
  CutCost operator+(const CutCost& other) const {
    return {crossed + other.crossed, uneven + other.uneven};
  }
  bool operator<(const CutCost& other) const;
};

// The places of least crossing, filled up to equal parts of every number where these leave too
// much between them; in order. Of places that cross equally those further before come first.
[[nodiscard]] std::vector<CutPlace> parallelPlaces(const Outline& outline, CutDirection direction,
                                                   int mostParts);

// The same for a grid, where many strips are looked at: fewer, and spread over the whole extent.
[[nodiscard]] std::vector<CutPlace> gridPlaces(const Outline& outline, CutDirection direction,
                                               int mostParts);

// By how much sewing is let out over a cut.
[[nodiscard]] double letOut(const Cut& cut, const SplitFigures& figures);

using MarkPair = std::vector<Point>;  // two

// Pairs of marks on a cut through the whole outline, far apart: at either end of the sewing, or in
// gaps nearer to the middle, which need less room in the frame. The widest first.
[[nodiscard]] std::vector<MarkPair> widePairs(const Outline& outline, const CutPlace& place,
                                              CutDirection direction, const SplitFigures& figures);

// Where the marks of a cut may lie along it, and where they should if there is room.
struct MarkRange {
  Region::Interval allowed;
  Region::Interval wanted;
};

// Pairs of marks no further apart than they must be, spread along the cut: a part of a grid reaches
// only a stretch of its cut. In order along it.
[[nodiscard]] std::vector<MarkPair> closePairs(const Outline& outline, double at,
                                               CutDirection direction, const MarkRange& range,
                                               const SplitFigures& figures);

// A pair of marks for each end that is an end of the design: beyond the sewing there, one on either
// side of the cut, where no gap in the sewing leaves room on the cut itself. `extent` is that of
// the cut, from one end to the other.
struct CutEnds {
  Region::Interval extent;
  bool low = false, high = false;  // whether that end is one of the design
};
[[nodiscard]] std::vector<MarkPair> besidePairs(const Outline& outline, double at,
                                                CutDirection direction, const CutEnds& ends,
                                                const SplitFigures& figures);

// How far off its cut a mark lies at most.
[[nodiscard]] double reachBeside(const Cut& cut);

// Whether any two marks, one of either, are so near that they could be taken for each other.
[[nodiscard]] bool marksMeet(const MarkPair& a, const MarkPair& b, const SplitFigures& figures);

// All pairs of the same spots, the widest first.
[[nodiscard]] std::vector<MarkPair> allPairs(const Outline& outline, double at,
                                             CutDirection direction, const MarkRange& range,
                                             const SplitFigures& figures);

}  // namespace creaseline
