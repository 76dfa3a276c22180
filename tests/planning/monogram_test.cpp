// SPDX-License-Identifier: MIT
#include "planning/monogram.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

// Three letters as boxes, the middle one of that height.
Outline lettersOf(double middleHeight) {
  Outline outline;
  const auto letter = [&outline](double x, double height) {
    outline.pieces.push_back({{{x - 10.0, -height / 2.0},
                               {x + 10.0, -height / 2.0},
                               {x + 10.0, height / 2.0},
                               {x - 10.0, height / 2.0}},
                              {}});
  };
  letter(30.0, 30.0);  // not in the order of reading
  letter(0.0, middleHeight);
  letter(-30.0, 30.0);
  return outline.centred();
}

Plan planned(const Monogram& monogram, double middleHeight) {
  Design design = sample::design("m", 80_mm, Length::fromMm(std::max(30.0, middleHeight)));
  design.outline = lettersOf(middleHeight);
  design.monogram = monogram;
  return planOrder(sample::order(sample::blank("t-shirt"), design, "centre-chest", {"M"}),
                   sample::shop({sample::frame("A", 200_mm, 130_mm)}), sample::shippedRules());
}

}  // namespace

// Common practice, no source: with a larger centre letter first, surname, middle; with equal
// letters first, middle, surname; otherwise by the customer's wish.
TEST_CASE("a larger centre letter is the surname's and equal letters follow the name",
          "[monogram]") {
  Monogram monogram{"Ada", "Mary", "Linde", MonogramStyle::LargerCentre, {}};
  CHECK(monogramLetters(monogram, sample::shippedRules()).letters == "A L M");
  monogram.style = MonogramStyle::EqualLetters;
  const MonogramLetters equal = monogramLetters(monogram, sample::shippedRules());
  CHECK(equal.letters == "A M L");
  CHECK(equal.reason.rule == RuleId("monogram-equal-letters"));
  CHECK(equal.reason.basis == "common practice, no source");
  monogram.middle.clear();
  CHECK(monogramLetters(monogram, sample::shippedRules()).letters == "A L");
  monogram.wish = "L & A";
  CHECK(monogramLetters(monogram, sample::shippedRules()).letters == "L & A");
}

TEST_CASE("a letter of more than one byte and with a combined mark stays whole", "[monogram]") {
  const Monogram monogram{"Åsa", "E\u0301mile", "Öberg", MonogramStyle::LargerCentre, {}};
  CHECK(monogramLetters(monogram, sample::shippedRules()).letters == "Å Ö E\u0301");
}

TEST_CASE("the plan shows the letters and says so where they are drawn otherwise", "[monogram]") {
  const Monogram larger{"Ada", "Mary", "Linde", MonogramStyle::LargerCentre, {}};
  const Plan right = planned(larger, 45.0);
  CHECK(right.placements[0].letters == "A L M");
  CHECK_FALSE(sample::hasFinding(right, FindingCode::MonogramDrawnOtherwise));
  const Plan wrong = planned(larger, 31.0);
  const Finding& finding = sample::findingOf(wrong, FindingCode::MonogramDrawnOtherwise);
  CHECK(finding.severity == Severity::Watch);
  CHECK(finding.text.find("the letters would be A M L then, not A L M") != std::string::npos);
  Monogram wished = larger;
  wished.wish = "MLA";
  CHECK_FALSE(sample::hasFinding(planned(wished, 31.0), FindingCode::MonogramDrawnOtherwise));
}
