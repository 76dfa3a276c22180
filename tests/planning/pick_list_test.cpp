// SPDX-License-Identifier: MIT
// What is brought to the machine, counted by hand, and what of it is short.
#include "creaseline/planning/pick_list.h"

#include <catch2/catch.hpp>

#include "creaseline/planning/planner.h"
#include "plan_samples.h"
#include "planning/backing_need.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using creaseline::samples::kInches;
using creaseline::samples::kMillimetres;

namespace {

struct HandMade {
  Order order = samples::order();
  Shop shop = samples::shop();
  Rules madeRules = samples::rules();
  Plan plan = samples::plan(madeRules);

  HandMade() {
    order.blanks[0].colours = {{"navy", {20, 30, 70}}};
    shop.backings = {{StockId("cut-away-roll"), "Cut-away roll", BackingKind::CutAway,
                      ArealWeight::fromGramsPerSquareMetre(90.0), BackingForm::Roll, 600_mm,
                      2000_mm, 0}};
  }
  [[nodiscard]] PickList list(const UnitChoice& units = kMillimetres) const {
    const ReportContext context{order, shop, sample::shippedRules()};
    return pickList(plan, planRuns(plan, context, units), context, units);
  }
};

BackingStock stock(BackingForm form, Length width, Length length, int sheets) {
  return {StockId("s"), "stock", BackingKind::CutAway, ArealWeight(), form, width, length, sheets};
}

}  // namespace

TEST_CASE("blanks are those of the order; what waits is said", "[pick]") {
  const PickList list = HandMade().list();
  REQUIRE(list.blanks.size() == 1);
  CHECK(list.blanks[0].blank == "Harbour hoodie");
  CHECK(list.blanks[0].cloth == Colour{20, 30, 70});
  CHECK(list.blanks[0].garments == 6);
  CHECK(list.garments == 6);
  REQUIRE(list.blanks[0].sizes.size() == 3);
  CHECK(list.blanks[0].sizes[1].count == 3);
  CHECK(list.blanks[0].sizes[1].held == 0);
  CHECK(list.blanks[0].sizes[2].size == SizeName("2XL"));
  CHECK(list.blanks[0].sizes[2].held == 1);
}

TEST_CASE("lines of the same blank and colour are picked together, by the chart", "[pick]") {
  HandMade made;
  made.order.lines.push_back(made.order.lines[0]);
  made.order.lines[1].sizes = {{SizeName("XL"), 4}, {SizeName("YS"), 2}, {SizeName("M"), 1}};
  made.order.lines.push_back(made.order.lines[0]);
  made.order.lines[2].colour = "grey";
  const PickList list = made.list();
  REQUIRE(list.blanks.size() == 2);
  std::string sizes;
  for (const SizePick& size : list.blanks[0].sizes) {
    sizes += size.size.text() + "=" + std::to_string(size.count) + " ";
  }
  CHECK(sizes == "YS=2 S=2 M=4 XL=4 2XL=1 ");
  CHECK(list.blanks[0].garments == 13);
  CHECK_FALSE(list.blanks[1].cloth.has_value());
}

