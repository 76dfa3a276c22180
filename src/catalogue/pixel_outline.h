// SPDX-License-Identifier: MIT
// The boundaries of a picture's opaque part as rings.
#pragma once

#include <optional>
#include <vector>

#include "catalogue/png_alpha.h"
#include "creaseline/shape/point.h"

namespace creaseline {

// Rings in pixels, +y down, that separate opaque from other pixels. Pixels that touch at a corner
// are connected. A ring passes through the middles of the pixel sides between opaque and not
// opaque, which cuts each corner by a triangle with legs of half a pixel; points that are then
// nearly on a straight line are left out. No point of a ring is more than half a pixel from the
// pixels' boundary, nor the other way round, and no ring crosses or touches itself or another.
// Nothing if there are more than `mostRings` rings or `mostPoints` points.
std::optional<std::vector<Ring>> tracePixels(const OpaquePixels& pixels, std::size_t mostRings,
                                             std::size_t mostPoints);

}  // namespace creaseline
