// SPDX-License-Identifier: MIT
#include <algorithm>
#include <catch2/catch.hpp>

#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using sample::planFor;

namespace {

constexpr Length kWidth = 100_mm;
constexpr Length kHeight = 60_mm;

Plan planOf(const std::string& kind, const std::string& location,
            const std::vector<std::string>& sizes, Length width = kWidth, Length height = kHeight) {
  const Shop shop = sample::shop({sample::frame("A", 260_mm, 260_mm)});
  return planOrder(
      sample::order(sample::blank(kind), sample::design("d", width, height), location, sizes), shop,
      sample::shippedRules());
}

}  // namespace

// common practice, no source: top of the design 3 in below the collar seam up to adult XL,
// 4 in above XL.
TEST_CASE("a chest design hangs 3 in below the collar up to XL and 4 in above", "[placement]") {
  for (const char* kind : {"t-shirt", "crew-sweatshirt", "pullover-hoodie"}) {
    CAPTURE(kind);
    const Plan plan = planOf(kind, "centre-chest", {"M", "XL", "2XL"}, 8_in, 8_in);
    CHECK(planFor(plan, "M").placed.drop == 3_in);
    CHECK(planFor(plan, "XL").placed.drop == 3_in);
    CHECK(planFor(plan, "2XL").placed.drop == 4_in);
    // Half of 8 in further down lies the centre, on the crease.
    CHECK(planFor(plan, "M").placed.centreOffset == 7_in);
    CHECK(planFor(plan, "2XL").placed.centreOffset == 8_in);
    CHECK(planFor(plan, "M").placed.lateral == 0_mm);
    CHECK(planFor(plan, "M").placed.centre.y == Approx(7 * 25.4));
  }
}

TEST_CASE("the wearer's left is the viewer's right on the front", "[placement]") {
  const Plan left = planOf("t-shirt", "left-chest", {"M"});
  const Plan right = planOf("t-shirt", "right-chest", {"M"});
  const Placed& onLeft = planFor(left, "M").placed;
  const Placed& onRight = planFor(right, "M").placed;
  CHECK(onLeft.lateral > 0_mm);
  CHECK(onRight.lateral < 0_mm);
  CHECK(onLeft.lateral == -onRight.lateral);
  CHECK(onLeft.centre.y == onRight.centre.y);
}

TEST_CASE("a chest design is measured from the high point of the shoulder", "[placement]") {
  const Plan plan = planOf("t-shirt", "left-chest", {"M"});
  const Placed& placed = planFor(plan, "M").placed;
  REQUIRE(placed.from == Landmark::ShoulderPoint);
  // The datum is the collar seam at centre front, the front neck drop below that point.
  const Length neckDrop = 550_mm * 0.16;
  CHECK(placed.centreBelowDatum == placed.centreOffset - neckDrop);
  CHECK(placed.drop == placed.centreOffset - 30_mm);
}

// common practice, no source: a hood design is turned so that it reads upright when the hood
// lies back, and is set towards the face edge on the centre crease.
TEST_CASE("a hood design is turned to read upright when the hood lies back", "[placement]") {
  const Plan plan = planOf("pullover-hoodie", "hood-back", {"M"});
  const PlacementPlan& hood = planFor(plan, "M");
  CHECK(hood.panel == PanelName::Hood);
  CHECK(hood.placed.turn == 180_deg);
  // The panel is drawn as the hood lies back, face edge on top: there the design is upright.
  CHECK(hood.placed.panelTurn == Angle());
  CHECK(hood.placed.lateral == 0_mm);
  CHECK(hood.placed.from == Landmark::FaceEdge);
  REQUIRE_FALSE(hood.placed.turnReasons.empty());
  CHECK(hood.placed.turnReasons.front().text.find("hood lies back") != std::string::npos);
}

TEST_CASE("a sleeve design has its top towards the shoulder", "[placement]") {
  const Plan plan = planOf("crew-sweatshirt", "left-sleeve", {"M"}, 60_mm, 40_mm);
  const Placed& placed = planFor(plan, "M").placed;
  CHECK(placed.turn == Angle());
  CHECK(placed.panelTurn == 180_deg);
}

TEST_CASE("every number of a placement has a reason with a basis", "[placement]") {
  for (const char* location : {"centre-chest", "left-chest", "right-chest", "upper-back",
                               "full-back", "left-sleeve", "right-sleeve", "hood-back"}) {
    CAPTURE(location);
    const Plan plan = planOf("pullover-hoodie", location, {"YM", "M", "2XL"}, 50_mm, 40_mm);
    for (const PlacementPlan& placement : plan.placements) {
      REQUIRE(placement.hasRule);
      for (const Reasons* reasons :
           {&placement.placed.dropReasons, &placement.placed.lateralReasons,
            &placement.placed.turnReasons}) {
        REQUIRE_FALSE(reasons->empty());
        for (const Reason& reason : *reasons) {
          CHECK_FALSE(reason.text.empty());
          CHECK_FALSE(reason.basis.empty());
        }
      }
    }
  }
}

