// SPDX-License-Identifier: MIT
// Does a design go into a frame, where, and with how much room: exact for every convex window.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "creaseline/base/angle.h"
#include "creaseline/base/length.h"
#include "creaseline/shape/fitting_angles.h"
#include "creaseline/shape/outline.h"
#include "creaseline/shape/region.h"
#include "creaseline/shape/window.h"

namespace creaseline {

class OpeningPart;  // one prepared constraint, see src/shape/opening_part.h

// How far a hooped design may be off and still be corrected at the machine by moving it: to each
// side, and turned either way about its centre.
struct Slack {
  Length left, right, up, down;
  Angle turn;  // the smaller of the two ways; at most kLargestTurnSlack
  bool operator==(const Slack&) const = default;
  [[nodiscard]] Length least() const;
};

// The sewable inside of a frame: the window shrunk by the foot clearance, and the machine's
// sewing field, both centred on the frame. Build it once, ask it often; const use is thread-safe.
//
// A design is given by its convex hull (Outline::hull), already turned. A translation t means:
// hull point p lands at p + t in the frame's coordinates.
//
// Rectangles with rounded corners are met exactly (lines and arcs). An ellipse, and what lies
// between it and a rectangle, is carried as an inscribed polygon at most kCurveTolerance inside the
// true curve and shrunk as such, so an answer for it is the exact one for a clearance larger by no
// more than that: on the safe side. A design that just touches fits: every limit is let out by
// 5e-10 mm.
class FrameOpening {
 public:
  static constexpr Length kCurveTolerance = Length::fromNanometres(250);
  static constexpr Angle kLargestTurnSlack = Angle::fromDegrees(45.0);

  // A clearance that leaves nothing gives an opening that holds nothing.
  FrameOpening(const Window& window, Length clearance, const std::optional<Window>& sewingField);

  // The exact set of translations. For a polygon: the half-planes n.t <= d - h(n), h the hull's
  // support function; for rounded corners: the lower envelope of the arcs around c - p over the
  // hull vertices p that meet the corner.  O(hull + window). No points: an empty region.
  [[nodiscard]] Region translations(std::span<const Point> hull) const;

  // Slack read from a region at the translation in use. Precondition: region.contains(at).
  // The turn is about the hull's origin, which lands at `at`, in closed form: each hull point
  // moves on a circle, and the first meeting of a circle with the boundary ends the turn.
  [[nodiscard]] Slack slack(const Region& region, std::span<const Point> hull, Point at) const;

  // Whether a hooped design that is off by up to that much sideways, along and turned, all at once
  // and each either way, can still be brought true: it fits at every place of the rectangle around
  // `at`, at every turn. The window is convex, so the four corners decide; for each the turn is in
  // closed form. Precondition: region == translations(hull). False for a turn beyond
  // kLargestTurnSlack.
  [[nodiscard]] bool bearsError(const Region& region, std::span<const Point> hull, Point at,
                                Length sideways, Length along, Angle turn) const;

  // Signed room at one translation: the least distance of any hull point from the boundary,
  // negative if one is outside (then by how much, at most). Millimetres.
  [[nodiscard]] double depth(std::span<const Point> hull, Point at) const;

  // Largest of depth() over all translations; negative if the design does not fit, and then it
  // says how much must be gained on each side. Millimetres, to 1e-6. No points: 0.
  [[nodiscard]] double margin(std::span<const Point> hull) const;

  // Largest factor by which the hull may be scaled about its origin and still fit. 0 if nothing
  // fits, infinite if the hull is a single point. To 1e-9, rounded down.
  [[nodiscard]] double largestScale(std::span<const Point> hull) const;

  // All turns of the hull at which the design fits, found from exact events, not by sampling: an
  // angle at which it does not fit comes with a proof (at most five limits that contradict each
  // other), which holds up to an angle given in closed form; see docs/method.md. Ends are exact to
  // 1e-9 degrees; a gap narrower than 1e-7 radians may be closed. No points: none.
  [[nodiscard]] FittingAngles fittingAngles(std::span<const Point> hull) const;

  // The turn of least size, either way, up to `limit`, at which the design fits, in whole
  // thousandths of a degree; nothing if there is none. Of two as small the clockwise one. By the
  // same events as fittingAngles(), from 0 outwards.
  [[nodiscard]] std::optional<Angle> smallestTurn(std::span<const Point> hull, Angle limit) const;

 private:
  std::shared_ptr<const std::vector<OpeningPart>> parts_;  // the window, then the field; never null
};

}  // namespace creaseline
