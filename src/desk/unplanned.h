// SPDX-License-Identifier: MIT
// What keeps a line from being planned, and its garment as it lies until it is.
#pragma once

#include <memory>
#include <vector>

#include "desk/selection.h"

namespace creaseline::desk {

// The sizes of what is selected as they lie without a plan: those that are ordered, else all of the
// chart; without any line the order's first garment. None where there is a plan of the selected
// size, no garment, or the garment cannot be drawn.
using Laid = std::vector<PlacementPlan>;
[[nodiscard]] std::shared_ptr<const Laid> layUnplanned(const PlannedOrder& planned,
                                                       const Selection& selection);

// The parts of the selected garment that no place of its line is on, in the order of PanelName;
// none where the garment cannot be drawn.
[[nodiscard]] std::vector<PanelName> panelsWithoutPlace(const PlannedOrder& planned,
                                                        const Selection& selection);
// The part that is looked at, in the selected size: one, or none where it cannot be drawn.
[[nodiscard]] std::shared_ptr<const Laid> layLookedAt(const PlannedOrder& planned,
                                                      const Selection& selection);

enum class Missing {
  Shop,        // none is open
  Garment,     // the order has none
  Line,        // there are garments, but none is ordered
  Design,      // the order has none
  Place,       // the selected line has none
  Quantities,  // likewise
  Chart        // the garment's measures cannot be drawn
};

// In the order in which they are best mended; empty before an order is open. `drawn`: the selected
// garment can be.
[[nodiscard]] std::vector<Missing> whatIsMissing(const PlannedOrder& planned,
                                                 const Selection& selection, bool drawn);

}  // namespace creaseline::desk
