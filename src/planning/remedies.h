// SPDX-License-Identifier: MIT
// Remedies: changes that are tried by planning with them, and offered only if they work.
#pragma once

#include <vector>

#include "creaseline/planning/finding.h"
#include "planning/observation.h"

namespace creaseline {

// The sizes of one line and location to which a finding applies, worst first, and what else the
// line has.
struct Case {
  Severity severity{};
  FindingCode code{};
  std::string subject;
  std::vector<PlacementRequest> requests;
  bool allSizes = true;  // of the line
};

// Least change first; at most three. A remedy works if, planned with it, every size of the case
// is without this observation and without any stop.
std::vector<Remedy> findRemedies(const Case& problem, const Workshop& workshop);

// The largest whole percentage below 100 at which every size of the case works; 0 if none down
// to 30 % does.
int workingPercent(const Case& problem, const Workshop& workshop);

}  // namespace creaseline
