// SPDX-License-Identifier: MIT
// Placement sheets of a whole plan.
#include "creaseline/sheets/placement_sheet.h"

#include "creaseline/planning/groups.h"
#include "sheets/placement_facts.h"
#include "sheets/placement_page.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::toQString;

namespace {

QString orderText(const Order& order) {
  QStringList parts;
  parts << QStringLiteral("Order ") + toQString(order.id);
  for (const std::string& part : {order.title, order.customer}) {
    if (!part.empty()) {
      parts << toQString(part);
    }
  }
  if (!order.due.empty()) {
    parts << QStringLiteral("due ") + toQString(order.due);
  }
  return parts.join(QStringLiteral(" · "));
}

}  // namespace

SheetDocument placementSheets(const Plan& plan, const Order& order, const Shop& shop,
                              const Rules& rules, const UnitChoice& units, Paper paper) {
  const PlacementContext context{plan, order, shop, rules, units};
  SheetDocument document;
  document.title = QStringLiteral("Placement sheets, order ") + toQString(order.id);
  document.order = orderText(order);
  document.paper = paper;
  for (const SizeGroup& group : groupSizes(plan, units)) {
    const PlacementFacts facts = placementFacts(context, group);
    for (SheetPage& page : placementPages(context, facts, document)) {
      document.pages.push_back(std::move(page));
    }
  }
  return document;
}

WrittenSheets writePlacementSheets(const Plan& plan, const Order& order, const Shop& shop,
                                   const Rules& rules, const UnitChoice& units, Paper paper,
                                   const std::filesystem::path& path, const SheetOptions& options) {
  return writeSheets(placementSheets(plan, order, shop, rules, units, paper), path, options);
}

}  // namespace creaseline
