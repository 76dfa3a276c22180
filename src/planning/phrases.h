// SPDX-License-Identifier: MIT
// Small words that several lists use.
#pragma once

#include <fmt/format.h>

#include <string>
#include <string_view>

namespace creaseline {

// "24,800"
inline std::string grouped(int number) {
  std::string text = std::to_string(number);
  for (std::size_t at = text.size(); at > 3;) {
    at -= 3;
    text.insert(at, ",");
  }
  return text;
}

// "1 garment", "2,400 garments"
inline std::string counted(int count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", grouped(count), count == 1 ? one : many);
}

}  // namespace creaseline
