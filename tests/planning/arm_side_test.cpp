// SPDX-License-Identifier: MIT
// The garment round the machine's arm: ring, bracket, and the weight that hangs beside the frame.
#include "planning/arm_side.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "creaseline/planning/planner.h"
#include "planning/hanging_weight.h"
#include "planning/workshop.h"
#include "shape/random_shapes.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

Order sewnOn(const std::string& kind, const std::string& location) {
  return sample::order(sample::blank(kind), sample::design("d", 60_mm, 40_mm), location, {"M"});
}

Frame withBracket(BracketSide side, std::vector<Angle> turns = {Angle()}) {
  Frame frame = sample::frame("A", 100_mm, 80_mm);
  frame.bracket = side;
  frame.turns = std::move(turns);
  return frame;
}

Plan planWithBracket(const std::string& kind, const std::string& location, Frame frame) {
  return planOrder(sewnOn(kind, location), sample::shop({std::move(frame)}), sample::shippedRules(),
                   {});
}

bool hasReason(const Reasons& reasons, const std::string& text) {
  return std::any_of(reasons.begin(), reasons.end(), [&text](const Reason& reason) {
    return reason.text.find(text) != std::string::npos && !reason.basis.empty();
  });
}

const Remedy* remedyThat(const Finding& finding, const std::string& text) {
  const auto found = std::find_if(
      finding.remedies.begin(), finding.remedies.end(),
      [&text](const Remedy& remedy) { return remedy.text.find(text) != std::string::npos; });
  return found == finding.remedies.end() ? nullptr : &*found;
}

constexpr BracketSide kSides[] = {BracketSide::Top, BracketSide::Bottom, BracketSide::Left,
                                  BracketSide::Right, BracketSide::Both};

}  // namespace

// A bag is sewn up on three sides, a shirt is open at neck and hem, a blanket everywhere: what
// anybody sees who holds one.
TEST_CASE("the bracket must face an opening of the garment", "[arm-side]") {
  struct Expected {
    const char* kind;
    const char* location;
    bool top, bottom, left, right;
  };
  for (const Expected& each : {Expected{"tote-bag", "tote-centre", true, false, false, false},
                               Expected{"t-shirt", "centre-chest", true, true, false, false},
                               Expected{"full-zip-hoodie", "full-back", true, true, true, true},
                               Expected{"blanket", "blanket-centre", true, true, true, true}}) {
    for (const BracketSide side : kSides) {
      CAPTURE(each.kind, nameOf(side));
      const bool wanted = side == BracketSide::Bottom  ? each.bottom
                          : side == BracketSide::Left  ? each.left
                          : side == BracketSide::Right ? each.right
                                                       : each.top;
      const Plan plan = planWithBracket(each.kind, each.location, withBracket(side));
      const PlacementPlan& placement = plan.placements[0];
      REQUIRE(placement.hasRule);
      CHECK(placement.frame.has_value() == wanted);
      if (placement.frame) {
        CHECK(hasReason(placement.frame->reasons, "machine's arm"));
      } else {
        REQUIRE(placement.rejections.size() == 1);
        CHECK(placement.rejections[0].test == FrameTest::ArmReachesIn);
        CHECK(placement.rejections[0].what.find("no opening for the machine's arm") !=
              std::string::npos);
        CHECK(placement.stops());
      }
    }
  }
}

TEST_CASE("the reasons say through what ring and arm go in", "[arm-side]") {
  const Plan tote = planWithBracket("tote-bag", "tote-centre", withBracket(BracketSide::Top));
  const Reasons& reasons = tote.placements[0].frame->reasons;
  CHECK(hasReason(reasons, "the machine's arm goes in through the mouth of the bag"));
  // The body is 80 mm and two rims of 15 mm across, the shorter way.
  CHECK(hasReason(reasons, "its ring, 4 3/8 in across, goes in through the mouth of the bag"));
  const Plan shirt = planWithBracket("t-shirt", "centre-chest", withBracket(BracketSide::Bottom));
  CHECK(hasReason(shirt.placements[0].frame->reasons,
                  "towards the hem; the machine's arm goes in "
                  "through the hem"));
}

