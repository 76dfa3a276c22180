// SPDX-License-Identifier: MIT
// Plans made by hand.
#include "plan_samples.h"

namespace creaseline::samples {

using namespace creaseline::literals;

SizeChart chart() {
  SizeChart chart;
  for (const char* name : {"YS", "YM", "S", "M", "L", "XL", "2XL"}) {
    ChartSize size;
    size.name = SizeName(name);
    chart.sizes.push_back(size);
  }
  return chart;
}

Order order() {
  Blank blank;
  blank.id = BlankId("hoodie");
  blank.name = "Harbour hoodie";
  blank.kind = KindId("pullover-hoodie");
  blank.fabric.name = "three-end fleece";
  blank.fabric.weight = ArealWeight::fromGramsPerSquareMetre(320.0);
  blank.chart = chart();

  Design design;
  design.id = DesignId("crest");
  design.name = "Club crest";
  design.width = 8_in;
  design.height = 6_in;
  design.stitches = 24800;

  OrderPlacement chest;
  chest.location = LocationId("centre-chest");
  chest.design = design.id;
  OrderLine line;
  line.id = "1";
  line.blank = blank.id;
  line.colour = "navy";
  line.sizes = {{SizeName("S"), 2}, {SizeName("M"), 3}, {SizeName("2XL"), 1}};
  line.placements = {chest};

  Order order;
  order.id = "2026-007";
  order.title = "Spring kit";
  order.customer = "Ferry club";
  order.due = "2026-03-01";
  order.blanks = {blank};
  order.designs = {design};
  order.lines = {line};
  return order;
}

Shop shop() {
  const Window window = Window::rectangle(200_mm, 230_mm).value();
  const Window body = Window::rectangle(240_mm, 270_mm).value();
  Shop shop;
  shop.name = "Quay stitchroom";
  shop.machines.push_back({MachineId("one"), "One", 10, window, 700});
  shop.frames.push_back({FrameId("large"),
                         "Large magnetic",
                         FrameKind::Magnetic,
                         window,
                         body,
                         std::nullopt,
                         std::nullopt,
                         BracketSide::Top,
                         {Angle()},
                         {},
                         1});
  return shop;
}

Rules rules() {
  Rules rules;
  rules.locations = {
      {LocationId("centre-chest"), "Centre chest", PanelName::Front, Side::Centre, Side::Centre}};
  rules.cautions = {{RuleId("magnet-pinch"), CautionOccasion::MagneticFrame,
                     "Magnets snap together; keep fingers clear", "common practice, no source"}};
  return rules;
}

PlacementPlan placement() {
  PlacementPlan plan;
  plan.size = SizeName("M");
  plan.quantity = 3;
  plan.location = LocationId("centre-chest");
  plan.panel = PanelName::Front;
  plan.design = order().designs.front();
  plan.hasRule = true;
  plan.placed.from = Landmark::CollarSeam;
  plan.placed.drop = 3_in;
  plan.placed.centreOffset = 6_in;
  plan.placed.centreBelowDatum = 6_in;
  plan.placed.centre = {0.0, 152.4};
  plan.placed.rule = RuleId("chest-adult");
  plan.placed.dropReasons = {{"top of the design 3 in below the collar seam up to adult XL",
                              RuleId("chest-adult"), "common practice, no source", false}};
  plan.cloth = {{"left side seam", 152_mm, 10_mm, true}};
  FrameChoice frame;
  frame.frame = FrameId("large");
  frame.centre = {0.0, 152.4};
  frame.slack = {6_mm, 6_mm, 8_mm, 3_mm, Angle::fromDegrees(2.16)};
  frame.bodyRoom = 40_mm;
  frame.bodyNearest = "pocket edge";
  plan.frame = frame;
  plan.backing.kind = BackingKind::CutAway;
  plan.backing.leastWeight = ArealWeight::fromGramsPerSquareMetre(85.0);
  plan.backing.hold = HoldMethod::Floated;
  plan.backing.needlePoint = NeedlePoint::Ball;
  plan.backing.cutWidth = 280_mm;
  plan.backing.cutHeight = 310_mm;
  plan.backing.stock = StockId("cut-away-roll");
  plan.backing.stockName = "Cut-away roll";
  plan.backing.fired = {
      {"knit cloth needs a support that stays", RuleId("knit-cut-away"), "house rule", false}};
  plan.steps = {{"navy: sew 24800 stitches", false}, {"trim the backing", true}};
  plan.assumed = {Measure::NeckWidth};
  return plan;
}

Plan plan(const Rules& rules) {
  Plan plan;
  plan.orderId = "2026-007";
  PlacementPlan small = placement();
  small.size = SizeName("S");
  small.quantity = 2;
  PlacementPlan medium = placement();
  medium.placed.drop += 1_mm;  // less than half a mark of the ruler
  medium.cautions = {rules.cautions.data()};
  PlacementPlan large = placement();
  large.size = SizeName("2XL");
  large.quantity = 1;
  large.placed.drop += 1_in;
  large.placed.centreOffset += 1_in;
  large.placed.centreBelowDatum += 1_in;
  large.frame.reset();
  large.rejections = {
      {FrameId("large"), Angle(), FrameTest::HoldsDesign, 12_mm, "12 mm too narrow", 0.94159}};
  large.largestScale = 0.94159;
  large.worst = Severity::Stop;
  plan.placements = {small, medium, large};

  Finding stop;
  stop.severity = Severity::Stop;
  stop.code = FindingCode::TooLargeForEveryFrame;
  stop.sizes = {SizeName("2XL")};
  stop.place = "line 1, Harbour hoodie, centre chest, size 2XL";
  stop.text = "The design is too large for every frame of the shop";
  stop.numbers = {{"too wide by", 12_mm}};
  stop.remedies = {{ScaleChange{0.94}, "sew it at 94 %", "Large magnetic holds it", 5_mm}};
  Finding watch;
  watch.severity = Severity::Watch;
  watch.code = FindingCode::LittleRoom;
  watch.sizes = {SizeName("S"), SizeName("M")};
  watch.place = "line 1, Harbour hoodie, centre chest, sizes S M";
  watch.text = "The frame leaves less room than the shop's hooping error.";
  plan.findings = {stop, watch};
  plan.counts = {6, 6, 1, 1, 0};
  return plan;
}

}  // namespace creaseline::samples
