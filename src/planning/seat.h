// SPDX-License-Identifier: MIT
// How a frame's body sits on a garment: what it meets, and which way out is shortest.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/catalogue/garment_shape.h"
#include "planning/workshop.h"

namespace creaseline {

// Something that the body lies on or over.
struct Meeting {
  bool keepOut = false;  // else an edge of the panel
  std::string what;      // "pocket edge"
  double depth = 0.0;    // millimetres, > 0
  Point wayOut;          // unit vector that moves the body clear
};

struct Seat {
  std::vector<Meeting> meetings;  // deepest first; empty: it can sit here
  double room = 0.0;              // least distance to anything it must not meet
  std::string nearest;            // what that is
};

// The frame with its centre at `centre` on the panel.
Seat seatFrame(const PreparedFrame& frame, Point centre, const PanelShape& panel,
               const EdgeCrossings& crossings);

}  // namespace creaseline
