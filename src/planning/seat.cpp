// SPDX-License-Identifier: MIT
#include "planning/seat.h"

#include <algorithm>
#include <limits>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "creaseline/shape/outline.h"
#include "creaseline/shape/separation.h"
#include "planning/cloth.h"

namespace creaseline {
namespace {

// Touching is not meeting: below a hundredth of a millimetre nobody can tell.
constexpr double kTouching = 0.01;

void add(std::vector<Meeting>& meetings, Meeting meeting) {
  const auto known =
      std::find_if(meetings.begin(), meetings.end(),
                   [&meeting](const Meeting& other) { return other.what == meeting.what; });
  if (known == meetings.end()) {
    meetings.push_back(std::move(meeting));
  } else if (meeting.depth > known->depth) {
    *known = std::move(meeting);
  }
}

// Calls visit(meter, side index) for every side that the rules keep the body or the window inside.
template <class Visit>
void forEachClosedSide(const Ring& body, const Ring& window, const PanelShape& panel,
                       const EdgeCrossings& crossings, Visit visit) {
  const SideMeter forBody(body, panel.outline, true);
  const SideMeter forWindow(window, panel.outline, true);
  for (std::size_t i = 0; i < panel.sides.size(); ++i) {
    const EdgeCrossing crossing = crossings[static_cast<std::size_t>(panel.sides[i].name)];
    if (crossing != EdgeCrossing::May) {
      visit(crossing == EdgeCrossing::Never ? forBody : forWindow, i);
    }
  }
}

}  // namespace

std::vector<Meeting> meetingsOf(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                                const EdgeCrossings& crossings) {
  std::vector<Meeting> meetings;
  const Ring body = transformedRing(frame.body, {}, centre);
  const Ring window = transformedRing(frame.window, {}, centre);
  forEachClosedSide(body, window, panel, crossings, [&](const SideMeter& meter, std::size_t i) {
    if (meter.atLeast(i) >= 0.0) {
      return;
    }
    const auto room = meter.crossing(i);
    if (room && room->distance < -kTouching) {
      add(meetings, {false, sideLabel(panel, panel.sides[i]), -room->distance, room->direction});
    }
  });
  const Box box = ringBounds(body);
  for (const KeepOut& keepOut : panel.keepOuts) {
    if (!keepOut.frame || gapBetween(box, ringBounds(keepOut.area)) >= 0.0) {
      continue;
    }
    const auto both = overlap(body, keepOut.area);
    if (both && both->distance < -kTouching) {
      add(meetings, {true, keepOutPhrase(keepOut.name), -both->distance, both->direction});
    }
  }
  if (!contains(panel.outline, centre)) {
    const NearestSide side = nearestSide(panel.outline, centre);
    const Point back = side.on - centre;
    add(meetings, {false, worded("edge of the {}", panelPhrase(panel.name)), side.distance + 1.0,
                   back * (1.0 / std::max(norm(back), 1e-9))});
  }
  std::stable_sort(meetings.begin(), meetings.end(),
                   [](const Meeting& a, const Meeting& b) { return a.depth > b.depth; });
  return meetings;
}

BodyRoom bodyRoom(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                  const EdgeCrossings& crossings) {
  BodyRoom room{std::numeric_limits<double>::infinity(), {}};
  const Ring body = transformedRing(frame.body, {}, centre);
  const Ring window = transformedRing(frame.window, {}, centre);
  forEachClosedSide(body, window, panel, crossings, [&](const SideMeter& meter, std::size_t i) {
    if (meter.atLeast(i) >= room.distance) {
      return;
    }
    const double distance = meter.measure(i).distance;
    if (distance < room.distance) {
      room = {distance, sideLabel(panel, panel.sides[i])};
    }
  });
  const Box box = ringBounds(body);
  for (const KeepOut& keepOut : panel.keepOuts) {
    if (!keepOut.frame || gapBetween(box, ringBounds(keepOut.area)) >= room.distance) {
      continue;
    }
    const double distance = separation(body, keepOut.area).distance;
    if (distance < room.distance) {
      room = {distance, keepOutPhrase(keepOut.name)};
    }
  }
  room.distance = std::max(0.0, room.distance);
  return room;
}

}  // namespace creaseline
