// SPDX-License-Identifier: MIT
// Two people change one order.
#include <catch2/catch.hpp>

#include "catalogue/random_files.h"
#include "creaseline/catalogue/merge.h"
#include "support/sample.h"
#include "support/spoken.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;

namespace {

Order orderOfTwo() {
  Order order = sample::order(sample::blank("t-shirt"), sample::design("crest", 80_mm, 70_mm),
                              "left-chest", {"M", "XL"});
  OrderLine second = order.lines.front();
  second.id = "2";
  order.lines.push_back(second);
  return order;
}

}  // namespace

TEST_CASE("what only one side changed is taken, whichever side it is", "[catalogue][merge]") {
  for (unsigned seed = 1; seed <= 200; ++seed) {
    CAPTURE(seed);
    RandomFiles random(seed);
    const Order base = random.order();
    const Order other = random.order();
    REQUIRE(mergeOrders(base, other, base).order == other);
    REQUIRE(mergeOrders(base, base, other).order == other);
    const OrderMerge same = mergeOrders(base, other, other);
    REQUIRE(same.order == other);
    REQUIRE(same.conflicts.empty());
  }
}

TEST_CASE("changes of different fields, lines and sizes go together", "[catalogue][merge]") {
  const Order base = orderOfTwo();
  Order mine = base;
  Order theirs = base;
  mine.title = "mine";
  mine.lines[0].sizes[0].quantity = 5;
  mine.lines[0].placements[0].moveDown = 6_mm;
  theirs.due = "2026-12-04";
  theirs.lines[0].sizes[1].quantity = 7;
  theirs.lines[0].placements[0].note = "theirs";
  theirs.lines[1].sizes.push_back({SizeName("2XL"), 2});
  mine.lines.push_back(base.lines[0]);
  mine.lines.back().id = "mine";
  theirs.lines.insert(theirs.lines.begin() + 1, base.lines[0]);
  theirs.lines[1].id = "theirs";

  const OrderMerge merge = mergeOrders(base, mine, theirs);
  CHECK(merge.conflicts.empty());
  CHECK(merge.toMend.empty());
  Order expected = theirs;
  expected.title = "mine";
  expected.lines[0].sizes[0].quantity = 5;
  expected.lines[0].placements[0].moveDown = 6_mm;
  expected.lines.push_back(mine.lines.back());
  CHECK(merge.order == expected);
}

TEST_CASE("the same thing changed twice is a conflict, said in words and decided by choice",
          "[catalogue][merge]") {
  const Order base = orderOfTwo();
  Order mine = base;
  Order theirs = base;
  mine.lines[1].sizes[0].quantity = 3;
  theirs.lines[1].sizes[0].quantity = 5;
  mine.lines[0].placements[0].moveDown = 6_mm;
  theirs.lines[0].placements[0].moveDown = 3_mm;
  mine.customer = "";
  theirs.customer = "Weir Club";

  const OrderMerge merge = mergeOrders(base, mine, theirs);
  CHECK(merge.conflicts ==
        std::vector<MergeConflict>{{"line 1, left-chest, move down", "6 mm", "3 mm"},
                                   {"line 2, size M", "3", "5"}});
  CHECK(merge.order.customer == "Weir Club");
  CHECK(merge.order.lines[1].sizes[0].quantity == 3);
  const OrderMerge chosen =
      mergeOrders(base, mine, theirs, {{"line 2, size M", MergeSide::Theirs}});
  CHECK(chosen.order.lines[1].sizes[0].quantity == 5);
  CHECK(chosen.order.lines[0].placements[0].moveDown == 6_mm);
}

TEST_CASE("what one took out and the other changed is asked about", "[catalogue][merge]") {
  const Order base = orderOfTwo();
  Order mine = base;
  Order theirs = base;
  mine.lines.pop_back();
  theirs.lines[1].note = "rush";
  const OrderMerge merge = mergeOrders(base, mine, theirs);
  CHECK(merge.conflicts == std::vector<MergeConflict>{{"line 2", "taken out", "changed"}});
  CHECK(merge.order == mine);
  CHECK(mergeOrders(base, mine, theirs, {{"line 2", MergeSide::Theirs}}).order == theirs);
  // Taken out by one, untouched by the other: gone without a question.
  theirs = base;
  CHECK(mergeOrders(base, mine, theirs).order.lines.size() == 1);
  CHECK(mergeOrders(base, theirs, mine).order.lines.size() == 1);
}

TEST_CASE("a design that a new line needs is not lost", "[catalogue][merge]") {
  Order base = orderOfTwo();
  base.designs.push_back(sample::design("spare", 50_mm, 50_mm));
  Order mine = base;
  mine.designs.pop_back();
  Order theirs = base;
  theirs.lines[0].placements[0].design = DesignId("spare");
  const OrderMerge merge = mergeOrders(base, mine, theirs);
  CHECK(merge.order.design(DesignId("spare")) != nullptr);
  CHECK(merge.conflicts.empty());
}

TEST_CASE("a size ordered here and taken from the chart there is said to be mended",
          "[catalogue][merge]") {
  const Order base = orderOfTwo();
  Order mine = base;
  mine.lines[0].sizes.push_back({SizeName("2XL"), 1});
  Order theirs = base;
  theirs.blanks[0].chart.sizes.pop_back();
  theirs.blanks[0].colours = {{"red", {}}};
  const OrderMerge merge = mergeOrders(base, mine, theirs);
  CHECK(merge.conflicts.empty());
  CHECK(merge.toMend ==
        std::vector<std::string>{"Line 1 asks for size 2XL, which sample t-shirt does not have",
                                 "Line 1 asks for navy, in which sample t-shirt is not sold",
                                 "Line 2 asks for navy, in which sample t-shirt is not sold"});
}

TEST_CASE("a conflict is decided by the place that was said, in any language",
          "[catalogue][merge]") {
  Phrasebook::Content content;
  content.phrases = {{"line {}", "línea {}"},
                     {"size {}", "talla {}"},
                     {"{}, move down", "desplazamiento hacia abajo, {}"},
                     {"changed", "cambiado"},
                     {"taken out", "quitado"}};
  const Phrasebook book(content);
  const Speaking speaking(book);
  const Order base = orderOfTwo();
  Order mine = base;
  Order theirs = base;
  mine.lines[0].placements[0].moveDown = 6_mm;
  theirs.lines[0].placements[0].moveDown = 7_mm;
  mine.lines[0].sizes[0].quantity = 5;
  theirs.lines[0].sizes.erase(theirs.lines[0].sizes.begin());
  const OrderMerge first = mergeOrders(base, mine, theirs);
  REQUIRE(first.conflicts.size() == 2);
  CHECK(first.conflicts[0].place == "línea 1, talla M");
  CHECK(first.conflicts[0].mine == "cambiado");
  CHECK(first.conflicts[0].theirs == "quitado");
  CHECK(first.conflicts[1].place == "desplazamiento hacia abajo, línea 1, left-chest");
  const OrderMerge chosen =
      mergeOrders(base, mine, theirs, {{first.conflicts[1].place, MergeSide::Theirs}});
  CHECK(chosen.order.lines[0].placements[0].moveDown == 7_mm);
  CHECK(chosen.order.lines[0].sizes[0].quantity == 5);
}
