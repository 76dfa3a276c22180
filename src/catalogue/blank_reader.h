// SPDX-License-Identifier: MIT
// Reads a blank: fabric, colours and size chart, checked against its garment kind.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/catalogue/blank.h"
#include "creaseline/catalogue/rules.h"

namespace creaseline {

inline constexpr double kFibreTolerancePercent = 0.5;  // labels round to whole per cent
inline constexpr double kLeastFibrePercent = 0.01;

[[nodiscard]] Fabric readFabric(const JsonCursor& at);

// `top` is the whole of a blank file, or an object inside an order; its head is checked already.
// Sizes whose names tell no band get one from their body width. Every size must make a garment.
[[nodiscard]] Blank readBlank(JsonObject& top, const Rules& rules);

}  // namespace creaseline
