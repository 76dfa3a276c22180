// SPDX-License-Identifier: MIT
// What an order costs, against sums worked by hand, and what must hold of any cost.
#include "creaseline/planning/cost.h"

#include <catch2/catch.hpp>
#include <cstdlib>
#include <random>

#include "creaseline/planning/pick_list.h"
#include "plan_samples.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using Catch::Contains;

namespace {

const Currency kEuro{"EUR", 2};

Money euro(std::int64_t cents) {
  return Money::fromMinorUnits(cents);
}

// Sizes S and M, 5 hoopings in one run, and one of 2XL that a stop holds back.
struct Job {
  Order order = samples::order();
  Shop shop = samples::shop();
  Rules rules = samples::rules();
  Plan plan = samples::plan(rules);

  Job() {
    for (PlacementPlan& placement : plan.placements) {
      placement.design.stitches = 21'000;  // 30 min at 700 a minute
      placement.backing.cutWidth = 290_mm;
      placement.backing.cutHeight = 320_mm;
      placement.backing.topping = true;
    }
    BackingStock stock;
    stock.id = StockId("cut-away-roll");
    stock.name = "Cut-away roll";
    stock.width = 600_mm;
    stock.length = 40'000_mm;
    shop.backings = {stock};
  }

  void giveRates() {
    Rates rates;
    rates.currency = kEuro;
    rates.labour = euro(1'800);
    rates.machine = euro(600);
    rates.thread = StitchPrice{euro(2), 1'000};
    rates.topping = RollPrice{euro(2'000), 500_mm, 10'000_mm};
    rates.setUp = euro(2'500);
    rates.markup = Percent::fromHundredths(3'000);
    shop.rates = rates;
    shop.backings[0].price = BackingPrice{euro(5'000), 50'000_mm, 0};
    order.blanks[0].price = Price{euro(1'240), kEuro};
  }

  // The 2XL can be sewn as well.
  void clearStop() {
    plan.placements[2].frame = plan.placements[0].frame;
    plan.placements[2].worst = Severity::Note;
  }

  [[nodiscard]] ReportContext context() const { return {order, shop, sample::shippedRules()}; }
  [[nodiscard]] RunPlan runs() const { return planRuns(plan, context(), samples::kMillimetres); }
  [[nodiscard]] OrderCost cost() const {
    const auto cost = orderCost(plan, runs(), context(), samples::kMillimetres);
    REQUIRE(cost);
    return *cost;
  }
};

const CostItem& itemOf(const OrderCost& cost, CostKind kind) {
  const auto found = std::find_if(cost.items.begin(), cost.items.end(),
                                  [kind](const CostItem& item) { return item.kind == kind; });
  REQUIRE(found != cost.items.end());
  return *found;
}

bool misses(const OrderCost& cost, CostField field) {
  return std::any_of(cost.notCounted.begin(), cost.notCounted.end(),
                     [field](const NotCounted& each) { return each.field == field; });
}

// Whatever is shown adds up.
void checkSums(const OrderCost& cost) {
  Money items;
  std::map<CostKind, Money> byLines;
  std::map<CostKind, Money> byRuns;
  for (const CostItem& item : cost.items) {
    items += item.amount;
    CHECK_FALSE(item.reasons.empty());
  }
  Money lines;
  for (const CostLine& line : cost.lines) {
    lines += line.total;
    CHECK(sumOf(line.amounts) == line.total);
    for (const auto& [kind, amount] : line.amounts) {
      byLines[kind] += amount;
    }
  }
  for (const CostRun& run : cost.runs) {
    CHECK(sumOf(run.amounts) == run.total);
    for (const auto& [kind, amount] : run.amounts) {
      byRuns[kind] += amount;
    }
  }
  CHECK(items == cost.total);
  CHECK(lines == cost.total);
  for (const CostItem& item : cost.items) {
    CAPTURE(nameOf(item.kind));
    CHECK(byLines[item.kind] == item.amount);
    const bool ofRuns = item.kind != CostKind::Blanks && item.kind != CostKind::SetUp &&
                        item.kind != CostKind::Markup;
    CHECK(byRuns[item.kind] == (ofRuns ? item.amount : Money()));
  }
}

// Two lines that share a run, and a second run of the first alone.
Job twoLines() {
  Job job;
  job.clearStop();
  job.giveRates();
  job.order.lines.push_back(job.order.lines[0]);
  job.order.lines[1].id = "2";
  OrderPlacement second = job.order.lines[0].placements[0];
  second.design = DesignId("badge");
  job.order.lines[0].placements.push_back(second);
  Design badge = job.order.designs[0];
  badge.id = DesignId("badge");
  job.order.designs.push_back(badge);
  const std::vector<PlacementPlan> first = job.plan.placements;
  for (PlacementPlan placement : first) {
    placement.line = 1;
    job.plan.placements.push_back(placement);
  }
  for (PlacementPlan placement : first) {
    placement.placement = 1;
    placement.design.id = DesignId("badge");
    placement.design.stitches = 3'333;
    job.plan.placements.push_back(placement);
  }
  return job;
}

}  // namespace

TEST_CASE("nothing is reckoned for a shop without rates", "[cost]") {
  const Job job;
  CHECK_FALSE(orderCost(job.plan, job.runs(), job.context(), samples::kMillimetres));
}

// cost = time x rate, quantity x price:
//   work     5 x (30 min sewing + 2 min hooping) = 160 min at 18.00 an hour          48.00
//   machine  5 x 30 min = 150 min at 6.00 an hour                                    15.00
//   backing  5 pieces of 290 x 320 mm, two side by side on 600 mm: 3 rows x 320 mm
//            = 0.96 m at 50.00 for 50 m                                               0.96
//   topping  5 windows of 200 x 230 mm, two side by side on 500 mm, the shorter side
//            along the roll: 3 rows x 200 mm = 0.6 m at 20.00 for 10 m                1.20
//   thread   5 x 21,000 stitches at 0.02 a thousand                                   2.10
//   blanks   6 x 12.40                                                               74.40
//   set-up   one design                                                              25.00
//                                                                                   166.66
//   markup   30 %                                                         49.998, so  50.00
TEST_CASE("a cost is that of a sum worked by hand", "[cost]") {
  Job job;
  job.giveRates();
  const OrderCost cost = job.cost();
  CHECK(itemOf(cost, CostKind::Labour).amount == euro(4'800));
  CHECK(itemOf(cost, CostKind::Machine).amount == euro(1'500));
  CHECK(itemOf(cost, CostKind::Backing).amount == euro(96));
  CHECK(itemOf(cost, CostKind::Topping).amount == euro(120));
  CHECK(itemOf(cost, CostKind::Thread).amount == euro(210));
  CHECK(itemOf(cost, CostKind::Blanks).amount == euro(7'440));
  CHECK(itemOf(cost, CostKind::SetUp).amount == euro(2'500));
  CHECK(itemOf(cost, CostKind::Markup).amount == euro(5'000));
  CHECK(cost.total == euro(21'666));
  CHECK(cost.perGarment == euro(3'611));
  REQUIRE(cost.runs.size() == 1);
  CHECK(cost.runs[0].total == euro(6'726));       // all but blanks, set-up and markup
  CHECK(cost.runs[0].perGarment == euro(1'345));  // 13.452
  CHECK(itemOf(cost, CostKind::Labour).measure == "2 h 40 min");
  CHECK(itemOf(cost, CostKind::Backing).measure == "Cut-away roll, 1.0 m of roll");
  CHECK_THAT(itemOf(cost, CostKind::Labour).reasons[0].text,
             Contains("18.00 EUR an hour") && Contains("100 %"));
  checkSums(cost);
  // The stop's hooping is not in it, and that is said.
  CHECK_FALSE(cost.complete());
  CHECK(misses(cost, CostField::Held));
  CHECK(cost.notCounted.size() == 1);
  CHECK(totalPhrase(cost) == "Total, incomplete");
  job.clearStop();
  CHECK(job.cost().complete());
  CHECK(totalPhrase(job.cost()) == "Total");
}

TEST_CASE("who stands by the machine half of the time is paid for half of it", "[cost]") {
  Job job;
  job.giveRates();
  job.shop.rates->attendance = Percent::fromHundredths(5'000);
  // 5 x (2 min + half of 30 min) = 85 min at 18.00 an hour
  CHECK(itemOf(job.cost(), CostKind::Labour).amount == euro(2'550));
  job.shop.rates->attendance = Percent();
  CHECK(itemOf(job.cost(), CostKind::Labour).amount == euro(300));
  CHECK(itemOf(job.cost(), CostKind::Machine).amount == euro(1'500));
}

TEST_CASE("what has no price is named with its remedy, never guessed", "[cost]") {
  Job job;
  job.clearStop();
  job.giveRates();
  struct Row {
    CostField field;
    void (*take)(Job&);
  };
  const Row rows[] = {
      {CostField::Labour, [](Job& each) { each.shop.rates->labour.reset(); }},
      {CostField::Machine, [](Job& each) { each.shop.rates->machine.reset(); }},
      {CostField::Thread, [](Job& each) { each.shop.rates->thread.reset(); }},
      {CostField::Topping, [](Job& each) { each.shop.rates->topping.reset(); }},
      {CostField::BackingPrice, [](Job& each) { each.shop.backings[0].price.reset(); }},
      {CostField::BlankPrice, [](Job& each) { each.order.blanks[0].price.reset(); }},
      {CostField::BlankPrice,
       [](Job& each) {
         each.order.blanks[0].price->currency = {"USD", 2};
       }},
      {CostField::BackingStock, [](Job& each) { each.shop.backings[0].width = 100_mm; }},
      {CostField::BackingStock,
       [](Job& each) {
         for (PlacementPlan& placement : each.plan.placements) {
           placement.backing.stock = StockId();
         }
       }},
      {CostField::Applique, [](Job& each) {
         for (PlacementPlan& placement : each.plan.placements) {
           placement.design.pieces = {{"A", "twill", 50_mm, 60_mm}};
         }
       }}};
  const OrderCost whole = job.cost();
  REQUIRE(whole.complete());
  for (const Row& row : rows) {
    CAPTURE(nameOf(row.field));
    Job less = job;
    row.take(less);
    const OrderCost cost = less.cost();
    CHECK(misses(cost, row.field));
    CHECK(cost.notCounted.size() == 1);
    CHECK_FALSE(cost.notCounted[0].remedy.empty());
    const bool lessCounted = row.field != CostField::Applique;  // pieces are new, not left out
    CHECK((cost.total < whole.total) == lessCounted);
    checkSums(cost);
  }
  job.shop.rates = Rates{kEuro, {}, {}, {}, {}, {}, {}, {}, {}};
  job.shop.backings[0].price.reset();
  job.order.blanks[0].price.reset();
  const OrderCost nothing = job.cost();
  CHECK(nothing.total == Money());
  CHECK(nothing.items.empty());
  CHECK(nothing.notCounted.size() == 6);
}

TEST_CASE("garments that the customer supplies cost no blanks", "[cost]") {
  Job job;
  job.clearStop();
  job.giveRates();
  job.order.lines[0].supplied = true;
  job.order.blanks[0].price.reset();
  const OrderCost cost = job.cost();
  CHECK(cost.complete());
  CHECK(cost.lines[0].amounts.count(CostKind::Blanks) == 0);
}

TEST_CASE("rates of zero are given, and cost nothing", "[cost]") {
  Job job;
  job.clearStop();
  job.giveRates();
  Rates& rates = *job.shop.rates;
  rates.labour = rates.machine = rates.setUp = Money();
  rates.thread->amount = rates.topping->amount = Money();
  job.shop.backings[0].price->amount = Money();
  job.order.blanks[0].price->amount = Money();
  const OrderCost cost = job.cost();
  CHECK(cost.complete());
  CHECK(cost.total == Money());
  CHECK(cost.items.size() == 8);
}

TEST_CASE("appliqué fabric is cut from its roll", "[cost]") {
  Job job;
  job.giveRates();
  job.shop.rates->applique = RollPrice{euro(1'000), 500_mm, 1'000_mm};
  for (PlacementPlan& placement : job.plan.placements) {
    placement.design.pieces = {{"A", "twill", 200_mm, 100_mm}};
  }
  // 5 pieces: two of 200 mm side by side take 3 rows of 100 mm, five of 100 mm side by side one
  // row of 200 mm, which is less: 0.2 m at 10.00 a metre
  CHECK(itemOf(job.cost(), CostKind::Applique).amount == euro(200));
  job.shop.rates->applique->width = 90_mm;
  CHECK(misses(job.cost(), CostField::Applique));
}

TEST_CASE("backing is paid by as much as the pick list has cut", "[cost]") {
  Job job;
  job.giveRates();
  const PickList picks = pickList(job.plan, job.runs(), job.context(), samples::kMillimetres);
  REQUIRE(picks.backingTotals.size() == 1);
  CHECK_THAT(itemOf(job.cost(), CostKind::Backing).reasons[0].text,
             Contains(picks.backingTotals[0].need));
  // Sheets: one piece each, 5 of 100 at 40.00
  job.shop.backings[0].form = BackingForm::Sheets;
  job.shop.backings[0].width = job.shop.backings[0].length = 330_mm;
  job.shop.backings[0].price = BackingPrice{euro(4'000), {}, 100};
  CHECK(itemOf(job.cost(), CostKind::Backing).amount == euro(200));
}

TEST_CASE("lines that share a run bear it by their garments", "[cost]") {
  const Job job = twoLines();
  const OrderCost cost = job.cost();
  REQUIRE(cost.lines.size() == 2);
  REQUIRE(cost.runs.size() == 2);
  CHECK(cost.runs[0].garments == 12);
  CHECK(cost.runs[1].garments == 6);
  CHECK(cost.lines[0].total > cost.lines[1].total);
  // The second line has half of the first run, and the crest's set-up in half.
  CHECK(cost.lines[1].amounts.at(CostKind::Labour) == euro(6 * 32 * 30));
  CHECK(cost.lines[1].amounts.at(CostKind::SetUp) == euro(1'250));
  CHECK(cost.lines[0].amounts.at(CostKind::SetUp) == euro(3'750));
  checkSums(cost);
}

TEST_CASE("twice the garments cost twice as much, but for what is paid once", "[cost]") {
  Job job = twoLines();
  job.shop.rates->setUp.reset();
  const Money once = job.cost().total;
  for (OrderLine& line : job.order.lines) {
    for (SizeQuantity& size : line.sizes) {
      size.quantity *= 2;
    }
  }
  for (PlacementPlan& placement : job.plan.placements) {
    placement.quantity *= 2;
  }
  // Rows of backing and topping are even before, so that no half row is saved.
  const OrderCost twice = job.cost();
  CHECK(std::llabs(twice.total.minorUnits() - 2 * once.minorUnits()) <= 1);
  checkSums(twice);
}

TEST_CASE("all that is shown adds up at any rates", "[cost]") {
  constexpr unsigned kSeed = 4217;
  CAPTURE(kSeed);
  std::mt19937 random(kSeed);
  const auto amount = [&] { return euro(std::uniform_int_distribution(0, 99'999)(random)); };
  const auto number = [&](int least, int most) {
    return std::uniform_int_distribution(least, most)(random);
  };
  for (int round = 0; round < 100; ++round) {
    Job job = twoLines();
    Rates& rates = *job.shop.rates;
    rates.currency.minorDigits = number(0, 3);
    rates.labour = amount();
    rates.machine = amount();
    rates.attendance = Percent::fromHundredths(number(0, 10'000));
    rates.thread = StitchPrice{amount(), number(1, 999'983)};
    rates.topping = RollPrice{amount(), 500_mm, Length::fromMm(number(1, 99'991))};
    rates.setUp = amount();
    rates.markup = Percent::fromHundredths(number(0, 20'000));
    job.shop.backings[0].price = BackingPrice{amount(), Length::fromMm(number(1, 99'991)), 0};
    job.order.blanks[0].price = Price{amount(), rates.currency};
    job.plan.placements[number(0, 1) == 0 ? 1 : 4].quantity = number(1, 40);
    CAPTURE(round);
    checkSums(job.cost());
  }
}

TEST_CASE("a cost beyond what can be counted is said, not wrapped round", "[cost]") {
  Job job;
  job.giveRates();
  job.shop.rates->thread = StitchPrice{euro(Money::kMostMinorUnits), 1};
  job.shop.rates->markup = kMostMarkup;
  job.order.blanks[0].price->amount = euro(Money::kMostMinorUnits);
  const OrderCost cost = job.cost();
  CHECK(misses(cost, CostField::Beyond));
  CHECK(cost.total == Money());
  CHECK_FALSE(cost.complete());
}
