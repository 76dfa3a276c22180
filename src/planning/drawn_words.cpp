// SPDX-License-Identifier: MIT
#include "creaseline/planning/drawn_words.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace creaseline {

namespace {

bool drawnTurned(PanelName panel) {
  return panel == PanelName::LeftSleeve || panel == PanelName::RightSleeve;
}

Point asDrawn(Point direction, PanelName panel) {
  return drawnTurned(panel) ? -direction : direction;
}

std::string sideWord(Point direction) {
  if (std::abs(direction.x) > std::abs(direction.y)) {
    return direction.x < 0.0 ? "left" : "right";
  }
  return direction.y < 0.0 ? "top" : "bottom";
}

std::vector<Point> bracketSides(BracketSide side) {
  switch (side) {
    case BracketSide::Top:
      return {{0.0, -1.0}};
    case BracketSide::Bottom:
      return {{0.0, 1.0}};
    case BracketSide::Left:
      return {{-1.0, 0.0}};
    case BracketSide::Right:
      return {{1.0, 0.0}};
    case BracketSide::Both:
      return {{-1.0, 0.0}, {1.0, 0.0}};
  }
  return {};
}

void addWith(std::string& text, const std::string& link, const std::string& part) {
  text += (text.empty() ? "" : link) + part;
}

}  // namespace

Slack leastSlackAsDrawn(const Plan& plan, const SizeGroup& group) {
  Slack least = plan.placements[group.front()].frame->slack;
  for (const std::size_t index : group) {
    const Slack& slack = plan.placements[index].frame->slack;
    least.left = std::min(least.left, slack.left);
    least.right = std::min(least.right, slack.right);
    least.up = std::min(least.up, slack.up);
    least.down = std::min(least.down, slack.down);
    least.turn = std::min(least.turn, slack.turn);
  }
  if (drawnTurned(plan.placements[group.front()].panel)) {
    std::swap(least.left, least.right);
    std::swap(least.up, least.down);
  }
  return least;
}

std::string bracketAsDrawn(const Frame& frame, const PlacementPlan& plan) {
  std::string text;
  for (const Point side : bracketSides(frame.bracket)) {
    addWith(text, " and ", sideWord(asDrawn(turned(side, plan.frame->turn), plan.panel)));
  }
  return text;
}

std::string frameOffsetAsDrawn(const PlacementPlan& plan, const UnitChoice& units) {
  const Point offset = asDrawn(plan.frame->centre - plan.placed.centre, plan.panel);
  std::string text;
  const auto add = [&](double value, const char* less, const char* more) {
    const Length length = Length::fromMm(value);
    if (roundToMark(length, units) != Length()) {
      addWith(text, " and ", formatLength(abs(length), units) + (value < 0.0 ? less : more));
    }
  };
  add(offset.y, " above", " below");
  add(offset.x, " left of", " right of");
  return text.empty() ? text : text + " the design's centre";
}

std::string designInFramePhrase(const PlacementPlan& plan) {
  const Angle turn = plan.placed.panelTurn - plan.frame->turn;
  if (turn == Angle()) {
    return "not turned against the frame";
  }
  std::string text = "turned by " + formatAngle(turn < Angle() ? -turn : turn);
  if (turn == Angle::fromDegrees(180.0)) {
    return text;
  }
  return text + (turn < Angle() ? " anticlockwise" : " clockwise");
}

}  // namespace creaseline