TEST_CASE("frames, backing, topping and needles are for what may be sewn", "[pick]") {
  HandMade made;
  for (PlacementPlan& placement : made.plan.placements) {
    placement.backing.layers = 2;
    placement.backing.topping = true;
    placement.design.blocks = {{"white", {}, 1000, BlockKind::Sew, {}},
                               {"navy", {}, 500, BlockKind::Sew, {}},
                               {"white", {}, 100, BlockKind::Sew, {}}};
    placement.design.pieces = {{"K", "navy twill", 100_mm, 80_mm}};
  }
  made.shop.toppingFilm = true;
  const PickList list = made.list();
  REQUIRE(list.frames.size() == 1);
  CHECK(list.frames[0].frame == "Large magnetic (200 × 230 mm window)");
  CHECK(list.frames[0].onHand == 1);
  CHECK(list.frames[0].hoopings == 5);
  REQUIRE(list.backing.size() == 1);
  CHECK(list.backing[0].stock == "Cut-away roll");
  CHECK(list.backing[0].pieces == 10);
  REQUIRE(list.topping.size() == 1);
  CHECK(list.topping[0].pieces == 5);
  CHECK(list.topping[0].width == 200_mm);
  REQUIRE(list.threads.size() == 2);
  CHECK(list.threads[0].thread == "white");
  CHECK(list.threads[0].stitches == 5 * 1100);
  CHECK(list.threads[0].needles == std::vector<std::string>{"One: 1"});
  CHECK(list.threads[1].stitches == 5 * 500);
  REQUIRE(list.fabrics.size() == 1);
  CHECK(list.fabrics[0].pieces == 5);
  CHECK(list.fabrics[0].fabric == "navy twill");
  REQUIRE(list.needles.size() == 1);
  CHECK(list.needles[0].needle == "75 ball point");
  CHECK(list.needles[0].count == 2);
  CHECK(list.needles[0].listed);
  // Ten pieces of 280 by 310 mm: two side by side on 600 mm, five rows of 310 mm; or, turned, one
  // beside... 310 + 310 > 600, so ten rows of 280 mm. The first is 1.55 m of 2 m.
  REQUIRE(list.backingTotals.size() == 1);
  CHECK(list.backingTotals[0].need == "1.6 m of roll");
  CHECK(list.backingTotals[0].onHand == "2.0 m");
  CHECK(list.backingTotals[0].enough);
  CHECK(list.shortages.empty());
}

TEST_CASE("what is short is said in a sentence", "[pick]") {
  HandMade made;
  made.shop.backings[0].length = 500_mm;
  made.shop.needles = {{75, NeedlePoint::Sharp}};
  for (PlacementPlan& placement : made.plan.placements) {
    placement.backing.topping = true;
  }
  made.plan.placements[1].backing.stock = StockId();
  made.plan.placements[1].backing.stockName.clear();
  const PickList list = made.list(kInches);
  CHECK(list.shortages ==
        std::vector<std::string>{
            "No backing in stock serves: cut-away, at least 85 g/m², 3 pieces of 11 × 12 1/4 in",
            "Topping film is needed and the shop has none",
            "Needle 75 ball point is not among the shop's needles"});
  CHECK(list.backingTotals[0].enough);  // two pieces side by side take 310 mm

  made.shop.backings[0].length = 300_mm;
  CHECK(made.list(kInches).shortages[1] ==
        "Cut-away roll may run short: up to 0.4 yd of roll needed, 0.3 yd on hand");
}

TEST_CASE("sheets yield as many pieces as lie in straight rows", "[pick]") {
  const BackingStock sheets = stock(BackingForm::Sheets, 600_mm, 400_mm, 3);
  // 190 by 290 mm: three beside each other and one above, or, turned, two and two.
  BackingTotal total = backingTotal(sheets, {{190_mm, 290_mm, 12}}, kMillimetres);
  CHECK(total.need == "3 sheets");
  CHECK(total.enough);
  CHECK(total.pieces == 12);
  // The same size asked for lying and standing is one size.
  total = backingTotal(sheets, {{190_mm, 290_mm, 5}, {290_mm, 190_mm, 7}}, kMillimetres);
  CHECK(total.need == "3 sheets");
  total = backingTotal(sheets, {{190_mm, 290_mm, 13}}, kMillimetres);
  CHECK(total.need == "4 sheets");
  CHECK_FALSE(total.enough);
  total = backingTotal(sheets, {{700_mm, 100_mm, 1}}, kMillimetres);
  CHECK_FALSE(total.enough);
}

