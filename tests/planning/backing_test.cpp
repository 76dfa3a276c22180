// SPDX-License-Identifier: MIT
#include <algorithm>
#include <catch2/catch.hpp>

#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

PlacementPlan planOne(const Blank& blank, const Design& design, const std::string& location,
                      const std::string& size = "M") {
  const Plan plan =
      planOrder(sample::order(blank, design, location, {size}),
                sample::shop({sample::frame("A", 200_mm, 200_mm)}), sample::shippedRules());
  return plan.placements.front();
}

const Design& smallDesign() {
  static const Design design = sample::design("d", 80_mm, 50_mm);
  return design;
}

}  // namespace

// common practice, no source: heavy fleece hoodie, body: cut-away, its inside is hidden.
TEST_CASE("the body of a heavy fleece hoodie gets cut-away", "[backing]") {
  for (const char* kind : {"pullover-hoodie", "full-zip-hoodie"}) {
    const PlacementPlan body = planOne(sample::blank(kind), smallDesign(), "left-chest");
    CHECK(body.backing.kind == BackingKind::CutAway);
    CHECK_FALSE(body.backing.stock.empty());
  }
}

// common practice, no source: hoodie's hood: tear-away, because its inside is seen.
TEST_CASE("the hood of the same hoodie gets tear-away", "[backing]") {
  for (const char* kind : {"pullover-hoodie", "full-zip-hoodie"}) {
    const PlacementPlan hood = planOne(sample::blank(kind), smallDesign(), "hood-back");
    CHECK(hood.backing.kind == BackingKind::TearAway);
    const bool saysWhy =
        std::any_of(hood.backing.fired.begin(), hood.backing.fired.end(), [](const Reason& reason) {
          return reason.text.find("inside is seen") != std::string::npos;
        });
    CHECK(saysWhy);
  }
}

// common practice, no source: stretch fabrics never below cut-away; knits take a ball point,
// wovens a sharp one.
TEST_CASE("knits get a support that stays and a ball point, stable wovens need not", "[backing]") {
  Blank blank = sample::blank("t-shirt");
  const PlacementPlan knit = planOne(blank, smallDesign(), "left-chest");
  CHECK(knit.backing.kind == BackingKind::CutAway);
  CHECK(knit.backing.needlePoint == NeedlePoint::Ball);
  blank.fabric.construction = Construction::Woven;
  blank.fabric.stretch = Stretch::None;
  const PlacementPlan woven = planOne(blank, smallDesign(), "left-chest");
  CHECK(woven.backing.kind == BackingKind::TearAway);
  CHECK(woven.backing.needlePoint == NeedlePoint::Sharp);
  blank.fabric.stretch = Stretch::Some;
  CHECK(planOne(blank, smallDesign(), "left-chest").backing.kind == BackingKind::CutAway);
}

// common practice, no source: topping film on terry, fleece, pique, loose knits.
TEST_CASE("what follows from a fabric that was only proposed counts as assumed", "[backing]") {
  Blank blank = sample::blank("t-shirt");
  const PlacementPlan said = planOne(blank, smallDesign(), "left-chest");
  blank.fabric.proposed = true;
  const PlacementPlan proposed = planOne(blank, smallDesign(), "left-chest");
  REQUIRE_FALSE(said.backing.fired.empty());
  REQUIRE(said.backing.fired.size() == proposed.backing.fired.size());
  for (std::size_t i = 0; i < said.backing.fired.size(); ++i) {
    CHECK_FALSE(said.backing.fired[i].assumed);
    CHECK(proposed.backing.fired[i].assumed);
    CHECK(proposed.backing.fired[i].changedBy == "saying what the garment is made of");
  }
}

TEST_CASE("pile and texture get a topping", "[backing]") {
  Blank blank = sample::blank("polo");
  CHECK_FALSE(planOne(blank, smallDesign(), "left-chest").backing.topping);
  blank.fabric.pile = Pile::Textured;
  CHECK(planOne(blank, smallDesign(), "left-chest").backing.topping);
  blank.fabric.pile = Pile::Loop;
  CHECK(planOne(blank, smallDesign(), "left-chest").backing.topping);
}

TEST_CASE("more stitches on the same area never get less support", "[backing]") {
  const Blank blank = sample::blank("t-shirt");
  int layers = 0;
  for (const double density : {0.2, 0.5, 0.9, 1.5}) {
    Design design = smallDesign();
    design.blocks.clear();
    design.stitches = static_cast<int>(80.0 * 50.0 * density);
    const PlacementPlan plan = planOne(blank, design, "left-chest");
    CAPTURE(density);
    CHECK(plan.backing.layers >= layers);
    layers = plan.backing.layers;
  }
  CHECK(layers == 2);
}

TEST_CASE("the backing is cut to the frame's body and the clamp margin", "[backing]") {
  const PlacementPlan plan = planOne(sample::blank("t-shirt"), smallDesign(), "centre-chest");
  REQUIRE(plan.frame);
  // 200 window + 2 x 15 rim + 2 x 25 margin.
  CHECK(plan.backing.cutWidth == 280_mm);
  CHECK(plan.backing.cutHeight == 280_mm);
}

TEST_CASE("the lightest stock that is heavy and large enough is taken", "[backing]") {
  Shop shop = sample::shop({sample::frame("A", 200_mm, 200_mm)});
  const auto roll = [](const char* id, double weight, Length width) {
    return BackingStock{StockId(id),
                        id,
                        BackingKind::CutAway,
                        ArealWeight::fromGramsPerSquareMetre(weight),
                        BackingForm::Roll,
                        width,
                        10'000_mm,
                        0};
  };
  shop.backings = {roll("thin", 30.0, 500_mm), roll("heavy", 120.0, 500_mm),
                   roll("right", 90.0, 500_mm), roll("too-small", 70.0, 200_mm)};
  const Plan plan =
      planOrder(sample::order(sample::blank("t-shirt"), smallDesign(), "centre-chest", {"M"}), shop,
                sample::shippedRules());
  CHECK(plan.placements.front().backing.stock == StockId("right"));
  shop.backings = {roll("thin", 30.0, 500_mm)};
  const Plan none =
      planOrder(sample::order(sample::blank("t-shirt"), smallDesign(), "centre-chest", {"M"}), shop,
                sample::shippedRules());
  CHECK(none.placements.front().backing.stock.empty());
  CHECK(sample::hasFinding(none, FindingCode::BackingNotInStock));
}

TEST_CASE("the rules that fired are listed in order and carry their basis", "[backing]") {
  const PlacementPlan plan = planOne(sample::blank("pullover-hoodie"), smallDesign(), "hood-back");
  REQUIRE(plan.backing.fired.size() >= 3);
  std::size_t from = 0;
  const auto& rules = sample::shippedRules().backing;
  for (const Reason& reason : plan.backing.fired) {
    const auto at = std::find_if(rules.begin() + static_cast<std::ptrdiff_t>(from), rules.end(),
                                 [&reason](const BackingRule& r) { return r.id == reason.rule; });
    REQUIRE(at != rules.end());
    from = static_cast<std::size_t>(at - rules.begin()) + 1;
    CHECK_FALSE(reason.basis.empty());
  }
}
