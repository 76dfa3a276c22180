// SPDX-License-Identifier: MIT
// The path data of SVG 1.1, section 8.3: M L H V C S Q T A Z, absolute and relative.
#pragma once

#include <string_view>
#include <vector>

#include "catalogue/curve_flattener.h"
#include "creaseline/base/result.h"
#include "creaseline/shape/point.h"

namespace creaseline {

// Each subpath as a chain of points in user units, curves flattened. For filling, an open subpath
// counts as closed. Unlike a browser, which draws a broken path up to the mistake, this refuses it:
// half a letter must not be planned as a whole one. The refusal says what was found.
Result<std::vector<Polyline>> parsePathData(std::string_view text, const CurveFlattener& flattener,
                                            std::size_t mostPoints);

}  // namespace creaseline
