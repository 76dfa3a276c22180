// SPDX-License-Identifier: MIT
// Colours as text, and their luminance and contrast.
#include "creaseline/base/colour.h"

#include <catch2/catch.hpp>
#include <string>

namespace creaseline {

TEST_CASE("a colour is # and six hexadecimal digits", "[base][colour]") {
  CHECK(parseColour("#1a2B3c").value() == Colour{0x1a, 0x2b, 0x3c});
  CHECK(colourText({0x1a, 0x2b, 0x3c}) == "#1a2b3c");
  CHECK(colourText({0, 10, 255}) == "#000aff");
  const std::string refused =
      GENERATE("", "#", "red", "1a2b3c", "#1a2b3", "#1a2b3cd", "#1a2b3g", "#-12345", "#1a2b3c ");
  CAPTURE(refused);
  CHECK_FALSE(parseColour(refused).ok());
  CHECK_FALSE(parseColour(refused).message().empty());
}

TEST_CASE("every grey is read back from its text", "[base][colour]") {
  for (int level = 0; level < 256; ++level) {
    const auto channel = static_cast<std::uint8_t>(level);
    const Colour colour{channel, static_cast<std::uint8_t>(255 - level), channel};
    CHECK(parseColour(colourText(colour)).value() == colour);
  }
}

// Formulas: W3C, WCAG 2.2, definitions "relative luminance" and "contrast ratio". The numbers were
// computed from those formulas by an independent program.
TEST_CASE("luminance and contrast agree with WCAG 2.2", "[base][colour]") {
  struct Row {
    std::string a, b;
    double luminanceA, luminanceB, contrast;
  };
  const Row row = GENERATE(values<Row>({
      {"#FFFFFF", "#000000", 1.0, 0.0, 21.0},
      {"#767676", "#FFFFFF", 0.181164, 1.0, 4.5422},  // just passes 4.5
      {"#777777", "#FFFFFF", 0.184475, 1.0, 4.4781},  // just fails 4.5
      {"#FF0000", "#FFFFFF", 0.212600, 1.0, 3.9985},
      {"#0000FF", "#FFFFFF", 0.072200, 1.0, 8.5925},
      {"#008000", "#FFFFFF", 0.154383, 1.0, 5.1374},
      {"#FFFF00", "#000080", 0.927800, 0.015585, 14.9089},
  }));
  CAPTURE(row.a, row.b);
  const Colour a = parseColour(row.a).value();
  const Colour b = parseColour(row.b).value();
  CHECK(relativeLuminance(a) == Approx(row.luminanceA).margin(1e-6).epsilon(0.0));
  CHECK(relativeLuminance(b) == Approx(row.luminanceB).margin(1e-6).epsilon(0.0));
  CHECK(contrastRatio(a, b) == Approx(row.contrast).margin(5.1e-5).epsilon(0.0));
  CHECK(contrastRatio(a, b) == contrastRatio(b, a));
  CHECK(contrastRatio(a, a) == 1.0);
}

}  // namespace creaseline
