// SPDX-License-Identifier: MIT
// Remedies that are not changes of the order: what is to be bought, stocked, measured or made anew.
#pragma once

#include <optional>

#include "planning/remedy_trial.h"

namespace creaseline {

// Each nothing where it does not help. The case has at least one request.

// A frame that is not on hand, just large enough.
std::optional<Remedy> buyFrame(const Case& problem, const Workshop& workshop);
// A frame that is not on hand, large enough for the design and yet so small that it can sit on the
// garment: with the widest rim, down to the narrowest sold, with which it does.
std::optional<Remedy> buyNarrowerFrame(const Case& problem, const Workshop& workshop);
// For a note or a watch that the plan has already answered by its own choice.
std::optional<Remedy> leaveAsPlanned(const Case& problem, const Workshop& workshop);
// Backing, needles or topping that are not in stock.
std::optional<Remedy> stockUp(const Case& problem, const Workshop& workshop);
// The measures that the size chart lacks.
std::optional<Remedy> measureGarments(const Case& problem, const Workshop& workshop);
// A design with as many stitches as the cloth bears.
std::optional<Remedy> fewerStitches(const Case& problem, const Workshop& workshop);

}  // namespace creaseline
