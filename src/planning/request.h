// SPDX-License-Identifier: MIT
// One question to the planner: this design, at this location, on this size.
#pragma once

#include <memory>

#include "creaseline/catalogue/order.h"
#include "creaseline/planning/plan.h"
#include "planning/workshop.h"

namespace creaseline {

struct PlacementRequest {
  std::size_t lineIndex = 0;
  std::size_t placementIndex = 0;
  const OrderLine* line = nullptr;
  const Blank* blank = nullptr;
  const Design* design = nullptr;  // as drawn
  OrderPlacement placement;        // its own copy: remedies change it
  SizeName size;
  int quantity = 0;
  std::shared_ptr<const GarmentShape> garment;
};

// How much of the answer is wanted. A trial of a remedy needs to know whether it works, not why
// every other frame does not.
enum class Effort {
  Full,       // everything that a user sees
  Live,       // but what rejected frames would need: no turn and no scale at which they would do
  BestFrame,  // no rejections, scales, steps or cautions
  AnyFrame,   // likewise, and the first frame that will do
  AnyRoomy    // likewise, but it must bear the shop's hooping error; if none does, the best
};

// Whether the answer says why: reasons, rejected frames, steps, cautions.
constexpr bool explains(Effort effort) {
  return effort == Effort::Full || effort == Effort::Live;
}

// Where the design goes; nothing else of the plan is decided.
PlacementPlan place(const PlacementRequest& request, const Workshop& workshop,
                    Effort effort = Effort::Full);

// Answers one question, as one hooping. Never throws for what the loaders let through.
PlacementPlan answer(const PlacementRequest& request, const Workshop& workshop,
                     Effort effort = Effort::Full);

// The stages of an answer after the place is decided. `held` is what the frame must hold, in panel
// coordinates; the best frame is chosen, if there is one.
void decideFrame(PlacementPlan& plan, const PanelShape& panel, const Outline& held,
                 const Workshop& workshop, Effort effort);
// Cloth, backing, and with full effort steps and cautions, for the frame that is chosen.
void decideRest(PlacementPlan& plan, const PlacementRequest& request, const PanelShape& panel,
                const Workshop& workshop, Effort effort);

}  // namespace creaseline
