// SPDX-License-Identifier: MIT
// Findings say where their limits are from; remedies keep the limits of the place that they offer.
#include <algorithm>
#include <catch2/catch.hpp>

#include "creaseline/catalogue/load.h"
#include "creaseline/planning/change.h"
#include "creaseline/planning/planner.h"
#include "creaseline/planning/report.h"
#include "planning/finding_reasons.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using sample::findingOf;
using sample::hasFinding;

namespace {

Plan planned(const Order& order, const Shop& shop) {
  return planOrder(order, shop, sample::shippedRules());
}

Order orderFor(const std::string& kind, Length width, Length height, const std::string& location,
               const std::vector<std::string>& sizes) {
  return sample::order(sample::blank(kind), sample::design("d", width, height), location, sizes);
}

Shop roomyShop() {
  return sample::shop({sample::frame("A", 300_mm, 250_mm), sample::frame("B", 120_mm, 100_mm)});
}

const DefaultValue& seamClearance() {
  return sample::shippedRules().defaults.seamClearance;
}

}  // namespace

TEST_CASE("a finding names the rule of its limit, its basis and what would change it",
          "[findings]") {
  const Order order = orderFor("t-shirt", 130_mm, 60_mm, "left-chest", {"M"});
  const Plan plan = planned(order, roomyShop());
  const Finding& finding = findingOf(plan, FindingCode::BeyondUsualSize);
  REQUIRE(finding.reason);
  CHECK(finding.reason->rule == RuleId("left-chest-adult"));
  CHECK(finding.reason->basis == "common practice, no source");
  CHECK(finding.reason->text == "the usual most is 4 1/2 in");
  CHECK(finding.reason->changedBy == "a house rule of the shop");
  CHECK(finding.numbers.front().value == 130_mm - 4.5_in);
  const Shop shop = roomyShop();
  const std::string text = textReport(plan, {order, shop, sample::shippedRules()}, shop.units);
  CHECK(text.find("Why: the usual most is 4 1/2 in [left-chest-adult; common practice, no source]; "
                  "would") != std::string::npos);
}

TEST_CASE("limits of the shop and of the cloth say so", "[findings]") {
  const Order order = orderFor("t-shirt", 100_mm, 60_mm, "centre-chest", {"M"});
  Shop shop = sample::shop({sample::frame("A", 124_mm, 84_mm)});
  shop.hoopingError = HoopingError{3_mm, 3_mm, 2_deg, "as we judge"};
  const Plan plan = planned(order, shop);
  const Finding& room = findingOf(plan, FindingCode::LittleRoom);
  REQUIRE(room.reason);
  CHECK(room.reason->basis == "as we judge");
  Order dense = order;
  dense.designs[0].stitches = 60000;
  const Plan packed = planned(dense, roomyShop());
  const Finding& tooDense = findingOf(packed, FindingCode::TooDense);
  REQUIRE(tooDense.reason);
  const auto& backing = sample::shippedRules().backing;
  CHECK(std::any_of(backing.begin(), backing.end(), [&](const BackingRule& rule) {
    return rule.id == tooDense.reason->rule && rule.mostDensity &&
           rule.basis == tooDense.reason->basis;
  }));
}

TEST_CASE("little room reads as less than the error that it must bear", "[findings][units]") {
  FrameChoice choice;
  choice.slack = {3.3_mm, 5_mm, 6_mm, 6_mm, 7_deg};
  const UnitChoice inches{LengthUnit::Inch, RulerMark::Eighth};
  // To the ruler 3.3 mm of room and 4 mm of error are both 1/8 in.
  CHECK(littleRoomText(choice, "Medium", {4_mm, 3_mm, 2_deg, "ours"}, inches) ==
        "Medium leaves little room: to the nearest side 1/8 in, turned 7°; the shop's hooping "
        "error is 3/16 in sideways, 1/8 in along, 2°");
  // Where the mark tells them apart nothing is finer than the ruler.
  CHECK(littleRoomText(choice, "Medium", {8_mm, 8_mm, 2_deg, "ours"}, inches) ==
        "Medium leaves little room: to the nearest side 1/8 in, turned 7°; the shop's hooping "
        "error is 3/8 in sideways, 3/8 in along, 2°");
  const UnitChoice millimetres{LengthUnit::Millimetre};
  CHECK(littleRoomText(choice, "Medium", {3.4_mm, 3_mm, 2_deg, "ours"}, millimetres) ==
        "Medium leaves little room: to the nearest side 3.3 mm, turned 7°; the shop's hooping "
        "error is 3.4 mm sideways, 3 mm along, 2°");
}

