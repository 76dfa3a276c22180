// SPDX-License-Identifier: MIT
// Which placements share a template, and in what words it says so.
#include <fmt/format.h>

#include <algorithm>

#include "base/worded.h"
#include "creaseline/planning/template_figure.h"
#include "creaseline/planning/wording.h"
#include "planning/figure_parts.h"
#include "planning/parts.h"
#include "planning/template_parts.h"

namespace creaseline {

namespace {

bool agree(double a, double b, const UnitChoice& units) {
  return roundToMark(Length::fromMm(a), units) == roundToMark(Length::fromMm(b), units);
}

bool sameWindow(const PlacementPlan& a, const PlacementPlan& b, const UnitChoice& units) {
  if (!a.frame || !b.frame) {
    return !a.frame && !b.frame;
  }
  const Point offsetA = a.frame->centre - a.placed.centre;
  const Point offsetB = b.frame->centre - b.placed.centre;
  return a.frame->frame == b.frame->frame && a.frame->turn == b.frame->turn &&
         agree(offsetA.x, offsetB.x, units) && agree(offsetA.y, offsetB.y, units);
}

bool creaseInReach(const FigureContext& context, const PlacementPlan& plan) {
  const Box paper = templates::paperBox(context, plan, TemplateView::Usual);
  const double crease =
      templates::toFigure({-plan.placed.lateral.mm(), 0.0}, plan.panel, TemplateView::Usual).x;
  return crease >= paper.min.x && crease <= paper.max.x;
}

// Where the crease is drawn it must lie alike; beyond the paper it is only said how far it is.
bool sameCrease(const FigureContext& context, const PlacementPlan& a, const PlacementPlan& b) {
  return agree(a.placed.lateral.mm(), b.placed.lateral.mm(), context.units) ||
         (!creaseInReach(context, a) && !creaseInReach(context, b));
}

bool sameTemplate(const FigureContext& context, const PlacementPlan& a, const PlacementPlan& b) {
  return a.location == b.location && a.panel == b.panel &&
         a.placed.panelTurn == b.placed.panelTurn && a.placed.from == b.placed.from &&
         sameWindow(a, b, context.units) && a.design == b.design && sameDesignPart(a, b) &&
         sameCrease(context, a, b);
}

}  // namespace

std::vector<SizeGroup> templateGroups(const FigureContext& context) {
  std::vector<SizeGroup> merged;
  for (const SizeGroup& sizes : groupSizes(context.plan, context.units)) {
    for (const std::size_t index : sizes) {
      const PlacementPlan& plan = context.plan.placements[index];
      if (!plan.hasRule || plan.stops()) {
        continue;
      }
      const auto match = std::find_if(merged.begin(), merged.end(), [&](const SizeGroup& group) {
        return sameTemplate(context, context.plan.placements[group.front()], plan);
      });
      if (match == merged.end()) {
        merged.push_back({index});
      } else {
        match->push_back(index);
      }
    }
  }
  for (SizeGroup& group : merged) {
    std::sort(group.begin(), group.end());
  }
  return merged;
}

std::vector<std::string> templateServes(const FigureContext& context, const SizeGroup& group) {
  std::vector<std::string> texts;
  for (auto from = group.begin(); from != group.end();) {
    const std::size_t line = context.plan.placements[*from].line;
    const auto to = std::find_if(from, group.end(), [&](std::size_t index) {
      return context.plan.placements[index].line != line;
    });
    texts.push_back(fmt::format("{}: {}", figure::linePhrase(context, line),
                                figure::sizesOf(context, {from, to})));
    from = to;
  }
  return texts;
}

std::string templateViewPhrase(TemplateView view) {
  switch (view) {
    case TemplateView::Usual:
      return {};
    case TemplateView::Mirrored:
      return worded("mirrored: as seen from the back of the cloth");
    case TemplateView::Turned:
      return worded("turned: upside down against the usual view");
  }
  return {};
}

}  // namespace creaseline
