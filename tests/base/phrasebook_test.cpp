// SPDX-License-Identifier: MIT
#include "creaseline/base/phrasebook.h"

#include <catch2/catch.hpp>

#include "base/worded.h"
#include "creaseline/base/units.h"
#include "support/spoken.h"

namespace creaseline {
namespace {

Phrasebook spanish() {
  Phrasebook::Content content;
  content.language = "es";
  content.decimalSeparator = ',';
  content.joints = {{"de el", "del"}, {"a el", "al"}};
  content.phrases = {{"the hem", "el bajo"},
                     {"from {}", "de {}"},
                     {"for {}", "para el {}"},
                     {"{} of {}", "de los {1}, {0}"},
                     {"{:.1f} mm wide", "{:.1Lf} mm de ancho"}};
  return Phrasebook(content);
}

}  // namespace

TEST_CASE("without a book everything is said in English", "[phrasebook]") {
  REQUIRE(spokenBook() == nullptr);
  CHECK(worded("{} of {}", 2, 3) == "2 of 3");
  CHECK(inLanguage("the hem") == "the hem");
}

TEST_CASE("a book says what it knows, in its own order of words", "[phrasebook]") {
  const Phrasebook book = spanish();
  const Speaking speaking(book);
  CHECK(worded("{} of {}", 2, 3) == "de los 3, 2");
  CHECK(inLanguage("the hem") == "el bajo");
  CHECK(inLanguage("the cuff") == "the cuff");
  CHECK(worded("{} is unknown here", 7) == "7 is unknown here");
}

TEST_CASE("words that meet grow together, but never inside another word", "[phrasebook]") {
  const Phrasebook book = spanish();
  const Speaking speaking(book);
  CHECK(worded("from {}", inLanguage("the hem")) == "del bajo");
  CHECK(worded("for {}", "logo") == "para el logo");
  CHECK(book.joined("junto a el bajo y de el bajo") == "junto al bajo y del bajo");
  CHECK(book.joined("de elástico, ida el lunes") == "de elástico, ida el lunes");
}

TEST_CASE("decimals are written as the language writes them, in files with a point",
          "[phrasebook]") {
  const Phrasebook book = spanish();
  const Speaking speaking(book);
  UnitChoice units;
  units.length = LengthUnit::Centimetre;
  CHECK(worded("{:.1f} mm wide", 2.5) == "2,5 mm de ancho");
  CHECK(formatLength(Length::fromMm(123.0), units) == "12,3 cm");
  CHECK(formatAngle(Angle::fromDegrees(-1.5)) == "-1,5°");
  CHECK(exactText(Length::fromMm(12.3)) == "12.3 mm");
  CHECK(exactText(Angle::fromDegrees(1.5)) == "1.5 deg");
}

TEST_CASE("one language may be written with either separator", "[phrasebook]") {
  const Phrasebook book = spanish();
  const Phrasebook other = book.withDecimalSeparator('.');
  CHECK(other.language() == "es");
  const auto said = [](const Phrasebook& by) {
    const Speaking speaking(by);
    return worded("{:.1f} mm wide", 2.5);
  };
  CHECK(said(book) == "2,5 mm de ancho");
  CHECK(said(other) == "2.5 mm de ancho");
}

TEST_CASE("the language is what it was when a book is put away", "[phrasebook]") {
  const Phrasebook book = spanish();
  {
    const Speaking speaking(book);
    CHECK(spokenBook() == &book);
  }
  CHECK(spokenBook() == nullptr);
}

}  // namespace creaseline
