// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "planning/observation.h"

namespace creaseline {

// What there is to say about one hooping: its frame, or that there is none, backing, needle and
// topping. `notSplit` says why a design without a frame is not sewn in several hoopings either;
// empty if that was not asked for.
std::vector<Observation> observeHooping(const PlacementRequest& request, const PlacementPlan& plan,
                                        const std::string& notSplit, const Workshop& workshop);

}  // namespace creaseline
