// SPDX-License-Identifier: MIT
// From the closed rings of one drawn shape to pieces with holes, by SVG's fill rules.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "creaseline/shape/outline.h"
#include "creaseline/shape/point.h"

namespace creaseline {

// W3C, SVG 1.1 (Second Edition), section 11.3, property fill-rule.
enum class FillRule { NonZero, EvenOdd };

// More rings than any design has parts; bounds the work on hostile files.
inline constexpr std::size_t kMostRings = 10'000;

struct FilledRings {
  std::vector<Piece> pieces;
  // Where two rings cross in a way that leaves the filled part unclear; then there are no pieces.
  std::optional<Point> crossing;
};

// No ring may cross itself, and each must enclose an area. Rings of one winding that overlap under
// the non-zero rule, as in script lettering, become overlapping pieces. Any other crossing is
// reported. Near n log n in the number of points for shapes as drawn.
FilledRings fillRings(const std::vector<Ring>& rings, FillRule rule);

// Millimetres. Without points within 1e-6 mm of the one before, the last before the first; empty
// if it is flat: its convex hull has less than 1e-6 square millimetres.
Ring tidyRing(Ring ring);

}  // namespace creaseline
