// SPDX-License-Identifier: MIT
#include "desk/edit_commands.h"

#include <random>

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

TEST_CASE("A remedy for all sizes changes the placement where it stands", "[desk][undo]") {
  const Order& order = *plannedDemo()->order();
  const Finding finding = findingFor(order, 0, order.lines[0].sizes.size());
  const OrderPlacement before = order.lines[0].placements[0];
  const auto changed = [&](const Change& change) {
    const auto lines = linesWith(order, finding, change);
    REQUIRE(lines.has_value());
    CHECK(lines->size() == order.lines.size());
    return (*lines)[0].placements[0];
  };
  CHECK(changed(ScaleChange{0.5}).scale == before.scale * 0.5);
  CHECK(changed(TurnChange{90_deg}).turn == before.turn + 90_deg);
  CHECK(changed(SplitChange{2}).split);
  CHECK(changed(MoveChange{5_mm}).moveDown == before.moveDown + 5_mm);
  CHECK(changed(LocationChange{LocationId("upper-back")}).location == LocationId("upper-back"));
}

TEST_CASE("A remedy for some sizes makes a line of their own and loses no garment",
          "[desk][undo]") {
  const Order& order = *plannedDemo()->order();
  const Finding finding = findingFor(order, 0, 2);
  for (const Change& change : {Change(ScaleChange{0.5}), Change(TurnChange{90_deg}),
                               Change(SizeSplitChange{0.5, finding.sizes})}) {
    const auto lines = linesWith(order, finding, change);
    REQUIRE(lines.has_value());
    REQUIRE(lines->size() == order.lines.size() + 1);
    CHECK((*lines)[0].placements == order.lines[0].placements);
    CHECK((*lines)[1].placements[0] != order.lines[0].placements[0]);
    CHECK((*lines)[1].sizes.size() == 2);
    CHECK((*lines)[1].id != (*lines)[0].id);
    CHECK((*lines)[0].garments() + (*lines)[1].garments() == order.lines[0].garments());
  }
}

TEST_CASE("What must be bought or made anew changes nothing here", "[desk][undo]") {
  const Order& order = *plannedDemo()->order();
  const Finding finding = findingFor(order, 0, 1);
  CHECK_FALSE(linesWith(order, finding, ShopChange{"buy"}).has_value());
  CHECK_FALSE(linesWith(order, finding, StitchesChange{1000}).has_value());
  Finding nowhere = finding;
  nowhere.line = order.lines.size();
  CHECK_FALSE(linesWith(order, nowhere, ScaleChange{0.5}).has_value());
}

TEST_CASE("Undoing all random changes gives the order back, redoing all gives the end back",
          "[desk][undo][random]") {
  const DemoCopy demo;
  Settings settings(demo.settings());
  Document document({&shippedRules(), [](const Rules*) {}}, settings);
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
    const std::vector<Change> changes{ScaleChange{0.9}, TurnChange{90_deg}, MoveChange{-3_mm},
                                      SizeSplitChange{0.8, finding.sizes}, ShopChange{"buy"}};
    applied += applyRemedy(document, finding, {changes[upTo(changes.size())], "change", {}});
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

TEST_CASE("Every remedy that the planner offers for the demo keeps its word on the desk",
          "[desk][undo]") {
  const auto planned = plannedDemo();
  int tried = 0;
  for (const Finding& finding : planned->plan()->findings) {
    for (const Remedy& remedy : finding.remedies) {
      const auto lines = linesWith(*planned->order(), finding, remedy.change);
      if (!lines) {
        continue;
      }
      ++tried;
      Order changed = *planned->order();
      changed.lines = *lines;
      const Plan plan = planOrder(changed, *planned->shop(), planned->rules());
      const std::size_t line =
          finding.line + (lines->size() > planned->order()->lines.size() ? 1 : 0);
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
