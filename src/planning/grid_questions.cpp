// SPDX-License-Identifier: MIT
#include "planning/grid_questions.h"

#include <algorithm>

namespace creaseline {
namespace {

bool allAmong(const std::vector<Point>& some, const std::vector<Point>& all) {
  return std::all_of(some.begin(), some.end(), [&all](Point point) {
    return std::find(all.begin(), all.end(), point) != all.end();
  });
}

// Sewing where there is none, for a question about marks alone: what holds both marks holds this.
Outline speckBetween(const MarkPair& pair) {
  constexpr double kHalf = 0.01;
  const Point middle = (pair[0] + pair[1]) * 0.5;
  return {{{{middle + Point{-kHalf, -kHalf}, middle + Point{kHalf, -kHalf},
             middle + Point{kHalf, kHalf}, middle + Point{-kHalf, kHalf}},
            {}}}};
}

}  // namespace

bool liesIn(const Box& inner, const Box& outer) {
  return inner.min.x >= outer.min.x && inner.min.y >= outer.min.y && inner.max.x <= outer.max.x &&
         inner.max.y <= outer.max.y;
}

std::vector<Point> GridPart::marks() const {
  std::vector<Point> all;
  for (const MarkPair& pair : pairs) {
    all.insert(all.end(), pair.begin(), pair.end());
  }
  return all;
}

bool GridQuestions::refused(const GridPart& part) const {
  const std::vector<Point> marks = part.marks();
  if (!figures_.mayHold(withMarks(part.sewn, marks, figures_))) {
    return true;
  }
  return std::any_of(refused_.begin(), refused_.end(), [&](const Answer& answer) {
    return liesIn(answer.section, part.section) && allAmong(answer.marks, marks);
  });
}

bool GridQuestions::asked(const Outline& sewing, const GridPart& part) {
  const std::vector<Point> marks = part.marks();
  const bool known = std::any_of(granted_.begin(), granted_.end(), [&](const Answer& answer) {
    return answer.section == part.section && answer.marks == marks;
  });
  if (known || refused(part)) {
    return known;
  }
  if (count_ >= figures_.mostGridQuestions) {
    ranOut_ = true;
    return false;
  }
  ++count_;
  const bool answer = fits_(sewing, marks);
  (answer ? granted_ : refused_).push_back({part.section, marks});
  return answer;
}

bool GridQuestions::fits(const Outline& sewing, const GridPart& part) {
  const bool answer = asked(sewing, part);
  if (!answer && !ranOut_) {
    learn(sewing, part);
  }
  return answer;
}

void GridQuestions::learn(const Outline& sewing, const GridPart& part) {
  const bool bareGranted = std::any_of(granted_.begin(), granted_.end(), [&](const Answer& answer) {
    return liesIn(part.section, answer.section);
  });
  if (part.pairs.empty() || (!bareGranted && !asked(sewing, {part.section, {}, part.sewn}))) {
    return;
  }
  bool markAtFault = false;
  for (const MarkPair& pair : part.pairs) {
    markAtFault |= !asked(speckBetween(pair), {{}, {pair}, {}});
  }
  if (!markAtFault && part.pairs.size() > 1) {
    for (const MarkPair& pair : part.pairs) {
      asked(sewing, {part.section, {pair}, part.sewn});
    }
  }
}

}  // namespace creaseline
