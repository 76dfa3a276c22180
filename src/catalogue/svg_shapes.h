// SPDX-License-Identifier: MIT
// The basic shapes and paths of SVG 1.1, chapters 8 and 9, as rings of points.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "catalogue/curve_flattener.h"
#include "catalogue/svg_attributes.h"
#include "creaseline/base/result.h"
#include "creaseline/shape/point.h"

namespace creaseline {

// Rings in user units of path, rect, circle, ellipse, polygon and polyline; nothing for elements
// that are not shapes. The refusal says what was found.
std::optional<Result<std::vector<Polyline>>> shapeRings(std::string_view element,
                                                        const SvgAttributes& attributes,
                                                        const CurveFlattener& flattener,
                                                        std::size_t mostPoints);

}  // namespace creaseline
