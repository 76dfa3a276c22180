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

// The frame with its centre at `centre` on the panel: what it meets, deepest first; empty if it
// can sit there.
std::vector<Meeting> meetingsOf(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                                const EdgeCrossings& crossings);

// Room around a body that meets nothing.
struct BodyRoom {
  double distance = 0.0;  // least distance to anything it must not meet; infinite if nothing is
  std::string nearest;    // what that is
};
BodyRoom bodyRoom(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                  const EdgeCrossings& crossings);

}  // namespace creaseline
