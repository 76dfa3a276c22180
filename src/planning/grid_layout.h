// SPDX-License-Identifier: MIT
// The parts of a grid whose cuts are chosen: their sections, the order of sewing, and where they
// meet.
#pragma once

#include <vector>

#include "planning/grid_questions.h"
#include "planning/split_search.h"

namespace creaseline {

struct GridLayout {
  CutDirection direction{};              // of the first cuts
  std::vector<Cut> firstCuts;            // in order
  std::vector<std::vector<Cut>> across;  // of each strip, in order; one strip more than first cuts
};

// Strip after strip is sewn; in each first the part that is tied to the strip before, then those on
// from it, then those back from it. Marks are set as far apart as the frames still allow, since
// that turns a part least.
[[nodiscard]] Split splitOf(const Outline& outline, const GridLayout& grid,
                            const SplitFigures& figures, GridQuestions& questions);

}  // namespace creaseline
