// SPDX-License-Identifier: MIT
// The order on one sheet.
#include "creaseline/planning/order_summary.h"

#include <catch2/catch.hpp>

#include "plan_samples.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using creaseline::samples::kInches;

TEST_CASE("the summary says what is ordered, how much work it is and what is in its way",
          "[summary]") {
  const Rules rules = samples::rules();
  Order order = samples::order();
  order.lines[0].note = "rowers";
  const Shop shop = samples::shop();
  Plan plan = samples::plan(rules);
  Finding note;
  note.severity = Severity::Note;
  plan.findings.push_back(note);
  const ReportContext context{order, shop, sample::shippedRules()};
  const RunPlan runs = planRuns(plan, context, kInches);
  const OrderSummary summary = orderSummary(plan, runs, context);

  CHECK(summary.id == "2026-007");
  CHECK(summary.due == "2026-03-01");
  CHECK(summary.shop == "Quay stitchroom");
  REQUIRE(summary.lines.size() == 1);
  CHECK(summary.lines[0].blank == "Harbour hoodie");
  CHECK(summary.lines[0].note == "rowers");
  CHECK(summary.lines[0].garments == 6);
  CHECK(summary.lines[0].sizes == order.lines[0].sizes);
  REQUIRE(summary.lines[0].places.size() == 1);
  CHECK(summary.lines[0].places[0].location == "Centre chest");
  CHECK(summary.lines[0].places[0].design == "Club crest");
  CHECK(summary.lines[0].places[0].width == 8_in);
  CHECK(summary.lines[0].places[0].garments == 6);
  CHECK(summary.lines[0].places[0].held == 1);

  CHECK(summary.hoopings == 5);
  REQUIRE(summary.runs.size() == 1);
  CHECK(summary.runs[0].title == "Centre chest, Club crest");
  CHECK(summary.runs[0].garments == 5);
  CHECK(summary.time == runs.total);
  CHECK(summary.time == summary.runs[0].time);
  CHECK(summary.held.size() == 1);

  REQUIRE(summary.findings.size() == 2);  // notes stay in the report
  CHECK(summary.findings[0].severity == Severity::Stop);
  CHECK(summary.findings[0].remedy == "sew it at 94 %: Large magnetic holds it");
  CHECK(summary.findings[1].severity == Severity::Watch);
  CHECK(summary.findings[1].remedy.empty());
}

TEST_CASE("the middle size whose place is decided stands for a line, with its threads",
          "[summary]") {
  const Rules rules = samples::rules();
  Order order = samples::order();
  order.blanks[0].colours = {{"grey", {9, 9, 9}}, {"navy", {20, 30, 70}}};
  const Shop shop = samples::shop();
  Plan plan = samples::plan(rules);
  for (PlacementPlan& placement : plan.placements) {
    placement.garment = std::make_shared<GarmentShape>();
    placement.design.blocks = {{"white", {255, 255, 255}, 10, BlockKind::Sew, {}},
                               {"navy", {1, 2, 3}, 10, BlockKind::Sew, {}},
                               {"white", {255, 255, 255}, 10, BlockKind::Sew, {}}};
  }
  plan.placements[1].design.name = "Second crest";
  const ReportContext context{order, shop, sample::shippedRules()};
  SummaryLine line = orderSummary(plan, {}, context).lines[0];
  CHECK(line.cloth == Colour{20, 30, 70});
  REQUIRE(line.threads.size() == 2);
  CHECK(line.threads[0].name == "white");
  CHECK(line.threads[0].designs == std::vector<std::string>{"Club crest", "Second crest"});
  CHECK(line.threads[1].colour == Colour{1, 2, 3});
  CHECK(line.places[0].shown == 1U);

  plan.placements[1].hasRule = false;
  CHECK(orderSummary(plan, {}, context).lines[0].places[0].shown == 2U);
  for (PlacementPlan& placement : plan.placements) {
    placement.garment.reset();
  }
  CHECK_FALSE(orderSummary(plan, {}, context).lines[0].places[0].shown.has_value());
}
