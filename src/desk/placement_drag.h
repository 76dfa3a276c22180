// SPDX-License-Identifier: MIT
// What a hand does to one placement on the table: lays the design elsewhere, turns it. Each step is
// planned at once, so that room, frame and dimensions follow the hand. Knows no widget.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <memory>
#include <optional>

#include "creaseline/planning/planner.h"
#include "creaseline/sheets/garment_drawing.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

class PlacementDrag {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::PlacementDrag)

 public:
  // What the design has caught on.
  struct Caught {
    bool centreLine = false, ruleSideways = false, ruleHeight = false, ruleTurn = false;
  };

  // Of the order as it is now, planned or not. Nothing where the placement has no rule, or where
  // the order cannot be planned as it stands.
  [[nodiscard]] static std::unique_ptr<PlacementDrag> begin(
      std::shared_ptr<const PlannedOrder> planned, const LivePlanner::Spot& spot);

  // The whole design's centre to `centre` (panel coordinates). Within `reach` millimetres it
  // catches on the centre line and on what the rule says; else drop and sideways distance come to
  // the next ruler mark. Without `reach` it goes exactly there.
  void layAt(Point centre, std::optional<double> reach);
  // By so many ruler marks to the viewer's right and away from the datum.
  void nudge(int right, int away);
  // On top of the rule; within `reach` degrees of the rule and of each eighth of a turn it catches,
  // else it comes to a whole degree. Without `reach` exactly.
  void turnTo(Angle turn, std::optional<double> reach);
  // As one types a dimension: as long as that, in its direction.
  void setDimension(Dimension dimension, Length length);

  [[nodiscard]] const PlacementPlan& plan() const { return plan_; }
  [[nodiscard]] const OrderPlacement& asked() const { return asked_; }
  [[nodiscard]] const Caught& caught() const { return caught_; }
  [[nodiscard]] const LivePlanner::Spot& spot() const { return spot_; }
  [[nodiscard]] bool moved() const { return !(asked_ == start_); }
  [[nodiscard]] Point centre() const { return centreOf(plan_); }
  // "2 3/4 in below the collar seam, on the centre crease", and on a second line "Medium: room 12
  // mm"
  [[nodiscard]] QString words() const;

  // Of the whole design, also where `plan` is of one of its parts.
  [[nodiscard]] static Point centreOf(const PlacementPlan& plan);

 private:
  PlacementDrag(std::shared_ptr<const PlannedOrder> planned, const LivePlanner::Spot& spot);
  void lay(Point centre);
  [[nodiscard]] Point onMarks(Point centre) const;

  std::shared_ptr<const PlannedOrder> planned_;
  LivePlanner live_;
  LivePlanner::Spot spot_;
  OrderPlacement start_, asked_;
  PlacementPlan plan_;
  Caught caught_;
};

}  // namespace creaseline::desk
