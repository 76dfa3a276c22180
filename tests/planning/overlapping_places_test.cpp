// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

// A tee with the same design at two places.
Plan twice(const std::string& first, const std::string& second, Length secondMovedDown = {}) {
  Order order =
      sample::order(sample::blank("t-shirt"), sample::design("mark", 70_mm, 60_mm), first, {"M"});
  OrderPlacement other = order.lines.front().placements.front();
  other.location = LocationId(second);
  other.moveDown = secondMovedDown;
  order.lines.front().placements.push_back(other);
  return planOrder(order, sample::shop({sample::frame("a", 130_mm, 130_mm)}),
                   sample::shippedRules());
}

}  // namespace

TEST_CASE("a place entered twice is told of", "[findings][overlap]") {
  const Plan plan = twice("centre-chest", "centre-chest");
  const Finding& finding = sample::findingOf(plan, FindingCode::OverlapsOtherPlace);
  CHECK(finding.severity == Severity::Watch);
  CHECK(finding.placement == 1);
  CHECK(finding.sizes == std::vector{SizeName("M")});
  // Of two equal rectangles one leaves the other by the shorter side.
  REQUIRE(finding.numbers.size() == 1);
  CHECK(finding.numbers.front().value.mm() == Approx(60.0));
}

TEST_CASE("places that only touch or lie apart are not", "[findings][overlap]") {
  CHECK_FALSE(
      sample::hasFinding(twice("centre-chest", "upper-back"), FindingCode::OverlapsOtherPlace));
  CHECK_FALSE(sample::hasFinding(twice("centre-chest", "centre-chest", 60_mm),
                                 FindingCode::OverlapsOtherPlace));
  CHECK_FALSE(sample::hasFinding(twice("centre-chest", "centre-chest", 80_mm),
                                 FindingCode::OverlapsOtherPlace));
  CHECK(sample::findingOf(twice("centre-chest", "centre-chest", 50_mm),
                          FindingCode::OverlapsOtherPlace)
            .numbers.front()
            .value.mm() == Approx(10.0));
}
