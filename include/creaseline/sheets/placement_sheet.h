// SPDX-License-Identifier: MIT
// The placement sheet: one page (and as many more as it needs) for each group of sizes whose
// numbers agree to the ruler mark. It goes to the hooping table.
#pragma once

#include <filesystem>

#include "creaseline/base/units.h"
#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/plan.h"
#include "creaseline/sheets/sheet_set.h"

namespace creaseline {

// The pages as data. `plan`, `order`, `shop` and `rules` must outlive the document. The plan must
// come from this order, shop and rules.
[[nodiscard]] SheetDocument placementSheets(const Plan& plan, const Order& order, const Shop& shop,
                                            const Rules& rules, const UnitChoice& units,
                                            Paper paper);

// placementSheets() written by writeSheets(), whose errors these are too.
WrittenSheets writePlacementSheets(const Plan& plan, const Order& order, const Shop& shop,
                                   const Rules& rules, const UnitChoice& units, Paper paper,
                                   const std::filesystem::path& path,
                                   const SheetOptions& options = {});

}  // namespace creaseline
