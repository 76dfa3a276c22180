// SPDX-License-Identifier: MIT
#include "creaseline/planning/part_words.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>
#include <string_view>

#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

// Marks with the part that sews them, or that is aligned on them.
struct SharedMarks {
  int with = 0;
  std::vector<std::string> names;
};

// By the other part, in order.
std::vector<SharedMarks> sharedMarks(const DesignPart& part, int RegisterMark::*own,
                                     int RegisterMark::*other) {
  std::vector<SharedMarks> shared;
  for (const RegisterMark& mark : part.marks) {
    if (mark.*own != part.number) {
      continue;
    }
    if (shared.empty() || shared.back().with != mark.*other) {
      shared.push_back({mark.*other, {}});
    }
    shared.back().names.push_back(mark.name);
  }
  return shared;
}

std::vector<SharedMarks> aligned(const DesignPart& part) {
  return sharedMarks(part, &RegisterMark::alignedBy, &RegisterMark::sewnBy);
}

std::vector<SharedMarks> sewn(const DesignPart& part) {
  return sharedMarks(part, &RegisterMark::sewnBy, &RegisterMark::alignedBy);
}

// "A and B"
std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    text += i == 0 ? "" : i + 1 == names.size() ? " and " : ", ";
    text += names[i];
  }
  return text;
}

// "register marks A and B for part 2, C and D for part 3"; empty where there are none.
std::string marksPhrase(const std::vector<SharedMarks>& shared, std::string_view link) {
  std::string text;
  for (const SharedMarks& marks : shared) {
    text += fmt::format("{} {} {} part {}", text.empty() ? "register marks" : ",",
                        listed(marks.names), link, marks.with);
  }
  return text;
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

std::string cellPhrase(const GridCell& cell) {
  return cell.firstCuts == CutDirection::Upright
             ? fmt::format("column {}, row {}", cell.strip, cell.place)
             : fmt::format("row {}, column {}", cell.strip, cell.place);
}

std::string partSuffix(const PlacementPlan& plan) {
  if (!plan.part) {
    return {};
  }
  const std::string which = ", " + partPhrase(plan.part->number, plan.part->of);
  return plan.part->cell ? fmt::format("{} ({})", which, cellPhrase(*plan.part->cell)) : which;
}

std::string alignedMarksPhrase(const DesignPart& part) {
  return marksPhrase(aligned(part), "of");
}

std::string sewnMarksPhrase(const DesignPart& part) {
  return marksPhrase(sewn(part), "for");
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
  std::vector<std::string> names;
  for (const SharedMarks& marks : aligned(part)) {
    names.insert(names.end(), marks.names.begin(), marks.names.end());
  }
  return names.empty()
             ? std::string()
             : fmt::format("Check the join, then pick out register marks {}", listed(names));
}

}  // namespace creaseline
