// SPDX-License-Identifier: MIT
// Words for the plan's numbers. Every sentence fragment about a place on cloth is made here.
#include "creaseline/planning/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace creaseline {

namespace {

// File names of enumerators are the field's words with hyphens.
std::string spaced(std::string_view name) {
  std::string text(name);
  std::replace(text.begin(), text.end(), '-', ' ');
  return text;
}

// One mark of the ruler in use.
Length markStep(const UnitChoice& units) {
  if (units.length == LengthUnit::Inch) {
    return Length::fromInches(1.0 / static_cast<double>(static_cast<int>(units.mark)));
  }
  return Length::fromMm(1.0);
}

std::string angleRoundedDown(Angle angle) {
  return formatAngle(Angle::fromMillidegrees(angle.millidegrees() / 100 * 100));
}

std::string viewerNote(PanelName panel, bool right) {
  if (isSleeve(panel) || panel == PanelName::Flat) {
    return {};
  }
  return right ? " (viewer's right)" : " (viewer's left)";
}

// What lies beyond a panel in one of the four directions, by quarter turns clockwise from
// "towards the datum".
std::string towardsPhrase(PanelName panel, int quarter) {
  if (quarter == 1 || quarter == 3) {
    return "the " + sideOfPanel(panel, quarter == 1) + viewerNote(panel, quarter == 1);
  }
  const bool datum = quarter == 0;
  if (isSleeve(panel)) {
    return datum ? "the cuff" : "the shoulder";
  }
  if (panel == PanelName::Hood) {
    return datum ? "the face edge" : "the neck seam";
  }
  if (panel == PanelName::Flat) {
    return datum ? "the top edge" : "the bottom edge";
  }
  if (isLeg(panel)) {
    return datum ? "the waist seam" : "the hem";
  }
  return datum ? "the collar seam" : "the hem";
}

// Quarter turns, 0 to 3, nearest to the angle; `exact` tells whether it is one.
struct Quarter {
  int count = 0;
  bool exact = false;
};
Quarter nearestQuarter(Angle angle) {
  constexpr int kQuarter = 90'000;
  const int turn = (angle.millidegrees() + 4 * kQuarter) % (4 * kQuarter);
  return {(turn + kQuarter / 2) / kQuarter % 4, turn % kQuarter == 0};
}

}  // namespace

std::string sizePhrase(Length width, Length height, const UnitChoice& units) {
  const std::string across = formatLength(width, units);
  const std::string along = formatLength(height, units);
  return fmt::format("{} × {}", across.substr(0, across.rfind(' ')), along);
}

std::string roomPhrase(Length room, const UnitChoice& units) {
  const Length step = markStep(units);
  if (room == Length()) {
    return "none";
  }
  if (room > Length() && room < step) {
    return "under " + formatLength(step, units);
  }
  Length shown = roundToMark(room, units);
  if (shown > room) {
    shown -= step;
  }
  return formatLength(shown, units);
}

std::string nearSidePhrase(const PlacementPlan& plan) {
  const Quarter turn = nearestQuarter(plan.placed.panelTurn);
  if (!turn.exact) {
    return "nearest point of the design";
  }
  // Which side of the design faces the datum after so many quarter turns clockwise.
  static constexpr std::string_view kFacing[] = {"top", "left side", "bottom", "right side"};
  // From some marks one measures towards the datum: the side away from it is nearest.
  const int offset = leadsTowardsDatum(plan.placed.from) ? 2 : 0;
  return fmt::format("{} of the design", kFacing[(turn.count + offset) % 4]);
}

std::string centreLinePhrase(const PlacementPlan& plan) {
  if (isSleeve(plan.panel)) {
    return "the fold of the sleeve";
  }
  const PanelShape* panel = plan.garment ? plan.garment->panel(plan.panel) : nullptr;
  // A zip cannot be pressed into a crease, but its middle can be felt.
  const bool zip =
      panel != nullptr && std::any_of(panel->keepOuts.begin(), panel->keepOuts.end(),
                                      [](const KeepOut& k) { return k.name == KeepOutName::Zip; });
  return zip ? "the middle of the zip" : "the centre crease";
}

std::string landmarkPhrase(Landmark from) {
  switch (from) {
    case Landmark::CollarSeam:
      return "below the collar seam";
    case Landmark::ShoulderPoint:
      return "below the high point of the shoulder";
    case Landmark::FaceEdge:
      return "from the face edge";
    case Landmark::CuffEdge:
      return "above the cuff edge";
    case Landmark::CuffSeam:
      return "above the cuff seam";
    case Landmark::ShoulderSeam:
      return "below the shoulder seam";
    case Landmark::PlacketEnd:
      return "below the end of the placket";
    case Landmark::HemEdge:
      return "above the hem edge";
    case Landmark::YokeSeam:
      return "below the yoke seam";
    case Landmark::TopEdge:
      return "below the top edge";
    case Landmark::PieceMiddle:
      return "below the middle of the piece";
    case Landmark::BorderTop:
      return "above the border";
    case Landmark::BorderMiddle:
      return "above the middle of the border";
    case Landmark::WaistSeam:
      return "below the waist seam";
    case Landmark::PocketTop:
      return "above the pocket's opening";
    case Landmark::PocketOpening:
      return "below the pocket's opening";
  }
  return {};
}

