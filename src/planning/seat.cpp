// SPDX-License-Identifier: MIT
#include "planning/seat.h"

#include <algorithm>
#include <limits>

#include "creaseline/planning/wording.h"
#include "creaseline/shape/outline.h"
#include "creaseline/shape/separation.h"
#include "planning/cloth.h"

namespace creaseline {
namespace {

// Touching is not meeting: below a hundredth of a millimetre nobody can tell.
constexpr double kTouching = 0.01;

void note(Seat& seat, bool keepOut, const std::string& what, double distance, Point wayOut) {
  if (distance < seat.room) {
    seat.room = distance;
    seat.nearest = what;
  }
  if (distance >= -kTouching) {
    return;
  }
  const auto known = std::find_if(seat.meetings.begin(), seat.meetings.end(),
                                  [&what](const Meeting& other) { return other.what == what; });
  if (known == seat.meetings.end()) {
    seat.meetings.push_back({keepOut, what, -distance, wayOut});
  } else if (-distance > known->depth) {
    *known = {keepOut, what, -distance, wayOut};
  }
}

void meetKeepOuts(Seat& seat, const Ring& body, const PanelShape& panel) {
  const Box bodyBox = ringBounds(body);
  for (const KeepOut& keepOut : panel.keepOuts) {
    if (!keepOut.frame) {
      continue;
    }
    // Boxes further apart than the least room so far cannot change the answer.
    const Box area = ringBounds(keepOut.area);
    const double apart = std::max({area.min.x - bodyBox.max.x, bodyBox.min.x - area.max.x,
                                   area.min.y - bodyBox.max.y, bodyBox.min.y - area.max.y});
    if (apart > std::max(seat.room, 0.0)) {
      continue;
    }
    const Separation between = separation(body, keepOut.area);
    if (between.distance < seat.room || between.distance < -kTouching) {
      note(seat, true, keepOutPhrase(keepOut.name), between.distance, between.direction);
    }
  }
}

void meetEdges(Seat& seat, const Ring& ring, const PanelShape& panel,
               const EdgeCrossings& crossings, EdgeCrossing concerned) {
  const SideMeter meter(ring, panel.outline);
  for (std::size_t i = 0; i < panel.sides.size(); ++i) {
    const PanelSide& side = panel.sides[i];
    const bool applies = crossings[static_cast<std::size_t>(side.name)] == concerned;
    if (!applies || meter.atLeast(i) > std::max(seat.room, 0.0)) {
      continue;
    }
    const SideRoom room = meter.measure(i);
    if (room.distance < seat.room || room.distance < -kTouching) {
      note(seat, false, sideLabel(panel, side), room.distance, room.direction);
    }
  }
}

}  // namespace

Seat seatFrame(const PreparedFrame& frame, Point centre, const PanelShape& panel,
               const EdgeCrossings& crossings) {
  Seat seat;
  seat.room = std::numeric_limits<double>::infinity();
  const Ring body = transformedRing(frame.body, {}, centre);
  meetEdges(seat, body, panel, crossings, EdgeCrossing::Never);
  meetEdges(seat, transformedRing(frame.window, {}, centre), panel, crossings,
            EdgeCrossing::WindowStays);
  meetKeepOuts(seat, body, panel);
  if (!contains(panel.outline, centre)) {
    const NearestSide side = nearestSide(panel.outline, centre);
    const Point back = side.on - centre;
    const double length = std::max(norm(back), 1e-9);
    note(seat, false, "edge of the " + panelPhrase(panel.name), -side.distance - 1.0,
         back * (1.0 / length));
  }
  std::stable_sort(seat.meetings.begin(), seat.meetings.end(),
                   [](const Meeting& a, const Meeting& b) { return a.depth > b.depth; });
  return seat;
}

}  // namespace creaseline
