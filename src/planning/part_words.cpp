// SPDX-License-Identifier: MIT
#include "creaseline/planning/part_words.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>
#include <string_view>

#include "base/worded.h"
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
  if (names.empty()) {
    return {};
  }
  const std::string most = fmt::format("{}", fmt::join(names.begin(), names.end() - 1, ", "));
  return most.empty() ? names.back() : bothPhrase(most, names.back());
}

// "register marks A and B for part 2, C and D for part 3"; empty where there are none. `sayOne`
// makes "A and B for part 2".
template <class SayOne>
std::string marksPhrase(const std::vector<SharedMarks>& shared, SayOne sayOne) {
  std::vector<std::string> each;
  for (const SharedMarks& marks : shared) {
    each.push_back(sayOne(listed(marks.names), marks.with));
  }
  return each.empty() ? std::string() : worded("register marks {}", fmt::join(each, ", "));
}

// From the point to the line through both ends, at a right angle to it.
Point towardsLine(Point from, const PartJoin& join) {
  const Point along = join.to - join.from;
  const double share = dot(from - join.from, along) / dot(along, along);
  return join.from + along * share - from;
}

}  // namespace

std::string partPhrase(int number, int of) {
  return worded("part {} of {}", number, of);
}

std::string cellPhrase(const GridCell& cell) {
  return cell.firstCuts == CutDirection::Upright
             ? worded("column {}, row {}", cell.strip, cell.place)
             : worded("row {}, column {}", cell.strip, cell.place);
}

std::string partSuffix(const PlacementPlan& plan) {
  if (!plan.part) {
    return {};
  }
  const std::string which = ", " + partPhrase(plan.part->number, plan.part->of);
  return plan.part->cell ? fmt::format("{} ({})", which, cellPhrase(*plan.part->cell)) : which;
}

// Programs that draw designs count millimetres, whatever the ruler.
std::string designLength(Length length, const UnitChoice& units) {
  const UnitChoice fine = fineUnits(units);
  return units.length == LengthUnit::Inch
             ? worded("{} ({:.1f} mm)", formatLength(length, fine), length.mm())
             : formatLength(length, fine);
}

std::string alignedMarksPhrase(const DesignPart& part) {
  return marksPhrase(aligned(part), [](const std::string& names, int with) {
    return worded("{} of part {}", names, with);
  });
}

std::string sewnMarksPhrase(const DesignPart& part) {
  return marksPhrase(sewn(part), [](const std::string& names, int with) {
    return worded("{} for part {}", names, with);
  });
}

std::string joinPhrase(const PlacementPlan& plan, const PartJoin& join, const UnitChoice& units) {
  const Point way = towardsLine(plan.placed.centre, join);
  // 0 is towards the datum, that is up (-y); clockwise to the viewer.
  const double degrees = std::atan2(way.x, -way.y) * 180.0 / std::numbers::pi;
  std::string text = worded("the join with part {} lies {} from this part's centre, {}",
                            join.neighbour, formatLength(Length::fromMm(norm(way)), units),
                            facingPhrase(plan, Angle::fromDegrees(degrees)));
  if (join.overlap > Length()) {
    return worded("{}; the parts overlap there by {}", text,
                  formatLength(join.overlap, fineUnits(units)));
  }
  return text;
}

std::string markPhrase(const PlacementPlan& plan, const RegisterMark& mark,
                       const UnitChoice& units) {
  const Point at = turned(mark.at - plan.placed.centre, -plan.placed.panelTurn);
  const std::string across = designLength(Length::fromMm(std::abs(at.x)), units);
  const std::string along = designLength(Length::fromMm(std::abs(at.y)), units);
  return worded("{} and {} this part's centre, as the design reads; sewn by part {}",
                at.x < 0.0 ? worded("{} left of", across) : worded("{} right of", across),
                at.y < 0.0 ? worded("{} above", along) : worded("{} below", along), mark.sewnBy);
}

std::string alignStep(const DesignPart& part) {
  const std::string marks = alignedMarksPhrase(part);
  return marks.empty() ? marks
                       : worded(
                             "Needle up, go to {}: move and turn the design until the "
                             "needle stands over both",
                             marks);
}

std::string sewMarksStep(const DesignPart& part) {
  const std::string marks = sewnMarksPhrase(part);
  return marks.empty() ? marks : worded("Sew {}", marks);
}

std::string pickOutStep(const DesignPart& part) {
  std::vector<std::string> names;
  for (const SharedMarks& marks : aligned(part)) {
    names.insert(names.end(), marks.names.begin(), marks.names.end());
  }
  return names.empty() ? std::string()
                       : worded("Check the join, then pick out register marks {}", listed(names));
}

}  // namespace creaseline
