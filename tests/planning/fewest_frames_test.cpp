// SPDX-License-Identifier: MIT
// Orders that are planned in more frames than they need, through the public planner.
#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "creaseline/base/error.h"
#include "creaseline/planning/change.h"
#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using sample::findingOf;
using sample::hasFinding;

namespace {

Plan planAll(const Order& order, const Shop& shop) {
  return planOrder(order, shop, sample::shippedRules());
}

// Three lines, whose designs need more and more room.
Order threeLines() {
  const Blank blank = sample::blank("t-shirt");
  Order order = sample::order(blank, sample::design("small", 60_mm, 40_mm), "centre-chest", {"M"});
  order.designs.push_back(sample::design("medium", 100_mm, 80_mm));
  order.designs.push_back(sample::design("large", 150_mm, 130_mm));
  for (const char* design : {"medium", "large"}) {
    OrderLine line = order.lines[0];
    line.id = design;
    line.placements[0].design = DesignId(design);
    order.lines.push_back(line);
  }
  return order;
}

// One frame for each, and each larger one serves the smaller designs as well.
Shop threeFrames() {
  return sample::shop({sample::frame("S", 100_mm, 80_mm), sample::frame("M", 140_mm, 120_mm),
                       sample::frame("L", 190_mm, 170_mm)});
}

std::set<std::string> framesOf(const Plan& plan) {
  std::set<std::string> frames;
  for (const PlacementPlan& placement : plan.placements) {
    REQUIRE(placement.frame.has_value());
    frames.insert(placement.frame->frame.text());
  }
  return frames;
}

}  // namespace

TEST_CASE("an order in three frames that one serves says so and can be sewn in it",
          "[fewest-frames]") {
  const Order order = threeLines();
  const Shop shop = threeFrames();
  const Plan made = planAll(order, shop);
  CHECK(framesOf(made) == std::set<std::string>{"S", "M", "L"});
  const Finding& finding = findingOf(made, FindingCode::FewerFramesWouldDo);
  CHECK(finding.severity == Severity::Note);
  CHECK(finding.wholeOrder);
  REQUIRE(finding.remedies.size() == 1);
  const auto changed = orderWith(order, finding, finding.remedies[0].change);
  REQUIRE(changed.has_value());
  const Plan again = planAll(*changed, shop);
  CHECK(framesOf(again) == std::set<std::string>{"L"});
  CHECK(again.counts.stops == 0);
  CHECK(again.counts.watches <= made.counts.watches);
  CHECK_FALSE(hasFinding(again, FindingCode::FewerFramesWouldDo));
  // What is left out says so.
  const auto& rejections = again.placements[0].rejections;
  CHECK(std::count_if(rejections.begin(), rejections.end(), [](const FrameRejection& rejection) {
          return rejection.test == FrameTest::NamedByOrder;
        }) == 2);
}

TEST_CASE("what stops as asked is served by no frame, and is left out aloud", "[fewest-frames]") {
  Order order = threeLines();
  OrderLine stopped = order.lines[0];
  stopped.id = "stopped";
  stopped.placements[0].moveDown = -(0.5_in);  // 2 1/2 in below the collar seam, of at least 3
  order.lines.push_back(stopped);
  const Shop shop = threeFrames();
  const Plan made = planAll(order, shop);
  REQUIRE(made.placements.back().stops());
  REQUIRE(made.placements.back().frame);
  const Finding& finding = findingOf(made, FindingCode::FewerFramesWouldDo);
  CHECK(finding.text.find("left out because of a stop: 1 hooping") != std::string::npos);
  // Without it the same is said, but for that.
  const Plan without = planAll(threeLines(), shop);
  CHECK(finding.text.starts_with(findingOf(without, FindingCode::FewerFramesWouldDo).text));
  // What stops in a frame of its own alone makes no order of two frames.
  Order two = order;
  two.lines.erase(two.lines.begin() + 1, two.lines.begin() + 3);
  two.lines[1].placements[0].design = DesignId("large");
  CHECK_FALSE(hasFinding(planAll(two, shop), FindingCode::FewerFramesWouldDo));
}

TEST_CASE("frames that none can replace are all kept", "[fewest-frames]") {
  Shop shop = threeFrames();
  shop.frames[2].panels = {PanelName::Back};
  Order order = threeLines();
  order.lines.pop_back();
  order.lines[1].placements[0].location = LocationId("full-back");
  order.lines[1].placements[0].design = DesignId("large");
  const Plan made = planAll(order, shop);
  CHECK(framesOf(made) == std::set<std::string>{"S", "L"});
  CHECK_FALSE(hasFinding(made, FindingCode::FewerFramesWouldDo));
}

TEST_CASE("a frame that leaves too little room for the shop's error replaces none",
          "[fewest-frames]") {
  Order order = threeLines();
  order.lines.erase(order.lines.begin() + 1);
  // L holds the large design and every smaller one; without it M holds no more than the medium.
  Shop shop = threeFrames();
  shop.frames[1] = sample::frame("M", 173_mm, 153_mm);  // 1.5 mm of room for the large one
  const Plan made = planAll(order, shop);
  CHECK(framesOf(made) == std::set<std::string>{"S", "L"});
  const Finding& finding = findingOf(made, FindingCode::FewerFramesWouldDo);
  CHECK(std::get<FramesChange>(finding.remedies[0].change).frames ==
        std::vector<FrameId>{FrameId("L")});
}

