// SPDX-License-Identifier: MIT
// Every number of a plan answers: which rule, on what basis, which measure, assumed or given, and
// what would change it; and what is said to change it does.
#include <algorithm>
#include <catch2/catch.hpp>

#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

Plan plannedAlone(const Order& order, const Shop& shop) {
  PlanOptions options;
  options.checkRemedies = false;
  return planOrder(order, shop, sample::shippedRules(), options);
}

void checkAnswers(const Reasons& reasons) {
  CHECK(std::any_of(reasons.begin(), reasons.end(),
                    [](const Reason& reason) { return !reason.changedBy.empty(); }));
  for (const Reason& reason : reasons) {
    CAPTURE(reason.text);
    CHECK_FALSE(reason.text.empty());
    CHECK_FALSE(reason.basis.empty());
    if (reason.assumed) {
      REQUIRE(reason.measure.has_value());
      CHECK(reason.changedBy == "measuring it on the garment");
    }
  }
}

}  // namespace

TEST_CASE("every number of every location on every kind answers", "[reasons]") {
  const Shop shop = sample::shop({sample::frame("A", 60_mm, 60_mm, 5_mm)});
  int placements = 0;
  for (const GarmentKind& kind : sample::shippedRules().kinds) {
    for (const Location& location : sample::shippedRules().locations) {
      if (!kind.has(location.panel)) {
        continue;
      }
      const Plan plan =
          plannedAlone(sample::order(sample::blank(kind.id.text()),
                                     sample::design("d", 12_mm, 8_mm), location.id.text(), {"M"}),
                       shop);
      for (const PlacementPlan& placement : plan.placements) {
        if (!placement.hasRule) {
          continue;
        }
        ++placements;
        CAPTURE(kind.id.text(), location.id.text());
        checkAnswers(placement.placed.dropReasons);
        checkAnswers(placement.placed.lateralReasons);
        checkAnswers(placement.placed.turnReasons);
        checkAnswers(placement.backing.fired);
        if (placement.frame) {
          checkAnswers(placement.frame->reasons);
        }
        // A measure that the answer rests on is assumed in its reasons if the plan says so.
        for (const Reason& reason : placement.placed.dropReasons) {
          if (reason.measure) {
            const bool listed =
                std::count(placement.assumed.begin(), placement.assumed.end(), *reason.measure) > 0;
            CHECK(reason.assumed == placement.garment->measures.at(*reason.measure).assumed);
            CHECK((!reason.assumed || listed));
          }
        }
      }
    }
  }
  CHECK(placements > 100);
}

TEST_CASE("what a reason says would change a number does", "[reasons]") {
  Order order = sample::order(sample::blank("t-shirt"), sample::design("d", 100_mm, 60_mm),
                              "centre-chest", {"M"});
  Shop shop = sample::shop({sample::frame("A", 200_mm, 130_mm)});
  const PlacementPlan before = plannedAlone(order, shop).placements[0];
  const Reason& drop = before.placed.dropReasons.front();
  CHECK(drop.changedBy.find("a house rule of the shop") == 0);
  CHECK(drop.changedBy.find("a move in the order") != std::string::npos);

  PlacementRule house = *std::find_if(
      sample::shippedRules().placement.begin(), sample::shippedRules().placement.end(),
      [&drop](const PlacementRule& rule) { return rule.id == drop.rule; });
  house.id = RuleId("ours");
  house.house = true;
  house.distance += 10_mm;
  shop.houseRules = {house};
  const PlacementPlan ruled = plannedAlone(order, shop).placements[0];
  CHECK(ruled.placed.drop == before.placed.drop + 10_mm);
  CHECK(ruled.placed.dropReasons.front().changedBy.find("another house rule") == 0);

  order.lines[0].placements[0].moveDown = 5_mm;
  CHECK(plannedAlone(order, shop).placements[0].placed.drop == ruled.placed.drop + 5_mm);

  // The frame's room is judged by the shop's error.
  shop.hoopingError = HoopingError{1_mm, 1_mm, 1_deg, "judged"};
  const PlacementPlan judged = plannedAlone(order, shop).placements[0];
  CHECK(judged.frame->reasons.front().basis == "judged");
  CHECK(judged.frame->reasons.front().text != ruled.frame->reasons.front().text);
}