std::string sideOfPanel(PanelName panel, bool right) {
  switch (panel) {
    case PanelName::Front:
      return right ? "wearer's left" : "wearer's right";
    case PanelName::Back:
    case PanelName::Hood:
      return right ? "wearer's right" : "wearer's left";
    case PanelName::LeftSleeve:
      return right ? "front of the garment" : "back of the garment";
    case PanelName::RightSleeve:
      return right ? "back of the garment" : "front of the garment";
    case PanelName::Flat:
      return right ? "viewer's right" : "viewer's left";
    case PanelName::LeftLeg:
      return right ? "outer side" : "inner side";
    case PanelName::RightLeg:
      return right ? "inner side" : "outer side";
  }
  return {};
}

std::string lateralPhrase(const PlacementPlan& plan, const UnitChoice& units) {
  const Length lateral = plan.placed.lateral;
  if (roundToMark(lateral, units) == Length()) {
    return "on " + centreLinePhrase(plan);
  }
  const bool right = lateral > Length();
  const std::string side = sideOfPanel(plan.panel, right);
  if (isSleeve(plan.panel)) {
    return fmt::format("{} from {} towards the {}", formatLength(abs(lateral), units),
                       centreLinePhrase(plan), side);
  }
  return fmt::format("{} to the {} of {}{}", formatLength(abs(lateral), units), side,
                     centreLinePhrase(plan), viewerNote(plan.panel, right));
}

std::string turnPhrase(const PlacementPlan& plan) {
  const std::int32_t turn = plan.placed.turn.millidegrees();
  std::string text = "none";
  if (turn == 180'000) {
    text = "180° against upright as worn";
  } else if (turn != 0) {
    text = formatAngle(turn < 0 ? -plan.placed.turn : plan.placed.turn) +
           (turn > 0 ? " clockwise" : " anticlockwise");
  }
  return fmt::format("{}, top of the design {}", text,
                     facingPhrase(plan.panel, plan.placed.panelTurn));
}

std::string facingPhrase(PanelName panel, Angle direction) {
  const Quarter quarter = nearestQuarter(direction);
  return fmt::format("{}towards {}", quarter.exact ? "" : "mostly ",
                     towardsPhrase(panel, quarter.count));
}

std::string datumPhrase(PanelName panel) {
  return towardsPhrase(panel, 0);
}

std::string sidePhrase(const Location& location) {
  std::string panel = panelPhrase(location.panel);
  if (isSleeve(location.panel)) {
    return panel;
  }
  if (isLeg(location.panel)) {
    return fmt::format("{} (viewer's {})", panel, nameOf(location.viewerSide));
  }
  if (location.wearerSide == Side::Centre) {
    return panel + ", centre";
  }
  if (location.panel == PanelName::Flat) {  // nobody wears it
    return fmt::format("{}, viewer's {}", panel, nameOf(location.viewerSide));
  }
  return fmt::format("{}, wearer's {} (viewer's {})", panel, nameOf(location.wearerSide),
                     nameOf(location.viewerSide));
}

std::string slackPhrase(const Slack& slack, const UnitChoice& units) {
  return fmt::format("left {}, right {}, up {}, down {}, turned {}{}",
                     roomPhrase(slack.left, units), roomPhrase(slack.right, units),
                     roomPhrase(slack.up, units), roomPhrase(slack.down, units),
                     angleRoundedDown(slack.turn),
                     slack.turn >= FrameOpening::kLargestTurnSlack ? " or more" : "");
}

std::string backingPhrase(const BackingChoice& backing, const UnitChoice& units) {
  return fmt::format("{}, at least {}, {} {}, {}", nameOf(backing.kind),
                     formatArealWeight(backing.leastWeight, units), backing.layers,
                     backing.layers == 1 ? "layer" : "layers", nameOf(backing.hold));
}

std::string needlePhrase(const BackingChoice& backing) {
  return fmt::format("{} {} point", backing.needleSize, spaced(nameOf(backing.needlePoint)));
}

std::string framePhrase(const Frame& frame, const FrameChoice& choice, const UnitChoice& units) {
  std::string text = fmt::format("{} ({} window)", frame.name,
                                 sizePhrase(frame.window.width(), frame.window.height(), units));
  if (choice.turn != Angle()) {
    text += fmt::format(", turned {} on the garment", formatAngle(choice.turn));
  }
  return text;
}

std::string measurePhrase(Measure measure) {
  return spaced(nameOf(measure));
}

std::string panelPhrase(PanelName panel) {
  return spaced(nameOf(panel));
}

std::string edgePhrase(EdgeName edge) {
  return spaced(nameOf(edge));
}

std::string keepOutPhrase(KeepOutName name) {
  return spaced(nameOf(name));
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
      parts.push_back(fmt::format("{} to {}", chart.sizes[first].name.text(),
                                  chart.sizes[end - 1].name.text()));
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
