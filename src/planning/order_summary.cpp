// SPDX-License-Identifier: MIT
#include "creaseline/planning/order_summary.h"

#include "planning/list_names.h"

namespace creaseline {
namespace {

SummaryPlace placeOf(const Plan& plan, const ReportContext& context, std::size_t line,
                     std::size_t placement) {
  SummaryPlace place;
  place.location = locationName(context, context.order.lines[line].placements[placement].location);
  for (const PlacementPlan& size : plan.placements) {
    if (size.line != line || size.placement != placement) {
      continue;
    }
    place.design = size.design.name;
    place.width = size.design.width;
    place.height = size.design.height;
    place.stitches = size.design.stitches;
    place.garments += size.quantity;
    place.held += maySew(size) ? 0 : size.quantity;
  }
  return place;
}

SummaryLine lineOf(const Plan& plan, const ReportContext& context, std::size_t index) {
  const OrderLine& line = context.order.lines[index];
  SummaryLine summary;
  summary.id = line.id;
  summary.blank = blankName(context, line);
  summary.colour = line.colour;
  summary.note = line.note;
  summary.sizes = line.sizes;
  summary.garments = line.garments();
  for (std::size_t placement = 0; placement < line.placements.size(); ++placement) {
    summary.places.push_back(placeOf(plan, context, index, placement));
  }
  return summary;
}

}  // namespace

OrderSummary orderSummary(const Plan& plan, const RunPlan& runs, const ReportContext& context) {
  const Order& order = context.order;
  OrderSummary summary;
  summary.id = order.id;
  summary.title = order.title;
  summary.customer = order.customer;
  summary.due = order.due;
  summary.note = order.note;
  summary.shop = context.shop.name;
  for (std::size_t index = 0; index < order.lines.size(); ++index) {
    summary.lines.push_back(lineOf(plan, context, index));
  }
  summary.counts = plan.counts;
  summary.hoopings = runs.hoopings;
  summary.time = runs.total;
  for (const RunCard& card : runs.cards) {
    summary.runs.push_back({card.number, card.location + ", " + card.design, card.machine,
                            card.frame, card.garments, card.time.total});
  }
  summary.held = runs.held;
  for (const Finding& finding : plan.findings) {
    if (finding.severity != Severity::Note) {
      summary.findings.push_back(
          {finding.severity, finding.place, finding.text, firstRemedy(finding)});
    }
  }
  return summary;
}

}  // namespace creaseline
