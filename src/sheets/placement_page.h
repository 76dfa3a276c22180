// SPDX-License-Identifier: MIT
// Lays one group's facts out on as many pages as they need.
#pragma once

#include <vector>

#include "creaseline/sheets/sheet.h"
#include "sheets/placement_facts.h"

namespace creaseline {

// `document` gives paper and header texts; its pages are not looked at. The context's references
// must outlive the pages.
[[nodiscard]] std::vector<SheetPage> placementPages(const PlacementContext& context,
                                                    const PlacementFacts& facts,
                                                    const SheetDocument& document);

}  // namespace creaseline
