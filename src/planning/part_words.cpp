// SPDX-License-Identifier: MIT
#include "creaseline/planning/part_words.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

// "register marks A and B"; empty where there are none.
template <class Wanted>
std::string marksPhrase(const DesignPart& part, Wanted wanted) {
  std::vector<std::string> names;
  for (const RegisterMark& mark : part.marks) {
    if (wanted(mark)) {
      names.push_back(mark.name);
    }
  }
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    text += i == 0 ? "register marks " : i + 1 == names.size() ? " and " : ", ";
    text += names[i];
  }
  return text;
}

std::string aligned(const DesignPart& part) {
  return marksPhrase(part,
                     [&part](const RegisterMark& mark) { return mark.alignedBy == part.number; });
}

std::string sewn(const DesignPart& part) {
  return marksPhrase(part,
                     [&part](const RegisterMark& mark) { return mark.sewnBy == part.number; });
}

// From the point to the line through both ends, at a right angle to it.
Point towardsLine(Point from, const PartJoin& join) {
  const Point along = join.to - join.from;
  const double share = dot(from - join.from, along) / dot(along, along);
  return join.from + along * share - from;
}

}  // namespace

std::string partPhrase(int number, int of) {
  return fmt::format("part {} of {}", number, of);
}

std::string partSuffix(const PlacementPlan& plan) {
  return plan.part ? ", " + partPhrase(plan.part->number, plan.part->of) : std::string();
}

std::string alignedMarksPhrase(const DesignPart& part) {
  const std::string marks = aligned(part);
  return marks.empty() ? marks : fmt::format("{} of part {}", marks, part.number - 1);
}

std::string sewnMarksPhrase(const DesignPart& part) {
  const std::string marks = sewn(part);
  return marks.empty() ? marks : fmt::format("{} for part {}", marks, part.number + 1);
}

std::string joinPhrase(const PlacementPlan& plan, const PartJoin& join, const UnitChoice& units) {
  const Point way = towardsLine(plan.placed.centre, join);
  // 0 is towards the datum, that is up (-y); clockwise to the viewer.
  const double degrees = std::atan2(way.x, -way.y) * 180.0 / std::numbers::pi;
  std::string text = fmt::format("the join with part {} lies {} from this part's centre, {}",
                                 join.neighbour, formatLength(Length::fromMm(norm(way)), units),
                                 facingPhrase(plan.panel, Angle::fromDegrees(degrees)));
  if (join.overlap > Length()) {
    text += fmt::format("; the parts overlap there by {}", exactText(join.overlap));
  }
  return text;
}

std::string markPhrase(const PlacementPlan& plan, const RegisterMark& mark) {
  const Point at = turned(mark.at - plan.placed.centre, -plan.placed.panelTurn);
  return fmt::format(
      "{:.1f} mm {} of and {:.1f} mm {} this part's centre, as the design reads; sewn "
      "by part {}",
      std::abs(at.x), at.x < 0.0 ? "left" : "right", std::abs(at.y), at.y < 0.0 ? "above" : "below",
      mark.sewnBy);
}

std::string alignStep(const DesignPart& part) {
  const std::string marks = alignedMarksPhrase(part);
  return marks.empty() ? marks
                       : fmt::format(
                             "Needle up, go to {}: move and turn the design until the "
                             "needle stands over both",
                             marks);
}

std::string sewMarksStep(const DesignPart& part) {
  const std::string marks = sewnMarksPhrase(part);
  return marks.empty() ? marks : "Sew " + marks;
}

std::string pickOutStep(const DesignPart& part) {
  const std::string marks = aligned(part);
  return marks.empty() ? marks : fmt::format("Check the join, then pick out {}", marks);
}

}  // namespace creaseline
