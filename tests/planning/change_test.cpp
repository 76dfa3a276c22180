// SPDX-License-Identifier: MIT
#include "creaseline/planning/change.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

Order sampleOrder() {
  return sample::order(sample::blank("t-shirt"), sample::design("d", 100_mm, 60_mm), "centre-chest",
                       {"YM", "M", "XL", "2XL"});
}

Finding findingFor(const Order& order, std::size_t sizes) {
  Finding finding;
  for (std::size_t i = 0; i < sizes; ++i) {
    finding.sizes.push_back(order.lines[0].sizes[i].size);
  }
  return finding;
}

}  // namespace

TEST_CASE("a change for all sizes changes the placement where it stands", "[change]") {
  const Order order = sampleOrder();
  const Finding finding = findingFor(order, 4);
  const OrderPlacement before = order.lines[0].placements[0];
  const auto changed = [&](const Change& change) {
    const auto made = orderWith(order, finding, change);
    REQUIRE(made.has_value());
    CHECK(made->lines.size() == 1);
    CHECK(made->frames.empty());
    return made->lines[0].placements[0];
  };
  CHECK(changed(ScaleChange{0.5}).scale == before.scale * 0.5);
  CHECK(changed(TurnChange{90_deg}).turn == before.turn + 90_deg);
  CHECK(changed(SplitChange{2}).split);
  CHECK(changed(FrameTurnChange{12_deg}).frameTurn == 12_deg);
  CHECK(changed(MoveChange{5_mm}).moveDown == before.moveDown + 5_mm);
  CHECK(changed(LocationChange{LocationId("upper-back")}).location == LocationId("upper-back"));
}

TEST_CASE("a change for some sizes makes a line of their own and loses no garment", "[change]") {
  const Order order = sampleOrder();
  const Finding finding = findingFor(order, 2);
  for (const Change& change : {Change(ScaleChange{0.5}), Change(TurnChange{90_deg}),
                               Change(DesignSizesChange{{{0.5, finding.sizes}}})}) {
    const auto made = orderWith(order, finding, change);
    REQUIRE(made.has_value());
    REQUIRE(made->lines.size() == 2);
    CHECK(made->lines[0].placements == order.lines[0].placements);
    CHECK(made->lines[1].placements[0] != order.lines[0].placements[0]);
    CHECK(made->lines[1].sizes.size() == 2);
    CHECK(made->lines[1].id != made->lines[0].id);
    CHECK(made->garments() == order.garments());
  }
}

TEST_CASE("several sizes of a design make a line each and keep every garment", "[change]") {
  const Order order = sampleOrder();
  const DesignSizesChange sizes{{{0.5, {SizeName("YM")}}, {0.8, {SizeName("M"), SizeName("XL")}}}};
  const auto made = orderWith(order, findingFor(order, 1), sizes);
  REQUIRE(made.has_value());
  REQUIRE(made->lines.size() == 3);
  CHECK(made->garments() == order.garments());
  for (const OrderLine& line : made->lines) {
    for (const SizeQuantity& entry : line.sizes) {
      const double wanted = entry.size == SizeName("YM")    ? 0.5
                            : entry.size == SizeName("2XL") ? 1.0
                                                            : 0.8;
      CHECK(line.placements[0].scale == wanted);
    }
  }
}

TEST_CASE("naming the frames changes the order and no line", "[change]") {
  const Order order = sampleOrder();
  const auto made = orderWith(order, findingFor(order, 1), FramesChange{{FrameId("A")}});
  REQUIRE(made.has_value());
  CHECK(made->frames == std::vector<FrameId>{FrameId("A")});
  CHECK(made->lines == order.lines);
}

TEST_CASE("what must be bought or made anew changes no order", "[change]") {
  const Order order = sampleOrder();
  const Finding finding = findingFor(order, 1);
  CHECK_FALSE(orderWith(order, finding, ShopChange{"buy"}).has_value());
  CHECK_FALSE(orderWith(order, finding, StitchesChange{1000}).has_value());
  CHECK_FALSE(orderWith(order, finding, FramesChange{}).has_value());  // none are named already
  Finding nowhere = finding;
  nowhere.line = order.lines.size();
  CHECK_FALSE(orderWith(order, nowhere, ScaleChange{0.5}).has_value());
}