TEST_CASE("fewest frames tell what a second frame alike is for, and first keep what it gives",
          "[fewest-frames]") {
  Shop shop = threeFrames();
  Order order = threeLines();
  for (OrderLine& line : order.lines) {
    line.sizes[0].quantity = 10;
  }
  const auto remediesWith = [&](int small, int large) {
    shop.frames[0].quantity = small;
    shop.frames[2].quantity = large;
    return findingOf(planAll(order, shop), FindingCode::FewerFramesWouldDo);
  };
  const auto framesIn = [](const Remedy& remedy) {
    std::set<std::string> frames;
    for (const FrameId& id : std::get<FramesChange>(remedy.change).frames) {
      frames.insert(id.text());
    }
    return frames;
  };
  SECTION("one of each: nothing is hooped ahead either way") {
    const Finding finding = remediesWith(1, 1);
    CHECK_THAT(finding.text, Catch::Contains("0 of 30 hoopings can be hooped ahead"));
    REQUIRE(finding.remedies.size() == 1);
    CHECK(framesIn(finding.remedies[0]) == std::set<std::string>{"L"});
    CHECK_THAT(finding.remedies[0].result, Catch::Contains("0 of 30 hoopings can be hooped ahead"));
  }
  SECTION("two of the one that serves all: everything is") {
    const Finding finding = remediesWith(1, 2);
    CHECK_THAT(finding.text, Catch::Contains("10 of 30 hoopings can be hooped ahead"));
    REQUIRE(finding.remedies.size() == 1);
    CHECK_THAT(finding.remedies[0].result,
               Catch::Contains("30 of 30 hoopings can be hooped ahead"));
  }
  SECTION("two of another: that one is kept first") {
    const Finding finding = remediesWith(2, 1);
    REQUIRE(finding.remedies.size() == 2);
    CHECK(framesIn(finding.remedies[0]) == std::set<std::string>{"L", "S"});
    CHECK_THAT(finding.remedies[0].result,
               Catch::Contains("10 of 30 hoopings can be hooped ahead"));
    CHECK(framesIn(finding.remedies[1]) == std::set<std::string>{"L"});
    CHECK_THAT(finding.remedies[1].result, Catch::Contains("0 of 30 hoopings can be hooped ahead"));
  }
}

TEST_CASE("an order that names a frame the shop lacks is refused by name", "[fewest-frames]") {
  Order order = threeLines();
  order.frames = {FrameId("XXL")};
  REQUIRE_THROWS_AS(planAll(order, threeFrames()), InputError);
  try {
    planAll(order, threeFrames());
  } catch (const InputError& error) {
    CHECK(std::string(error.what()).find("XXL") != std::string::npos);
    CHECK(std::string(error.what()).find("frames") != std::string::npos);
  }
}

TEST_CASE("where the frames that an order names hold nothing any other is offered",
          "[fewest-frames]") {
  Order order = threeLines();
  order.frames = {FrameId("S")};
  const Plan made = planAll(order, threeFrames());
  const Finding& finding = findingOf(made, FindingCode::TooLargeForEveryFrame);
  const auto any =
      std::find_if(finding.remedies.begin(), finding.remedies.end(), [](const Remedy& remedy) {
        const auto* frames = std::get_if<FramesChange>(&remedy.change);
        return frames != nullptr && frames->frames.empty();
      });
  REQUIRE(any != finding.remedies.end());
  CHECK(*any->moves == 0_mm);
  CHECK(planAll(*orderWith(order, finding, any->change), threeFrames()).counts.stops == 0);
}

TEST_CASE("equal questions are answered alike wherever they stand", "[planner]") {
  Order order = threeLines();
  for (int i = 0; i < 3; ++i) {
    OrderLine again = order.lines[static_cast<std::size_t>(i)];
    again.id += "-again";
    again.note = "a second time";
    again.sizes[0].quantity = 7;
    order.lines.push_back(again);
  }
  Shop shop = threeFrames();
  shop.frames.pop_back();  // so that there are findings
  const Plan made = planAll(order, shop);
  for (std::size_t line = 0; line < order.lines.size(); ++line) {
    Order alone = order;
    alone.lines = {order.lines[line]};
    const Plan single = planAll(alone, shop);
    const PlacementPlan& here = made.placements[line];
    const PlacementPlan& there = single.placements[0];
    CHECK(here.line == line);
    CHECK(here.quantity == there.quantity);
    CHECK(here.placed == there.placed);
    CHECK(here.frame == there.frame);
    CHECK(here.rejections == there.rejections);
    std::vector<Finding> of;
    for (Finding finding : made.findings) {
      if (finding.line == line && !finding.wholeOrder) {
        finding.line = 0;
        of.push_back(std::move(finding));
      }
    }
    CHECK(of == single.findings);
  }
}
