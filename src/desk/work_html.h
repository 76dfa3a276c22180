// SPDX-License-Identifier: MIT
// Runs and materials as rich text in the palette's colours.
#pragma once

#include <QPalette>
#include <QString>

#include "creaseline/planning/cost.h"
#include "creaseline/planning/pick_list.h"

namespace creaseline::desk {

[[nodiscard]] QString runText(const RunCard& card, const QPalette& palette,
                              const UnitChoice& units);
[[nodiscard]] QString materialsText(const PickList& picks, const RunPlan& runs,
                                    const QPalette& palette, const UnitChoice& units);
// By kind with reasons, by line, by run; the total is shown elsewhere.
[[nodiscard]] QString costText(const OrderCost& cost);

}  // namespace creaseline::desk
