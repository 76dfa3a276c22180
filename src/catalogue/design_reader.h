// SPDX-License-Identifier: MIT
// Reads a design: stitches, blocks, appliqué pieces, outline.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/catalogue/design.h"

namespace creaseline {

// How far a size that is given may be off the outline's: measured by hand against drawn.
inline constexpr Length kSizeTolerance = Length::fromMm(0.5);
inline constexpr int kMostStitches = 10'000'000;
inline constexpr Length kSmallestDesign = Length::fromMm(1.0);

// `top` is the whole of a design file, or an object inside an order; its head is checked already.
[[nodiscard]] Design readDesign(JsonObject& top);

}  // namespace creaseline
