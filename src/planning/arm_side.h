// SPDX-License-Identifier: MIT
// How a frame gets onto the machine with the garment round it: the ring through an opening, and the
// machine's arm through the one on the side of the bracket.
#pragma once

#include <optional>
#include <string>

#include "creaseline/catalogue/garment_shape.h"
#include "creaseline/planning/reason.h"
#include "planning/workshop.h"

namespace creaseline {

// True if the panel lies open: no tube of cloth hangs round the machine's arm.
bool liesOpen(const PanelShape& panel);

// The rule of the edge through which the machine's arm reaches into the garment, with the design's
// centre at `centre` on the panel, which is where the needle is and the arm below it, whichever
// frame holds the cloth: of all open edges that can be seen from there within the figure for the
// arm's reach to either side of the bracket's direction, the one nearest to straight ahead.
// Null where the garment is closed on that side. Precondition: not liesOpen(panel).
//
// A frame that is held at both its sides stands with its top to the machine.
const FrameEdgeRule* armEdge(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                             const Workshop& workshop);

// False only if armEdge() is null for every centre in the box.
bool armMayReach(const PreparedFrame& frame, const Box& centres, const PanelShape& panel,
                 const Workshop& workshop);

// "its bracket lies towards the left side, where the garment has no opening for the machine's arm"
std::string noArmPhrase(const PreparedFrame& frame, const PanelShape& panel);

// On which side the bracket lies, and what the arm goes in through. Precondition: it can.
Reason armReason(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                 const Workshop& workshop);

// Through which opening the ring goes, and with how much room: the widest there is. Nothing if the
// panel has none. Precondition: it passes.
std::optional<Reason> ringReason(const PreparedFrame& frame, const PanelShape& panel,
                                 const UnitChoice& units);

}  // namespace creaseline
