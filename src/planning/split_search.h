// SPDX-License-Identifier: MIT
// Where to cut a design that is larger than every frame: the fewest parts, then the least sewing
// crossed. Knows no frames: it asks whether a part can be sewn. All in the design's coordinates.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "creaseline/shape/cut.h"
#include "creaseline/shape/outline.h"

namespace creaseline {

// Millimetres.
struct SplitFigures {
  double overlap = 0.0;        // of two parts where their cut crosses sewing, both sides together
  double markHalf = 0.0;       // half the extent of a register mark
  double markClearance = 0.0;  // between a mark and any sewing
  double marksApart = 0.0;     // least distance of the two marks of a cut
  int mostParts = 2;
  int mostQuestions = 4000;  // after which the search gives up
};

// A cut and the marks on it that both neighbours share.
struct Cut {
  CutDirection direction{};
  double at = 0.0;
  double crossed = 0.0;  // length of sewing that it crosses
  std::vector<Point> marks;
};

// One part: what lies between its cuts, let out by half the overlap at each that crosses sewing.
struct SplitPart {
  Box section;
  std::vector<Point> marks;  // of its cuts
};

struct Split {
  CutDirection direction{};      // of all cuts
  std::vector<Cut> cuts;         // in order; part i lies before cut i
  std::vector<SplitPart> parts;  // one more than cuts
  [[nodiscard]] double crossed() const;
};

// Whether a part can be sewn in one hooping: its sewing (never empty) and the marks that the frame
// must reach with it.
using PartFits = std::function<bool(const Outline& sewing, const std::vector<Point>& marks)>;

struct SplitSearch {
  std::optional<Split> split;
  bool gaveUp = false;  // the questions ran out: there may be a split all the same
  int questions = 0;    // asked of `fits`
};

// All ways to cut the design by parallel lines at the places where they cross least, and at equal
// distances where such places are too far apart, with every pair of marks that the sewing leaves
// room for. Of these the fewest parts win, then the least crossed length, then the most equal
// parts (shortest path over the cuts: each part's cost depends on its two cuts alone).
[[nodiscard]] SplitSearch findSplit(const Outline& outline, const SplitFigures& figures,
                                    const PartFits& fits);

}  // namespace creaseline
