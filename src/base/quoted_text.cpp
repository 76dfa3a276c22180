// SPDX-License-Identifier: MIT
// Shortens texts for messages.
#include "base/quoted_text.h"

#include <algorithm>

namespace creaseline {
namespace {

bool isContinuation(char character) {
  return (static_cast<unsigned char>(character) & 0xC0U) == 0x80U;
}

bool isControl(char character) {
  const auto byte = static_cast<unsigned char>(character);
  return byte < 0x20U || byte == 0x7FU;
}

}  // namespace

std::string shortenedText(std::string_view text, std::size_t limit) {
  std::string result;
  if (text.size() <= limit) {
    result = text;
  } else {
    std::size_t end = limit;
    while (end > 0 && isContinuation(text[end])) {
      --end;
    }
    result.append(text.substr(0, end)).append("...");
  }
  std::replace_if(result.begin(), result.end(), isControl, ' ');
  return result;
}

std::string quotedText(std::string_view text, std::size_t limit) {
  std::string quoted = "'";
  quoted.append(shortenedText(text, limit)).append("'");
  return quoted;
}

}  // namespace creaseline
