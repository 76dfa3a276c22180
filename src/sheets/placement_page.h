// SPDX-License-Identifier: MIT
// Lays one group's facts out on as many pages as they need.
#pragma once

#include <vector>

#include "creaseline/sheets/sheet.h"
#include "sheets/placement_facts.h"

namespace creaseline {

// `head` gives paper and header texts. The context's references must outlive the pages.
[[nodiscard]] std::vector<SheetPage> placementPages(const SheetContext& context,
                                                    const PlacementFacts& facts,
                                                    const SheetHead& head);

}  // namespace creaseline
