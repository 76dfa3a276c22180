// SPDX-License-Identifier: MIT
// Chains: convex functions over an interval, made of straight pieces and arcs. Regions and the
// fit engine are built from them.
//
// Every chain here is an *upper edge* (+y down, so the function is convex): an arc is the upper
// half of its circle, y = centre.y - sqrt(radius^2 - (x - centre.x)^2). A lower edge is handled by
// flipping it into an upper one, which leaves one set of formulas.
#pragma once

#include <optional>
#include <vector>

#include "creaseline/shape/region.h"

namespace creaseline {

using Span = Region::Span;
using Chain = std::vector<Span>;

[[nodiscard]] Span lineSpan(double from, double to, double slope, double intercept);
[[nodiscard]] Span arcSpan(double from, double to, Point centre, double radius);

[[nodiscard]] double valueAt(const Span& span, double x);
[[nodiscard]] double valueAt(const Chain& chain, double x);
// Value of flipped(chain), without the copy.
[[nodiscard]] double valueAtFlipped(const Chain& chain, double x);

// Slopes to the left and to the right of an x; at an end of the chain both are the inner one.
// Where an arc stands upright they are cut off at 1e9.
struct Slopes {
  double before = 0.0;
  double after = 0.0;
};
[[nodiscard]] Slopes slopesAt(const Chain& chain, double x);

// Mirrored at y = 0.
[[nodiscard]] Chain flipped(Chain chain);

// The part over [from, to], which must overlap the chain. Never empty.
[[nodiscard]] Chain trimmed(const Chain& chain, double from, double to);

// Pointwise larger of two chains over the same interval.
[[nodiscard]] Chain larger(const Chain& a, const Chain& b);

// Where the sum of two chains over the same interval is at most zero: an interval, as the sum is
// convex. Ends are met in closed form.
[[nodiscard]] std::optional<Region::Interval> whereSumAtMostZero(const Chain& a, const Chain& b);

// Least value of the sum and an x at which it is taken; the least value of one chain.
struct LeastSum {
  double value = 0.0;
  double x = 0.0;
};
[[nodiscard]] LeastSum leastSum(const Chain& a, const Chain& b);
[[nodiscard]] double leastValue(const Chain& chain);

// A region before it is known whether it is empty: its upper edge, and its lower edge flipped,
// both over [from, to].
struct OpenRegion {
  double from = 0.0;
  double to = 0.0;
  Chain top;
  Chain flippedBottom;
};

// Points in both; from > to if the intervals do not meet (chains are then empty).
[[nodiscard]] OpenRegion intersected(const OpenRegion& a, const OpenRegion& b);
// Greatest height of a column, negative if no column is open.
[[nodiscard]] double tallestColumn(const OpenRegion& open);
// Cut down to the columns that are open.
[[nodiscard]] Region closed(const OpenRegion& open);

}  // namespace creaseline
