// SPDX-License-Identifier: MIT
#include "planning/run_words.h"

#include <fmt/format.h>

#include <vector>

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
  static constexpr std::string_view kSides[] = {"top", "right side", "bottom", "left side"};
  const int turn = (direction.millidegrees() + 4 * kQuarter) % (4 * kQuarter);
  return fmt::format("{}at the frame's {}", turn % kQuarter == 0 ? "" : "mostly ",
                     kSides[(turn + kQuarter / 2) / kQuarter % 4]);
}

std::string shift(Length length, std::string_view direction, const UnitChoice& units) {
  const std::string millimetres = fmt::format("{:.0f} mm", abs(length).mm());
  if (units.length == LengthUnit::Millimetre) {
    return fmt::format("{} {}", millimetres, direction);
  }
  return fmt::format("{} ({}) {}", formatLength(abs(length), units), millimetres, direction);
}

}  // namespace

std::string bracketAtMachine(BracketSide side) {
  switch (side) {
    case BracketSide::Top:
      return "top";
    case BracketSide::Bottom:
      return "bottom";
    case BracketSide::Left:
      return "left";
    case BracketSide::Right:
      return "right";
    case BracketSide::Both:
      return "left and right";
  }
  return {};
}

std::string bracketOnGarment(BracketSide side, PanelName panel, Angle frameTurn) {
  std::string text;
  for (const Angle direction : bracketDirections(side)) {
    text += (text.empty() ? "" : " and ") + facingPhrase(panel, direction + frameTurn);
  }
  return text;
}

std::string loadingPhrase(PanelName panel, Angle frameTurn) {
  return fmt::format("{} {}", datumPhrase(panel), atFrameSide(-frameTurn));
}

std::string turnInFramePhrase(Angle turn) {
  std::string text = "none";
  if (turn == Angle::fromDegrees(180.0)) {
    text = formatAngle(turn);
  } else if (turn != Angle()) {
    text = fmt::format("{} {}", formatAngle(turn < Angle() ? -turn : turn),
                       turn < Angle() ? "anticlockwise" : "clockwise");
  }
  return fmt::format("{}, top of the design {}", text, atFrameSide(turn));
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
    text = shift(start.right, start.right < Length() ? "left of" : "right of", units);
  }
  if (start.down != Length()) {
    text += text.empty() ? "" : " and ";
    text += shift(start.down, start.down < Length() ? "above" : "below", units);
  }
  return (text.empty() ? "on" : text) + " the frame's centre";
}

}  // namespace creaseline
