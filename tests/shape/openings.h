// SPDX-License-Identifier: MIT
// What the tests of fits build over and over.
#pragma once

#include <optional>

#include "creaseline/shape/fit.h"
#include "creaseline/shape/outline.h"

namespace creaseline::test {

inline Ring rectangle(double width, double height) {
  return Outline::rectangle(Length::fromMm(width), Length::fromMm(height)).hull();
}

inline FrameOpening opening(const Result<Window>& window, Length clearance = {},
                            const std::optional<Window>& field = {}) {
  return {*window, clearance, field};
}

}  // namespace creaseline::test
