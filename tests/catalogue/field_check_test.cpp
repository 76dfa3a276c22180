// SPDX-License-Identifier: MIT
// Checks of single fields: the value, or one sentence.
#include "creaseline/catalogue/field_check.h"

#include <catch2/catch.hpp>

#include "catalogue/catalogue_data.h"
#include "creaseline/catalogue/save.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;

namespace {

Order sampleOrder() {
  return sample::order(sample::blank("polo"), sample::design("crest", 80_mm, 40_mm), "left-chest",
                       {"M"});
}

}  // namespace

TEST_CASE("lengths are read in the user's unit and within their range", "[catalogue][field]") {
  CHECK(*checkMove("1/4", LengthUnit::Inch) == Length::fromInches(0.25));
  CHECK(*checkMove(" -3,5 cm ", LengthUnit::Inch) == -35_mm);
  CHECK(*checkMeasure("0", LengthUnit::Millimetre, Measure::RibHeight) == Length());
  CHECK(checkMeasure("0", LengthUnit::Millimetre, Measure::BodyWidth).message() ==
        "it must be more than 0 and at most 5000 mm");
  CHECK(checkDesignSide("0.5", LengthUnit::Millimetre).message() ==
        "it must be from 1 mm and at most 5000 mm");
  CHECK_THAT(checkMove("long", LengthUnit::Inch).message(), Catch::Contains("3 1/2 in"));
  CHECK_FALSE(checkMove("", LengthUnit::Inch));
}

TEST_CASE("quantities and stitches are whole numbers, none is no word", "[catalogue][field]") {
  CHECK(*checkQuantity("12") == 12);
  CHECK(*checkQuantity("  ") == 0);
  CHECK(*checkQuantity("0") == 0);
  CHECK(*checkQuantity("100000") == 100'000);
  for (const char* wrong : {"-1", "1.5", "twelve", "12x", "100001", "99999999999999"}) {
    CHECK_FALSE(checkQuantity(wrong));
  }
  CHECK(*checkStitches("8500") == 8'500);
  CHECK(checkStitches("0").message() == "write a whole number from 1 to 10000000, such as 8500");
}

TEST_CASE("a scale is a factor or per cent and leaves something to sew", "[catalogue][field]") {
  const Design design = sampleOrder().designs.front();
  CHECK(*checkScale("0,9", design, UnitChoice{}) == 0.9);
  CHECK(*checkScale("90 %", design, UnitChoice{}) == 0.9);
  CHECK(*checkScale("10", design, UnitChoice{}) == 10.0);
  CHECK_FALSE(checkScale("10.1", design, UnitChoice{}));
  CHECK_FALSE(checkScale("0", design, UnitChoice{}));
  CHECK_FALSE(checkScale("-1", design, UnitChoice{}));
  CHECK_FALSE(checkScale("90 mm", design, UnitChoice{}));
  CHECK(*checkScale("0.025", design, UnitChoice{}) == 0.025);  // 40 mm become 1 mm
  CHECK_THAT(checkScale("0.024", design, {LengthUnit::Millimetre}).message(),
             Catch::Contains("less than 1 mm"));
}

TEST_CASE("dates exist or are empty", "[catalogue][field]") {
  CHECK(*checkDue(" 2028-02-29 ") == "2028-02-29");
  CHECK(checkDue("")->empty());
  for (const char* wrong : {"2027-02-29", "2026-13-01", "04.12.2026", "2026-1-1"}) {
    CHECK_FALSE(checkDue(wrong));
  }
}

TEST_CASE("ids are distinct, labels on one line, notes of any lines", "[catalogue][field]") {
  Order order = sampleOrder();
  order.lines.push_back(order.lines.front());
  order.lines.back().id = "2";
  CHECK(*checkLineId("1", order, 0) == "1");
  CHECK(checkLineId(" 2 ", order, 0).message() ==
        "the line id \"2\" is taken; each must be there once");
  CHECK(*checkLineId("3", order, 2) == "3");
  CHECK_FALSE(checkLineId("1", order, 2));
  CHECK_FALSE(checkLineId(" ", order, 0));
  CHECK(*checkBlankId("sample-polo", order, 0) == "sample-polo");
  CHECK_FALSE(checkBlankId("sample-polo", order, 1));
  CHECK_FALSE(checkDesignId("crest", order, 1));
  CHECK(checkLabel("", false).message() == "it must not be empty");
  CHECK(checkLabel("", true)->empty());
  CHECK(checkLabel("two\nlines", true).message() == "it must stand on one line");
  CHECK(checkLabel(std::string(501, 'x'), true).message() ==
        "it has 501 characters, 1 more than fit");
  CHECK(*checkNote("two\nlines") == "two\nlines");
  CHECK_FALSE(checkNote("\x01"));
}

TEST_CASE("fibres add up, weights and colours are what a file takes", "[catalogue][field]") {
  CHECK_FALSE(fibresProblem({{"cotton", 50.0}, {"polyester", 50.0}}));
  CHECK(fibresProblem({{"cotton", 50.0}, {"polyester", 40.0}}) ==
        "the shares add up to 90 %, not 100 %");
  CHECK(fibresProblem({}) == "name at least one fibre");
  CHECK(fibresProblem({{"cotton", 50.0}, {"cotton", 50.0}}));
  CHECK(fibresProblem({{"cotton", 100.0}, {"wool", 0.0}}));
  CHECK(*checkFabricWeight("180 g/m2") == ArealWeight::fromGramsPerSquareMetre(180.0));
  CHECK_FALSE(checkFabricWeight("0 g/m2"));
  CHECK_FALSE(checkFabricWeight("6000 g/m2"));
  CHECK(*checkColour(" #1f3a5f ") == Colour{0x1f, 0x3a, 0x5f});
  CHECK_FALSE(checkColour("navy"));
  CHECK(checkTurn("90")->degrees() == 90.0);
}

TEST_CASE("what passes the checks at its limits can be saved and read", "[catalogue][field]") {
  Order order = sampleOrder();
  order.id = *checkLabel(std::string(500, 'x'), false);
  order.note = *checkNote(std::string(5'000, 'x'));
  order.lines[0].sizes[0].quantity = *checkQuantity("100000");
  order.lines[0].placements[0].scale = *checkScale("10", order.designs[0], UnitChoice{});
  order.lines[0].placements[0].moveDown = *checkMove("-5000 mm", LengthUnit::Millimetre);
  const TemporaryFolder folder;
  CHECK(loadOrder(folder.write("limits.order.json", orderText(order)), testing::shippedRules())
            .value == order);
}
