// SPDX-License-Identifier: MIT
#include "planning/frame_rejections.h"

#include <algorithm>

#include "base/worded.h"
#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

// The edge lies beyond what must not cross it, and nearer than the frame's margin of cloth.
FrameRejection tooLittleCloth(const PreparedFrame& frame, const Meeting& worst, bool hasPlay,
                              const UnitChoice& shown) {
  const Length margin = Length::fromMm(frame.clothMargin);
  const Length left = Length::fromMm(worst.cloth);
  const UnitChoice units = unitsTellingApart(left, {margin}, shown, Compared::Room);
  FrameRejection rejection{
      frame.frame->id, frame.turn, FrameTest::HeldByCloth, Length::fromMm(worst.depth), {}, 0.0};
  const std::string needed = formatLength(margin, units);
  const std::string had = roomPhrase(left, units);
  const std::string cloth =
      worst.part == FramePart::Window
          ? worded("it needs {} of cloth beyond its window at the {} and has {}", needed,
                   worst.what, had)
          : worded("it needs {} of cloth beyond its body at the {} and has {}", needed, worst.what,
                   had);
  const std::string by = differencePhrase(rejection.missing, units);
  rejection.what =
      hasPlay ? worded(
                    "{}; shifted away from there as far as the design allows, it still lies {} "
                    "too near",
                    cloth, by)
              : worded("{}; it lies {} too near", cloth, by);
  return rejection;
}

}  // namespace

FrameRejection tooLarge(const PreparedFrame& frame, const Ring& hull, const UnitChoice& units) {
  FrameRejection rejection{frame.frame->id, frame.turn, FrameTest::HoldsDesign, {}, {}, 0.0};
  const Box box = ringBounds(hull);
  const double wide = box.width() - frame.opened.width();
  const double high = box.height() - frame.opened.height();
  if (wide > 0.0 || high > 0.0) {
    const bool byWidth = wide >= high;
    rejection.missing = Length::fromMm(std::max(wide, high));
    const std::string by = differencePhrase(rejection.missing, units);
    rejection.what = byWidth ? worded("{} too narrow for the design with the foot's clearance", by)
                             : worded("{} too low for the design with the foot's clearance", by);
  } else {
    // With the design in the middle, which for a frame is where it would be tried.
    const double depth = frame.opening.depth(hull, -box.centre());
    rejection.missing = Length::fromMm(std::max(0.0, -depth));
    rejection.what =
        worded("its corners cut the design by {}", differencePhrase(rejection.missing, units));
  }
  return rejection;
}

FrameRejection meetsGarment(const PreparedFrame& frame, const Meeting& worst, bool hasPlay,
                            const UnitChoice& units) {
  if (!worst.keepOut && worst.cloth >= 0.0) {
    return tooLittleCloth(frame, worst, hasPlay, units);
  }
  FrameRejection rejection{frame.frame->id,
                           frame.turn,
                           worst.keepOut ? FrameTest::ClearOfKeepOut : FrameTest::OnThePanel,
                           Length::fromMm(worst.depth),
                           {},
                           0.0};
  // What is meant to be held beyond the edge is no part of the meeting.
  const Length over = worst.keepOut ? rejection.missing : Length::fromMm(-worst.cloth);
  const std::string by = differencePhrase(over, units);
  rejection.what =
      hasPlay ? worded("its body meets the {} by {}, even shifted as far as the design allows",
                       worst.what, by)
              : worded("its body meets the {} by {}", worst.what, by);
  if (rejection.missing > over) {
    rejection.what = worded("{}; beyond that edge it needs {} of cloth to be held", rejection.what,
                            formatLength(rejection.missing - over, units));
  }
  return rejection;
}

std::optional<TooWide> tooWideForOpenings(const PreparedFrame& frame, const PanelShape& panel) {
  const Length across = std::min(frame.bodyWidth, frame.bodyHeight);
  std::optional<TooWide> least;
  for (const PanelOpening& opening : panel.openings) {
    if (!opening.width || *opening.width >= across) {
      return std::nullopt;
    }
    const Length by = across - *opening.width;
    if (!least || by < least->by) {
      least = TooWide{by, opening.name};
    }
  }
  return least;
}

FrameRejection cannotEnter(const PreparedFrame& frame, const TooWide& tooWide,
                           const UnitChoice& units) {
  return {
      frame.frame->id,
      frame.turn,
      FrameTest::PassesOpening,
      tooWide.by,
      worded("its ring is {} wider than {}", differencePhrase(tooWide.by, units), tooWide.opening),
      0.0};
}

std::string turnPhrase(Angle turn, TurnRoom room) {
  std::string holds =
      worded("turned on the garment by {} it would hold the design", wayPhrase(turn));
  switch (room) {
    case TurnRoom::ForError:
      break;
    case TurnRoom::Little:
      return worded("{}, with little room for the shop's hooping error", holds);
    case TurnRoom::None:
      return worded("{}, but with no room for the shop's hooping error", holds);
  }
  return holds;
}

}  // namespace creaseline
