// SPDX-License-Identifier: MIT
// Density of a design, and the same design at another size.
#include "creaseline/catalogue/design.h"

#include <algorithm>
#include <cmath>

namespace creaseline {

namespace {

int scaledStitches(int stitches, double factor) {
  constexpr double kMost = 1.0e9;
  return static_cast<int>(
      std::clamp(std::round(static_cast<double>(stitches) * factor * factor), 1.0, kMost));
}

}  // namespace

double Design::stitchesPerSquareMm() const {
  const double area = outline.area().squareMm();
  return area > 0.0 ? static_cast<double>(stitches) / area : 0.0;
}

Design Design::scaled(double factor) const {
  Design result = *this;
  result.width = width * factor;
  result.height = height * factor;
  result.outline = outline.transformed(Angle(), factor, {});
  for (AppliquePiece& piece : result.pieces) {
    piece.width = piece.width * factor;
    piece.height = piece.height * factor;
  }
  result.stitches = blocks.empty() ? scaledStitches(stitches, factor) : 0;
  for (ThreadBlock& block : result.blocks) {
    block.stitches = scaledStitches(block.stitches, factor);
    result.stitches += block.stitches;
  }
  return result;
}

}  // namespace creaseline
