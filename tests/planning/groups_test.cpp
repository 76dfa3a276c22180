// SPDX-License-Identifier: MIT
// Which sizes share a page.
#include "creaseline/planning/groups.h"

#include <catch2/catch.hpp>

#include "plan_samples.h"

using namespace creaseline;
using namespace creaseline::literals;
using creaseline::samples::kInches;
using creaseline::samples::kMillimetres;

namespace {

using Groups = std::vector<SizeGroup>;

// Two sizes of one placement, the second changed.
template <class Change>
Groups groupsOfTwo(Change change, const UnitChoice& units = kInches) {
  Plan plan;
  plan.placements = {samples::placement(), samples::placement()};
  change(plan.placements[1]);
  return groupSizes(plan, units);
}

const Groups kTogether = {{0, 1}};
const Groups kApart = {{0}, {1}};

}  // namespace

TEST_CASE("no placements make no groups", "[groups]") {
  CHECK(groupSizes(Plan(), kInches).empty());
}

TEST_CASE("sizes whose numbers round to the same mark share a group", "[groups]") {
  CHECK(groupsOfTwo([](PlacementPlan&) {}) == kTogether);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.placed.drop += 1_mm; }) == kTogether);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.placed.drop += 1_mm; }, kMillimetres) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.placed.drop += 0.125_in; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.placed.centreOffset += 4_mm; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.placed.centreBelowDatum += 4_mm; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.placed.lateral -= 4_mm; }) == kApart);
}

TEST_CASE("turn, frame and backing must agree exactly", "[groups]") {
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.placed.turn = Angle::fromMillidegrees(1); }) ==
        kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.frame->frame = FrameId("small"); }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.frame->turn = 90_deg; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.frame->centre.x += 4.0; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.frame->centre.x += 1.0; }) == kTogether);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.frame.reset(); }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.backing.layers = 2; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.backing.kind = BackingKind::TearAway; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.backing.topping = true; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.backing.needleSize = 80; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.hasRule = false; }) == kApart);
}

TEST_CASE("sizes without a rule share a group whatever else they hold", "[groups]") {
  Plan plan;
  plan.placements = {samples::placement(), samples::placement()};
  plan.placements[0].hasRule = false;
  plan.placements[1].hasRule = false;
  plan.placements[1].placed.drop += 1_in;
  CHECK(groupSizes(plan, kInches) == kTogether);
}

TEST_CASE("groups never cross lines or locations", "[groups]") {
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.line = 1; }) == kApart);
  CHECK(groupsOfTwo([](PlacementPlan& p) { p.placement = 1; }) == kApart);
}

TEST_CASE("a group may skip sizes between, and groups keep the order of the plan", "[groups]") {
  Plan plan;
  for (int i = 0; i < 5; ++i) {
    plan.placements.push_back(samples::placement());
  }
  plan.placements[1].placed.drop += 1_in;
  plan.placements[3].placed.drop += 1_in;
  plan.placements[4].line = 1;
  CHECK(groupSizes(plan, kInches) == Groups{{0, 2}, {1, 3}, {4}});
}
