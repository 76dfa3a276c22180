// SPDX-License-Identifier: MIT
// What sewn garments must measure.
#include "creaseline/planning/quality_check.h"

#include <catch2/catch.hpp>

#include "plan_samples.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using creaseline::samples::kInches;
using creaseline::samples::kMillimetres;

namespace {

PlacementRule rule(Anchor anchor, Length least, Length most) {
  PlacementRule rule;
  rule.id = RuleId("chest-adult");
  rule.anchor = anchor;
  rule.least = least;
  rule.most = most;
  return rule;
}

// A single size with that rule of the house: drop 3 in, centre 6 in. Tolerance 1/4 in.
QualityRow rowOf(const PlacementRule& rule, const PlacementPlan& placement,
                 const UnitChoice& units = kInches) {
  const Order order = samples::order();
  Shop shop = samples::shop();
  shop.houseRules = {rule};
  Plan plan;
  plan.placements = {placement};
  const QualityCheck check = qualityCheck(plan, {order, shop, sample::shippedRules()}, units);
  REQUIRE(check.parts.size() == 1);
  REQUIRE(check.parts[0].rows.size() == 1);
  return check.parts[0].rows[0];
}

}  // namespace

TEST_CASE("the drop may differ by the tolerance within the rule's least and most", "[quality]") {
  const auto allowed = [](const PlacementRule& bound) {
    return rowOf(bound, samples::placement()).dropAllowed;
  };
  CHECK(allowed(rule(Anchor::NearEdge, 2_in, 5_in)) == "2 3/4 to 3 1/4 in");
  CHECK(allowed(rule(Anchor::NearEdge, 3_in, 5_in)) == "3 to 3 1/4 in");
  CHECK(allowed(rule(Anchor::NearEdge, 2_in, 3.125_in)) == "2 3/4 to 3 1/8 in");
  // A bound between marks is rounded to the safe side.
  CHECK(allowed(rule(Anchor::NearEdge, 74_mm, 80_mm)) == "3 to 3 1/8 in");
  CHECK(allowed(rule(Anchor::NearEdge, 74_mm, 79_mm)) == "3 in");
}

TEST_CASE("a rule for the centre bounds the edge by half the design", "[quality]") {
  // Centre 6 in below, 3 in from the design's edge: at least 5 7/8 is a drop of 2 7/8.
  CHECK(rowOf(rule(Anchor::Centre, 5.875_in, 9_in), samples::placement()).dropAllowed ==
        "2 7/8 to 3 1/4 in");
}

TEST_CASE("where the order lies beyond the rule, no further", "[quality]") {
  const QualityRow row = rowOf(rule(Anchor::NearEdge, 3.5_in, 5_in), samples::placement());
  CHECK(row.drop == 3_in);
  CHECK(row.dropLeast == 3_in);
  CHECK(row.dropMost == 3.25_in);
}

TEST_CASE("sideways is measured from the centre line to the wearer's side", "[quality]") {
  PlacementPlan placement = samples::placement();
  const PlacementRule bound = rule(Anchor::NearEdge, 2_in, 5_in);
  QualityRow row = rowOf(bound, placement);
  CHECK(row.sideways == 0_mm);
  CHECK(row.sidewaysFrom == "on the centre crease");
  CHECK(row.sidewaysAllowed == "within 1/4 in");
  CHECK(row.dropFrom == "below the collar seam, to the top of the design");

  placement.placed.lateral = -4.1_in;
  row = rowOf(bound, placement);
  CHECK(row.sideways == 4.125_in);
  CHECK(row.sidewaysFrom == "to the wearer's right of the centre crease (viewer's left)");
  CHECK(row.sidewaysAllowed == "3 7/8 to 4 3/8 in");

  placement.panel = PanelName::LeftSleeve;
  placement.placed.lateral = 12_mm;
  row = rowOf(bound, placement, kMillimetres);
  CHECK(row.sidewaysFrom == "from the fold of the sleeve towards the front of the garment");
  CHECK(row.sidewaysAllowed == "6 to 18 mm");  // 1/4 in is 6 whole millimetres
}

TEST_CASE("parts follow lines and locations, and what is held is not checked", "[quality]") {
  const Rules rules = samples::rules();
  Order order = samples::order();
  order.lines.push_back(order.lines[0]);
  order.lines[1].id = "2";
  const Shop shop = samples::shop();
  Plan plan = samples::plan(rules);  // S, M, and 2XL that stops
  plan.placements.push_back(samples::placement());
  plan.placements.back().line = 1;
  const QualityCheck check = qualityCheck(plan, {order, shop, sample::shippedRules()}, kInches);
  REQUIRE(check.parts.size() == 2);
  CHECK(check.parts[0].rows.size() == 2);
  CHECK(check.parts[0].location == "Centre chest");
  CHECK(check.parts[0].rows[0].size == SizeName("S"));
  CHECK(check.parts[0].rows[0].garments == 2);
  CHECK(check.parts[1].lineId == "2");
  CHECK(check.tolerance == 0.25_in);
  CHECK(check.toleranceBasis == "common practice, no source");
}
