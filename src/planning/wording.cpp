// SPDX-License-Identifier: MIT
// Words for the plan's numbers. Every sentence fragment about a place on cloth is made here.
#include "creaseline/planning/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

#include "base/enum_words.h"
#include "base/worded.h"
#include "creaseline/planning/counting.h"

namespace creaseline {

namespace {

std::string angleRoundedDown(Angle angle) {
  return formatAngle(Angle::fromMillidegrees(angle.millidegrees() / 100 * 100));
}

// Whether the sides of the panel are named for the wearer, so that the viewer's is worth a note.
bool namesWearersSide(PanelName panel) {
  return !isSleeve(panel) && panel != PanelName::Flat;
}

// A turned-up cuff lies with its open edge on top.
bool isTurnedUpCuff(const PanelShape& panel) {
  return panel.has(EdgeName::TurnUpFold);
}

bool isTurnedUpCuff(const PlacementPlan& plan) {
  const PanelShape* panel = plan.garment ? plan.garment->panel(plan.panel) : nullptr;
  return panel != nullptr && isTurnedUpCuff(*panel);
}

// What lies beyond a panel in one of the four directions, by quarter turns clockwise from
// "towards the datum".
std::string towardsPhrase(PanelName panel, bool turnedUpCuff, int quarter) {
  if (quarter == 1 || quarter == 3) {
    const bool right = quarter == 1;
    const std::string side = sideOfPanel(panel, right);
    return !namesWearersSide(panel) ? worded("the {}", side)
           : right                  ? worded("the {} (viewer's right)", side)
                                    : worded("the {} (viewer's left)", side);
  }
  const bool datum = quarter == 0;
  if (isSleeve(panel)) {
    return datum ? worded("the cuff") : worded("the shoulder");
  }
  if (panel == PanelName::Hood) {
    return datum ? worded("the face edge") : worded("the neck seam");
  }
  if (panel == PanelName::Flat) {
    if (turnedUpCuff) {
      return datum ? worded("the cuff's open edge") : worded("the cuff's fold");
    }
    return datum ? worded("the top edge") : worded("the bottom edge");
  }
  if (isLeg(panel)) {
    return datum ? worded("the waist seam") : worded("the hem");
  }
  return datum ? worded("the collar seam") : worded("the hem");
}

// Quarter turns, 0 to 3, nearest to the angle; `exact` tells whether it is one.
struct Quarter {
  int count = 0;
  bool exact = false;
};
Quarter nearestQuarter(Angle angle) {
  constexpr int kQuarterTurn = 90'000;
  const int turn = (angle.millidegrees() + 4 * kQuarterTurn) % (4 * kQuarterTurn);
  return {(turn + kQuarterTurn / 2) / kQuarterTurn % 4, turn % kQuarterTurn == 0};
}

std::string facingPhrase(PanelName panel, bool turnedUpCuff, Angle direction) {
  const Quarter quarter = nearestQuarter(direction);
  const std::string towards = towardsPhrase(panel, turnedUpCuff, quarter.count);
  return quarter.exact ? worded("towards {}", towards) : worded("mostly towards {}", towards);
}

// A zip cannot be pressed into a crease, but its middle can be felt.
bool hasZip(const PlacementPlan& plan) {
  const PanelShape* panel = plan.garment ? plan.garment->panel(plan.panel) : nullptr;
  return panel != nullptr &&
         std::any_of(panel->keepOuts.begin(), panel->keepOuts.end(),
                     [](const KeepOut& k) { return k.name == KeepOutName::Zip; });
}

}  // namespace

std::string sizePhrase(Length width, Length height, const UnitChoice& units) {
  const std::string across = formatLength(width, units);
  const std::string along = formatLength(height, units);
  return fmt::format("{} × {}", across.substr(0, across.rfind(' ')), along);
}

std::string windowPhrase(const Window& window, const UnitChoice& units) {
  return sizePhrase(roundDownToMark(window.width(), units), roundDownToMark(window.height(), units),
                    units);
}

std::string roomPhrase(Length room, const UnitChoice& units) {
  const Length step = rulerMark(units);
  if (room == Length()) {
    return worded("none");
  }
  if (room > Length() && room < step) {
    return worded("under {}", formatLength(step, units));
  }
  Length shown = roundToMark(room, units);
  if (shown > room) {
    shown -= step;
  }
  return formatLength(shown, units);
}

std::string differencePhrase(Length by, const UnitChoice& units) {
  return roundToMark(by, units) == Length() ? roomPhrase(by, units) : formatLength(by, units);
}

std::string nearSidePhrase(const PlacementPlan& plan) {
  const Quarter turn = nearestQuarter(plan.placed.panelTurn);
  if (!turn.exact) {
    return worded("nearest point of the design");
  }
  // Which side of the design faces the datum after so many quarter turns clockwise.
  static constexpr std::string_view kFacing[] = {
      toBeWorded("top of the design"), toBeWorded("left side of the design"),
      toBeWorded("bottom of the design"), toBeWorded("right side of the design")};
  // From some marks one measures towards the datum: the side away from it is nearest.
  const int offset = leadsTowardsDatum(plan.placed.from) ? 2 : 0;
  return inLanguage(kFacing[(turn.count + offset) % 4]);
}

std::string centreLinePhrase(const PlacementPlan& plan) {
  if (isSleeve(plan.panel)) {
    return worded("the fold of the sleeve");
  }
  return hasZip(plan) ? worded("the middle of the zip") : worded("the centre crease");
}

std::string centreLineLabel(const PlacementPlan& plan) {
  if (isSleeve(plan.panel)) {
    return worded("fold of the sleeve");
  }
  return hasZip(plan) ? worded("middle of the zip") : worded("centre crease");
}

std::string landmarkPhrase(Landmark from) {
  switch (from) {
    case Landmark::CollarSeam:
      return worded("below the collar seam");
    case Landmark::ShoulderPoint:
      return worded("below the high point of the shoulder");
    case Landmark::FaceEdge:
      return worded("from the face edge");
    case Landmark::CuffEdge:
      return worded("above the cuff edge");
    case Landmark::CuffSeam:
      return worded("above the cuff seam");
    case Landmark::ShoulderSeam:
      return worded("below the shoulder seam");
    case Landmark::PlacketEnd:
      return worded("below the end of the placket");
    case Landmark::HemEdge:
      return worded("above the hem edge");
    case Landmark::YokeSeam:
      return worded("below the yoke seam");
    case Landmark::TopEdge:
      return worded("below the top edge");
    case Landmark::PieceMiddle:
      return worded("below the middle of the piece");
    case Landmark::BorderTop:
      return worded("above the border");
    case Landmark::BorderMiddle:
      return worded("above the middle of the border");
    case Landmark::WaistSeam:
      return worded("below the waist seam");
    case Landmark::PocketTop:
      return worded("above the pocket's opening");
    case Landmark::PocketOpening:
      return worded("below the pocket's opening");
  }
  return {};
}

std::string sideOfPanel(PanelName panel, bool right) {
  switch (panel) {
    case PanelName::Front:
      return right ? worded("wearer's left") : worded("wearer's right");
    case PanelName::Back:
    case PanelName::Hood:
      return right ? worded("wearer's right") : worded("wearer's left");
    case PanelName::LeftSleeve:
      return right ? worded("front of the garment") : worded("back of the garment");
    case PanelName::RightSleeve:
      return right ? worded("back of the garment") : worded("front of the garment");
    case PanelName::Flat:
      return right ? worded("viewer's right") : worded("viewer's left");
    case PanelName::LeftLeg:
      return right ? worded("outer side") : worded("inner side");
    case PanelName::RightLeg:
      return right ? worded("inner side") : worded("outer side");
  }
  return {};
}

std::string lateralPhrase(const PlacementPlan& plan, const UnitChoice& units) {
  const Length lateral = plan.placed.lateral;
  if (roundToMark(lateral, units) == Length()) {
    return worded("on {}", centreLinePhrase(plan));
  }
  return fmt::format("{} {}", formatLength(abs(lateral), units), lateralDirection(plan));
}

std::string lateralDirection(const PlacementPlan& plan) {
  const bool right = plan.placed.lateral > Length();
  const std::string side = sideOfPanel(plan.panel, right);
  const std::string line = centreLinePhrase(plan);
  if (isSleeve(plan.panel)) {
    return worded("from {} towards the {}", line, side);
  }
  return !namesWearersSide(plan.panel) ? worded("to the {} of {}", side, line)
         : right                       ? worded("to the {} of {} (viewer's right)", side, line)
                                       : worded("to the {} of {} (viewer's left)", side, line);
}

std::string turnPhrase(const PlacementPlan& plan) {
  const std::string facing = facingPhrase(plan, plan.placed.panelTurn);
  // A hood is worn the other way up than it is drawn: counted from upright as worn, the way of the
  // turn would be the opposite of what the drawing shows.
  if (plan.panel == PanelName::Hood) {
    const Angle drawn = plan.placed.panelTurn;
    const std::string way = drawn == Angle()                     ? worded("none")
                            : drawn == Angle::fromDegrees(180.0) ? formatAngle(drawn)
                                                                 : wayPhrase(drawn);
    return worded("{} with the face edge on top, top of the design {}", way, facing);
  }
  const std::int32_t turn = plan.placed.turn.millidegrees();
  std::string text = worded("none");
  if (turn == 180'000) {
    text = worded("180° against upright as worn");
  } else if (turn != 0) {
    text = wayPhrase(plan.placed.turn);
  }
  return worded("{}, top of the design {}", text, facing);
}

std::string wayPhrase(Angle turn) {
  const std::string size = formatAngle(turn < Angle() ? -turn : turn);
  return turn < Angle() ? worded("{} anticlockwise", size) : worded("{} clockwise", size);
}

std::string bothPhrase(const std::string& one, const std::string& other) {
  return worded("{} and {}", one, other);
}

std::string facingPhrase(const PlacementPlan& plan, Angle direction) {
  return facingPhrase(plan.panel, isTurnedUpCuff(plan), direction);
}

std::string facingPhrase(const PanelShape& panel, Angle direction) {
  return facingPhrase(panel.name, isTurnedUpCuff(panel), direction);
}

std::string datumPhrase(const PlacementPlan& plan) {
  return towardsPhrase(plan.panel, isTurnedUpCuff(plan), 0);
}

std::string sidePhrase(const Location& location) {
  std::string panel = panelPhrase(location.panel);
  if (isSleeve(location.panel)) {
    return panel;
  }
  if (isLeg(location.panel)) {
    return worded("{} (viewer's {})", panel, wordOf(location.viewerSide));
  }
  if (location.wearerSide == Side::Centre) {
    return worded("{}, centre", panel);
  }
  if (location.panel == PanelName::Flat) {  // nobody wears it
    return worded("{}, viewer's {}", panel, wordOf(location.viewerSide));
  }
  return worded("{}, wearer's {} (viewer's {})", panel, wordOf(location.wearerSide),
                wordOf(location.viewerSide));
}

std::string slackPhrase(const Slack& slack, const UnitChoice& units) {
  std::string turn = angleRoundedDown(slack.turn);
  if (slack.turn >= FrameOpening::kLargestTurnSlack) {
    turn = worded("{} or more", turn);
  }
  return worded("left {}, right {}, up {}, down {}, turned {}", roomPhrase(slack.left, units),
                roomPhrase(slack.right, units), roomPhrase(slack.up, units),
                roomPhrase(slack.down, units), turn);
}

std::string backingPhrase(const BackingChoice& backing, const UnitChoice& units) {
  return worded("{}, at least {}, {}, {}", wordOf(backing.kind),
                formatArealWeight(backing.leastWeight, units),
                counted(backing.layers, toBeWorded("layer"), toBeWorded("layers")),
                wordOf(backing.hold));
}

std::string amountPhrase(Money amount, const Currency& currency) {
  std::string text = amountText(amount, currency);
  std::replace(text.begin(), text.end(), '.', spokenDecimalSeparator());
  return text;
}

std::string moneyPhrase(Money amount, const Currency& currency) {
  return fmt::format("{} {}", amountPhrase(amount, currency), currency.code);
}

std::string needlePhrase(const BackingChoice& backing) {
  return worded("{} {} point", backing.needleSize, spacedWordOf(backing.needlePoint));
}

std::string framePhrase(const Frame& frame, const FrameChoice& choice, const UnitChoice& units) {
  const std::string size = windowPhrase(frame.window, units);
  return choice.turn == Angle() ? worded("{} ({} window)", frame.name, size)
                                : worded("{} ({} window), turned {} on the garment", frame.name,
                                         size, formatAngle(choice.turn));
}

std::string measurePhrase(Measure measure) {
  return spacedWordOf(measure);
}

std::string locationPhrase(const LocationId& id, const Rules& rules) {
  const Location* location = rules.location(id);
  return location == nullptr ? id.text() : location->name;
}

std::string panelPhrase(PanelName panel) {
  return spacedWordOf(panel);
}

std::string edgePhrase(EdgeName edge) {
  return spacedWordOf(edge);
}

std::string keepOutPhrase(KeepOutName name) {
  return spacedWordOf(name);
}

std::string sizesPhrase(const std::vector<SizeName>& sizes, const SizeChart& chart) {
  const auto wanted = [&](const SizeName& name) {
    return std::find(sizes.begin(), sizes.end(), name) != sizes.end();
  };
  // Fewer than this many neighbours are quicker to read as a list than as a range.
  constexpr std::size_t kShortestRange = 4;
  std::vector<std::string> parts;
  bool ranges = false;
  for (std::size_t first = 0; first < chart.sizes.size(); ++first) {
    std::size_t end = first;
    while (end < chart.sizes.size() && wanted(chart.sizes[end].name)) {
      ++end;
    }
    if (end - first >= kShortestRange) {
      parts.push_back(
          worded("{} to {}", chart.sizes[first].name.text(), chart.sizes[end - 1].name.text()));
      ranges = true;
    } else {
      for (std::size_t i = first; i < end; ++i) {
        parts.push_back(chart.sizes[i].name.text());
      }
    }
    first = std::max(first, end);
  }
  for (const SizeName& name : sizes) {
    const bool listed = std::find(parts.begin(), parts.end(), name.text()) != parts.end();
    if (chart.find(name) == nullptr && !listed) {
      parts.push_back(name.text());
    }
  }
  return fmt::format("{}", fmt::join(parts, ranges ? ", " : " "));
}

}  // namespace creaseline
