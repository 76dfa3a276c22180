// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "creaseline/base/error.h"
#include "creaseline/planning/planner.h"
#include "creaseline/planning/report.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

Order manyLines(std::size_t lines) {
  Order order = sample::order(sample::blank("pullover-hoodie"), sample::design("d", 150_mm, 150_mm),
                              "centre-chest", {"YM", "M", "2XL"});
  const OrderLine line = order.lines.front();
  for (std::size_t i = 1; i < lines; ++i) {
    order.lines.push_back(line);
    order.lines.back().id = std::to_string(i + 1);
    order.lines.back().placements[0].scale = 0.5 + 0.01 * static_cast<double>(i % 60);
  }
  return order;
}

Shop someShop() {
  return sample::shop({sample::frame("A", 130_mm, 130_mm), sample::frame("B", 180_mm, 200_mm),
                       sample::frame("C", 240_mm, 250_mm)});
}

}  // namespace

TEST_CASE("the same order, shop and rules give the same plan on any number of threads",
          "[planner]") {
  const Order order = manyLines(40);
  const Shop shop = someShop();
  const ReportContext context{order, shop, sample::shippedRules()};
  std::string first;
  for (const unsigned threads : {1U, 2U, 5U}) {
    PlanOptions options;
    options.threads = threads;
    const Plan plan = planOrder(order, shop, sample::shippedRules(), options);
    const std::string text = jsonReport(plan, context);
    if (first.empty()) {
      first = text;
    }
    CHECK(text == first);
  }
}

TEST_CASE("progress goes up to one and planning can be cancelled", "[planner]") {
  const Order order = manyLines(20);
  const Shop shop = someShop();
  PlanOptions options;
  options.threads = 1;
  double last = 0.0;
  options.progress = [&last](double share) {
    CHECK(share >= last);
    last = share;
  };
  const Plan plan = planOrder(order, shop, sample::shippedRules(), options);
  CHECK(last == Approx(1.0));

  std::atomic<bool> cancel{false};
  options.cancel = &cancel;
  options.progress = [&cancel](double) { cancel = true; };
  CHECK_THROWS_AS(planOrder(order, shop, sample::shippedRules(), options), Cancelled);
}

TEST_CASE("placements come by line, location and size with quantities counted", "[planner]") {
  Order order = manyLines(3);
  order.lines[1].sizes[0].quantity = 4;
  order.lines[2].placements.push_back(order.lines[2].placements[0]);
  order.lines[2].placements[1].location = LocationId("upper-back");
  const Plan plan = planOrder(order, someShop(), sample::shippedRules());
  REQUIRE(plan.placements.size() == 12);
  CHECK(plan.counts.garments == 12);
  CHECK(plan.counts.placements == 15);
  CHECK(plan.placements[3].line == 1);
  CHECK(plan.placements[3].quantity == 4);
  CHECK(plan.placements[9].location == LocationId("upper-back"));
  CHECK(plan.placements[9].size == SizeName("YM"));
}

TEST_CASE("one placement planned alone equals the same in the whole plan", "[planner]") {
  const Order order = manyLines(4);
  const Shop shop = someShop();
  const Plan plan = planOrder(order, shop, sample::shippedRules());
  const PlacementPlan alone =
      planPlacement(order, 2, 0, SizeName("M"), shop, sample::shippedRules());
  const PlacementPlan& whole = plan.placements[2 * 3 + 1];
  CHECK(alone.placed.centre == whole.placed.centre);
  REQUIRE(alone.frame.has_value() == whole.frame.has_value());
  CHECK(alone.frame->frame == whole.frame->frame);
  CHECK(alone.frame->slack == whole.frame->slack);
  CHECK(alone.worst == whole.worst);
}

TEST_CASE("a placement planned live as if it were elsewhere equals the order changed so",
          "[planner]") {
  const Order order = manyLines(4);
  const Shop shop = someShop();
  LivePlanner live(order, shop, sample::shippedRules());
  for (const int mm : {0, 5, -7, 20}) {
    Order moved = order;
    OrderPlacement& asked = moved.lines[2].placements[0];
    asked.moveDown += Length::fromMm(mm);
    asked.turn = Angle::fromDegrees(mm);
    asked.scale = 0.9;
    const Plan plan = planOrder(moved, shop, sample::shippedRules());
    const PlacementPlan dragged = live.plan({2, 0, SizeName("M")}, asked);
    const PlacementPlan& whole = plan.placements[2 * 3 + 1];
    CAPTURE(mm);
    CHECK(dragged.placed == whole.placed);
    CHECK(dragged.frame == whole.frame);
    CHECK(dragged.cloth == whole.cloth);
    CHECK(dragged.worst == whole.worst);
  }
  CHECK_THROWS_AS(live.plan({2, 0, SizeName("9XL")}, order.lines[2].placements[0]), InputError);
}

