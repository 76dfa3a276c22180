// SPDX-License-Identifier: MIT
#include "creaseline/planning/drawn_words.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "base/worded.h"
#include "creaseline/planning/wording.h"

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
    return direction.x < 0.0 ? worded("left") : worded("right");
  }
  return direction.y < 0.0 ? worded("top") : worded("bottom");
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

void addTo(std::string& text, const std::string& part) {
  text = text.empty() ? part : bothPhrase(text, part);
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
    addTo(text, sideWord(asDrawn(turned(side, plan.frame->turn), plan.panel)));
  }
  return text;
}

std::string frameOffsetAsDrawn(const PlacementPlan& plan, const UnitChoice& units) {
  const Point offset = asDrawn(plan.frame->centre - plan.placed.centre, plan.panel);
  std::string text;
  const Length down = Length::fromMm(offset.y);
  const Length right = Length::fromMm(offset.x);
  if (roundToMark(down, units) != Length()) {
    const std::string distance = formatLength(abs(down), units);
    text = down < Length() ? worded("{} above", distance) : worded("{} below", distance);
  }
  if (roundToMark(right, units) != Length()) {
    const std::string distance = formatLength(abs(right), units);
    addTo(text,
          right < Length() ? worded("{} left of", distance) : worded("{} right of", distance));
  }
  return text.empty() ? text : worded("{} the design's centre", text);
}

std::string designInFramePhrase(const PlacementPlan& plan) {
  const Angle turn = plan.placed.panelTurn - plan.frame->turn;
  if (turn == Angle()) {
    return worded("not turned against the frame");
  }
  return worded("turned by {}",
                turn == Angle::fromDegrees(180.0) ? formatAngle(turn) : wayPhrase(turn));
}

}  // namespace creaseline
