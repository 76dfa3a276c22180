// SPDX-License-Identifier: MIT
#include "creaseline/planning/drawn_words.h"

#include <catch2/catch.hpp>

#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

constexpr UnitChoice kEighths{LengthUnit::Inch, RulerMark::Eighth, WeightUnit::GramsPerSquareMetre};

Plan plannedAt(const std::string& location, const std::vector<std::string>& sizes = {"M"}) {
  return planOrder(sample::order(sample::blank("pullover-hoodie"),
                                 sample::design("mark", 60_mm, 40_mm), location, sizes),
                   sample::shop({sample::frame("a", 110_mm, 100_mm)}), sample::shippedRules());
}

}  // namespace

TEST_CASE("the least room counts in each direction, whatever size it is of", "[words]") {
  Plan plan = plannedAt("centre-chest", {"M", "XL"});
  REQUIRE(plan.placements.size() == 2);
  plan.placements[0].frame->slack = {1_mm, 5_mm, 2_mm, 9_mm, Angle::fromDegrees(3.0)};
  plan.placements[1].frame->slack = {4_mm, 3_mm, 8_mm, 6_mm, Angle::fromDegrees(2.0)};
  const Slack least = leastSlackAsDrawn(plan, {0, 1});
  CHECK(least == Slack{1_mm, 3_mm, 2_mm, 6_mm, Angle::fromDegrees(2.0)});
}

TEST_CASE("a sleeve is drawn upside down, and so are its words", "[words]") {
  Plan plan = plannedAt("left-sleeve");
  PlacementPlan& sleeve = plan.placements.front();
  REQUIRE(sleeve.frame);
  sleeve.frame->turn = Angle();
  sleeve.frame->slack = {1_mm, 2_mm, 3_mm, 4_mm, Angle()};
  CHECK(leastSlackAsDrawn(plan, {0}) == Slack{2_mm, 1_mm, 4_mm, 3_mm, Angle()});
  Frame frame = sample::frame("a", 110_mm, 100_mm);
  frame.bracket = BracketSide::Top;
  CHECK(bracketAsDrawn(frame, sleeve) == "bottom");
  sleeve.frame->centre = sleeve.placed.centre + Point{25.4, -12.7};
  CHECK(frameOffsetAsDrawn(sleeve, kEighths) ==
        "1/2 in below and 1 in left of the design's centre");
}

TEST_CASE("the bracket's side follows the frame's turn on the garment", "[words]") {
  Plan plan = plannedAt("centre-chest");
  PlacementPlan& chest = plan.placements.front();
  REQUIRE(chest.frame);
  Frame frame = sample::frame("a", 110_mm, 100_mm);
  const auto [bracket, turn, words] = GENERATE(table<BracketSide, double, std::string>(
      {{BracketSide::Top, 0.0, "top"},
       {BracketSide::Top, 90.0, "right"},  // turns are clockwise to the viewer
       {BracketSide::Left, 90.0, "top"},
       {BracketSide::Bottom, 180.0, "top"},
       {BracketSide::Both, 0.0, "left and right"},
       {BracketSide::Both, 90.0, "top and bottom"}}));
  frame.bracket = bracket;
  chest.frame->turn = Angle::fromDegrees(turn);
  CHECK(bracketAsDrawn(frame, chest) == words);
}

TEST_CASE("a frame off the design's centre says by how much, to the mark", "[words]") {
  Plan plan = plannedAt("centre-chest");
  PlacementPlan& chest = plan.placements.front();
  REQUIRE(chest.frame);
  chest.frame->centre = chest.placed.centre;
  CHECK(frameOffsetAsDrawn(chest, kEighths).empty());
  chest.frame->centre = chest.placed.centre + Point{0.5, 0.0};  // under half a mark
  CHECK(frameOffsetAsDrawn(chest, kEighths).empty());
  chest.frame->centre = chest.placed.centre + Point{0.0, -12.7};
  CHECK(frameOffsetAsDrawn(chest, kEighths) == "1/2 in above the design's centre");
}

TEST_CASE("the design's turn in the frame is said with its direction", "[words]") {
  Plan plan = plannedAt("centre-chest");
  PlacementPlan& chest = plan.placements.front();
  REQUIRE(chest.frame);
  const auto [panelTurn, frameTurn, words] =
      GENERATE(table<double, double, std::string>({{0.0, 0.0, "not turned against the frame"},
                                                   {0.0, 90.0, "turned by 90° anticlockwise"},
                                                   {90.0, 0.0, "turned by 90° clockwise"},
                                                   {180.0, 0.0, "turned by 180°"}}));
  chest.placed.panelTurn = Angle::fromDegrees(panelTurn);
  chest.frame->turn = Angle::fromDegrees(frameTurn);
  CHECK(designInFramePhrase(chest) == words);
}
