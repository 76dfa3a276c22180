// SPDX-License-Identifier: MIT
// Run cards from plans made by hand and from planned orders.
#include "creaseline/planning/run_card.h"

#include <catch2/catch.hpp>

#include <set>

#include "creaseline/planning/planner.h"
#include "plan_samples.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using creaseline::samples::kInches;
using creaseline::samples::kMillimetres;

namespace {

// An order of one line and location whose plan is made by hand.
struct HandMadeRuns {
  Order order = samples::order();
  Shop shop = samples::shop();
  Plan plan;

  HandMadeRuns() { plan.placements = {samples::placement()}; }
  PlacementPlan& first() { return plan.placements.front(); }
  [[nodiscard]] RunPlan runs(const UnitChoice& units = kInches) const {
    return planRuns(plan, {order, shop, sample::shippedRules()}, units);
  }
};

ThreadBlock block(const std::string& thread, int stitches, BlockKind kind = BlockKind::Sew,
                  const std::string& piece = {}) {
  return {thread, {10, 20, 30}, stitches, kind, piece};
}

std::vector<std::string> stopTexts(const RunCard& card) {
  std::vector<std::string> list;
  for (const RunStep& step : card.steps) {
    list.push_back(step.text);
  }
  return list;
}

const std::string kTrace =
    "Check the trace before sewing: needle up, round the whole outline; it must clear the frame";

}  // namespace

TEST_CASE("garments that are sewn alike share a card, over sizes and lines", "[run]") {
  HandMadeRuns made;
  made.order.lines.push_back(made.order.lines.front());
  made.order.lines.back().id = "2";
  made.order.lines.back().colour = "grey";
  PlacementPlan other = samples::placement();
  other.size = SizeName("L");
  other.quantity = 2;
  other.placed.drop += 1_in;  // another place on the garment is the hooping table's business
  other.line = 1;
  made.plan.placements.push_back(other);
  const RunPlan runs = made.runs();
  REQUIRE(runs.cards.size() == 1);
  const RunCard& card = runs.cards.front();
  CHECK(card.garments == 5);
  CHECK(runs.hoopings == 5);
  REQUIRE(card.toSew.size() == 5);
  CHECK(card.toSew[1].size == SizeName("M"));
  CHECK(card.toSew[1].number == 2);
  CHECK(card.toSew[1].of == 3);
  CHECK(card.toSew[1].colour == "navy");
  CHECK(card.toSew[3].lineId == "2");
  CHECK(card.toSew[3].colour == "grey");
  CHECK(card.toSew[3].number == 1);
  CHECK(card.location == "Centre chest");
}

TEST_CASE("what the machine does differently is another run", "[run]") {
  const auto cards = [](auto change) {
    HandMadeRuns made;
    made.plan.placements.push_back(samples::placement());
    change(made.plan.placements.back());
    return made.runs().cards.size();
  };
  CHECK(cards([](PlacementPlan&) {}) == 1);
  CHECK(cards([](PlacementPlan& p) { p.frame->centre.x += 0.2; }) == 1);
  CHECK(cards([](PlacementPlan& p) { p.frame->centre.x += 3.0; }) == 2);
  CHECK(cards([](PlacementPlan& p) { p.frame->turn = 90_deg; }) == 2);
  CHECK(cards([](PlacementPlan& p) { p.frame->frame = FrameId("other"); }) == 2);
  CHECK(cards([](PlacementPlan& p) { p.placed.panelTurn = 180_deg; }) == 2);
  CHECK(cards([](PlacementPlan& p) { p.design = p.design.scaled(0.9); }) == 2);
  CHECK(cards([](PlacementPlan& p) { p.backing.layers = 2; }) == 2);
  CHECK(cards([](PlacementPlan& p) { p.backing.topping = true; }) == 2);
  CHECK(cards([](PlacementPlan& p) { p.backing.needleSize = 90; }) == 2);
  CHECK(cards([](PlacementPlan& p) { p.location = LocationId("upper-back"); }) == 2);
}

