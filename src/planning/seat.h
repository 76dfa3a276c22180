// SPDX-License-Identifier: MIT
// How a frame's body sits on a garment: what it meets, and which way out is shortest.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/catalogue/garment_shape.h"
#include "creaseline/planning/reason.h"
#include "planning/workshop.h"

namespace creaseline {

// What of a frame an edge of the panel must not reach.
enum class FramePart { Body, Window };

// Something that the body lies on or over, or an edge beyond which too little cloth is left to
// hold.
struct Meeting {
  bool keepOut = false;  // else an edge of the panel
  std::string what;      // "pocket edge"
  double depth = 0.0;    // millimetres, > 0: until it sits there with the cloth that it needs
  Point wayOut;          // unit vector that moves the body clear
  FramePart part = FramePart::Body;
  double cloth = 0.0;  // at an edge: millimetres of cloth beyond the part; < 0: the edge is in it
};

// The frame with its centre at `centre` on the panel: what it meets, deepest first; empty if it
// can sit there. At an edge that the body must stay inside, cloth must go on by the frame's margin
// beyond the body; at one that the window must stay inside, beyond the window.
std::vector<Meeting> meetingsOf(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                                const EdgeCrossings& crossings);

// Room around a body that meets nothing.
struct BodyRoom {
  double distance = 0.0;  // least distance to anything it must not meet; infinite if nothing is
  std::string nearest;    // what that is
};
BodyRoom bodyRoom(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                  const EdgeCrossings& crossings);

// Where the least cloth is left beyond a frame that meets nothing, and how much.
struct ClothLeft {
  FramePart part = FramePart::Body;
  double beyond = 0.0;  // millimetres
  std::string edge;     // "hem"
};
// Nothing if the rules let the rings cross every edge.
std::optional<ClothLeft> clothLeft(const PreparedFrame& frame, Point centre,
                                   const PanelShape& panel, const EdgeCrossings& crossings);
// What a frame that asks for cloth beyond it has there.
Reason clothReason(const PreparedFrame& frame, const std::optional<ClothLeft>& cloth,
                   const UnitChoice& units);

}  // namespace creaseline