TEST_CASE("the order may move and turn a design on top of the rule", "[placement]") {
  const Shop shop = sample::shop({sample::frame("A", 260_mm, 260_mm)});
  Order order = sample::order(sample::blank("t-shirt"), sample::design("d", 100_mm, 60_mm),
                              "centre-chest", {"M"});
  order.lines[0].placements[0].moveDown = 10_mm;
  order.lines[0].placements[0].turn = 90_deg;
  const Plan plan = planOrder(order, shop, sample::shippedRules());
  const Placed& placed = planFor(plan, "M").placed;
  CHECK(placed.drop == 3_in + 10_mm);
  // Turned by a quarter the design is 100 mm high.
  CHECK(placed.centreOffset == 3_in + 10_mm + 50_mm);
  CHECK(placed.panelTurn == 90_deg);
}

TEST_CASE("the order may move a design sideways on top of the rule", "[placement]") {
  const Shop shop = sample::shop({sample::frame("A", 260_mm, 260_mm)});
  Order order = sample::order(sample::blank("t-shirt"), sample::design("d", 60_mm, 40_mm),
                              "left-chest", {"M", "XL"});
  const Plan byRule = planOrder(order, shop, sample::shippedRules());
  order.lines[0].placements[0].moveRight = -12_mm;
  const Plan moved = planOrder(order, shop, sample::shippedRules());
  for (const char* size : {"M", "XL"}) {
    const Placed& before = planFor(byRule, size).placed;
    const Placed& after = planFor(moved, size).placed;
    CHECK(after.lateral == before.lateral - 12_mm);
    CHECK(after.centre.x == Approx(before.centre.x - 12.0));
    CHECK(after.bounds.min.x == Approx(before.bounds.min.x - 12.0));
    CHECK(after.drop == before.drop);
    CHECK(after.lateralReasons.back().basis == "order");
    CHECK_THAT(after.lateralReasons.back().text,
               Catch::Contains("1/2 in towards the wearer's right"));
  }
}

TEST_CASE("a house rule wins over the shipped one and says so", "[placement]") {
  Shop shop = sample::shop({sample::frame("A", 260_mm, 260_mm)});
  PlacementRule rule;
  rule.id = RuleId("house-chest");
  rule.location = LocationId("centre-chest");
  rule.sizes = {SizeName("M")};
  rule.from = Landmark::CollarSeam;
  rule.distance = 90_mm;
  rule.least = 80_mm;
  rule.most = 100_mm;
  rule.basis = "the owner";
  rule.house = true;
  shop.houseRules = {rule};
  const Plan plan =
      planOrder(sample::order(sample::blank("t-shirt"), sample::design("d", 100_mm, 60_mm),
                              "centre-chest", {"M", "XL"}),
                shop, sample::shippedRules());
  CHECK(planFor(plan, "M").placed.drop == 90_mm);
  CHECK(planFor(plan, "M").placed.rule == RuleId("house-chest"));
  CHECK(planFor(plan, "M").placed.dropReasons.front().text.find("house rule") == 0);
  CHECK(planFor(plan, "XL").placed.drop == 3_in);

  // What would apply without it is told, and nothing where nothing was beaten.
  const auto wins = [&plan](const char* size) {
    std::vector<std::string> beaten;
    for (const Reason& reason : planFor(plan, size).placed.dropReasons) {
      if (reason.text.find("wins over the rule ") == 0) {
        beaten.push_back(reason.rule.text());
        CHECK(reason.basis.find("common practice") == 0);
        CHECK(reason.text.find("3 in below the collar seam") != std::string::npos);
        CHECK(reason.text.find("the shop's own rules come first") != std::string::npos);
      }
    }
    return beaten;
  };
  CHECK(wins("M") == std::vector<std::string>{"centre-chest-adult"});
  CHECK(wins("XL").empty());
}

TEST_CASE("of the shipped rules the particular one says which general one it beat", "[placement]") {
  const Plan plan = planOf("polo", "left-chest", {"M"});
  const Placed& placed = planFor(plan, "M").placed;
  CHECK(placed.rule == RuleId("left-chest-polo-adult"));
  const auto beaten =
      std::find_if(placed.dropReasons.begin(), placed.dropReasons.end(),
                   [](const Reason& reason) { return reason.rule == RuleId("left-chest-adult"); });
  REQUIRE(beaten != placed.dropReasons.end());
  CHECK(
      beaten->text.find("wins over the rule left-chest-adult: centre of the design 8 in below the "
                        "high point of the shoulder") == 0);
}

