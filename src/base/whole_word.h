// SPDX-License-Identifier: MIT
#pragma once

#include <cctype>
#include <cstddef>
#include <string_view>

namespace creaseline {

// Whether what stands there goes from the beginning of a word to the end of one. Letters beyond
// ASCII are parts of words as well. False beyond the text's end.
[[nodiscard]] inline bool isWholeWord(std::string_view text, std::size_t at, std::size_t length) {
  const auto inWord = [](char each) {
    const auto byte = static_cast<unsigned char>(each);
    return byte >= 0x80 || std::isalnum(byte) != 0;
  };
  return at + length <= text.size() && (at == 0 || !inWord(text[at - 1])) &&
         (at + length == text.size() || !inWord(text[at + length]));
}

}  // namespace creaseline
