// SPDX-License-Identifier: MIT
#include "desk/unplanned.h"

#include <algorithm>
#include <utility>

#include "creaseline/planning/planner.h"

namespace creaseline::desk {

namespace {

std::vector<SizeName> sizesToLay(const OrderLine& line, const Blank& blank) {
  std::vector<SizeName> sizes;
  for (const ChartSize& charted : blank.chart.sizes) {
    if (line.sizes.empty() || line.find(charted.name) != nullptr) {
      sizes.push_back(charted.name);
    }
  }
  return sizes;
}

// The selected line with nothing else: the whole order may be large. Without any line, one of the
// order's first garment; nothing where there is no garment.
std::optional<Order> aloneOf(const Order& order, const Selection& selection) {
  Order alone;
  OrderLine& line = alone.lines.emplace_back();
  if (!selection.empty()) {
    line = order.lines[selection.line()];
  } else if (!order.blanks.empty()) {
    line.blank = order.blanks.front().id;
  }
  const Blank* blank = order.blank(line.blank);
  if (blank == nullptr) {
    return std::nullopt;
  }
  alone.blanks = {*blank};
  return alone;
}

}  // namespace

std::shared_ptr<const Laid> layUnplanned(const PlannedOrder& planned, const Selection& selection) {
  auto laid = std::make_shared<Laid>();
  const Order* order = planned.order();
  if (order == nullptr || selection.current() != nullptr) {
    return laid;
  }
  std::optional<Order> alone = aloneOf(*order, selection);
  if (!alone) {
    return laid;
  }
  const OrderLine& line = alone->lines.front();
  std::optional<std::size_t> place;
  if (!line.placements.empty()) {
    place = selection.placement();
    if (const Design* design = order->design(line.placements.at(*place).design)) {
      alone->designs = {*design};
    }
  }
  for (const SizeName& size : sizesToLay(line, alone->blanks.front())) {
    if (auto plan = layFlat(*alone, 0, place, size, planned.shopForDrawing(), planned.rules())) {
      plan->line = selection.line();
      laid->push_back(std::move(*plan));
    }
  }
  return laid;
}

std::vector<PanelName> panelsWithoutPlace(const PlannedOrder& planned, const Selection& selection) {
  std::vector<PanelName> panels;
  const Order* order = planned.order();
  if (order == nullptr || selection.empty()) {
    return panels;
  }
  const OrderLine& line = order->lines[selection.line()];
  const Blank* blank = order->blank(line.blank);
  const GarmentKind* kind = blank == nullptr ? nullptr : planned.rules().kind(blank->kind);
  for (const auto& [panel, word] : EnumNames<PanelName>::names) {
    const auto isOn = [&planned, on = panel](const OrderPlacement& place) {
      const Location* location = planned.rules().location(place.location);
      return location != nullptr && location->panel == on;
    };
    if (kind != nullptr && kind->has(panel) &&
        std::none_of(line.placements.begin(), line.placements.end(), isOn)) {
      panels.push_back(panel);
    }
  }
  return panels;
}

std::shared_ptr<const Laid> layLookedAt(const PlannedOrder& planned, const Selection& selection) {
  auto laid = std::make_shared<Laid>();
  const Order* order = planned.order();
  const auto panel = selection.lookedAt();
  const std::optional<Order> alone =
      order == nullptr || !panel ? std::nullopt : aloneOf(*order, selection);
  if (alone) {
    if (auto plan = layPanelFlat(*alone, 0, *panel, selection.size(), planned.shopForDrawing(),
                                 planned.rules())) {
      plan->line = selection.line();
      laid->push_back(std::move(*plan));
    }
  }
  return laid;
}

std::vector<Missing> whatIsMissing(const PlannedOrder& planned, const Selection& selection,
                                   bool drawn) {
  std::vector<Missing> missing;
  const Order* order = planned.order();
  if (order == nullptr) {
    return missing;
  }
  const auto add = [&missing](bool lacking, Missing what) {
    if (lacking) {
      missing.push_back(what);
    }
  };
  add(planned.shop() == nullptr, Missing::Shop);
  add(order->blanks.empty(), Missing::Garment);
  add(order->lines.empty() && !order->blanks.empty(), Missing::Line);
  add(!order->blanks.empty() && !drawn, Missing::Chart);
  add(order->designs.empty(), Missing::Design);
  if (!selection.empty()) {
    const OrderLine& line = order->lines[selection.line()];
    add(line.placements.empty() && !order->designs.empty(), Missing::Place);
    add(line.sizes.empty(), Missing::Quantities);
  }
  return missing;
}

}  // namespace creaseline::desk