TEST_CASE("a piece wider than the roll either way is never enough", "[pick]") {
  const BackingStock roll = stock(BackingForm::Roll, 300_mm, 50'000_mm, 0);
  const BackingTotal total = backingTotal(roll, {{310_mm, 320_mm, 1}}, kMillimetres);
  CHECK_FALSE(total.enough);
  CHECK(total.need == "a wider roll");
  // Turned, it fits.
  CHECK(backingTotal(roll, {{310_mm, 290_mm, 1}}, kMillimetres).need == "0.4 m of roll");
}

TEST_CASE("how pieces are cut lies on the stock, holds all of them, and takes what is said",
          "[pick]") {
  const std::vector<BackingPieces> pieces = {
      {190_mm, 290_mm, 12}, {290_mm, 190_mm, 3}, {120_mm, 80_mm, 7}, {250_mm, 250_mm, 1}};
  for (const BackingForm form : {BackingForm::Roll, BackingForm::Sheets}) {
    const BackingStock entry = stock(form, 600_mm, 400_mm, 9);
    const CutLayout layout = cutLayout(entry, pieces, kMillimetres);
    CHECK(layout.need == backingTotal(entry, pieces, kMillimetres).need);
    REQUIRE(layout.blocks.size() == 3);  // lying and standing are one size
    Length taken;
    std::int64_t sheets = 0;
    std::int64_t all = 0;
    for (const CutBlock& block : layout.blocks) {
      CHECK(block.beside > 0);
      CHECK(block.across * static_cast<double>(block.beside) <= layout.width);
      all += block.pieces;
      taken += block.taken;
      sheets += block.sheets;
      if (form == BackingForm::Sheets) {
        CHECK(block.along * static_cast<double>(block.rows) <= layout.length);
        CHECK(block.sheets * block.beside * block.rows >= block.pieces);
      } else {
        CHECK(block.rows * block.beside >= block.pieces);
        CHECK((block.rows - 1) * block.beside < block.pieces);
        CHECK(block.taken == block.along * static_cast<double>(block.rows));
      }
    }
    CHECK(all == 23);
    CHECK(taken == cutNeed(entry, pieces).roll);
    CHECK(sheets == cutNeed(entry, pieces).sheets);
  }
  // Fifteen of 190 by 290 mm on 600 mm: three beside each other in five rows of 290 mm (1.45 m), or
  // two in eight rows of 190 mm (1.52 m).
  const CutBlock block =
      cutLayout(stock(BackingForm::Roll, 600_mm, 9000_mm, 0), pieces, kMillimetres).blocks[1];
  CHECK(block.across == 190_mm);
  CHECK(block.beside == 3);
  CHECK(block.rows == 5);
  const CutLayout wide =
      cutLayout(stock(BackingForm::Roll, 100_mm, 9000_mm, 0), {{310_mm, 320_mm, 1}}, kMillimetres);
  CHECK(wide.blocks.front().beside == 0);
  CHECK_FALSE(wide.enough);
}

TEST_CASE("a planned order's pieces equal its hoopings", "[pick]") {
  const Order order =
      sample::order(sample::blank("crew-sweatshirt"), sample::design("crest", 190_mm, 120_mm),
                    "centre-chest", {"YM", "M", "XL", "2XL"});
  const Shop shop = sample::shop({sample::frame("large", 300_mm, 350_mm)});
  const Plan plan = planOrder(order, shop, sample::shippedRules());
  const ReportContext context{order, shop, sample::shippedRules()};
  const RunPlan runs = planRuns(plan, context, kInches);
  const PickList list = pickList(plan, runs, context, kInches);
  REQUIRE(runs.hoopings > 0);
  int hoopings = 0;
  for (const FramePick& frame : list.frames) {
    hoopings += frame.hoopings;
  }
  CHECK(hoopings == runs.hoopings);
  int pieces = 0;
  for (const BackingPick& backing : list.backing) {
    pieces += backing.pieces;
  }
  int totals = 0;
  for (const BackingTotal& total : list.backingTotals) {
    totals += total.pieces;
  }
  CHECK(pieces >= runs.hoopings);
  CHECK(totals == pieces);
  CHECK(list.garments == order.garments());
}
