// SPDX-License-Identifier: MIT
#include "planning/placement.h"

#include <fmt/format.h>
#include <algorithm>

#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

template <class T>
bool matches(const std::vector<T>& wanted, const T& value) {
  return wanted.empty() || std::find(wanted.begin(), wanted.end(), value) != wanted.end();
}

// The measure that tells where a mark lies; nothing for a mark at the datum itself.
std::optional<Measure> measureOf(Landmark from, PanelName panel) {
  switch (from) {
    case Landmark::CollarSeam:
    case Landmark::FaceEdge:
    case Landmark::CuffEdge:
      return std::nullopt;
    case Landmark::ShoulderPoint:
      return panel == PanelName::Back ? Measure::BackNeckDrop : Measure::FrontNeckDrop;
    case Landmark::CuffSeam:
      return Measure::CuffHeight;
    case Landmark::ShoulderSeam:
      return Measure::SleeveLength;
    case Landmark::PlacketEnd:
      return Measure::PlacketLength;
  }
  return std::nullopt;
}

// A rule that measures from a mark that this garment lacks (a placket on a T-shirt) says nothing
// about it.
bool hasMark(const PlacementRule& rule, const GarmentShape& garment, const Workshop& workshop) {
  const Location* location = workshop.rules->location(rule.location);
  if (location == nullptr || !liesOn(rule.from, location->panel)) {
    return false;
  }
  const std::optional<Measure> measure = measureOf(rule.from, location->panel);
  return !measure || garment.measures.count(*measure) != 0;
}

bool applies(const PlacementRule& rule, const PlacementRequest& request, const Workshop& workshop) {
  return rule.location == request.placement.location && matches(rule.kinds, request.blank->kind) &&
         matches(rule.bands, request.garment->band) && matches(rule.sizes, request.size) &&
         matches(rule.blanks, request.blank->id) && hasMark(rule, *request.garment, workshop);
}

// A measure of this garment in millimetres; says in the reasons where it is from. Precondition:
// the garment has it.
double measured(const GarmentShape& garment, Measure measure, const UnitChoice& units,
                Reasons& reasons) {
  const MeasureValue& value = garment.measures.at(measure);
  reasons.push_back(
      {fmt::format("{} {} {}", measurePhrase(measure), formatLength(value.value, units),
                   value.assumed ? "assumed: the size chart lacks it" : "from the size chart"),
       value.rule, value.basis, value.assumed});
  return value.value.mm();
}

// Precondition: the panel has this mark (hasMark).
double landmarkY(Landmark from, PanelName panel, const GarmentShape& garment,
                 const UnitChoice& units, Reasons& reasons) {
  const std::optional<Measure> measure = measureOf(from, panel);
  if (!measure) {
    return 0.0;
  }
  const double away = measured(garment, *measure, units, reasons);
  return from == Landmark::ShoulderPoint ? -away : away;
}

double sideSign(const Location& location) {
  if (location.viewerSide == "left") {
    return -1.0;
  }
  return location.viewerSide == "right" ? 1.0 : 0.0;
}

double halfOpening(const GarmentShape& garment, const UnitChoice& units, Reasons& reasons) {
  for (const Measure measure : {Measure::PlacketWidth, Measure::ZipWidth}) {
    if (garment.measures.count(measure) != 0) {
      return measured(garment, measure, units, reasons) / 2.0;
    }
  }
  return 0.0;
}

double lateralMm(const PlacementRule& rule, const Location& location, const PanelShape& panel,
                 const GarmentShape& garment, double centreY, const UnitChoice& units,
                 Reasons& reasons) {
  switch (rule.sideways) {
    case Sideways::CentreLine:
      reasons.push_back({"on the centre crease", rule.id, rule.basis, false});
      return 0.0;
    case Sideways::FromCentreLine:
      reasons.push_back({fmt::format("{} from the centre crease to the design's centre",
                                     formatLength(rule.sidewaysDistance, units)),
                         rule.id, rule.basis, false});
      return sideSign(location) * rule.sidewaysDistance.mm();
    case Sideways::PlacketToArmhole: {
      reasons.push_back({"midway between placket edge and armhole seam at the design's height",
                         rule.id, rule.basis, false});
      const double inner = halfOpening(garment, units, reasons);
      const auto row = rowExtent(panel.outline, centreY);
      const double outer = row ? std::max(std::abs(row->low), std::abs(row->high)) : inner;
      return sideSign(location) * (inner + outer) / 2.0;
    }
  }
  return 0.0;
}

