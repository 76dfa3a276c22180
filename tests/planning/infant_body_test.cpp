// SPDX-License-Identifier: MIT
// Garments and places for babies against a table of their bodies.
//
// W. Aldrich, Metric Pattern Cutting for Children's Wear and Babywear (Wiley), body measures from
// birth to two years by height, as transcribed in inches elsewhere and turned back to centimetres.
// Ease of a baby's top, 8 cm round the chest, and the length of a top, 1.5 times that from nape to
// waist, are invented and play no part in what is checked but the drawing.
#include <algorithm>
#include <catch2/catch.hpp>
#include <numbers>

#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

struct Baby {
  double height, chest, neck, shoulder, acrossBack, napeToWaist;  // cm
};
constexpr Baby kBabies[] = {{56, 41, 22, 4.4, 16.8, 15.8},   {64, 44, 23, 5.0, 18.0, 17.4},
                            {72, 47, 24, 5.6, 19.2, 19.0},   {80, 50, 25, 6.2, 20.4, 20.6},
                            {86, 52, 25.5, 6.6, 21.2, 21.8}, {92, 54, 26, 7.0, 22.0, 23.0}};
constexpr double kEase = 8.0;  // cm
constexpr const char* kKinds[] = {"t-shirt", "infant-bodysuit", "sleepwear-top", "long-sleeve-tee"};

Blank blankFor(const std::string& kind, const Baby& baby) {
  Blank blank = sample::blank(kind);
  ChartSize size;
  size.name = SizeName("B");
  size.band = SizeBand::Infant;
  size.bandGiven = true;
  size.measures[Measure::BodyWidth] = Length::fromMm((baby.chest + kEase) * 5.0);
  size.measures[Measure::BodyLength] = Length::fromMm(baby.napeToWaist * 15.0);
  blank.chart.sizes = {size};
  return blank;
}

PlacementPlan placed(const std::string& kind, const Baby& baby, const std::string& location,
                     Length width, Length height) {
  const Order order =
      sample::order(blankFor(kind, baby), sample::design("d", width, height), location, {"B"});
  const Shop shop = sample::shop({sample::frame("A", 100_mm, 100_mm)});
  return planOrder(order, shop, sample::shippedRules()).placements.at(0);
}

// Lowest and highest corner of the sides of that name, and the one furthest from the middle.
Box sidesOf(const PanelShape& panel, EdgeName name) {
  Box box;
  for (std::size_t i = 0; i < panel.sides.size(); ++i) {
    if (panel.sides[i].name == name) {
      box.add(panel.outline[i]);
      box.add(panel.outline[(i + 1) % panel.outline.size()]);
    }
  }
  return box;
}

}  // namespace

TEST_CASE("a baby's neck goes into the neck drawn, and shoulders are left", "[outside][infant]") {
  for (const Baby& baby : kBabies) {
    for (const char* kind : kKinds) {
      CAPTURE(kind, baby.height);
      const PlacementPlan plan = placed(kind, baby, "centre-chest", 50_mm, 40_mm);
      const PanelShape& front = *plan.garment->panel(PanelName::Front);
      const double neck = sidesOf(front, EdgeName::CollarSeam).width() / 10.0;
      const double shoulders = sidesOf(front, EdgeName::ShoulderSeam).width() / 10.0;
      CHECK(neck >= baby.neck / std::numbers::pi);
      // Each shoulder seam is left at least half of the baby's shoulder: common practice, no
      // source.
      CHECK((shoulders - neck) / 2.0 >= baby.shoulder / 2.0);
      // From arm to arm no narrower than the back, no wider than it and the ease.
      CHECK(shoulders >= baby.acrossBack);
      CHECK(shoulders <= baby.acrossBack + kEase);
    }
  }
}

TEST_CASE("a design of usual size lies on a baby's chest, above the waist", "[outside][infant]") {
  for (const Baby& baby : kBabies) {
    for (const char* kind : kKinds) {
      for (const char* location : {"left-chest", "right-chest", "centre-chest"}) {
        CAPTURE(kind, baby.height, location);
        const PlacementPlan plan = placed(kind, baby, location, 45_mm, 35_mm);
        REQUIRE(plan.hasRule);
        const PanelShape& front = *plan.garment->panel(PanelName::Front);
        const double shoulder = sidesOf(front, EdgeName::ShoulderSeam).min.y;
        const Box& design = plan.placed.bounds;
        // The nape lies no higher than the high point of the shoulder, from which a top hangs.
        CHECK(design.max.y - shoulder <= baby.napeToWaist * 10.0);
        // Between the arms: the chest across is about as wide as the back across.
        CHECK(std::max(-design.min.x, design.max.x) <= baby.acrossBack * 5.0);
        CHECK(design.min.y > shoulder);
      }
    }
  }
}

// Chest girths that the rule for tight-fitting children's sleepwear allows at most, 16 CFR
// 1615.1(o) and 1616.2(m), from memory: 48.3 cm at 9 to 12 months to 71.1 cm at size 10. What is so
// narrow is made for a child, whatever the size is called.
TEST_CASE("a top as narrow as a child's sleepwear counts as a child's", "[outside][infant]") {
  for (const double chest : {48.3, 49.5, 52.1, 53.3, 55.9, 58.4, 61.0, 62.9, 63.5, 66.0, 71.1}) {
    CAPTURE(chest);
    Blank blank = sample::blank("sleepwear-top");
    ChartSize size;
    size.name = SizeName("K");
    size.measures[Measure::BodyWidth] = Length::fromMm(chest * 5.0);
    size.measures[Measure::BodyLength] = Length::fromMm(chest * 7.0);
    blank.chart.sizes = {size};
    const Order order =
        sample::order(blank, sample::design("d", 50_mm, 40_mm), "centre-chest", {"K"});
    const Plan plan = planOrder(order, sample::shop({sample::frame("A", 100_mm, 100_mm)}),
                                sample::shippedRules());
    const SizeBand band = plan.placements.at(0).garment->band;
    CHECK((band == SizeBand::Infant || band == SizeBand::Youth));
  }
}