TEST_CASE("a frame whose bracket faces a seam is laid another way if it may be", "[arm-side]") {
  const Angle half = Angle::fromDegrees(180.0);
  const Plan turned =
      planWithBracket("tote-bag", "tote-centre", withBracket(BracketSide::Bottom, {Angle(), half}));
  REQUIRE(turned.placements[0].frame.has_value());
  CHECK(turned.placements[0].frame->turn == half);
  // Where it need not, it lies the plain way round.
  const Plan plain =
      planWithBracket("tote-bag", "tote-centre", withBracket(BracketSide::Top, {Angle(), half}));
  REQUIRE(plain.placements[0].frame.has_value());
  CHECK(plain.placements[0].frame->turn == Angle());
  // And where it may not, that is offered.
  const Plan fixed = planWithBracket("tote-bag", "tote-centre", withBracket(BracketSide::Bottom));
  const Remedy* remedy = remedyThat(sample::findingOf(fixed, FindingCode::FrameMeetsGarment),
                                    "lay the frame turned by 180");
  REQUIRE(remedy != nullptr);
  CHECK(std::get<FrameTurnChange>(remedy->change).turn == half);
}

TEST_CASE("what is too wide for a bag's mouth has a narrower frame as remedy", "[arm-side]") {
  Order order = sewnOn("tote-bag", "tote-centre");
  const Length mouth = 120_mm;
  for (ChartSize& size : order.blanks[0].chart.sizes) {
    size.measures[Measure::TopWidth] = mouth;
    size.measures[Measure::StrapFromCentre] = 50_mm;
  }
  const Plan plan = planOrder(order, sample::shop({sample::frame("A", 140_mm, 140_mm)}),
                              sample::shippedRules(), {});
  const Finding& finding = sample::findingOf(plan, FindingCode::FrameMeetsGarment);
  const Remedy* remedy = remedyThat(finding, "whose body is at most");
  REQUIRE(remedy != nullptr);
  CHECK(std::get<ShopChange>(remedy->change).what == "another-frame");
}

// Length times width times weight: 1.5 m x 2 m x 260 g/m² = 780 g, less the window of 100 x 80 mm,
// which holds 2 g of it.
TEST_CASE("what hangs beside the frame is weighed", "[hanging-weight]") {
  const ArealWeight cloth = ArealWeight::fromGramsPerSquareMetre(260.0);
  const auto planned = [&cloth](const std::string& kind, const std::string& location,
                                const ChartSize& size) {
    Blank blank = sample::blank(kind);
    blank.fabric.weight = cloth;
    blank.chart.sizes = {size};
    return planOrder(
        sample::order(blank, sample::design("d", 60_mm, 40_mm), location, {size.name.text()}),
        sample::shop({sample::frame("A", 100_mm, 80_mm)}), sample::shippedRules(), {});
  };
  const auto cautioned = [](const Plan& plan) {
    const auto& cautions = plan.placements[0].cautions;
    return std::any_of(cautions.begin(), cautions.end(), [](const Caution* caution) {
      return caution->when == CautionOccasion::HeavyGarment;
    });
  };
  ChartSize large = sample::blank("blanket").chart.sizes.front();
  large.measures[Measure::BodyWidth] = 1500_mm;
  large.measures[Measure::BodyLength] = 2000_mm;
  const Plan blanket = planned("blanket", "blanket-centre", large);
  REQUIRE(blanket.placements[0].frame.has_value());
  const Shop shop = sample::shop({sample::frame("A", 100_mm, 80_mm)});
  const Workshop workshop = prepareWorkshop(shop, sample::shippedRules());
  const HangingWeight weight =
      hangingWeight(*blanket.placements[0].garment, cloth, &workshop.frames->front());
  CHECK(weight.all == Approx(780.0));
  CHECK(weight.beside == Approx(780.0 - 0.1 * 0.08 * 260.0).margin(0.1));
  CHECK(cautioned(blanket));
  CHECK(hasReason(blanket.placements[0].frame->reasons, "778 g of the garment's 780 g"));

  ChartSize infant;
  infant.name = SizeName("6M");
  infant.band = SizeBand::Infant;
  infant.bandGiven = true;
  infant.measures = {{Measure::BodyWidth, 260_mm}, {Measure::BodyLength, 330_mm}};
  const Plan top = planned("t-shirt", "centre-chest", infant);
  CHECK_FALSE(cautioned(top));
  // Front and back are at most the rectangle around them, the sleeves less than as much again.
  CHECK(hangingWeight(*top.placements[0].garment, cloth, nullptr).all <
        2.0 * 2.0 * 0.26 * 0.35 * 260.0);
}

