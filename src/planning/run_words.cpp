// SPDX-License-Identifier: MIT
#include "planning/run_words.h"

#include <fmt/format.h>

#include <vector>

#include "base/worded.h"
#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

constexpr int kQuarter = 90'000;

// Directions of the bracket in the frame's own view, clockwise from its top.
std::vector<Angle> bracketDirections(BracketSide side) {
  switch (side) {
    case BracketSide::Top:
      return {Angle()};
    case BracketSide::Right:
      return {Angle::fromDegrees(90.0)};
    case BracketSide::Bottom:
      return {Angle::fromDegrees(180.0)};
    case BracketSide::Left:
      return {Angle::fromDegrees(-90.0)};
    case BracketSide::Both:
      return {Angle::fromDegrees(-90.0), Angle::fromDegrees(90.0)};
  }
  return {};
}

// "at the frame's top", "mostly at the frame's left side"
std::string atFrameSide(Angle direction) {
  static constexpr std::string_view kSides[] = {
      toBeWorded("at the frame's top"), toBeWorded("at the frame's right side"),
      toBeWorded("at the frame's bottom"), toBeWorded("at the frame's left side")};
  const int turn = (direction.millidegrees() + 4 * kQuarter) % (4 * kQuarter);
  const std::string side = inLanguage(kSides[(turn + kQuarter / 2) / kQuarter % 4]);
  return turn % kQuarter == 0 ? side : worded("mostly {}", side);
}

// Machines count millimetres, whatever the ruler.
std::string shift(Length length, const UnitChoice& units) {
  const std::string millimetres = fmt::format("{:.0f} mm", abs(length).mm());
  return units.length == LengthUnit::Millimetre
             ? millimetres
             : fmt::format("{} ({})", formatLength(abs(length), units), millimetres);
}

}  // namespace

std::string bracketAtMachine(BracketSide side) {
  switch (side) {
    case BracketSide::Top:
      return worded("top");
    case BracketSide::Bottom:
      return worded("bottom");
    case BracketSide::Left:
      return worded("left");
    case BracketSide::Right:
      return worded("right");
    case BracketSide::Both:
      return worded("left and right");
  }
  return {};
}

std::string bracketOnGarment(BracketSide side, const PlacementPlan& plan, Angle frameTurn) {
  std::string text;
  for (const Angle direction : bracketDirections(side)) {
    const std::string facing = facingPhrase(plan, direction + frameTurn);
    text = text.empty() ? facing : bothPhrase(text, facing);
  }
  return text;
}

std::string loadingPhrase(const PlacementPlan& plan, Angle frameTurn) {
  return fmt::format("{} {}", datumPhrase(plan), atFrameSide(-frameTurn));
}

std::string turnInFramePhrase(Angle turn) {
  std::string text = worded("none");
  if (turn == Angle::fromDegrees(180.0)) {
    text = formatAngle(turn);
  } else if (turn != Angle()) {
    text = wayPhrase(turn);
  }
  return worded("{}, top of the design {}", text, atFrameSide(turn));
}

StartPoint startPoint(const PlacementPlan& plan) {
  const Point offset = turned(plan.placed.centre - plan.frame->centre, -plan.frame->turn);
  constexpr UnitChoice kMillimetres{LengthUnit::Millimetre};
  return {roundToMark(Length::fromMm(offset.x), kMillimetres),
          roundToMark(Length::fromMm(offset.y), kMillimetres)};
}

std::string startPhrase(const StartPoint& start, const UnitChoice& units) {
  std::string text;
  if (start.right != Length()) {
    const std::string distance = shift(start.right, units);
    text =
        start.right < Length() ? worded("{} left of", distance) : worded("{} right of", distance);
  }
  if (start.down != Length()) {
    const std::string distance = shift(start.down, units);
    const std::string along =
        start.down < Length() ? worded("{} above", distance) : worded("{} below", distance);
    text = text.empty() ? along : bothPhrase(text, along);
  }
  return text.empty() ? worded("on the frame's centre") : worded("{} the frame's centre", text);
}

}  // namespace creaseline
