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

// Calls visit(meter, side index, part) for every side that the rules keep that part inside.
template <class Visit>
void forEachClosedSide(const Ring& body, const Ring& window, const PanelShape& panel,
                       const EdgeCrossings& crossings, Visit visit) {
  const SideMeter forBody(body, panel.outline, true);
  const SideMeter forWindow(window, panel.outline, true);
  for (std::size_t i = 0; i < panel.sides.size(); ++i) {
    const EdgeCrossing crossing = crossings[static_cast<std::size_t>(panel.sides[i].name)];
    if (crossing != EdgeCrossing::May) {
      const bool bodyStays = crossing == EdgeCrossing::Never;
      visit(bodyStays ? forBody : forWindow, i, bodyStays ? FramePart::Body : FramePart::Window);
    }
  }
}

}  // namespace

std::vector<Meeting> meetingsOf(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                                const EdgeCrossings& crossings) {
  std::vector<Meeting> meetings;
  const Ring body = transformedRing(frame.body, {}, centre);
  const Ring window = transformedRing(frame.window, {}, centre);
  const double margin = frame.clothMargin;
  const auto seeSide = [&](const SideMeter& meter, std::size_t i, FramePart part) {
    const auto room = meter.within(i, margin);
    if (room && room->distance < margin - kTouching) {
      add(meetings, {false, sideLabel(panel, panel.sides[i]), margin - room->distance,
                     room->direction, part, room->distance});
    }
  };
  forEachClosedSide(body, window, panel, crossings, seeSide);
  const Box box = ringBounds(body);
  for (const KeepOut& keepOut : panel.keepOuts) {
    if (!keepOut.frame || gapBetween(box, ringBounds(keepOut.area)) >= 0.0) {
      continue;
    }
    const auto both = overlap(body, keepOut.area);
    if (both && both->distance < -kTouching) {
      add(meetings, {true, keepOutPhrase(keepOut.name), -both->distance, both->direction,
                     FramePart::Body, 0.0});
    }
  }
  if (!contains(panel.outline, centre)) {
    const NearestSide side = nearestSide(panel.outline, centre);
    const Point back = side.on - centre;
    const double depth = side.distance + 1.0;
    add(meetings, {false, worded("edge of the {}", panelPhrase(panel.name)), depth,
                   back * (1.0 / std::max(norm(back), 1e-9)), FramePart::Body, -depth});
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
  const auto seeSide = [&](const SideMeter& meter, std::size_t i, FramePart /*part*/) {
    if (meter.atLeast(i) >= room.distance) {
      return;
    }
    const double distance = meter.measure(i).distance;
    if (distance < room.distance) {
      room = {distance, sideLabel(panel, panel.sides[i])};
    }
  };
  forEachClosedSide(body, window, panel, crossings, seeSide);
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

std::optional<ClothLeft> clothLeft(const PreparedFrame& frame, Point centre,
                                   const PanelShape& panel, const EdgeCrossings& crossings) {
  std::optional<ClothLeft> least;
  const Ring body = transformedRing(frame.body, {}, centre);
  const Ring window = transformedRing(frame.window, {}, centre);
  const auto seeSide = [&](const SideMeter& meter, std::size_t i, FramePart part) {
    if (least && meter.atLeast(i) >= least->beyond) {
      return;
    }
    const double beyond = std::max(0.0, meter.measure(i).distance);
    if (!least || beyond < least->beyond) {
      least = ClothLeft{part, beyond, sideLabel(panel, panel.sides[i])};
    }
  };
  forEachClosedSide(body, window, panel, crossings, seeSide);
  return least;
}

Reason clothReason(const PreparedFrame& frame, const std::optional<ClothLeft>& cloth,
                   const UnitChoice& shown) {
  const Length margin = Length::fromMm(frame.clothMargin);
  const Length left = cloth ? Length::fromMm(cloth->beyond) : margin;
  // It has what it needs, and must not read as if it had less.
  const UnitChoice units = unitsTellingApart(left, {margin}, shown, Compared::Room);
  const std::string needed = formatLength(margin, units);
  std::string text =
      worded("it needs {} of cloth beyond it, and no edge of the panel is near", needed);
  if (cloth) {
    const std::string had = roomPhrase(std::max(left, roundToMark(margin, units)), units);
    text = cloth->part == FramePart::Window
               ? worded("it needs {} of cloth beyond its window, and has {} at the {}", needed, had,
                        cloth->edge)
               : worded("it needs {} of cloth beyond its body, and has {} at the {}", needed, had,
                        cloth->edge);
  }
  return {std::move(text), {}, worded("the shop's own figure for this frame"),
          false,           {}, worded("the frame's margin of cloth in the shop")};
}

}  // namespace creaseline
