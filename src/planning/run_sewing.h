// SPDX-License-Identifier: MIT
// The sewing part of a run card: threads on their needles, steps, and how long it takes.
#pragma once

#include "creaseline/planning/run_card.h"
#include "planning/figures.h"
#include "planning/needles.h"
#include "planning/thread_names.h"

namespace creaseline {

// The thread of each block by its unmistakable name.
std::vector<std::string> blockThreads(const Design& design, const ThreadNames& names);

// Fills threads, set-up and steps of the card.
void addSewing(RunCard& card, const PlacementPlan& plan, const ThreadNames& names,
               const NeedleUse& use);

// Precondition: addSewing() has been done; card.garments and card.stitchesPerMinute are set.
RunTime runTime(const RunCard& card, const Design& design, const Defaults& defaults,
                const TimeFigures& figures);

}  // namespace creaseline
