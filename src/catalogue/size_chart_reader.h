// SPDX-License-Identifier: MIT
// Reads size charts, from JSON here and from CSV in size_chart_csv.cpp.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/catalogue/size_chart.h"

namespace creaseline {

inline constexpr std::size_t kMostSizes = 200;

// True for measures that a garment may not have at all, such as a rib.
[[nodiscard]] bool mayBeZero(Measure measure);

// {"sizes":[{"size":"S","band":"adult"?,"measures":{"body-width":"20 in"}}]}
[[nodiscard]] SizeChart readSizeChart(JsonObject& chart);

}  // namespace creaseline
