// SPDX-License-Identifier: MIT
// A design at another size, and how dense it is.
#include "creaseline/catalogue/design.h"

#include <catch2/catch.hpp>

#include "catalogue/catalogue_data.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;

TEST_CASE("a scaled design grows by length, and in stitches by area", "[catalogue]") {
  const Design letters = loadDesign(goodFile("letters.design.json")).value;
  const Design half = letters.scaled(0.5);
  CHECK(half.width == 100_mm);
  CHECK(half.height == 40_mm);
  CHECK(half.pieces.at(0).width == 40_mm);
  CHECK(half.outline.bounds().width() == Approx(100.0));
  // 150, 300 and 2200 over four, halves away from zero: 38 + 75 + 550.
  CHECK(half.blocks.at(0).stitches == 38);
  CHECK(half.stitches == 663);
  CHECK(letters.scaled(1.0) == letters);
}

TEST_CASE("a design without blocks scales its total", "[catalogue]") {
  Design design;
  design.width = design.height = 10_mm;
  design.outline = Outline::rectangle(10_mm, 10_mm);
  design.stitches = 100;
  CHECK(design.scaled(3.0).stitches == 900);
  CHECK(design.scaled(0.01).stitches == 1);
}

TEST_CASE("density is stitches over the outline's area and survives scaling", "[catalogue]") {
  const Design star = loadDesign(goodFile("star.design.json")).value;
  // 101.6 x 100 mm less a hole of 20 x 20 mm.
  CHECK(star.stitchesPerSquareMm() == Approx(5200.0 / (10160.0 - 400.0)));
  CHECK(star.scaled(0.7).stitchesPerSquareMm() == Approx(star.stitchesPerSquareMm()).epsilon(1e-3));
  CHECK(Design{}.stitchesPerSquareMm() == 0.0);
}
