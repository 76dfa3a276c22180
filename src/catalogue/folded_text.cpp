// SPDX-License-Identifier: MIT
// Folding of letters by a table.
#include "catalogue/folded_text.h"

#include <array>
#include <cstdint>

namespace creaseline {

namespace {

constexpr char32_t kFirst = 0xC0;
constexpr char32_t kCombiningFirst = 0x300;
constexpr char32_t kCombiningLast = 0x36F;

// U+00C0 to U+017F: the letter without its accent, after the decompositions of the Unicode
// Character Database; ligatures and letters with strokes as they are spelt without them. Empty:
// no letter.
constexpr std::array<std::string_view, 192> kPlain = {
    "a", "a", "a",  "a",  "a", "a", "ae", "c",  "e",  "e", "e", "e", "i",  "i",  "i", "i", "d", "n",
    "o", "o", "o",  "o",  "o", "",  "o",  "u",  "u",  "u", "u", "y", "th", "ss", "a", "a", "a", "a",
    "a", "a", "ae", "c",  "e", "e", "e",  "e",  "i",  "i", "i", "i", "d",  "n",  "o", "o", "o", "o",
    "o", "",  "o",  "u",  "u", "u", "u",  "y",  "th", "y", "a", "a", "a",  "a",  "a", "a", "c", "c",
    "c", "c", "c",  "c",  "c", "c", "d",  "d",  "d",  "d", "e", "e", "e",  "e",  "e", "e", "e", "e",
    "e", "e", "g",  "g",  "g", "g", "g",  "g",  "g",  "g", "h", "h", "h",  "h",  "i", "i", "i", "i",
    "i", "i", "i",  "i",  "i", "i", "ij", "ij", "j",  "j", "k", "k", "k",  "l",  "l", "l", "l", "l",
    "l", "l", "l",  "l",  "l", "n", "n",  "n",  "n",  "n", "n", "n", "n",  "n",  "o", "o", "o", "o",
    "o", "o", "oe", "oe", "r", "r", "r",  "r",  "r",  "r", "s", "s", "s",  "s",  "s", "s", "s", "s",
    "t", "t", "t",  "t",  "t", "t", "u",  "u",  "u",  "u", "u", "u", "u",  "u",  "u", "u", "u", "u",
    "w", "w", "y",  "y",  "y", "z", "z",  "z",  "z",  "z", "z", "s",
};

// The character at the start of the text and how many bytes it has; one byte where it is not
// UTF-8 of two bytes, which is all that is folded.
struct Character {
  char32_t code = 0;
  std::size_t bytes = 1;
};
Character characterAt(std::string_view text) {
  const auto byte = [&](std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
  };
  const auto follows = [&](std::size_t i) { return (byte(i) & 0xC0U) == 0x80U; };
  if ((byte(0) & 0xE0U) == 0xC0U && follows(1)) {
    return {((byte(0) & 0x1FU) << 6U) | (byte(1) & 0x3FU), 2};
  }
  return {byte(0), 1};
}

bool isWordByte(char c) {
  return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80U;
}

}  // namespace

std::string foldedText(std::string_view text) {
  std::string folded;
  while (!text.empty()) {
    const Character character = characterAt(text);
    const std::string_view bytes = text.substr(0, character.bytes);
    text.remove_prefix(character.bytes);
    if (character.bytes == 1) {
      const char c = bytes.front();
      folded += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    } else if (character.code >= kFirst && character.code < kFirst + kPlain.size()) {
      const std::string_view plain = kPlain[character.code - kFirst];
      folded += plain.empty() ? bytes : plain;
    } else if (character.code < kCombiningFirst || character.code > kCombiningLast) {
      folded += bytes;
    }
  }
  return folded;
}

std::vector<std::string> foldedWords(std::string_view text) {
  std::vector<std::string> words;
  bool open = false;
  for (const char c : foldedText(text)) {
    if (!isWordByte(c)) {
      open = false;
      continue;
    }
    if (!open) {
      words.emplace_back();
    }
    words.back() += c;
    open = true;
  }
  return words;
}

}  // namespace creaseline
