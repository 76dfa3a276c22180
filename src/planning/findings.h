// SPDX-License-Identifier: MIT
// Findings of one line and location: the observations of all its sizes gathered, with remedies.
#pragma once

#include <vector>

#include "creaseline/planning/finding.h"
#include "planning/observation.h"

namespace creaseline {

// One size with its answer and what was observed.
struct Observed {
  PlacementRequest request;
  std::vector<Observation> observations;
};

std::vector<Finding> gatherFindings(const std::vector<Observed>& sizes, const Workshop& workshop,
                                    bool checkRemedies);

// "line 3, pullover hoodie, centre chest, sizes YS YM"
std::string findingPlace(const OrderLine& line, const Blank& blank, const LocationId& at,
                         const std::vector<SizeName>& sizes, const Rules& rules);

// Stops first, then watches, then notes; within these by line, placement and code.
void sortFindings(std::vector<Finding>& findings);

}  // namespace creaseline
