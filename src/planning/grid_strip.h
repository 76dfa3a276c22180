// SPDX-License-Identifier: MIT
// One strip of a grid, between two first cuts: where to cut it across.
#pragma once

#include <optional>
#include <vector>

#include "planning/grid_questions.h"
#include "planning/split_candidates.h"
#include "planning/split_search.h"

namespace creaseline {

// A cut across a strip, or its end, which has neither sewing to cross nor marks.
struct StripCut : Cut {
  bool end = false;
  double reach = 0.0;     // of its marks beside it
  std::size_t place = 0;  // of the strip's places
};

// Cuts across a strip, its ends first and last.
struct StripChoice {
  CutCost cost;
  std::vector<StripCut> cuts;
};

class GridStrip {
 public:
  // The first cuts on either side, or the design's ends, which have no marks.
  struct Sides {
    Cut from, to;
    bool fromEnd = false, toEnd = false;
  };
  GridStrip(const Outline& outline, const Sides& sides, const SplitFigures& figures);

  [[nodiscard]] bool empty() const { return sewing_.empty(); }
  // There is no sewing in a section: no choice is to have such a part.
  void leaveOut(const Box& section) { leftOut_.push_back(section); }
  // Finds where marks may lie on its cuts. Without it cuts are chosen as if marks were no matter,
  // which costs no more than any choice with marks, and is known sooner.
  void setMarks();

  // The best choice of so many parts of which none has been refused. `carried` are the marks of
  // the cuts on either side: each pair goes with the part in which its middle lies, and no mark of
  // the strip comes near it.
  [[nodiscard]] std::optional<StripChoice> best(int parts, const std::vector<MarkPair>& carried,
                                                const GridQuestions& questions) const;
  // The same without any marks.
  [[nodiscard]] std::optional<StripChoice> bareBest(int parts,
                                                    const GridQuestions& questions) const;

  // Whether the part holds nothing, or as much as something that cannot be sewn.
  [[nodiscard]] bool ruledOut(const GridPart& part, const GridQuestions& questions) const;

  [[nodiscard]] GridPart part(const StripCut& from, const StripCut& to,
                              const std::vector<MarkPair>& carried) const;
  [[nodiscard]] Outline sewingIn(const Box& section) const { return clipped(sewing_, section); }

 private:
  [[nodiscard]] std::optional<StripChoice> bestOf(const std::vector<StripCut>& cuts, int parts,
                                                  const std::vector<MarkPair>& carried,
                                                  const GridQuestions& questions) const;
  [[nodiscard]] bool mayBePart(const StripCut& from, const StripCut& to) const;
  [[nodiscard]] bool tooLarge(const StripCut& from, const StripCut& to) const;

  void addCut(const StripCut& place, MarkPair marks);

  CutDirection first_;
  CutDirection second_;
  const Outline& outline_;
  const SplitFigures& figures_;
  Region::Interval across_;
  Box section_;
  Outline sewing_;
  MarkRange range_;
  CutEnds ends_;
  SewnBetween sewn_;              // between places
  std::vector<StripCut> places_;  // by their coordinate, the ends included
  std::vector<StripCut> cuts_;    // the same with each pair of marks; empty before setMarks()
  std::vector<Box> leftOut_;
};

// The other way.
[[nodiscard]] CutDirection otherWay(CutDirection direction);

// Where marks may lie on a cut that runs from one end to the other of the extent given; at an end
// of the design they may lie beyond it.
[[nodiscard]] MarkRange markRange(Region::Interval extent, bool lowEnd, bool highEnd,
                                  const SplitFigures& figures);

}  // namespace creaseline
