// SPDX-License-Identifier: MIT
// The fewest sizes of a design that serve the garment sizes of a line.
#pragma once

#include <optional>
#include <vector>

#include "creaseline/planning/finding.h"
#include "planning/findings.h"
#include "planning/set_cover.h"

namespace creaseline {

// A garment size with the scales, in whole percent of what is asked, at which it can be sewn: from
// the largest that plans without a stop down to the shipped least share of it, and no narrower than
// its rule says.
struct ServedSize {
  PlacementRequest request;
  bool stops = false;     // as asked
  WholeInterval percent;  // {0, 0}: no scale serves
  [[nodiscard]] bool hopeless() const { return percent.high == 0; }
};

std::vector<ServedSize> servedSizes(const std::vector<Observed>& sizes, const Workshop& workshop);

// The fewest scales that serve all these garments but the hopeless, ascending, and of those that
// are made the one that a garment gets: the largest that serves it.
std::vector<int> fewestScales(const std::vector<ServedSize>& garments);
int scaleFor(const ServedSize& garment, const std::vector<int>& made);

// Where some sizes stop as asked and would not at a smaller scale: which sizes of the design serve
// which garments. Nothing where one scale serves all or none does.
std::optional<Finding> fewestDesignSizes(const std::vector<ServedSize>& sizes,
                                         const Workshop& workshop);

}  // namespace creaseline