TEST_CASE("a house rule says how narrow and how low a design may be", "[findings]") {
  const Order order = orderFor("t-shirt", 60_mm, 40_mm, "left-chest", {"M"});
  Shop shop = roomyShop();
  shop.units = {LengthUnit::Millimetre};
  PlacementRule rule = *std::find_if(
      sample::shippedRules().placement.begin(), sample::shippedRules().placement.end(),
      [](const PlacementRule& each) { return each.id == RuleId("left-chest-adult"); });
  rule.id = RuleId("our-chest");
  rule.leastWidth = 70_mm;
  rule.leastHeight = 50_mm;
  shop.houseRules = {rule};
  const Plan plan = planned(order, shop);
  std::vector<std::string> said;
  for (const Finding& finding : plan.findings) {
    if (finding.code == FindingCode::BeyondUsualSize) {
      said.push_back(finding.text);
      CHECK(finding.severity == Severity::Note);
      CHECK(finding.reason->rule == RuleId("our-chest"));
      CHECK(finding.numbers.front().value == 10_mm);
    }
  }
  CHECK(said == std::vector<std::string>{"the design is 60 mm wide, 10 mm less than usual here",
                                         "the design is 40 mm high, 10 mm less than usual here"});
  rule.leastWidth = 60_mm;
  rule.leastHeight = 40_mm;
  shop.houseRules = {rule};
  CHECK_FALSE(hasFinding(planned(order, shop), FindingCode::BeyondUsualSize));
}

TEST_CASE("a size beyond the usual one never reads as the usual one", "[findings][units]") {
  // 4 1/2 in are 114.3 mm.
  const Order order = orderFor("t-shirt", 115_mm, 60_mm, "left-chest", {"M"});
  Shop shop = roomyShop();
  shop.units = {LengthUnit::Inch, RulerMark::Eighth};
  CHECK(findingOf(planned(order, shop), FindingCode::BeyondUsualSize).text ==
        "the design is 4 17/32 in wide, 1/32 in more than usual here");
}

TEST_CASE("every finding of the demo says where its limit is from", "[findings]") {
  const Rules& rules = sample::shippedRules();
  const Order order = loadOrder(SOURCE_DIR "/demo/regatta.order.json", rules).value;
  const Shop shop = loadShop(SOURCE_DIR "/demo/workshop.shop.json", rules).value;
  const Plan plan = planOrder(order, shop, rules);
  REQUIRE(plan.findings.size() > 5);
  for (const Finding& finding : plan.findings) {
    CAPTURE(finding.place, finding.text);
    REQUIRE(finding.reason);
    CHECK_FALSE(finding.reason->text.empty());
    CHECK_FALSE(finding.reason->basis.empty());
    CHECK_FALSE(finding.reason->changedBy.empty());
  }
}

TEST_CASE("a frame kept from the garment says by which limit", "[findings]") {
  const Rules& rules = sample::shippedRules();
  // A bag is closed at its sides and its bottom: no arm comes in from there.
  Frame frame = sample::frame("A", 120_mm, 120_mm);
  frame.bracket = BracketSide::Bottom;
  frame.turns = {0_deg};
  const Plan bag =
      planned(orderFor("tote-bag", 60_mm, 60_mm, "tote-centre", {"M"}), sample::shop({frame}));
  const Reason& arm = *findingOf(bag, FindingCode::FrameMeetsGarment).reason;
  CHECK(arm.rule == RuleId(rules.defaults.armReach.id));
  CHECK(arm.basis == rules.defaults.armReach.basis);
  // The ring of a frame as wide as the shirt does not go in at its hem.
  const Plan wide = planned(orderFor("t-shirt", 80_mm, 60_mm, "centre-chest", {"M"}),
                            sample::shop({sample::frame("B", 700_mm, 700_mm)}));
  const Reason& ring = *findingOf(wide, FindingCode::FrameMeetsGarment).reason;
  const auto& openings = rules.kind(KindId("t-shirt"))->openings;
  CHECK(std::any_of(openings.begin(), openings.end(),
                    [&ring](const Opening& opening) { return opening.basis == ring.basis; }));
}

