// SPDX-License-Identifier: MIT
#include "planning/list_names.h"

#include "creaseline/planning/wording.h"

namespace creaseline {

std::string blankName(const ReportContext& context, const OrderLine& line) {
  const Blank* blank = context.order.blank(line.blank);
  return blank != nullptr ? blank->name : line.blank.text();
}

std::optional<Colour> clothColour(const ReportContext& context, const OrderLine& line) {
  if (const Blank* blank = context.order.blank(line.blank)) {
    for (const ClothColour& colour : blank->colours) {
      if (colour.name == line.colour) {
        return colour.colour;
      }
    }
  }
  return std::nullopt;
}

SizeChart chartOf(const ReportContext& context, const OrderLine& line) {
  const Blank* blank = context.order.blank(line.blank);
  return blank != nullptr ? blank->chart : SizeChart{};
}

std::string locationName(const ReportContext& context, const LocationId& id) {
  return locationPhrase(id, context.rules);
}

Design wholeDesign(const ReportContext& context, const PlacementPlan& plan) {
  const Design* drawn = plan.part ? context.order.design(plan.design.id) : nullptr;
  if (drawn == nullptr) {
    return plan.design;
  }
  const double scale = context.order.lines[plan.line].placements[plan.placement].scale;
  return scale == 1.0 ? *drawn : drawn->scaled(scale);
}

std::string firstRemedy(const Finding& finding) {
  if (finding.remedies.empty()) {
    return {};
  }
  const Remedy& remedy = finding.remedies.front();
  return remedy.result.empty() ? remedy.text : remedy.text + ": " + remedy.result;
}

}  // namespace creaseline
