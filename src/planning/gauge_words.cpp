// SPDX-License-Identifier: MIT
// What a gauge says: its name, and what it rests on that nobody measured.
#include <algorithm>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/figure_parts.h"
#include "planning/gauge_parts.h"

namespace creaseline {

namespace {

const PlacementRule* ruleOf(const FigureContext& context, const PlacementPlan& plan) {
  for (const auto* rules : {&context.shop.houseRules, &context.rules.placement}) {
    const auto found = std::find_if(rules->begin(), rules->end(), [&](const PlacementRule& rule) {
      return rule.id == plan.placed.rule;
    });
    if (found != rules->end()) {
      return &*found;
    }
  }
  return nullptr;
}

Measure neckDropOf(PanelName panel) {
  return panel == PanelName::Back ? Measure::BackNeckDrop : Measure::FrontNeckDrop;
}

// Measures that shape the edge near the centre line. Face edge and cuff edge are straight.
std::vector<Measure> edgeMeasures(EdgeName edge, PanelName panel) {
  switch (edge) {
    case EdgeName::CollarSeam:
      return {Measure::NeckWidth, neckDropOf(panel)};
    case EdgeName::Armhole:
      return {Measure::SleeveWidth, Measure::ShoulderWidth, Measure::ShoulderDrop,
              Measure::ArmholeDepth};
    default:
      return {};
  }
}

// Measures that decide where the cross lies from the edge.
std::vector<Measure> crossMeasures(const FigureContext& context, const PlacementPlan& plan) {
  std::vector<Measure> measures;
  switch (plan.placed.from) {
    case Landmark::ShoulderPoint:
      measures = {neckDropOf(plan.panel)};
      break;
    case Landmark::CuffSeam:
      measures = {Measure::CuffHeight};
      break;
    case Landmark::PlacketEnd:
      measures = {Measure::PlacketLength};
      break;
    case Landmark::BorderTop:
    case Landmark::BorderMiddle:
      measures = {Measure::BorderAboveHem, Measure::BorderHeight};
      break;
    case Landmark::YokeSeam:
      measures = {Measure::YokeDepth};
      break;
    case Landmark::PocketTop:
    case Landmark::PocketOpening:
      measures = {Measure::PocketBelowHps, neckDropOf(plan.panel)};
      break;
    default:
      break;
  }
  const PlacementRule* rule = ruleOf(context, plan);
  if (rule != nullptr && rule->sideways == Sideways::PlacketToArmhole) {
    measures.insert(measures.end(),
                    {Measure::PlacketWidth, Measure::ZipWidth, Measure::BodyWidth,
                     Measure::ShoulderWidth, Measure::ShoulderDrop, Measure::ArmholeDepth});
  }
  if (rule != nullptr && rule->sideways == Sideways::PocketMiddle) {
    measures.push_back(Measure::PocketFromCentre);
  }
  return measures;
}

}  // namespace

std::string gaugeTitle(const FigureContext& context, const GaugeStrip& strip) {
  std::string name;
  switch (strip.edge) {
    case EdgeName::FaceEdge:
      name = worded("Hood gauge");
      break;
    case EdgeName::CuffEdge:
    case EdgeName::Armhole:
      name = strip.edge == EdgeName::CuffEdge
                 ? worded("Sleeve gauge, {}, from the cuff", panelPhrase(strip.panel))
                 : worded("Sleeve gauge, {}, from the shoulder", panelPhrase(strip.panel));
      break;
    case EdgeName::Hem:
      name = worded("Hem gauge, {}", panelPhrase(strip.panel));
      break;
    case EdgeName::TopEdge:
      name = worded("Edge gauge, {}, from the top", panelPhrase(strip.panel));
      break;
    case EdgeName::WaistSeam:
      name = worded("Waist gauge, {}", panelPhrase(strip.panel));
      break;
    default:
      name = worded("Collar gauge, {}", panelPhrase(strip.panel));
      break;
  }
  return name + ": " + figure::sizesOf(context, strip.placements);
}

std::vector<std::string> gaugeAssumptions(const FigureContext& context, const GaugeStrip& strip) {
  struct Assumption {
    Measure measure;
    std::vector<std::size_t> placements;
  };
  std::vector<Assumption> assumptions;
  for (const std::size_t index : strip.placements) {
    const PlacementPlan& plan = context.plan.placements[index];
    std::vector<Measure> measures = edgeMeasures(strip.edge, strip.panel);
    const std::vector<Measure> more = crossMeasures(context, plan);
    measures.insert(measures.end(), more.begin(), more.end());
    std::sort(measures.begin(), measures.end());
    measures.erase(std::unique(measures.begin(), measures.end()), measures.end());
    for (const Measure measure : measures) {
      const auto value = plan.garment->measures.find(measure);
      if (value == plan.garment->measures.end() || !value->second.assumed) {
        continue;
      }
      const auto known =
          std::find_if(assumptions.begin(), assumptions.end(),
                       [&](const Assumption& entry) { return entry.measure == measure; });
      if (known == assumptions.end()) {
        assumptions.push_back({measure, {index}});
      } else {
        known->placements.push_back(index);
      }
    }
  }
  std::vector<std::string> texts;
  for (const Assumption& entry : assumptions) {
    texts.push_back(worded("{} assumed ({}): check against the garment",
                           measurePhrase(entry.measure),
                           figure::sizesOf(context, entry.placements)));
  }
  return texts;
}

}  // namespace creaseline
