// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace creaseline {

// 1 for no digits; up to 18 fit.
constexpr std::int64_t powerOfTen(int digits) {
  std::int64_t power = 1;
  for (int i = 0; i < digits; ++i) {
    power *= 10;
  }
  return power;
}

}  // namespace creaseline
