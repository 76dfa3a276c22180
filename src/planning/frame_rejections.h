// SPDX-License-Identifier: MIT
// Why a frame fails, in words and millimetres.
#pragma once

#include <optional>
#include <string>

#include "creaseline/planning/plan.h"
#include "planning/seat.h"

namespace creaseline {

// The hull of the design does not go into what the frame leaves open; `hull` is centred on the
// design's centre, in the panel's axes.
FrameRejection tooLarge(const PreparedFrame& frame, const Ring& hull, const UnitChoice& units);

// Its body lies on something; `hasPlay` if it could be shifted without losing the design.
FrameRejection meetsGarment(const PreparedFrame& frame, const Meeting& worst, bool hasPlay,
                            const UnitChoice& units);

// By how much the ring is too wide for every opening that leads behind the panel, and which is the
// widest; nothing if it goes in. A ring goes in with its shorter side across: a rigid ring passes a
// tube whose flat width is no less (the thickness of the ring is left out).
struct TooWide {
  Length by;
  std::string opening;
};
std::optional<TooWide> tooWideForOpenings(const PreparedFrame& frame, const PanelShape& panel);
FrameRejection cannotEnter(const PreparedFrame& frame, const TooWide& tooWide,
                           const UnitChoice& units);

// What is added to a rejection where turning the frame so would let it hold the design.
enum class TurnRoom { ForError, Little, None };  // for the shop's hooping error
std::string turnPhrase(Angle turn, TurnRoom room);

}  // namespace creaseline
