// SPDX-License-Identifier: MIT
// How a frame that does not hold a design would have to be turned on the garment to hold it.
#pragma once

#include <optional>

#include "planning/frame_rejections.h"
#include "planning/workshop.h"

namespace creaseline {

struct HoldingTurn {
  Angle turn;  // of the frame against the panel
  TurnRoom room = TurnRoom::None;
};

// The smallest turn, from the frame's own way of lying, at which it holds the design and bears the
// shop's hooping error, to the whole degree; else the smallest at which it bears what less than
// that is a stop; else the smallest at which it holds it at all, to the whole degree or tenth.
// Nothing if it never does. `hull` is centred on the design's centre, in the panel's axes.
std::optional<HoldingTurn> turnThatHolds(const PreparedFrame& frame, const Ring& hull,
                                         const Figures& figures);

}  // namespace creaseline
