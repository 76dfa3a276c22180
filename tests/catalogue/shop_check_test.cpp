// SPDX-License-Identifier: MIT
#include "creaseline/catalogue/shop_check.h"

#include <catch2/catch.hpp>

#include "creaseline/base/spoken_units.h"
#include "creaseline/catalogue/load.h"
#include "support/sample.h"

namespace creaseline {
namespace {

using namespace creaseline::literals;
using Catch::Contains;
using Catch::StartsWith;

constexpr UnitChoice kInches{LengthUnit::Inch};
constexpr UnitChoice kMillimetres{LengthUnit::Millimetre};

std::string problem(const Shop& shop, const UnitChoice& units = kMillimetres) {
  return shopProblem(shop, sample::shippedRules(), units).value_or("");
}

Shop goodShop() {
  return loadShop(std::string(SOURCE_DIR) + "/tests/data/good/test.shop.json",
                  sample::shippedRules())
      .value;
}

}  // namespace

TEST_CASE("a shop that was read has no problem", "[shop]") {
  CHECK(problem(goodShop()).empty());
  CHECK(problem(sample::shop({sample::frame("A", 100_mm, 80_mm)})).empty());
}

TEST_CASE("what a reader would refuse is said before it is saved", "[shop]") {
  Shop shop = goodShop();
  shop.frames[0].body = shop.frames[0].window;
  CHECK_THAT(problem(shop), Contains("window of frame \"" + shop.frames[0].name + "\"") &&
                                Contains("larger than the window") && !Contains("/"));

  shop = goodShop();
  shop.frames.push_back(shop.frames[0]);
  CHECK_THAT(problem(shop), Contains("frame id"));

  shop = goodShop();
  shop.frames.clear();
  CHECK_THAT(problem(shop), StartsWith("frames: found"));

  shop = goodShop();
  shop.machines[0].needles = 0;
  CHECK_THAT(problem(shop), Contains("needles"));

  shop = goodShop();
  shop.name = "two\nlines";
  CHECK_THAT(problem(shop), StartsWith("name: found"));
}

TEST_CASE("a window that does not fit its body is told in the units chosen", "[shop]") {
  Shop shop = goodShop();
  shop.frames[0].name = "Medium";
  shop.frames[0].window = *Window::rectangle(12_in, 10_in);
  shop.frames[0].body = *Window::rectangle(13.75_in, 250_mm);
  CHECK(
      problem(shop, kInches) ==
      "window of frame \"Medium\": found a window of 12 × 10 in that reaches the edge of the body "
      "of 13 3/4 × 9 7/8 in, 1/8 in beyond it, expected a body that is larger than the window on "
      "every side");
  CHECK_THAT(problem(shop), Contains("a window of 305 × 254 mm") && Contains("2 mm beyond it"));
  // To the ruler both are 10 in high.
  shop.frames[0].body = *Window::rectangle(13.75_in, 253.5_mm);
  CHECK_THAT(problem(shop, kInches), Contains("12 × 10 in") && Contains("13 3/4 × 9 31/32 in"));
  // Files are answered as ever.
  CHECK_FALSE(spokenUnits());
}

TEST_CASE("limits of a shop's lengths are told in the units chosen", "[shop]") {
  Shop shop = goodShop();
  shop.creaseError = 6'000_mm;
  CHECK(problem(shop, kInches) ==
        "crease: found 236 1/4 in, expected a length from 0 in to 196 7/8 in");
  shop = goodShop();
  shop.frames[0].name = "Medium";
  shop.frames[0].clearance = 300_mm;
  CHECK_THAT(problem(shop, kInches),
             StartsWith("clearance of frame \"Medium\": found 11 3/4 in") && !Contains("mm"));
}

TEST_CASE("the parts of a shop are named as its forms name them", "[shop]") {
  Shop shop = goodShop();
  shop.frames[0].name = "Medium";
  CHECK(shopPlaceWords(shop, "/frames/0/window/rectangle/1") == "window of frame \"Medium\"");
  CHECK(shopPlaceWords(shop, "/frames/0/unheard-of") == "frame \"Medium\"");
  CHECK(shopPlaceWords(shop, "/frames/0") == "frame \"Medium\"");
  CHECK(shopPlaceWords(shop, "/frames") == "frames");
  CHECK(shopPlaceWords(shop, "/needles/1/size") == "size of needle 2");
  CHECK(shopPlaceWords(shop, "/measured-hoopings/0/sideways") == "sideways of measured hooping 1");
  CHECK(shopPlaceWords(shop, "/rates/labour") == "rates, an hour of work");
  CHECK(shopPlaceWords(shop, "").empty());
  CHECK(shopPlaceWords(shop, "top level").empty());
}

TEST_CASE("lengths of rolls are read as they are sold", "[shop]") {
  CHECK(*parseRollLength("25 m") == Length::fromMm(25'000.0));
  CHECK(*parseRollLength("20 yd") == Length::fromMm(18'288.0));
  CHECK(*parseRollLength("12,5 m") == Length::fromMm(12'500.0));
  CHECK(*parseRollLength("300 mm") == 300_mm);
  CHECK(*parseRollLength("0 m") == Length());
  for (const char* wrong : {"", "m", "25", "-1 m", "2000 m", "25 rods"}) {
    CAPTURE(wrong);
    CHECK_FALSE(parseRollLength(wrong));
  }
  CHECK(rollLengthText(Length::fromMm(18'288.0), LengthUnit::Inch) == "20 yd");
  CHECK(rollLengthText(Length::fromMm(18'288.0), LengthUnit::Millimetre) == "18.288 m");
  CHECK(rollLengthText(Length::fromMm(25'000.0), LengthUnit::Inch) == "25 m");
  for (const double mm : {0.0, 999.0, 1'000.0, 1'500.0, 22'860.0, 914.4, 12'345.678}) {
    CAPTURE(mm);
    for (const LengthUnit unit : {LengthUnit::Inch, LengthUnit::Millimetre}) {
      CHECK(*parseRollLength(rollLengthText(Length::fromMm(mm), unit)) == Length::fromMm(mm));
    }
  }
}

TEST_CASE("a house rule may not bear the id of a shipped one", "[shop]") {
  Shop shop = sample::shop({sample::frame("A", 100_mm, 80_mm)});
  PlacementRule rule = sample::shippedRules().placement.front();
  rule.house = true;
  shop.houseRules = {rule};
  CHECK_THAT(problem(shop), Contains("of a shipped rule") && Contains("shop-" + rule.id.text()));
  shop.houseRules[0].id = RuleId("shop-" + rule.id.text());
  CHECK(problem(shop).empty());
}

TEST_CASE("a house rule for a blank or size that the order lacks is remarked on", "[shop]") {
  const Order order = sample::order(sample::blank("t-shirt"), sample::design("d", 80_mm, 60_mm),
                                    "left-chest", {"M"});
  Shop shop = sample::shop({sample::frame("A", 100_mm, 80_mm)});
  PlacementRule rule;
  rule.id = RuleId("ours");
  rule.location = LocationId("left-chest");
  const auto notes = [&](const PlacementRule& given) {
    shop.houseRules = {given};
    std::string all;
    for (const IdleHouseRule& idle : idleHouseRules(order, shop)) {
      CHECK(idle.rule == 0);
      all += idle.note.where + ": " + idle.note.text;
    }
    return all;
  };
  CHECK(notes(rule).empty());
  PlacementRule other = rule;
  other.blanks = {BlankId("no-such-blank")};
  CHECK_THAT(notes(other), Contains("ours") && Contains("\"no-such-blank\""));
  other.location = LocationId("nape");  // which this order does not sew
  CHECK(notes(other).empty());
  other = rule;
  other.sizes = {SizeName("no size")};
  CHECK_THAT(notes(other), Contains("\"no size\""));
  other.sizes.emplace_back("M");
  CHECK(notes(other).empty());
  other.kinds = {KindId("polo")};
  other.blanks = {BlankId("no-such-blank")};
  CHECK(notes(other).empty());
}

}  // namespace creaseline
