// SPDX-License-Identifier: MIT
#include "creaseline/planning/order_summary.h"

#include <algorithm>

#include "planning/list_names.h"
#include "planning/thread_names.h"

namespace creaseline {
namespace {

SummaryPlace placeOf(const Plan& plan, const ReportContext& context, std::size_t line,
                     std::size_t placement) {
  SummaryPlace place;
  place.location = locationName(context, context.order.lines[line].placements[placement].location);
  std::vector<std::size_t> decided;
  for (std::size_t index = 0; index < plan.placements.size(); ++index) {
    const PlacementPlan& size = plan.placements[index];
    if (size.line != line || size.placement != placement) {
      continue;
    }
    if (!size.countsGarments()) {
      continue;
    }
    const Design design = wholeDesign(context, size);
    place.design = design.name;
    place.width = design.width;
    place.height = design.height;
    place.stitches = design.stitches;
    place.hoopings = std::max(place.hoopings, size.part ? size.part->of : 1);
    place.garments += size.quantity;
    place.held += maySew(size) ? 0 : size.quantity;
    if (size.hasRule && size.garment) {
      decided.push_back(index);
    }
  }
  if (!decided.empty()) {
    place.shown = decided[decided.size() / 2];
  }
  return place;
}

void addOnce(std::vector<std::string>& list, const std::string& entry) {
  if (std::find(list.begin(), list.end(), entry) == list.end()) {
    list.push_back(entry);
  }
}

std::vector<SummaryThread> threadsOf(const Plan& plan, const ReportContext& context,
                                     const ThreadNames& names, std::size_t line) {
  std::vector<SummaryThread> threads;
  for (const PlacementPlan& placement : plan.placements) {
    if (placement.line != line || !placement.countsGarments()) {
      continue;
    }
    const std::string design = wholeDesign(context, placement).name;
    for (const ThreadBlock& block : placement.design.blocks) {
      const std::string name = names.of(block);
      auto known = std::find_if(threads.begin(), threads.end(),
                                [&](const SummaryThread& thread) { return thread.name == name; });
      if (known == threads.end()) {
        known = threads.insert(threads.end(), {name, block.colour, {}});
      }
      addOnce(known->designs, design);
    }
  }
  return threads;
}

SummaryLine lineOf(const Plan& plan, const ReportContext& context, const ThreadNames& names,
                   std::size_t index) {
  const OrderLine& line = context.order.lines[index];
  SummaryLine summary;
  summary.id = line.id;
  summary.blank = blankName(context, line);
  summary.colour = line.colour;
  summary.note = line.note;
  summary.cloth = clothColour(context, line);
  summary.sizes = line.sizes;
  summary.garments = line.garments();
  for (std::size_t placement = 0; placement < line.placements.size(); ++placement) {
    summary.places.push_back(placeOf(plan, context, index, placement));
  }
  summary.threads = threadsOf(plan, context, names, index);
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
  const ThreadNames names(plan);
  for (std::size_t index = 0; index < order.lines.size(); ++index) {
    summary.lines.push_back(lineOf(plan, context, names, index));
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
