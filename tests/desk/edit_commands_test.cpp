// SPDX-License-Identifier: MIT
#include "desk/edit_commands.h"

#include <algorithm>
#include <random>

#include "creaseline/planning/change.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;
using namespace creaseline::literals;

namespace {

Finding findingFor(const Order& order, std::size_t line, std::size_t sizes) {
  Finding finding;
  finding.line = line;
  for (std::size_t i = 0; i < sizes; ++i) {
    finding.sizes.push_back(order.lines[line].sizes[i].size);
  }
  return finding;
}

}  // namespace

TEST_CASE("Undoing all random changes gives the order back, redoing all gives the end back",
          "[desk][undo][random]") {
  const DemoCopy demo;
  Settings settings(demo.settings());
  Document document(sharedRules(), settings);
  document.openOrder(demo.order());
  REQUIRE(waitFor([&] { return !document.busy() && document.orderInHand() != nullptr; }));
  const Order start = *document.orderInHand();

  const unsigned seed = 20260118;
  CAPTURE(seed);
  std::mt19937 random(seed);
  const auto upTo = [&random](std::size_t count) {
    return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
  };
  int applied = 0;
  for (int i = 0; i < 40; ++i) {
    const Order& now = *document.orderInHand();
    const std::size_t line = upTo(now.lines.size());
    Finding finding = findingFor(now, line, 1 + upTo(now.lines[line].sizes.size()));
    finding.placement = upTo(now.lines[line].placements.size());
    const std::vector<Change> changes{
        ScaleChange{0.9},
        TurnChange{90_deg},
        MoveChange{-3_mm},
        DesignSizesChange{{{0.8, finding.sizes}}},
        DesignSizesOfLinesChange{
            {{0, 0, {{0.8, finding.sizes}}}, {line, finding.placement, {{0.7, finding.sizes}}}}},
        ShopChange{"buy"}};
    applied += applyRemedy(document, finding, {changes[upTo(changes.size())], "change", {}, {}});
  }
  const Order end = *document.orderInHand();
  REQUIRE(applied > 10);
  REQUIRE(document.undoStack().count() == applied);
  CHECK_FALSE(end == start);
  CHECK(end.garments() == start.garments());
  while (document.undoStack().canUndo()) {
    document.undoStack().undo();
  }
  CHECK(*document.orderInHand() == start);
  CHECK(document.undoStack().isClean());
  while (document.undoStack().canRedo()) {
    document.undoStack().redo();
  }
  CHECK(*document.orderInHand() == end);
}

TEST_CASE("Sizes of a design for several lines are one step with a name, and undo takes all back",
          "[desk][undo]") {
  const DemoCopy demo;
  // The juniors' monogram as wide as the rowers'.
  DemoCopy::edit(demo.order(), "\"scale\": 0.95", "\"scale\": 1");
  DemoCopy::edit(demo.order(), "\"scale\": 0.9", "\"scale\": 1");
  Settings settings(demo.settings());
  Document document(sharedRules(), settings);
  document.openOrder(demo.order());
  REQUIRE(waitFor([&] { return !document.busy() && document.planned() != nullptr; }));
  const Order start = *document.orderInHand();
  const std::vector<Finding> findings = document.planned()->plan()->findings;
  const auto finding = std::find_if(findings.begin(), findings.end(), [](const Finding& each) {
    return each.code == FindingCode::OneSizeDoesNotServeAll && each.wholeOrder;
  });
  REQUIRE(finding != findings.end());
  const auto smaller = std::find_if(
      finding->remedies.begin(), finding->remedies.end(),
      [](const Remedy& remedy) { return remedy.text.find("have 1 size of the design made") == 0; });
  REQUIRE(smaller != finding->remedies.end());
  REQUIRE(applyRemedy(document, *finding, *smaller));
  CHECK(document.undoStack().count() == 1);
  CHECK(document.undoStack().undoText().startsWith(
      QStringLiteral("Have 1 size of the design made, where line by line it would be 2")));
  CHECK(document.undoStack().undoText().endsWith(u'…'));
  CHECK(document.undoStack().undoText().size() <= 80);
  const Order end = *document.orderInHand();
  CHECK(end.lines[0].placements[0].scale < start.lines[0].placements[0].scale);
  CHECK(end.lines[1].placements[0].scale == end.lines[0].placements[0].scale);
  CHECK(end.garments() == start.garments());
  document.undoStack().undo();
  CHECK(*document.orderInHand() == start);
  CHECK(document.undoStack().isClean());
  document.undoStack().redo();
  CHECK(*document.orderInHand() == end);
}

TEST_CASE("Every remedy that the planner offers for the demo keeps its word on the desk",
          "[desk][undo]") {
  const auto planned = plannedDemo();
  int tried = 0;
  for (const Finding& finding : planned->plan()->findings) {
    for (const Remedy& remedy : finding.remedies) {
      const auto changed = orderWith(*planned->order(), finding, remedy.change);
      if (!changed) {
        continue;
      }
      ++tried;
      const Plan plan = planOrder(*changed, *planned->shop(), planned->rules());
      const std::size_t line =
          finding.line + (changed->lines.size() > planned->order()->lines.size() ? 1 : 0);
      CAPTURE(finding.place, remedy.text);
      for (const Finding& left : plan.findings) {
        if (left.line == line && left.placement == finding.placement) {
          CHECK(left.severity != Severity::Stop);
          CHECK(!(left.code == finding.code && left.severity <= finding.severity &&
                  left.text == finding.text));
        }
      }
    }
  }
  CHECK(tried > 0);
}
