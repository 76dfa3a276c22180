// SPDX-License-Identifier: MIT
// Wrapping of plain text.
#include "text_layout.h"

#include <algorithm>
#include <array>

namespace creaseline {

namespace {

bool isBlank(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte <= 0x20 || byte == 0x7f;
}

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

// "1/2" after a whole number, or a unit after any number: a line must not begin with it.
bool belongsToNumber(std::string_view word) {
  static constexpr std::array<std::string_view, 7> kUnits = {"in",     "mm", "cm", "g/m²",
                                                             "oz/yd²", "%",  "×"};
  // Punctuation may hang on the unit: "3 1/2 in," or "(89 mm)".
  const std::size_t last = word.find_last_not_of(".,;:)");
  const std::string_view bare = word.substr(0, last == std::string_view::npos ? 0 : last + 1);
  const bool fraction = bare.size() >= 3 && isDigit(bare.front()) && isDigit(bare.back()) &&
                        bare.find('/') != std::string_view::npos;
  return fraction || std::find(kUnits.begin(), kUnits.end(), bare) != kUnits.end();
}

// Words with numbers and what belongs to them kept together.
std::vector<std::string> unbreakableWords(std::string_view text) {
  std::vector<std::string> words;
  std::size_t at = 0;
  while (at < text.size()) {
    while (at < text.size() && isBlank(text[at])) {
      ++at;
    }
    const std::size_t begin = at;
    while (at < text.size() && !isBlank(text[at])) {
      ++at;
    }
    const std::string_view word = text.substr(begin, at - begin);
    if (word.empty()) {
      continue;
    }
    if (!words.empty() && isDigit(words.back().back()) && belongsToNumber(word)) {
      words.back().append(" ").append(word);
    } else {
      words.emplace_back(word);
    }
  }
  return words;
}

}  // namespace

std::size_t columnsOf(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;  // not a continuation byte
  }));
}

void TextLayout::paragraph(std::size_t indent, std::string_view marker, std::string_view text) {
  std::string line = std::string(indent, ' ').append(marker);
  const std::size_t hang = columnsOf(line);
  std::size_t used = hang;
  bool first = true;
  for (const std::string& word : unbreakableWords(text)) {
    const std::size_t width = columnsOf(word);
    if (!first && used + 1 + width > columns_) {
      text_ += line + '\n';
      line = std::string(hang, ' ');
      used = hang;
      first = true;
    }
    if (!first) {
      line += ' ';
      ++used;
    }
    line += word;
    used += width;
    first = false;
  }
  line.erase(line.find_last_not_of(' ') + 1);
  text_ += line + '\n';
}

void TextLayout::labelled(std::size_t indent, std::string_view label, std::string_view text,
                          std::string_view marker) {
  std::string lead(label);
  const std::size_t used = columnsOf(label);
  lead.append(used < labelColumns_ ? labelColumns_ - used : 1, ' ').append(marker);
  paragraph(indent, lead, text);
}

void TextLayout::heading(std::string_view text, char rule) {
  const std::size_t before = text_.size();
  paragraph(0, "", text);
  // The underline is as long as the longest line of the heading.
  std::size_t longest = 0;
  std::string_view lines = std::string_view(text_).substr(before);
  while (!lines.empty()) {
    const std::size_t end = lines.find('\n');
    longest = std::max(longest, columnsOf(lines.substr(0, end)));
    lines.remove_prefix(end + 1);
  }
  text_.append(std::min(longest, columns_), rule).append("\n");
}

}  // namespace creaseline
