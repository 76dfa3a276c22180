// SPDX-License-Identifier: MIT
#include "creaseline/planning/change.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <set>
#include <tuple>

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

TEST_CASE("sizes of a design over several lines split each line and find the later ones",
          "[change]") {
  Order order = sampleOrder();
  for (const char* id : {"2", "3"}) {
    order.lines.push_back(order.lines[0]);
    order.lines.back().id = id;
  }
  order.lines[2].placements.push_back(order.lines[2].placements[0]);
  const SizeName youth("YM");
  const SizeName medium("M");
  const DesignSizesOfLinesChange change{{{2, 1, {{0.6, {youth, medium}}}},
                                         {0, 0, {{0.8, {youth}}, {0.9, {medium}}}},
                                         {2, 0, {{0.7, {medium}}}}}};
  const auto made = orderWith(order, findingFor(order, 1), change);
  REQUIRE(made.has_value());
  CHECK(made->garments() == order.garments());
  REQUIRE(made->lines.size() == 7);  // three, two and two
  CHECK(made->lines[3] == order.lines[1]);
  // By line as it was, placement and size; what is not here stays as asked.
  using Key = std::tuple<char, std::size_t, SizeName>;
  const std::map<Key, double> wanted{{{'1', 0, youth}, 0.8},
                                     {{'1', 0, medium}, 0.9},
                                     {{'3', 0, medium}, 0.7},
                                     {{'3', 1, youth}, 0.6},
                                     {{'3', 1, medium}, 0.6}};
  std::set<std::string> ids;
  for (const OrderLine& line : made->lines) {
    ids.insert(line.id);
    for (std::size_t placement = 0; placement < line.placements.size(); ++placement) {
      for (const SizeQuantity& entry : line.sizes) {
        const auto scale = wanted.find({line.id.front(), placement, entry.size});
        CAPTURE(line.id, placement, entry.size.text());
        CHECK(line.placements[placement].scale == (scale == wanted.end() ? 1.0 : scale->second));
      }
    }
  }
  CHECK(ids.size() == made->lines.size());
}

TEST_CASE("sizes of a design for a line or place that is not there change nothing", "[change]") {
  const Order order = sampleOrder();
  const std::vector<SizeScale> scales{{0.8, {SizeName("M")}}};
  const Finding finding = findingFor(order, 1);
  CHECK(orderWith(order, finding, DesignSizesOfLinesChange{{{0, 0, scales}}}).has_value());
  CHECK_FALSE(orderWith(order, finding, DesignSizesOfLinesChange{{{0, 1, scales}}}).has_value());
  CHECK_FALSE(orderWith(order, finding, DesignSizesOfLinesChange{{{0, 0, scales}, {1, 0, scales}}})
                  .has_value());
  CHECK_FALSE(orderWith(order, finding, DesignSizesOfLinesChange{}).has_value());
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
