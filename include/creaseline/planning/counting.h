// SPDX-License-Identifier: MIT
// Counts as people read them, used alike by lists and sheets.
#pragma once

#include <fmt/format.h>

#include <cstdint>
#include <string>
#include <string_view>

#include "creaseline/base/phrasebook.h"

namespace creaseline {

// "24,800"; "24.800" where the comma is for decimals.
[[nodiscard]] inline std::string grouped(std::int64_t number) {
  const char separator = spokenDecimalSeparator() == ',' ? '.' : ',';
  std::string text = std::to_string(number);
  for (std::size_t at = text.size(); at > 3;) {
    at -= 3;
    text.insert(at, 1, separator);
  }
  return text;
}

// "1 garment", "2,400 garments": the words marked by toBeWorded(), said in the language spoken.
[[nodiscard]] inline std::string counted(int count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", grouped(count), inLanguage(count == 1 ? one : many));
}

}  // namespace creaseline
