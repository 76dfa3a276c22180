// SPDX-License-Identifier: MIT
// Affine maps of the plane, and their text in SVG's transform attribute.
#pragma once

#include <string_view>

#include "creaseline/base/result.h"
#include "creaseline/shape/point.h"

namespace creaseline {

// x' = a x + c y + e, y' = b x + d y + f: the letters of SVG's matrix().
struct Affine {
  double a = 1.0, b = 0.0, c = 0.0, d = 1.0, e = 0.0, f = 0.0;

  [[nodiscard]] Point operator()(Point p) const {
    return {a * p.x + c * p.y + e, b * p.x + d * p.y + f};
  }
  // The map that does `inner` first.
  [[nodiscard]] Affine after(const Affine& inner) const;
  // No distance grows by more than this factor (Frobenius norm).
  [[nodiscard]] double largestStretch() const;
};

// Reads "translate(1, 2) rotate(30)" and all other forms of SVG 1.1, section 7.6.
Result<Affine> parseTransform(std::string_view text);

}  // namespace creaseline
