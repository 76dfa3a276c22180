// SPDX-License-Identifier: MIT
#include "creaseline/catalogue/shop_check.h"

#include <catch2/catch.hpp>

#include "creaseline/catalogue/load.h"
#include "support/sample.h"

namespace creaseline {
namespace {

using namespace creaseline::literals;
using Catch::Contains;

std::string problem(const Shop& shop) {
  return shopProblem(shop, sample::shippedRules()).value_or("");
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
  CHECK_THAT(problem(shop), Contains("/frames/0/window") && Contains("larger than the window"));

  shop = goodShop();
  shop.frames.push_back(shop.frames[0]);
  CHECK_THAT(problem(shop), Contains("frame id"));

  shop = goodShop();
  shop.frames.clear();
  CHECK_THAT(problem(shop), Contains("/frames"));

  shop = goodShop();
  shop.machines[0].needles = 0;
  CHECK_THAT(problem(shop), Contains("needles"));

  shop = goodShop();
  shop.name = "two\nlines";
  CHECK_THAT(problem(shop), Contains("/name"));
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
  CHECK(rollLengthText(Length::fromMm(18'288.0), LengthUnit::Millimetre) == "18288 mm");
  CHECK(rollLengthText(Length::fromMm(25'000.0), LengthUnit::Inch) == "25 m");
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
