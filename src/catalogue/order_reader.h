// SPDX-License-Identifier: MIT
// Reads an order with the blanks and designs that it refers to.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"

namespace creaseline {

inline constexpr int kMostGarments = 100'000;  // of one size on one line
inline constexpr double kLargestScale = 10.0;
inline constexpr Length kSmallestScaledDesign = Length::fromMm(1.0);

// ISO 8601 calendar date, and one that exists.
[[nodiscard]] bool isCalendarDate(const std::string& text);

// `top` is the whole of an order file, its head checked already.
[[nodiscard]] Order readOrder(JsonObject& top, const Rules& rules);

}  // namespace creaseline
