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
    const auto ordered = [&](const SizeQuantity& each) { return each.size == charted.name; };
    if (line.sizes.empty() || std::any_of(line.sizes.begin(), line.sizes.end(), ordered)) {
      sizes.push_back(charted.name);
    }
  }
  return sizes;
}

}  // namespace

std::shared_ptr<const Laid> layUnplanned(const PlannedOrder& planned, const Selection& selection) {
  auto laid = std::make_shared<Laid>();
  const Order* order = planned.order();
  if (order == nullptr || selection.current() != nullptr || order->blanks.empty()) {
    return laid;
  }
  // With nothing but what is shown: the whole order may be large.
  Order alone;
  OrderLine& line = alone.lines.emplace_back();
  if (selection.empty()) {
    line.blank = order->blanks.front().id;
  } else {
    line = order->lines[selection.line()];
  }
  const Blank* blank = order->blank(line.blank);
  if (blank == nullptr) {
    return laid;
  }
  alone.blanks = {*blank};
  std::optional<std::size_t> place;
  if (!line.placements.empty()) {
    place = selection.placement();
    if (const Design* design = order->design(line.placements.at(*place).design)) {
      alone.designs = {*design};
    }
  }
  for (const SizeName& size : sizesToLay(line, *blank)) {
    if (auto plan = layFlat(alone, 0, place, size, planned.shopForDrawing(), planned.rules())) {
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
