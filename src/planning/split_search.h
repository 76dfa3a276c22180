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

// Width and height, along the design's axes, of what a frame could hold if nothing were in its way.
struct Extent {
  double width = 0.0, height = 0.0;
};

// Millimetres.
struct SplitFigures {
  double overlap = 0.0;        // of two parts where their cut crosses sewing, both sides together
  double markHalf = 0.0;       // half the extent of a register mark
  double markClearance = 0.0;  // between a mark and any sewing, and between two marks
  double marksApart = 0.0;     // least distance of the two marks of a cut
  int mostParts = 2;
  int mostQuestions = 4000;      // after which the search for parallel cuts gives up
  int mostGridQuestions = 4000;  // the same for grids, of which there are far more
  // Of every frame there is; none: not known. What reaches further than each of them is refused
  // without a question.
  std::vector<Extent> largest{};
  [[nodiscard]] bool mayHold(const Box& box) const;
  // Between the middles of marks on different cuts.
  [[nodiscard]] double marksClear() const { return 2.0 * markHalf + markClearance; }
};

// A cut and the marks that both neighbours share: on it, or beyond an end of it. In a grid the
// first cuts go through the whole design, the others from one first cut to the next.
struct Cut {
  CutDirection direction{};
  double at = 0.0;
  double crossed = 0.0;  // length of sewing that it crosses
  bool meets = false;    // parts overlap there: sewing is crossed, or pieces of it touch
  std::vector<Point> marks;
};

// Where two parts meet: the stretch of a cut that both share. Indices of parts; the first is sewn
// before the second.
struct Seam {
  std::size_t first = 0, second = 0;
  CutDirection direction{};
  double at = 0.0;
  Region::Interval along;
  double crossed = 0.0;      // on this stretch
  bool meets = false;        // on this stretch
  std::vector<Point> marks;  // on which the second is aligned; empty where another seam serves
  // The marks lie beyond the sewing at an end of the cut, one on either side of it.
  [[nodiscard]] bool marksBeside() const;
};

// One part: what lies between its cuts, let out by half the overlap at each where sewing meets.
struct SplitPart {
  Box section;
  std::vector<Point> marks;  // of its seams
  int strip = 1;             // between the first cuts, counted from the left or the top
  int place = 1;             // in the strip, counted likewise
};

struct Split {
  CutDirection direction{};      // of all cuts; in a grid of the first ones
  std::vector<Cut> cuts;         // parallel ones in order; part i lies before cut i
  std::vector<SplitPart> parts;  // in the order of sewing
  std::vector<Seam> seams;       // by their second part; each but the first part has one with marks
  bool bothWays = false;         // a grid
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
// parts (shortest path over the cuts: each part's cost depends on its two cuts alone). Where no
// parallel cuts do, a grid is looked for: grid_search.h.
[[nodiscard]] SplitSearch findSplit(const Outline& outline, const SplitFigures& figures,
                                    const PartFits& fits);

}  // namespace creaseline
