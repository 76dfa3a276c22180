// SPDX-License-Identifier: MIT
// One placement from question to answer; the stages are in files of their own.
#include <algorithm>
#include <array>

#include "planning/backing.h"
#include "planning/cloth.h"
#include "planning/frame_search.h"
#include "planning/hanging_weight.h"
#include "planning/monogram.h"
#include "planning/placement.h"
#include "planning/request.h"
#include "planning/steps.h"

namespace creaseline {

void decideFrame(PlacementPlan& plan, const PanelShape& panel, const Outline& held,
                 const Workshop& workshop, Effort effort) {
  FrameSearch search = searchFrames(workshop, panel, held, plan.placed.centre, effort);
  plan.rejections = std::move(search.rejections);
  plan.largestScale = search.largestScale;
  plan.onlyTurned = search.onlyTurned;
  if (search.accepted.empty()) {
    return;
  }
  plan.frame = std::move(search.accepted.front());
  plan.alternatives.assign(std::make_move_iterator(search.accepted.begin() + 1),
                           std::make_move_iterator(search.accepted.end()));
}

namespace {

// Measures that the answer rests on: those that shaped this panel and were not given.
std::vector<Measure> assumedMeasures(const GarmentShape& garment, const PanelShape& panel) {
  std::vector<Measure> assumed;
  for (const Measure measure : panel.measures) {
    const auto found = garment.measures.find(measure);
    if (found != garment.measures.end() && found->second.assumed &&
        std::find(assumed.begin(), assumed.end(), measure) == assumed.end()) {
      assumed.push_back(measure);
    }
  }
  std::sort(assumed.begin(), assumed.end());
  return assumed;
}

}  // namespace

void decideRest(PlacementPlan& plan, const PlacementRequest& request, const PanelShape& panel,
                const Workshop& workshop, Effort effort) {
  plan.cloth = checkCloth(
      *plan.garment, panel, plan.outlineOnPanel, workshop.figures.seamClearance,
      explains(effort) ? Length::fromMm(Length::kLimitMm) : workshop.figures.seamClearance * 2.0);
  plan.assumed = assumedMeasures(*plan.garment, panel);
  const PreparedFrame* frame =
      plan.frame ? preparedFrame(workshop, plan.frame->frame, plan.frame->turn) : nullptr;
  plan.backing = chooseBacking(
      {&request.blank->fabric, &plan.design, panel.name, panel.insideSeen, plan.band, frame},
      workshop);
  if (!explains(effort)) {
    return;
  }
  if (plan.frame) {
    plan.steps = stepsFor(plan, *workshop.rules->location(plan.location),
                          *workshop.rules->kind(request.blank->kind), workshop.shop->units);
    const ArealWeight cloth = request.blank->fabric.weight;
    const HangingWeight weight = hangingWeight(*plan.garment, cloth, frame);
    if (isToBeSupported(weight, workshop)) {
      plan.frame->reasons.push_back(supportReason(weight, cloth, workshop));
    }
  }
  plan.cautions =
      cautionsFor(plan, *request.blank, *workshop.rules->kind(request.blank->kind), workshop);
}

PlacementPlan place(const PlacementRequest& request, const Workshop& workshop, Effort effort) {
  PlacementPlan plan;
  plan.line = request.lineIndex;
  plan.placement = request.placementIndex;
  plan.size = request.size;
  plan.quantity = request.quantity;
  plan.location = request.placement.location;
  plan.garment = request.garment;
  plan.band = request.garment->band;
  plan.design = request.placement.scale == 1.0 ? *request.design
                                               : request.design->scaled(request.placement.scale);

  const Location* location = workshop.rules->location(request.placement.location);
  const GarmentKind* kind = workshop.rules->kind(request.blank->kind);
  const PlacementRule* rule = findPlacementRule(request, workshop);
  if (location != nullptr) {
    plan.panel = location->panel;
  }
  const PanelShape* panel = location == nullptr ? nullptr : plan.garment->panel(location->panel);
  if (rule == nullptr || panel == nullptr || kind == nullptr) {
    return plan;
  }
  plan.hasRule = true;
  plan.placed =
      placeDesign(request, *rule, *location, *panel, plan.design.outline, workshop.shop->units);
  if (explains(effort) && plan.design.monogram) {
    MonogramLetters made = monogramLetters(*plan.design.monogram, *workshop.rules);
    plan.letters = std::move(made.letters);
    plan.letterReasons = {std::move(made.reason)};
  }
  if (explains(effort)) {
    addBeatenRules(plan.placed, *rule, request, workshop);
  }
  plan.outlineOnPanel =
      plan.design.outline.transformed(plan.placed.panelTurn, 1.0, plan.placed.centre);
  return plan;
}

PlacementPlan answer(const PlacementRequest& request, const Workshop& workshop, Effort effort) {
  PlacementPlan plan = place(request, workshop, effort);
  if (plan.hasRule) {
    const PanelShape& panel = *plan.garment->hooped(plan.panel, plan.location);
    decideFrame(plan, panel, plan.outlineOnPanel, workshop, effort);
    decideRest(plan, request, panel, workshop, effort);
  }
  return plan;
}

}  // namespace creaseline
