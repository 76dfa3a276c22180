// SPDX-License-Identifier: MIT
// What a search for grids has asked about its parts, and what follows from the answers.
#pragma once

#include <vector>

#include "planning/split_candidates.h"
#include "planning/split_search.h"

namespace creaseline {

// A part as it is asked about: what lies in a section, and pairs of marks.
struct GridPart {
  Box section;
  std::vector<MarkPair> pairs;
  Box sewn;  // no more than the bounds of its sewing
  [[nodiscard]] std::vector<Point> marks() const;
};

// An empty box lies in every other.
[[nodiscard]] bool liesIn(const Box& inner, const Box& outer);

class GridQuestions {
 public:
  GridQuestions(const PartFits& fits, const SplitFigures& figures)
      : fits_(fits), figures_(figures) {}

  // Whether the part can be sewn; no once the questions have run out. `sewing` is what lies in its
  // section, never empty. After a no the part's section and marks are asked about alone, so that
  // the least that is at fault is known.
  bool fits(const Outline& sewing, const GridPart& part);
  // Asks about the part and no more.
  bool asked(const Outline& sewing, const GridPart& part);

  // Whether it reaches further than any frame, or holds as much as something that cannot be sewn.
  [[nodiscard]] bool refused(const GridPart& part) const;

  [[nodiscard]] bool ranOut() const { return ranOut_; }
  [[nodiscard]] int count() const { return count_; }

 private:
  struct Answer {
    Box section;
    std::vector<Point> marks;
  };
  void learn(const Outline& sewing, const GridPart& part);

  const PartFits& fits_;
  const SplitFigures& figures_;
  int count_ = 0;
  bool ranOut_ = false;
  std::vector<Answer> refused_;
  std::vector<Answer> granted_;
};

}  // namespace creaseline