// Half the strip is 100 by 10 mm, half the window 90: turned by t its corner is at 100 cos t + 10
// sin t, which is 90 at 32 degrees, and 3 (cos t + sin t) further with 3 mm of error each way.
TEST_CASE("a turn is named at which the frame bears the error as well", "[arm-side][frame-turn]") {
  Frame frame = sample::frame("A", 180_mm, 180_mm);
  frame.clearance = Length();
  const Shop shop = sample::shop({frame});
  struct Expected {
    Length width;
    double least;  // degrees at which the corners touch
    bool bears;
  };
  for (const Expected& each : {Expected{200_mm, 32.0, true}, Expected{220_mm, 41.0, false}}) {
    CAPTURE(each.width.mm());
    Order order = sample::order(sample::blank("blanket"), sample::design("d", each.width, 20_mm),
                                "blanket-centre", {"M"});
    const Plan plan = planOrder(order, shop, sample::shippedRules(), {});
    const Finding& finding = sample::findingOf(plan, FindingCode::TooLargeForEveryFrame);
    const Remedy* remedy = remedyThat(finding, "lay the frame turned by");
    REQUIRE(remedy != nullptr);
    const Angle turn = std::get<FrameTurnChange>(remedy->change).turn;
    CHECK(std::abs(turn.degrees()) > each.least);
    CHECK((finding.text.find("with little room for the shop's hooping error") !=
           std::string::npos) == !each.bears);
    order.lines[0].placements[0].frameTurn = turn;
    const Plan turned = planOrder(order, shop, sample::shippedRules(), {});
    REQUIRE(turned.placements[0].frame.has_value());
    CHECK(turned.placements[0].frame->bearsError == each.bears);
    CHECK_FALSE(turned.placements[0].stops());
  }
}

TEST_CASE("a way of lying is left out of a search only where no centre lets the arm in",
          "[arm-side][property]") {
  constexpr std::uint32_t kSeed = 20261129;
  test::Dice dice(kSeed);
  int leftOut = 0;
  int reached = 0;
  for (const auto& [kind, location] :
       {std::pair{"tote-bag", "tote-centre"}, std::pair{"t-shirt", "full-back"},
        std::pair{"polo", "left-sleeve"}}) {
    for (const BracketSide side : kSides) {
      const Shop shop = sample::shop({withBracket(side, {0_deg, 90_deg})});
      const Workshop workshop = prepareWorkshop(shop, sample::shippedRules());
      const Plan plan = planOrder(sewnOn(kind, location), shop, sample::shippedRules(), {});
      const PlacementPlan& placement = plan.placements.at(0);
      const PanelShape& panel = *placement.garment->panel(placement.panel);
      const Box extent = ringBounds(panel.outline);
      for (int i = 0; i < 40; ++i) {
        const Point corner{dice.between(extent.min.x, extent.max.x),
                           dice.between(extent.min.y, extent.max.y)};
        Box box;
        box.add(corner);
        box.add(corner + Point{dice.between(0, 150), dice.between(0, 150)});
        for (const PreparedFrame& frame : *workshop.frames) {
          const bool may = armMayReach(frame, box, panel, workshop);
          leftOut += may ? 0 : 1;
          for (int j = 0; j < 20; ++j) {
            const Point centre{dice.between(box.min.x, box.max.x),
                               dice.between(box.min.y, box.max.y)};
            const bool reaches = armEdge(frame, centre, panel, workshop) != nullptr;
            reached += reaches ? 1 : 0;
            CAPTURE(kSeed, kind, nameOf(side), i, j);
            CHECK((may || !reaches));
          }
        }
      }
    }
  }
  CHECK(leftOut > 100);
  CHECK(reached > 1000);
}