// Marks that lead down, up, to a middle, and sideways rules that depend on the height.
TEST_CASE("a design laid somewhere lies there when the order asks for it", "[planner]") {
  struct Case {
    const char* kind;
    const char* location;
  };
  for (const Case& each : {Case{"pullover-hoodie", "centre-chest"}, Case{"polo", "left-chest"},
                           Case{"bath-towel", "towel-end"}, Case{"polo", "left-sleeve"},
                           Case{"bath-towel", "towel-border"}, Case{"t-shirt", "full-back"}}) {
    CAPTURE(each.kind, each.location);
    const Order order =
        sample::order(sample::blank(each.kind), sample::design("d", 50_mm, 30_mm), each.location,
                      {sample::blank(each.kind).chart.sizes[0].name.text()});
    const Shop shop = someShop();
    LivePlanner live(order, shop, sample::shippedRules());
    const LivePlanner::Spot spot{0, 0, order.lines[0].sizes[0].size};
    OrderPlacement asked = order.lines[0].placements[0];
    const PlacementPlan ruled = live.plan(spot, asked);
    REQUIRE(ruled.hasRule);
    asked.turn = 90_deg;
    for (const Point by :
         {Point{0.0, 0.0}, Point{7.25, 0.0}, Point{0.0, -3.5}, Point{-4.0, 11.0}}) {
      const Point wanted = ruled.placed.centre + by;
      const LivePlanner::Laid laid = live.layAt(spot, asked, wanted);
      const PlacementPlan there = live.plan(spot, laid.asked);
      CHECK(there.placed.centre.x == Approx(wanted.x).margin(1e-5));
      CHECK(there.placed.centre.y == Approx(wanted.y).margin(1e-5));
      Order changed = order;
      changed.lines[0].placements[0] = laid.asked;
      CHECK(planOrder(changed, shop, sample::shippedRules()).placements[0].placed == there.placed);
    }
  }
}

TEST_CASE("an order made in code with a broken reference is refused, not guessed", "[planner]") {
  Order order = manyLines(1);
  order.lines[0].placements[0].design = DesignId("nowhere");
  CHECK_THROWS_AS(planOrder(order, someShop(), sample::shippedRules()), InputError);
  order = manyLines(1);
  order.lines[0].sizes[0].size = SizeName("9XL");
  CHECK_THROWS_AS(planOrder(order, someShop(), sample::shippedRules()), InputError);
}

TEST_CASE("a size's band comes from its chart, then its name, then its body width", "[planner]") {
  Order order = manyLines(1);
  ChartSize& youth = order.blanks[0].chart.sizes[0];
  youth.bandGiven = false;
  const auto band = [&order] {
    return planOrder(order, someShop(), sample::shippedRules()).placements[0].band;
  };
  CHECK(band() == SizeBand::Youth);  // "YM"
  youth.name = SizeName("one");
  order.lines[0].sizes[0].size = SizeName("one");
  youth.measures[Measure::BodyWidth] = 400_mm;
  CHECK(band() == SizeBand::Youth);
  youth.measures[Measure::BodyWidth] = 560_mm;
  CHECK(band() == SizeBand::Adult);
  youth.measures[Measure::BodyWidth] = 700_mm;
  youth.measures[Measure::BodyLength] = 780_mm;
  CHECK(band() == SizeBand::AdultAboveXl);
}

TEST_CASE("A garment laid flat has the design where the plan has it, and nothing of frames",
          "[planner]") {
  Order order = manyLines(1);
  const Shop shop = someShop();
  const Rules& rules = sample::shippedRules();
  const Plan plan = planOrder(order, shop, rules);
  for (const PlacementPlan& planned : plan.placements) {
    const auto laid = layFlat(order, 0, 0, planned.size, shop, rules);
    REQUIRE(laid);
    CHECK(laid->placed.centre == planned.placed.centre);
    CHECK(laid->outlineOnPanel == planned.outlineOnPanel);
    CHECK(laid->panel == planned.panel);
    CHECK(laid->quantity == planned.quantity);
    CHECK_FALSE(laid->frame);
    CHECK(laid->rejections.empty());
  }
  // Without frames, place, quantity or design the garment lies there all the same.
  const SizeName size = plan.placements.front().size;
  CHECK(layFlat(order, 0, 0, size, Shop{}, rules)->placed.centre ==
        plan.placements.front().placed.centre);
  order.lines[0].sizes.clear();
  CHECK(layFlat(order, 0, 0, size, shop, rules)->quantity == 0);
  order.designs.clear();
  CHECK_FALSE(layFlat(order, 0, 0, size, shop, rules)->hasRule);
  const auto bare = layFlat(order, 0, std::nullopt, size, shop, rules);
  REQUIRE(bare);
  CHECK(bare->panel == PanelName::Front);
  CHECK(bare->garment->panel(PanelName::Front) != nullptr);
  const auto back = layPanelFlat(order, 0, PanelName::Back, size, shop, rules);
  REQUIRE(back);
  CHECK(back->panel == PanelName::Back);
  CHECK(back->garment->panel(PanelName::Back)->outline ==
        plan.placements.front().garment->panel(PanelName::Back)->outline);
  CHECK_FALSE(layPanelFlat(order, 0, PanelName::LeftLeg, size, shop, rules));
  CHECK_FALSE(layPanelFlat(order, 0, PanelName::Back, SizeName("none such"), shop, rules));
  CHECK_FALSE(layPanelFlat(order, 1, PanelName::Back, size, shop, rules));
  CHECK_FALSE(layFlat(order, 0, std::nullopt, SizeName("none such"), shop, rules));
  CHECK_FALSE(layFlat(order, 1, std::nullopt, size, shop, rules));
  order.blanks.clear();
  CHECK_FALSE(layFlat(order, 0, std::nullopt, size, shop, rules));
}
