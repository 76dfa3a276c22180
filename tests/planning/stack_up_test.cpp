// SPDX-License-Identifier: MIT
#include "planning/stack_up.h"

#include <catch2/catch.hpp>

#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

TEST_CASE("Errors add up at worst, and by their squares as a rule", "[planning][stackup]") {
  // 3, 4 and 12 make 13 (3² + 4² + 12² = 13²), and 19 at worst, whichever way each of them goes.
  CHECK(stackUp({3_mm, 4_mm, 12_mm}) == StackUp{19_mm, 13_mm});
  CHECK(stackUp({-3_mm, 4_mm, -12_mm}) == StackUp{19_mm, 13_mm});
  CHECK(stackUp({5_mm}) == StackUp{5_mm, 5_mm});
  CHECK(stackUp({}) == StackUp{});
  // The root of the squares never exceeds the worst case, and never falls below the largest error.
  for (int i = 1; i < 40; ++i) {
    const std::vector<Length> errors{Length::fromMm(i * 0.25), Length::fromMm(10.0 - i * 0.2),
                                     2_mm};
    const StackUp sum = stackUp(errors);
    CAPTURE(i);
    CHECK(sum.rootSumSquare <= sum.worst);
    CHECK(sum.rootSumSquare >= *std::max_element(errors.begin(), errors.end()));
  }
}

TEST_CASE("A frame's reasons tell both sums, what they are made of and what can be taken back",
          "[planning][stackup]") {
  Shop shop = sample::shop({});
  shop.units = {LengthUnit::Millimetre, RulerMark::Eighth, WeightUnit::GramsPerSquareMetre};
  shop.hoopingError = HoopingError{6_mm, 2_mm, 1_deg, "twenty garments of last week"};
  Workshop workshop = prepareWorkshop(shop, sample::shippedRules());
  workshop.figures.creaseError = 2_mm;
  workshop.figures.rulerError = 3_mm;
  workshop.figures.clothGive = 0_mm;
  const Reasons reasons =
      stackUpReasons(workshop, {9_mm, 8_mm, 5_mm, 7_mm, Angle::fromDegrees(4.0)});
  REQUIRE(reasons.size() == 2);
  // 2² + 3² + 6² = 7²
  CHECK(reasons[0].text ==
        "errors sideways add up to 11 mm at worst and 7 mm as a rule (root of the squares): crease "
        "2 mm, ruler 3 mm, hooping 6 mm, give of the cloth 0 mm; the machine can take back 8 mm");
  CHECK(reasons[0].basis.find("hooping: twenty garments of last week") != std::string::npos);
  CHECK(reasons[1].text.find("along add up to 5 mm at worst") != std::string::npos);
  CHECK(reasons[1].text.find("crease") == std::string::npos);
  CHECK(reasons[1].text.find("take back 5 mm") != std::string::npos);

  // In a shop of inches no millimetres stand among them, and no error vanishes between two marks.
  shop.units = {LengthUnit::Inch, RulerMark::Eighth, WeightUnit::GramsPerSquareMetre};
  CHECK(stackUpReasons(workshop, {9_mm, 8_mm, 5_mm, 7_mm, Angle::fromDegrees(4.0)})[0].text ==
        "errors sideways add up to 7/16 in at worst and 9/32 in as a rule (root of the squares): "
        "crease 5/64 in, ruler 1/8 in, hooping 15/64 in, give of the cloth 0 in; the machine can "
        "take back 5/16 in");
}
