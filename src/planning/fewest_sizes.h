// SPDX-License-Identifier: MIT
// The fewest sizes of a design that serve the garment sizes of a line.
#pragma once

#include <optional>
#include <vector>

#include "creaseline/planning/finding.h"
#include "planning/findings.h"

namespace creaseline {

// Where some sizes stop as asked and would not at a smaller scale: which sizes of the design serve
// which garments. A garment is served by any scale between the largest that plans without a stop
// and the shipped least share of it, and no narrower than its rule says. Nothing where one scale
// serves all or none does.
std::optional<Finding> fewestDesignSizes(const std::vector<Observed>& sizes,
                                         const Workshop& workshop);

}  // namespace creaseline
