// SPDX-License-Identifier: MIT
#include "planning/frame_turns.h"

#include <algorithm>
#include <cmath>

namespace creaseline {
namespace {

// The least turn of the hull at which the frame holds it, rounded away from none: to the whole
// degree, or to the tenth if no whole one near it serves.
std::optional<Angle> turnThatTouches(const PreparedFrame& frame, const Ring& hull) {
  const auto least = frame.opening.smallestTurn(hull, Angle::fromDegrees(180.0));
  if (!least) {
    return std::nullopt;
  }
  for (const std::int64_t step : {1'000, 100}) {
    const std::int64_t size = std::abs(std::int64_t{least->millidegrees()});
    const std::int64_t rounded = (size + step - 1) / step * step;
    const Angle turn = Angle::fromMillidegrees(*least < Angle() ? -rounded : rounded);
    if (!frame.opening.translations(transformedRing(hull, turn, {})).empty()) {
      return turn;
    }
  }
  return std::nullopt;
}

// Whether the frame bears the error with the hull turned in it. The error is sideways and along on
// the garment, so it lies turned in the frame as well: asked in the upright box around it.
bool bearsTurned(const FrameOpening& opening, const Region& region, const Ring& inFrame, Angle turn,
                 const HoopingError& error) {
  const double along = std::abs(std::cos(turn.radians()));
  const double across = std::abs(std::sin(turn.radians()));
  return opening.bearsError(region, inFrame, region.balancedPoint(),
                            error.sideways * along + error.along * across,
                            error.sideways * across + error.along * along, error.turn);
}

// The room that the frame leaves for the shop's error with the hull turned in it.
TurnRoom roomTurned(const PreparedFrame& frame, const Ring& hull, Angle turn,
                    const Figures& figures) {
  const Ring inFrame = transformedRing(hull, turn, {});
  const Box box = ringBounds(inFrame);
  if (box.width() > frame.opened.width() || box.height() > frame.opened.height()) {
    return TurnRoom::None;
  }
  const Region region = frame.opening.translations(inFrame);
  if (region.empty() || !bearsTurned(frame.opening, region, inFrame, turn, figures.stopError)) {
    return TurnRoom::None;
  }
  return bearsTurned(frame.opening, region, inFrame, turn, figures.hoopingError)
             ? TurnRoom::ForError
             : TurnRoom::Little;
}

}  // namespace

std::optional<HoldingTurn> turnThatHolds(const PreparedFrame& frame, const Ring& hull,
                                         const Figures& figures) {
  const auto touching = turnThatTouches(frame, hull);
  if (!touching) {
    return std::nullopt;
  }
  // Further round a window holds the design no better than on the way there.
  constexpr int kFurthest = 45;
  const double sign = *touching < Angle() ? -1.0 : 1.0;
  const int nearest = static_cast<int>(std::ceil(std::abs(touching->degrees())));
  HoldingTurn best{frame.turn - *touching, TurnRoom::None};
  for (int degrees = nearest; degrees <= std::min(180, nearest + kFurthest); ++degrees) {
    for (const double way : {sign, -sign}) {
      const Angle turn = Angle::fromDegrees(way * degrees);
      const TurnRoom room = roomTurned(frame, hull, turn, figures);
      // Turning the frame turns the design in it the other way.
      if (room == TurnRoom::ForError) {
        return HoldingTurn{frame.turn - turn, room};
      }
      if (room == TurnRoom::Little && best.room == TurnRoom::None) {
        best = {frame.turn - turn, room};
      }
    }
  }
  return best;
}

}  // namespace creaseline