TEST_CASE("what stops gets no card but is held with reason and remedy", "[run]") {
  const Rules rules = samples::rules();
  HandMadeRuns made;
  made.plan = samples::plan(rules);
  const RunPlan runs = made.runs();
  REQUIRE(runs.cards.size() == 1);
  CHECK(runs.cards[0].garments == 5);
  CHECK(runs.cards[0].watches ==
        std::vector<std::string>{
            "line 1, Harbour hoodie, centre chest, sizes S M: The frame leaves less room than the "
            "shop's hooping error."});
  CHECK(runs.cards[0].cautions == std::vector<const Caution*>{rules.cautions.data()});
  REQUIRE(runs.held.size() == 1);
  CHECK(runs.held[0].garments == 1);
  CHECK(runs.held[0].sizes == "2XL");
  CHECK(runs.held[0].location == "Centre chest");
  CHECK(runs.held[0].reasons ==
        std::vector<std::string>{"The design is too large for every frame of the shop"});
  CHECK(runs.held[0].remedies ==
        std::vector<std::string>{"sew it at 94 %: Large magnetic holds it"});
}

TEST_CASE("a size without rule or frame is held even if no finding says so", "[run]") {
  HandMadeRuns made;
  made.first().hasRule = false;
  CHECK(made.runs().cards.empty());
  CHECK(made.runs().held.size() == 1);
  made.first().hasRule = true;
  made.first().frame.reset();
  CHECK(made.runs().cards.empty());
  CHECK(made.runs().hoopings == 0);
}

TEST_CASE("bracket and loading are said at the machine and on the garment", "[run]") {
  HandMadeRuns made;
  CHECK(made.runs().cards[0].bracketAtMachine == "top");
  CHECK(made.runs().cards[0].bracketOnGarment == "towards the collar seam");
  CHECK(made.runs().cards[0].loading == "the collar seam at the frame's top");
  CHECK(made.runs().cards[0].turn == "none, top of the design at the frame's top");

  // Turned clockwise by a quarter on the garment: the frame's top lies at the viewer's right, so
  // seen from the frame the collar lies at its left and the design is turned back.
  made.first().frame->turn = 90_deg;
  const RunCard turned = made.runs().cards[0];
  CHECK(turned.bracketAtMachine == "top");
  CHECK(turned.bracketOnGarment == "towards the wearer's left (viewer's right)");
  CHECK(turned.loading == "the collar seam at the frame's left side");
  CHECK(turned.turn == "90° anticlockwise, top of the design at the frame's left side");

  made.first().frame->turn = Angle();
  made.first().panel = PanelName::LeftSleeve;
  made.first().placed.panelTurn = 180_deg;
  made.shop.frames[0].bracket = BracketSide::Bottom;
  const RunCard sleeve = made.runs().cards[0];
  CHECK(sleeve.bracketAtMachine == "bottom");
  CHECK(sleeve.bracketOnGarment == "towards the shoulder");
  CHECK(sleeve.loading == "the cuff at the frame's top");
  CHECK(sleeve.turn == "180°, top of the design at the frame's bottom");
}

TEST_CASE("the start point is seen at the machine", "[run]") {
  HandMadeRuns made;
  CHECK(made.runs().cards[0].start == "on the frame's centre");
  // The frame's centre lies 10 mm to the viewer's left of and 6 mm above the design's.
  made.first().frame->centre = made.first().placed.centre + Point{-10.0, -6.0};
  CHECK(made.runs(kMillimetres).cards[0].start ==
        "10 mm right of and 6 mm below the frame's centre");
  CHECK(made.runs(kInches).cards[0].start ==
        "3/8 in (10 mm) right of and 1/4 in (6 mm) below the frame's centre");
  // Frame turned clockwise: its right is the garment's down, its down the garment's left.
  made.first().frame->turn = 90_deg;
  const RunCard card = made.runs(kMillimetres).cards[0];
  CHECK(card.start == "6 mm right of and 10 mm above the frame's centre");
  CHECK(card.startRight == 6_mm);
  CHECK(card.startDown == -(10_mm));
}

TEST_CASE("time adds up as by hand", "[run]") {
  HandMadeRuns made;  // 700 stitches a minute
  made.first().design.stitches = 7000;
  made.first().design.blocks = {block("white", 4000), block("white", 1000), block("navy", 2000)};
  const RunTime time = made.runs().cards[0].time;
  // 10 min of stitches, one change of 8 s, three trims of 6 s, hooping of 2 min.
  CHECK(time.perGarment == Duration::fromSeconds(600.0 + 8.0 + 18.0 + 120.0));
  CHECK(time.setUp == Duration::fromSeconds(2 * 90.0));
  CHECK(time.total == Duration::fromSeconds(180.0 + 3 * 746.0));
  CHECK(made.runs().total == time.total);
  Duration sum;
  for (const TimeShare& share : time.each) {
    CAPTURE(share.text);
    CHECK_FALSE(share.basis.empty());
    sum += share.time;
  }
  CHECK(sum == time.perGarment);
  CHECK(time.each[0].text == "7,000 stitches at 700 a minute");
  CHECK(time.each[1].text == "1 colour change, 8 s each");
}

