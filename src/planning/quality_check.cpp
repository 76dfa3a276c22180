// SPDX-License-Identifier: MIT
#include "creaseline/planning/quality_check.h"

#include <algorithm>

#include "base/worded.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/run_card.h"
#include "creaseline/planning/wording.h"
#include "planning/figures.h"
#include "planning/list_names.h"

namespace creaseline {
namespace {

Length markBelow(Length length, const UnitChoice& units) {
  const Length nearest = roundToMark(length, units);
  return nearest > length ? nearest - rulerMark(units) : nearest;
}

Length markAbove(Length length, const UnitChoice& units) {
  return -markBelow(-length, units);
}

const PlacementRule* ruleOf(const RuleId& id, const ReportContext& context) {
  for (const std::vector<PlacementRule>* rules :
       {&context.shop.houseRules, &context.rules.placement}) {
    const auto found = std::find_if(rules->begin(), rules->end(),
                                    [&](const PlacementRule& rule) { return rule.id == id; });
    if (found != rules->end()) {
      return &*found;
    }
  }
  return nullptr;
}

// "2 3/4 to 3 1/4 in": the unit once. "3 in" if there is no choice.
std::string rangeText(Length least, Length most, const UnitChoice& units) {
  if (least == most) {
    return formatLength(least, units);
  }
  const std::string from = formatLength(least, units);
  return worded("{} to {}", from.substr(0, from.rfind(' ')), formatLength(most, units));
}

void setDrop(QualityRow& row, const PlacementPlan& plan, const PlacementRule* rule,
             Length tolerance, const UnitChoice& units) {
  const Placed& placed = plan.placed;
  row.drop = roundToMark(placed.drop, units);
  row.dropLeast = row.drop - tolerance;
  row.dropMost = row.drop + tolerance;
  if (rule != nullptr) {
    // The rule may bound the distance to the design's centre; the ruler is laid to its edge.
    const Length toEdge =
        rule->anchor == Anchor::Centre ? placed.centreOffset - placed.drop : Length();
    row.dropLeast =
        std::max(row.dropLeast, std::min(row.drop, markAbove(rule->least - toEdge, units)));
    row.dropMost =
        std::min(row.dropMost, std::max(row.drop, markBelow(rule->most - toEdge, units)));
  }
  row.dropFrom = worded("{}, to the {}", landmarkPhrase(placed.from), nearSidePhrase(plan));
  row.dropAllowed = rangeText(row.dropLeast, row.dropMost, units);
}

void setSideways(QualityRow& row, const PlacementPlan& plan, Length tolerance,
                 const UnitChoice& units) {
  row.sideways = abs(roundToMark(plan.placed.lateral, units));
  if (row.sideways == Length()) {
    row.sidewaysFrom = lateralPhrase(plan, units);
    row.sidewaysAllowed = worded("within {}", formatLength(tolerance, units));
  } else {
    row.sidewaysFrom = lateralDirection(plan);
    row.sidewaysAllowed =
        rangeText(std::max(Length(), row.sideways - tolerance), row.sideways + tolerance, units);
  }
}

// Where the placement's rows go. Parts of a design alternate from size to size.
QualityPart& placeOf(QualityCheck& check, const PlacementPlan& placement,
                     const ReportContext& context) {
  const OrderLine& line = context.order.lines[placement.line];
  const std::string location = locationName(context, placement.location) + partSuffix(placement);
  const auto known = std::find_if(
      check.parts.begin(), check.parts.end(),
      [&](const QualityPart& part) { return part.lineId == line.id && part.location == location; });
  return known != check.parts.end()
             ? *known
             : check.parts.emplace_back(
                   QualityPart{line.id, blankName(context, line), line.colour, location, {}});
}

}  // namespace

QualityCheck qualityCheck(const Plan& plan, const ReportContext& context, const UnitChoice& units) {
  QualityCheck check;
  check.tolerance = markBelow(readPlacementTolerance(context.rules.defaults), units);
  check.toleranceBasis = context.rules.defaults.placementTolerance.basis;
  for (const PlacementPlan& placement : plan.placements) {
    if (!maySew(placement)) {
      continue;
    }
    QualityPart& part = placeOf(check, placement, context);
    QualityRow row;
    row.size = placement.size;
    row.garments = placement.quantity;
    setDrop(row, placement, ruleOf(placement.placed.rule, context), check.tolerance, units);
    setSideways(row, placement, check.tolerance, units);
    part.rows.push_back(row);
  }
  return check;
}

}  // namespace creaseline
