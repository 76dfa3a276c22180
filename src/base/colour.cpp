// SPDX-License-Identifier: MIT
// Text of colours, and luminance and contrast by W3C WCAG 2.2.
#include "creaseline/base/colour.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

#include "base/quoted_text.h"
#include "base/worded.h"

namespace creaseline {
namespace {

// The inverse of the sRGB transfer function as WCAG 2.2 states it.
double linearChannel(std::uint8_t value) {
  const double channel = value / 255.0;
  return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

}  // namespace

Result<Colour> parseColour(std::string_view text) {
  const bool wellFormed =
      text.size() == 7 && text[0] == '#' && std::all_of(text.begin() + 1, text.end(), [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
      });
  if (!wellFormed) {
    return Refusal{worded("{} is not a colour; write # and six hexadecimal digits, such as #1a2b3c",
                          quotedText(text))};
  }
  const auto channel = [text](std::size_t at) {
    std::uint8_t value = 0;
    std::from_chars(text.data() + at, text.data() + at + 2, value, 16);
    return value;
  };
  return Colour{channel(1), channel(3), channel(5)};
}

std::string colourText(Colour colour) {
  return fmt::format("#{:02x}{:02x}{:02x}", colour.red, colour.green, colour.blue);
}

double relativeLuminance(Colour colour) {
  return 0.2126 * linearChannel(colour.red) + 0.7152 * linearChannel(colour.green) +
         0.0722 * linearChannel(colour.blue);
}

double contrastRatio(Colour a, Colour b) {
  const auto [darker, lighter] = std::minmax({relativeLuminance(a), relativeLuminance(b)});
  return (lighter + 0.05) / (darker + 0.05);
}

}  // namespace creaseline
