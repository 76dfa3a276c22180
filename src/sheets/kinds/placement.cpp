// SPDX-License-Identifier: MIT
// Placement sheets: one page (and as many more as it needs) for each group of sizes whose numbers
// agree to the ruler mark. They go to the hooping table.
#include "creaseline/planning/groups.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/placement_facts.h"
#include "sheets/placement_page.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::printed;

namespace {

SheetSection section(const SheetContext& context, const SheetHead& head, const SizeGroup& group) {
  SheetSection made;
  made.title = placementTitle(context, group);
  made.pages = [context, head, group] {
    return placementPages(context, placementFacts(context, group), head);
  };
  return made;
}

std::vector<SheetSection> placementSections(const SheetContext& context, const SheetHead& head,
                                            const TemplateVariants& /*variants*/) {
  std::vector<SheetSection> made;
  for (const SizeGroup& group : groupSizes(context.plan, context.units)) {
    made.push_back(section(context, head, group));
  }
  return made;
}

}  // namespace

SheetKind placementKind() {
  return {30,
          "placement",
          printed("Placement sheets"),
          printed("Where each design goes on each size, with which frame and backing."),
          true,
          placementSections};
}

}  // namespace creaseline
