// SPDX-License-Identifier: MIT
// A design's true outline from a drawing (SVG with physical units) or a picture (PNG with alpha).
#pragma once

#include <filesystem>

#include "creaseline/base/length.h"
#include "creaseline/shape/outline.h"

namespace creaseline {

// Filled shapes of an SVG 1.1 document as pieces, in true size: the root must carry width and
// height in mm, cm, in or pt, and may carry a viewBox. Reads path, rect, circle, ellipse,
// polygon, polyline, g and transform; curves are flattened to `tolerance`. Nothing that the file
// refers to is fetched: no entities, images, style sheets, scripts, fonts; text is refused with
// the advice to turn it into paths. Bounds: 4 MiB, nesting 64, 200 000 points. Throws InputError.
[[nodiscard]] Outline readSvgOutline(const std::filesystem::path& file,
                                     Length tolerance = Length::fromNanometres(50'000));

// The outline of a PNG's opaque part (alpha of at least 50 %): boundary of the pixels, one piece
// for each connected part, straightened by no more than half a pixel. `dotsPerInch` gives the
// size; if it is 0 the file's own pHYs resolution is used and must be there. A picture without
// alpha is refused. Bounds: 4 MiB, 4096 x 4096 pixels. Throws InputError.
[[nodiscard]] Outline readPngOutline(const std::filesystem::path& file, double dotsPerInch);

// Whether the picture says its own resolution, so that readPngOutline() needs none. Throws
// InputError where it is no such picture.
[[nodiscard]] bool pngSaysItsSize(const std::filesystem::path& file);

// The dots per inch at which the picture's opaque part is as wide as `width` (> 0). Throws
// InputError like readPngOutline(), and where that is no resolution that it takes.
[[nodiscard]] double pngDotsPerInchFor(const std::filesystem::path& file, Length width);

}  // namespace creaseline
