// SPDX-License-Identifier: MIT
// What goes under and over the cloth, and which needle: the backing rules applied in order.
#pragma once

#include "creaseline/planning/plan.h"
#include "planning/workshop.h"

namespace creaseline {

// What the rules ask about. `frame` is null where none was found.
struct BackingQuestion {
  const Fabric* fabric = nullptr;
  const Design* design = nullptr;
  PanelName panel{};
  bool insideSeen = false;
  SizeBand band{};
  const PreparedFrame* frame = nullptr;
};

BackingChoice chooseBacking(const BackingQuestion& question, const Workshop& workshop);

}  // namespace creaseline