TEST_CASE("appliqué stops the machine where the hands lay and trim fabric", "[run]") {
  HandMadeRuns made;
  made.first().backing.topping = true;
  made.first().design.pieces = {{"K", "navy twill", 100_mm, 80_mm}};
  made.first().design.blocks = {block("white", 100, BlockKind::PlacementLine, "K"),
                                block("white", 200, BlockKind::TackDown, "K"),
                                block("red", 3000, BlockKind::Cover, "K"), block("gold", 500)};
  made.first().design.stitches = 3800;
  const RunCard card = made.runs().cards[0];
  CHECK(stopTexts(card) ==
        std::vector<std::string>{
            "Lay topping film over the cloth", kTrace, "Placement line of piece K",
            "Stop. Piece K: lay navy twill over the line", "Tack down piece K",
            "Stop. Piece K: trim in the frame with curved scissors; the frame stays closed",
            "Cover the edge of piece K", "Sew"});
  CHECK(card.steps[6].block == 3);
  CHECK(card.steps[6].thread == "red");
  CHECK(card.steps[6].needle == 2);
  CHECK(card.steps[6].stitches == 3000);
  CHECK(card.steps[3].byHand);
  // Stitches 3800 / 700 min, 2 changes of 8 s, 4 trims of 6 s, laying 30 s, trimming 120 s,
  // hooping 120 s.
  CHECK(card.time.perGarment ==
        Duration::fromSeconds(3800.0 * 60.0 / 700.0) + Duration::fromSeconds(16 + 24 + 270));
}

TEST_CASE("a run with more threads than needles stops for the hands", "[run]") {
  HandMadeRuns made;
  made.shop.machines[0].needles = 2;
  made.first().design.blocks = {block("white", 10), block("navy", 10), block("white", 10),
                                block("red", 10)};
  made.first().design.stitches = 40;
  const RunCard card = made.runs().cards[0];
  CHECK(stopTexts(card) == std::vector<std::string>{kTrace, "Sew", "Sew", "Sew",
                                                    "Stop: put red on needle 2 in place of navy",
                                                    "Sew",
                                                    "For the next garment: put navy on needle 2 in "
                                                    "place of red"});
  CHECK(card.setUp == std::vector<std::string>{"Put white on needle 1", "Put navy on needle 2"});
  REQUIRE(card.threads.size() == 3);
  CHECK_FALSE(card.threads[0].shared);
  CHECK(card.threads[0].stitches == 20);
  CHECK(card.threads[1].shared);
  CHECK(card.threads[2].needle == 2);
  CHECK(card.machineReason ==
        "no machine has needles for 3 threads; this has the most, so one needle changes its "
        "thread by hand");
  // Three changes of needle, two of thread, four trims, hooping.
  CHECK(card.time.perGarment == Duration::fromSeconds(40 * 60.0 / 700.0) +
                                    Duration::fromSeconds(3 * 8 + 2 * 90 + 4 * 6 + 120));
}

TEST_CASE("the first machine that reaches the design and has the needles sews it", "[run]") {
  HandMadeRuns made;
  made.shop.machines[0].needles = 1;
  made.shop.machines.push_back(
      {MachineId("two"), "Two", 6, Window::rectangle(300_mm, 300_mm).value(), 800});
  CHECK(made.runs().cards[0].machine == "One");  // no thread stated: any needle does
  made.first().design.blocks = {block("white", 10), block("navy", 10)};
  made.first().design.outline = Outline::rectangle(8_in, 6_in);
  CHECK(made.runs().cards[0].machine == "Two");
  CHECK(made.runs().cards[0].stitchesPerMinute == 800);
  SECTION("a field that the design does not fit is no help") {
    made.shop.machines[1].sewingField = Window::rectangle(150_mm, 300_mm).value();
    CHECK(made.runs().cards[0].machine == "One");
  }
  SECTION("a field that the design fits, but not where it lies, is none either") {
    made.shop.machines[1].sewingField = Window::rectangle(210_mm, 160_mm).value();
    CHECK(made.runs().cards[0].machine == "Two");
    made.first().frame->centre.x += 10.0;
    CHECK(made.runs().cards[0].machine == "One");
  }
  SECTION("a frame with a field of its own has it on every machine") {
    made.shop.machines[1].sewingField = Window::rectangle(150_mm, 300_mm).value();
    made.shop.frames[0].sewingField = Window::rectangle(210_mm, 300_mm).value();
    CHECK(made.runs().cards[0].machine == "Two");
  }
}

