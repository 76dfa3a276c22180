// SPDX-License-Identifier: MIT
#include "desk/placement_drag.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "creaseline/base/error.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/planning/wording.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr double kEighthOfATurn = 45.0;

// Which way along y a dimension grows.
double growing(const Placed& placed) {
  return leadsTowardsDatum(placed.from) ? -1.0 : 1.0;
}

}  // namespace

std::unique_ptr<PlacementDrag> PlacementDrag::begin(std::shared_ptr<const PlannedOrder> planned,
                                                    const LivePlanner::Spot& spot) {
  const Order* order = planned->order();
  if (order == nullptr || planned->shop() == nullptr || spot.line >= order->lines.size() ||
      spot.placement >= order->lines[spot.line].placements.size()) {
    return nullptr;
  }
  try {
    std::unique_ptr<PlacementDrag> drag(new PlacementDrag(std::move(planned), spot));
    return drag->plan_.hasRule ? std::move(drag) : nullptr;
  } catch (const InputError&) {
    return nullptr;  // the window says what is wrong with the order
  }
}

PlacementDrag::PlacementDrag(std::shared_ptr<const PlannedOrder> planned,
                             const LivePlanner::Spot& spot)
    : planned_(std::move(planned)),
      live_(*planned_->order(), *planned_->shop(), planned_->rules()),
      spot_(spot),
      start_(planned_->order()->lines[spot.line].placements[spot.placement]),
      asked_(start_),
      plan_(live_.plan(spot_, asked_)) {
}

Point PlacementDrag::centreOf(const PlacementPlan& plan) {
  return plan.part ? plan.part->wholeCentre : plan.placed.centre;
}

void PlacementDrag::lay(Point centre) {
  asked_ = live_.layAt(spot_, asked_, centre).asked;
  plan_ = live_.plan(spot_, asked_);
}

// The centre moved so that what one measures on cloth can be read off the ruler.
Point PlacementDrag::onMarks(Point centre) const {
  const UnitChoice& units = planned_->units();
  const Point by = centre - this->centre();
  const Length drop = plan_.placed.drop + Length::fromMm(growing(plan_.placed) * by.y);
  const Length lateral = plan_.placed.lateral + Length::fromMm(by.x);
  return {centre.x + (roundToMark(lateral, units) - lateral).mm(),
          centre.y + growing(plan_.placed) * (roundToMark(drop, units) - drop).mm()};
}

void PlacementDrag::layAt(Point centre, std::optional<double> reach) {
  caught_ = {};
  if (!reach) {
    lay(centre);
    return;
  }
  const auto near = [&](double a, double b) { return std::abs(a - b) <= *reach; };
  Point target = onMarks(centre);
  Point byRule = live_.layAt(spot_, asked_, centre).byRule;
  caught_.ruleHeight = near(centre.y, byRule.y);
  if (caught_.ruleHeight) {
    target.y = byRule.y;
    // The rule's sideways distance is the one at this height.
    byRule = live_.layAt(spot_, asked_, {centre.x, target.y}).byRule;
  }
  caught_.ruleSideways = near(centre.x, byRule.x);
  caught_.centreLine = near(centre.x, 0.0);
  if (caught_.ruleSideways && caught_.centreLine) {
    const bool nearer = std::abs(centre.x - byRule.x) <= std::abs(centre.x);
    caught_.ruleSideways = nearer;
    caught_.centreLine = !nearer || byRule.x == 0.0;
  }
  if (caught_.ruleSideways) {
    target.x = byRule.x;
  } else if (caught_.centreLine) {
    target.x = 0.0;
  }
  lay(target);
}

void PlacementDrag::nudge(int right, int away) {
  const double mark = rulerMark(planned_->units()).mm();
  caught_ = {};
  lay(onMarks(centre() + Point{right * mark, away * mark}));
}

void PlacementDrag::turnTo(Angle turn, std::optional<double> reach) {
  double degrees = turn.degrees();
  caught_ = {};
  if (reach) {
    const double eighth = std::round(degrees / kEighthOfATurn) * kEighthOfATurn;
    degrees = std::abs(degrees - eighth) <= *reach ? eighth : std::round(degrees);
    caught_.ruleTurn = degrees == 0.0;
  }
  asked_.turn = Angle::fromDegrees(degrees);
  plan_ = live_.plan(spot_, asked_);
}

void PlacementDrag::setDimension(Dimension dimension, Length length) {
  const Placed& placed = plan_.placed;
  Point by;
  switch (dimension) {
    case Dimension::Drop:
      by.y = growing(placed) * (length - placed.drop).mm();
      break;
    case Dimension::Centre:
      by.y = growing(placed) * (length - placed.centreOffset).mm();
      break;
    case Dimension::Sideways:
      by.x = std::copysign(1.0, placed.lateral.mm()) * (length - abs(placed.lateral)).mm();
      break;
  }
  caught_ = {};
  lay(centre() + by);
}

QString PlacementDrag::words() const {
  const UnitChoice& units = planned_->units();
  const QString height =
      toQString(formatLength(plan_.placed.drop, units) + ' ' + landmarkPhrase(plan_.placed.from));
  const QString sideways = toQString(lateralPhrase(plan_, units));
  const Frame* frame = plan_.frame ? planned_->shop()->frame(plan_.frame->frame) : nullptr;
  const QString held = frame == nullptr
                           ? tr("no frame on hand can hold it here")
                           : tr("%1: room %2", "frame, length")
                                 .arg(toQString(frame->name),
                                      toQString(formatLength(plan_.frame->slack.least(), units)));
  const Angle turn = asked_.turn;
  const QString where = tr("%1, %2", "height, sideways").arg(height, sideways);
  const QString lying =
      turn == Angle() ? where
      : turn > Angle()
          ? tr("%1, turned %2 clockwise").arg(where, toQString(formatAngle(turn)))
          : tr("%1, turned %2 anticlockwise").arg(where, toQString(formatAngle(-turn)));
  return lying + QLatin1Char('\n') + held;
}

}  // namespace creaseline::desk
