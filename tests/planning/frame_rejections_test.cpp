// SPDX-License-Identifier: MIT
// Openings that a frame's ring passes or does not: of tubes, and of a pocket that is hooped alone.
#include <algorithm>
#include <catch2/catch.hpp>

#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

TEST_CASE("a ring goes in by the widest opening with its shorter side across",
          "[frame-rejections]") {
  Rules rules = sample::shippedRules();
  const auto kind = std::find_if(rules.kinds.begin(), rules.kinds.end(),
                                 [](const GarmentKind& k) { return k.id == KindId("t-shirt"); });
  REQUIRE(kind != rules.kinds.end());
  // As if the hem were sewn up: only the neck is left to go in by.
  kind->openings = {
      {"the neck", {PanelName::Front}, {}, Measure::NeckWidth, "", "made up for this test"}};
  const Order order = sample::order(sample::blank("t-shirt"), sample::design("d", 60_mm, 40_mm),
                                    "centre-chest", {"M"});
  const Length neck = order.blanks[0].chart.find(SizeName("M"))->measures.at(Measure::NeckWidth);
  const Length rim = 15_mm;
  const auto answer = [&](Length width, Length height) {
    const Shop shop =
        sample::shop({sample::frame("A", width - rim * 2.0, height - rim * 2.0, rim)});
    return planOrder(order, shop, rules).placements[0];
  };
  CHECK(answer(neck, neck + 20_mm).frame.has_value());
  CHECK(answer(neck + 20_mm, neck).frame.has_value());  // turned on its way in
  const PlacementPlan tooWide = answer(neck + 7_mm, neck + 20_mm);
  CHECK_FALSE(tooWide.frame.has_value());
  REQUIRE(tooWide.rejections.size() == 1);
  CHECK(tooWide.rejections[0].test == FrameTest::PassesOpening);
  CHECK(tooWide.rejections[0].missing == 7_mm);
  CHECK(tooWide.rejections[0].what.find("wider than the neck") != std::string::npos);
  // With a second one that lies flat nothing is too wide.
  kind->openings.push_back({"the front", {PanelName::Front}, {}, {}, "", "made up for this test"});
  CHECK(answer(neck + 7_mm, neck + 20_mm).frame.has_value());
}

TEST_CASE("a pocket is hooped alone: a ring goes in by its opening and stays within its stitching",
          "[frame-rejections]") {
  const Order order = sample::order(sample::blank("scrub-top"), sample::design("d", 40_mm, 20_mm),
                                    "on-pocket", {"M"});
  const auto planned = [&](Length width, Length height) {
    return planOrder(order, sample::shop({sample::frame("A", width - 10_mm, height - 10_mm, 5_mm)}),
                     sample::shippedRules());
  };
  const Plan fits = planned(75_mm, 60_mm);
  const PlacementPlan& held = fits.placements[0];
  CAPTURE(held.rejections.empty() ? std::string() : held.rejections[0].what);
  REQUIRE(held.frame.has_value());
  const Length pocket = held.garment->measures.at(Measure::PocketWidth).value;
  REQUIRE(pocket > 80_mm);
  const auto stepAt = [&held](std::string_view words) {
    const auto step = std::find_if(
        held.steps.begin(), held.steps.end(),
        [words](const Step& candidate) { return candidate.text.find(words) != std::string::npos; });
    REQUIRE(step != held.steps.end());
    return step - held.steps.begin();
  };
  CHECK(stepAt("Hoop the pocket alone") < stepAt("Close the frame"));
  CHECK(sample::findingOf(fits, FindingCode::LayerBehindPanel).text.find("stays open") !=
        std::string::npos);

  const Plan wide = planned(pocket + 9_mm, pocket + 40_mm);
  REQUIRE(wide.placements[0].rejections.size() == 1);
  const FrameRejection& tooWide = wide.placements[0].rejections[0];
  CHECK(tooWide.test == FrameTest::PassesOpening);
  CHECK(tooWide.missing == 9_mm);
  CHECK(tooWide.what == "its ring is 3/8 in wider than the pocket's opening");
  const Finding& stop = sample::findingOf(wide, FindingCode::FrameMeetsGarment);
  CHECK(stop.severity == Severity::Stop);
  CHECK(stop.text.find("before it is set on") != std::string::npos);

  // In by the opening, but as wide as the pocket between its stitching.
  const Plan tight = planned(pocket - 1_mm, 60_mm);
  REQUIRE(tight.placements[0].rejections.size() == 1);
  CHECK(tight.placements[0].rejections[0].test == FrameTest::ClearOfKeepOut);
  CHECK(tight.placements[0].rejections[0].what.find("pocket edge") != std::string::npos);

  // Elsewhere on the same front the hem is the opening and the pocket no matter.
  Order chest = order;
  chest.lines[0].placements[0].location = LocationId("left-chest");
  const Plan above = planOrder(chest, sample::shop({sample::frame("A", 100_mm, 60_mm, 5_mm)}),
                               sample::shippedRules());
  CHECK(above.placements[0].frame.has_value());
  CHECK_FALSE(sample::hasFinding(above, FindingCode::LayerBehindPanel));
}

TEST_CASE("every tubular panel of every kind says where a ring goes in", "[frame-rejections]") {
  for (const GarmentKind& kind : sample::shippedRules().kinds) {
    for (const PanelName panel : kind.panels) {
      CAPTURE(kind.id.text(), nameOf(panel));
      const auto openings = std::count_if(
          kind.openings.begin(), kind.openings.end(), [panel](const Opening& opening) {
            return std::find(opening.panels.begin(), opening.panels.end(), panel) !=
                   opening.panels.end();
          });
      // Of the flat pieces those whose sides are sewn or folded are tubes.
      const bool tube = kind.form != KindForm::Flat || kind.flat.sides != EdgeName::SideEdge;
      CHECK((openings > 0) == tube);
    }
  }
}

// Zips and snaps are metal as a rule: a magnetic frame would be drawn to them, any other would not
// close over them.