TEST_CASE("threads that share a name are told apart by their colour", "[run]") {
  HandMadeRuns made;
  made.first().design.blocks = {block("navy", 10), {"navy", {31, 42, 68}, 20, BlockKind::Sew, {}}};
  const RunCard card = made.runs().cards[0];
  REQUIRE(card.threads.size() == 2);
  CHECK(card.threads[0].name == "navy (#0a141e)");
  CHECK(card.threads[1].name == "navy (#1f2a44)");
  CHECK(card.threads[1].needle == 2);
}

TEST_CASE("a thread keeps its needle from run to run", "[run]") {
  HandMadeRuns made;
  made.first().design.blocks = {block("white", 10), block("navy", 10)};
  made.plan.placements.push_back(made.first());
  made.plan.placements[1].design.id = DesignId("other");
  made.plan.placements[1].design.blocks = {block("navy", 10), block("gold", 10)};
  const RunPlan runs = made.runs();
  REQUIRE(runs.cards.size() == 2);
  CHECK(runs.cards[1].threads[0].needle == 2);
  CHECK(runs.cards[1].threads[1].needle == 3);
  CHECK(runs.cards[1].setUp == std::vector<std::string>{"Put gold on needle 3"});
  CHECK(runs.cards[0].threads[1].putOn);
  CHECK_FALSE(runs.cards[1].threads[0].putOn);
  CHECK(runs.cards[1].threads[1].putOn);
  made.shop.machines[0].needles = 2;
  CHECK(made.runs().cards[1].threads[1].replaced == "white");
}

TEST_CASE("notes of lines and places are on the card, each once", "[run]") {
  HandMadeRuns made;
  made.order.lines[0].note = "rowers";
  made.order.lines[0].placements[0].note = "mind the pocket";
  made.plan.placements.push_back(samples::placement());
  CHECK(made.runs().cards[0].notes ==
        std::vector<std::string>{"Line 1: rowers", "Line 1: mind the pocket"});
}

TEST_CASE("every garment of a planned order is on one card a location, or held", "[run]") {
  const Blank hoodie = sample::blank("pullover-hoodie");
  Order order = sample::order(hoodie, sample::design("crest", 190_mm, 120_mm), "centre-chest",
                              {"YM", "M", "XL", "2XL"});
  order.lines[0].sizes[1].quantity = 7;
  order.designs.push_back(sample::design("huge", 400_mm, 300_mm));
  OrderPlacement back;
  back.location = LocationId("full-back");
  back.design = DesignId("huge");
  order.lines[0].placements.push_back(back);
  order.lines.push_back(order.lines[0]);
  order.lines[1].id = "2";
  order.lines[1].placements.pop_back();
  const Shop shop = sample::shop(
      {sample::frame("small", 220_mm, 150_mm), sample::frame("large", 300_mm, 350_mm)});
  const Plan plan = planOrder(order, shop, sample::shippedRules());
  const RunPlan runs = planRuns(plan, {order, shop, sample::shippedRules()}, kInches);

  std::set<std::tuple<std::size_t, int>> seen;
  int held = 0;
  for (const RunCard& card : runs.cards) {
    CHECK(static_cast<int>(card.toSew.size()) == card.garments);
    for (const RunGarment& garment : card.toSew) {
      CHECK(seen.insert({garment.placement, garment.number}).second);
      CHECK(maySew(plan.placements[garment.placement]));
      CHECK(garment.number <= plan.placements[garment.placement].quantity);
    }
  }
  for (const HeldGarments& entry : runs.held) {
    CHECK_FALSE(entry.reasons.empty());
    held += entry.garments;
  }
  CHECK(held > 0);
  CHECK(static_cast<int>(seen.size()) == runs.hoopings);
  CHECK(runs.hoopings + held == plan.counts.placements);
}