TEST_CASE("a rule that measures from a mark which the garment lacks is passed over",
          "[placement]") {
  Shop shop = sample::shop({sample::frame("A", 260_mm, 260_mm)});
  PlacementRule rule;
  rule.id = RuleId("house-below-placket");
  rule.location = LocationId("centre-chest");
  rule.from = Landmark::PlacketEnd;
  rule.distance = rule.least = rule.most = 20_mm;
  rule.basis = "the owner";
  rule.house = true;
  shop.houseRules = {rule};
  const auto planOn = [&shop](const char* kind) {
    return planOrder(sample::order(sample::blank(kind), sample::design("d", 100_mm, 60_mm),
                                   "centre-chest", {"M"}),
                     shop, sample::shippedRules());
  };
  // A T-shirt has no placket: its end would count as the collar seam.
  const Plan tee = planOn("t-shirt");
  CHECK(planFor(tee, "M").placed.rule == RuleId("centre-chest-adult"));
  const Reason& last = planFor(tee, "M").placed.dropReasons.back();
  CHECK(last.rule == RuleId("house-below-placket"));
  CHECK(last.text.find("passed over the rule house-below-placket") == 0);
  CHECK(last.text.find("lacks the mark") != std::string::npos);
  const Plan polo = planOn("polo");
  const PlacementPlan& onPolo = planFor(polo, "M");
  CHECK(onPolo.placed.rule == RuleId("house-below-placket"));
  CHECK(onPolo.placed.centreBelowDatum ==
        onPolo.garment->measures.at(Measure::PlacketLength).value + 20_mm + 30_mm);
}

TEST_CASE("what goes on a middle is measured from an edge that can be felt", "[placement]") {
  const auto planned = [](const char* kind, const char* location, Length moveDown) {
    Order order =
        sample::order(sample::blank(kind), sample::design("d", 60_mm, 20_mm), location, {"M"});
    order.lines[0].placements[0].moveDown = moveDown;
    return planOrder(order, sample::shop({sample::frame("A", 120_mm, 80_mm)}),
                     sample::shippedRules());
  };
  // The sample's M is 550 mm wide and 710 mm long.
  const Plan bag = planned("tote-bag", "tote-centre", 0_mm);
  const Placed& onBag = planFor(bag, "M").placed;
  CHECK(onBag.from == Landmark::TopEdge);
  CHECK(onBag.centreOffset == 355_mm);
  CHECK(onBag.drop == 345_mm);
  const Plan towel = planned("bath-towel", "towel-border", 0_mm);
  const PlacementPlan& onTowel = planFor(towel, "M");
  CHECK(onTowel.placed.from == Landmark::HemEdge);
  const auto measure = [&onTowel](Measure name) {
    return onTowel.garment->measures.at(name).value;
  };
  CHECK(onTowel.placed.centreOffset ==
        measure(Measure::BorderAboveHem) + measure(Measure::BorderHeight) * 0.5);
  CHECK(onTowel.placed.drop == onTowel.placed.centreOffset - 10_mm);
  // Off the middle is off it upwards too.
  CHECK_FALSE(sample::hasFinding(bag, FindingCode::BeyondMostDrop));
  for (const Length move : {30_mm, -30_mm}) {
    const Plan moved = planned("tote-bag", "tote-centre", move);
    CHECK(sample::hasFinding(moved, FindingCode::BeyondMostDrop));
    CHECK_FALSE(sample::hasFinding(moved, FindingCode::BelowLeastDrop));
  }
}

TEST_CASE("a location that the garment lacks is a stop", "[placement]") {
  const Plan plan = planOf("t-shirt", "hood-back", {"M"});
  CHECK_FALSE(planFor(plan, "M").hasRule);
  const Finding& finding = sample::findingOf(plan, FindingCode::NoRule);
  CHECK(finding.severity == Severity::Stop);
  CHECK(finding.text.find("hood") != std::string::npos);
}

TEST_CASE("units change the words and never the plan", "[placement]") {
  const Order order =
      sample::order(sample::blank("pullover-hoodie"), sample::design("d", 150_mm, 120_mm),
                    "centre-chest", {"YM", "M", "2XL"});
  Shop shop = sample::shop({sample::frame("A", 200_mm, 230_mm)});
  shop.units = {LengthUnit::Inch, RulerMark::Sixteenth, WeightUnit::OuncesPerSquareYard};
  const Plan inches = planOrder(order, shop, sample::shippedRules());
  shop.units = {LengthUnit::Millimetre, RulerMark::Eighth, WeightUnit::GramsPerSquareMetre};
  const Plan metric = planOrder(order, shop, sample::shippedRules());
  REQUIRE(inches.placements.size() == metric.placements.size());
  for (std::size_t i = 0; i < inches.placements.size(); ++i) {
    CHECK(inches.placements[i].placed.centre == metric.placements[i].placed.centre);
    REQUIRE(inches.placements[i].frame.has_value() == metric.placements[i].frame.has_value());
    if (inches.placements[i].frame) {
      CHECK(inches.placements[i].frame->slack == metric.placements[i].frame->slack);
    }
  }
}
