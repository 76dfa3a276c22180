// SPDX-License-Identifier: MIT
// Colour of cloth and thread, for drawing and for contrast.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "creaseline/base/result.h"

namespace creaseline {

// An sRGB colour, 8 bits a channel.
struct Colour {
  std::uint8_t red = 0;
  std::uint8_t green = 0;
  std::uint8_t blue = 0;
  bool operator==(const Colour&) const = default;
};

// Reads "#rrggbb".
Result<Colour> parseColour(std::string_view text);
std::string colourText(Colour colour);

// W3C WCAG 2.2, definition "relative luminance": 0 (black) to 1 (white).
double relativeLuminance(Colour colour);
// W3C WCAG 2.2, definition "contrast ratio": 1 to 21, symmetric.
double contrastRatio(Colour a, Colour b);

}  // namespace creaseline
