// SPDX-License-Identifier: MIT
#include "desk/placement_drag.h"

#include <cmath>

#include "desk/desk_fixture.h"
#include "desk/order_edits.h"

namespace creaseline::desk {
namespace {

using namespace creaseline::literals;

LivePlanner::Spot firstSpot() {
  const OrderLine& line = plannedDemo()->order()->lines[0];
  return {0, 0, line.sizes[line.sizes.size() / 2].size};
}

bool onMark(Length length) {
  return roundToMark(length, plannedDemo()->units()) == length;
}

}  // namespace

TEST_CASE("A design that is laid elsewhere comes to the ruler's marks", "[desk][drag]") {
  const auto drag = PlacementDrag::begin(plannedDemo(), firstSpot());
  REQUIRE(drag != nullptr);
  const Point start = drag->centre();
  for (const Point by : {Point{13.3, 21.7}, Point{-17.9, 30.1}, Point{40.4, 9.6}}) {
    drag->layAt(start + by, 1.0);
    const Placed& placed = drag->plan().placed;
    CAPTURE(by.x, by.y);
    CHECK(onMark(placed.lateral));
    CHECK(onMark(placed.drop));
    // No further than half a mark of a sixteenth or an eighth of an inch.
    CHECK(std::abs(drag->centre().x - (start + by).x) <= 1.6);
    CHECK(std::abs(drag->centre().y - (start + by).y) <= 1.6);
    CHECK(drag->moved());
  }
}

TEST_CASE("It catches on the centre line and on the rule, and without reach on nothing",
          "[desk][drag]") {
  const auto drag = PlacementDrag::begin(plannedDemo(), firstSpot());
  REQUIRE(drag != nullptr);
  drag->layAt({0.0, 300.0}, std::nullopt);
  const OrderPlacement far = drag->asked();
  CHECK(drag->plan().placed.lateral == Length());
  drag->layAt({2.0, 300.0}, 3.0);
  CHECK(drag->caught().centreLine);
  CHECK(drag->plan().placed.lateral == Length());
  drag->layAt({2.0, 300.0}, std::nullopt);
  CHECK_FALSE(drag->caught().centreLine);
  CHECK(drag->centre().x == Approx(2.0));
  CHECK(drag->centre().y == Approx(300.0));
  // Back near the rule it is the rule again, exactly.
  const auto ruled = PlacementDrag::begin(
      std::make_shared<const PlannedOrder>(plannedDemo()->withOrder(std::make_shared<const Order>(
          OrderEdits(*plannedDemo()->order(), shippedRules(), {}).byRule(0, 0).order))),
      firstSpot());
  drag->layAt(ruled->centre() + Point{1.5, -1.5}, 3.0);
  CHECK(drag->caught().ruleHeight);
  CHECK((drag->caught().ruleSideways || drag->caught().centreLine));
  CHECK(drag->asked().moveDown == Length());
  CHECK(drag->asked().moveRight == Length());
}

TEST_CASE("A nudge is one ruler mark", "[desk][drag]") {
  const auto drag = PlacementDrag::begin(plannedDemo(), firstSpot());
  REQUIRE(drag != nullptr);
  const auto metric = PlacementDrag::begin(
      std::make_shared<const PlannedOrder>(
          plannedDemo()->withUnits({LengthUnit::Millimetre, RulerMark::Eighth, {}})),
      firstSpot());
  metric->nudge(0, 1);
  const Length drop = metric->plan().placed.drop;
  metric->nudge(0, 1);
  CHECK(metric->plan().placed.drop == drop + 1_mm);
  metric->nudge(0, -3);
  CHECK(metric->plan().placed.drop == drop - 2_mm);
  drag->nudge(1, 0);
  const Length lateral = drag->plan().placed.lateral;
  drag->nudge(1, 0);
  const double mark = 25.4 / static_cast<int>(plannedDemo()->units().mark);
  CHECK((drag->plan().placed.lateral - lateral).mm() == Approx(mark).margin(1e-6));
}

TEST_CASE("A turn catches on the rule and on eighths of a turn", "[desk][drag]") {
  const auto drag = PlacementDrag::begin(plannedDemo(), firstSpot());
  REQUIRE(drag != nullptr);
  const auto turnedTo = [&](double degrees, std::optional<double> reach) {
    drag->turnTo(Angle::fromDegrees(degrees), reach);
    return drag->asked().turn.degrees();
  };
  CHECK(turnedTo(1.9, 3.0) == 0.0);
  CHECK(drag->caught().ruleTurn);
  CHECK(turnedTo(43.2, 3.0) == 45.0);
  CHECK(turnedTo(-92.4, 3.0) == -90.0);
  CHECK(turnedTo(17.4, 3.0) == 17.0);
  CHECK(turnedTo(17.4, std::nullopt) == Approx(17.4));
  CHECK(drag->plan().placed.turn == Angle::fromDegrees(17.4));
  CHECK(drag->words().contains(QStringLiteral("turned 17.4° clockwise")));
  turnedTo(-5.0, std::nullopt);
  CHECK(drag->words().contains(QStringLiteral("turned 5° anticlockwise")));
  turnedTo(0.0, std::nullopt);
  CHECK_FALSE(drag->words().contains(QStringLiteral("turned")));
}

TEST_CASE("A typed dimension is what the plan then says", "[desk][drag]") {
  for (std::size_t line = 0; line < plannedDemo()->order()->lines.size(); ++line) {
    const OrderLine& ordered = plannedDemo()->order()->lines[line];
    for (std::size_t place = 0; place < ordered.placements.size(); ++place) {
      CAPTURE(line, place);
      const auto drag =
          PlacementDrag::begin(plannedDemo(), {line, place, ordered.sizes.front().size});
      REQUIRE(drag != nullptr);
      drag->setDimension(Dimension::Drop, 81_mm);
      CHECK(drag->plan().placed.drop == 81_mm);
      drag->setDimension(Dimension::Centre, 140_mm);
      CHECK(drag->plan().placed.centreOffset == 140_mm);
      if (drag->plan().placed.lateral != Length()) {
        const bool right = drag->plan().placed.lateral > Length();
        drag->setDimension(Dimension::Sideways, 55_mm);
        CHECK(drag->plan().placed.lateral == (right ? 55_mm : -55_mm));
      }
      CHECK_FALSE(drag->words().isEmpty());
    }
  }
}

TEST_CASE("What cannot be planned cannot be dragged", "[desk][drag]") {
  CHECK(PlacementDrag::begin(plannedDemo(), {99, 0, SizeName("M")}) == nullptr);
  CHECK(PlacementDrag::begin(plannedDemo(), {0, 99, SizeName("M")}) == nullptr);
  CHECK(PlacementDrag::begin(plannedDemo(), {0, 0, SizeName("no such size")}) == nullptr);
  Order broken = *plannedDemo()->order();
  broken.designs.clear();
  CHECK(PlacementDrag::begin(std::make_shared<const PlannedOrder>(plannedDemo()->withOrder(
                                 std::make_shared<const Order>(std::move(broken)))),
                             firstSpot()) == nullptr);
}

}  // namespace creaseline::desk