TEST_CASE("a design that is nearer to a seam than wanted is never said to be as near as wanted",
          "[findings]") {
  // The side seams are 550 mm apart: a room from 10.5 to 8.6 mm, by tenths of a millimetre.
  Shop shop = sample::shop({sample::frame("A", 600_mm, 150_mm)});
  shop.units.length = LengthUnit::Millimetre;
  int near = 0;
  for (int step = 0; step < 20; ++step) {
    const Plan plan = planned(
        orderFor("t-shirt", Length::fromMm(529.0 + step / 5.0), 60_mm, "lower-back", {"M"}), shop);
    for (const Finding& finding : plan.findings) {
      if (finding.code != FindingCode::NearSeam) {
        continue;
      }
      ++near;
      CAPTURE(finding.text);
      CHECK(finding.text.find("only 10 mm from") == std::string::npos);
      REQUIRE(finding.reason);
      CHECK(finding.reason->rule == RuleId(seamClearance().id));
      CHECK(finding.reason->basis == seamClearance().basis);
    }
  }
  CHECK(near > 5);
}

TEST_CASE("a design is offered another place only where its size is usual", "[findings]") {
  int offered = 0;
  for (const char* kind : {"t-shirt", "full-zip-hoodie"}) {
    for (const auto& [location, width, height] :
         {std::tuple{"centre-chest", 200_mm, 150_mm}, {"nape", 30_mm, 12_mm}}) {
      Order order = orderFor(kind, width, height, location, {"YM", "XL"});
      order.lines[0].placements[0].moveDown = -(6_in);  // no place for anything
      const Plan before = planned(order, roomyShop());
      for (const Finding& finding : before.findings) {
        for (const Remedy& remedy : finding.remedies) {
          if (!std::holds_alternative<LocationChange>(remedy.change)) {
            continue;
          }
          ++offered;
          CAPTURE(kind, location, finding.text, remedy.text);
          const auto changed = orderWith(order, finding, remedy.change);
          REQUIRE(changed);
          const Plan after = planned(*changed, roomyShop());
          for (const Finding& then : after.findings) {
            const bool same = std::find(then.sizes.begin(), then.sizes.end(),
                                        finding.sizes.front()) != then.sizes.end();
            CHECK_FALSE((same && then.code == FindingCode::BeyondUsualSize &&
                         !hasFinding(before, FindingCode::BeyondUsualSize)));
          }
        }
      }
    }
  }
  CHECK(offered > 0);
}

TEST_CASE("sizes that different rules place have findings and moves of their own", "[findings]") {
  Order order = orderFor("t-shirt", 100_mm, 60_mm, "centre-chest", {"YM", "XL"});
  order.lines[0].placements[0].moveDown = -(2_in);
  const Plan plan = planned(order, roomyShop());
  std::vector<const Finding*> drops;
  for (const Finding& finding : plan.findings) {
    if (finding.code == FindingCode::BelowLeastDrop) {
      drops.push_back(&finding);
    }
  }
  REQUIRE(drops.size() == 2);
  for (const Finding* drop : drops) {
    CHECK(drop->sizes.size() == 1);
    REQUIRE(drop->reason);
    REQUIRE_FALSE(drop->remedies.empty());
    CHECK(std::holds_alternative<MoveChange>(drop->remedies.front().change));
  }
  CHECK(drops[0]->reason->rule != drops[1]->reason->rule);
}