void giveDropReasons(Placed& placed, const PlacementRule& rule, const OrderPlacement& placement,
                     const UnitChoice& units) {
  const std::string what =
      rule.anchor == Anchor::NearEdge ? "nearest side of the design" : "centre of the design";
  placed.dropReasons.insert(
      placed.dropReasons.begin(),
      {fmt::format("{}{} {} {}{}", rule.house ? "house rule: " : "", what,
                   formatLength(rule.distance, units), landmarkPhrase(rule.from),
                   rule.note.empty() ? "" : " (" + rule.note + ")"),
       rule.id, rule.basis, false});
  if (placement.moveDown != Length()) {
    placed.dropReasons.push_back(
        {fmt::format("moved by {} as the order asks", formatLength(placement.moveDown, units)),
         {},
         "order",
         false});
  }
}

void giveTurnReasons(Placed& placed, const PlacementRule& rule, const OrderPlacement& placement) {
  if (rule.turn != Angle()) {
    placed.turnReasons.push_back(
        {fmt::format("turned by {}: {}", formatAngle(rule.turn), rule.turnReason), rule.id,
         rule.basis, false});
  }
  if (placement.turn != Angle()) {
    placed.turnReasons.push_back(
        {fmt::format("turned by {} as the order asks", formatAngle(placement.turn)),
         {},
         "order",
         false});
  }
  if (placed.turnReasons.empty()) {
    placed.turnReasons.push_back(
        {"not turned: reads upright when worn", rule.id, rule.basis, false});
  }
}

}  // namespace

double landmarkDirection(Landmark from) {
  return from == Landmark::ShoulderSeam ? -1.0 : 1.0;
}

std::optional<Region::Interval> rowExtent(const Ring& ring, double y) {
  std::optional<Region::Interval> extent;
  const auto add = [&extent](double x) {
    if (!extent) {
      extent = Region::Interval{x, x};
    } else {
      extent = Region::Interval{std::min(extent->low, x), std::max(extent->high, x)};
    }
  };
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    if ((a.y <= y) != (b.y <= y)) {
      add(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
    }
  }
  return extent;
}

const PlacementRule* findPlacementRule(const PlacementRequest& request, const Workshop& workshop) {
  for (const auto* rules : {&workshop.shop->houseRules, &workshop.rules->placement}) {
    for (const PlacementRule& rule : *rules) {
      if (applies(rule, request, workshop)) {
        return &rule;
      }
    }
  }
  return nullptr;
}

Placed placeDesign(const PlacementRequest& request, const PlacementRule& rule,
                   const Location& location, const PanelShape& panel, const Outline& outline,
                   const UnitChoice& units) {
  const GarmentShape& garment = *request.garment;
  Placed placed;
  placed.from = rule.from;
  placed.rule = rule.id;
  placed.turn = rule.turn + request.placement.turn;
  placed.panelTurn = panel.wornUp + placed.turn;

  const Box turnedBox = outline.transformed(placed.panelTurn, 1.0, {}).bounds();
  const double direction = landmarkDirection(rule.from);
  const double landmark = landmarkY(rule.from, panel.name, garment, units, placed.dropReasons);
  const double nearSide = direction > 0.0 ? -turnedBox.min.y : turnedBox.max.y;
  const double distance = (rule.distance + request.placement.moveDown).mm();
  const double along = rule.anchor == Anchor::NearEdge ? distance + nearSide : distance;
  const double centreY = landmark + direction * along;

  placed.centreOffset = Length::fromMm(along);
  placed.drop = Length::fromMm(along - nearSide);
  placed.centreBelowDatum = Length::fromMm(centreY);
  const double lateral =
      lateralMm(rule, location, panel, garment, centreY, units, placed.lateralReasons);
  placed.lateral = Length::fromMm(lateral);
  placed.centre = {lateral, centreY};
  placed.bounds = {turnedBox.min + placed.centre, turnedBox.max + placed.centre};
  giveDropReasons(placed, rule, request.placement, units);
  giveTurnReasons(placed, rule, request.placement);
  return placed;
}

}  // namespace creaseline
