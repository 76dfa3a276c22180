// SPDX-License-Identifier: MIT
// Remedies: changes that are tried by planning with them, and offered only if they work.
#pragma once

#include <vector>

#include "planning/remedy_trial.h"

namespace creaseline {

// The one that changes least first; at most five. A remedy works if, planned with it, every size of
// the case is without this observation and without any stop.
std::vector<Remedy> findRemedies(const Case& problem, const Workshop& workshop);

// Sorts by how far a remedy moves stitches, and what it asks of the shop besides, as the shipped
// figures weigh it. What goes to another part of the garment comes last.
void rankRemedies(std::vector<Remedy>& remedies, const RemedyFigures& figures);

}  // namespace creaseline
