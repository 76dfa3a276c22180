// SPDX-License-Identifier: MIT
// How far the sewn design may be off when the errors of the steps before it add up.
#pragma once

#include <vector>

#include "creaseline/planning/reason.h"
#include "creaseline/shape/fit.h"
#include "planning/workshop.h"

namespace creaseline {

// Independent errors of one direction, each up to its figure either way: all at their worst on one
// side, and the root of the sum of their squares, which is what is usual (the rule of propagation
// for uncorrelated quantities: JCGM 100:2008, 5.1.2).
struct StackUp {
  Length worst;
  Length rootSumSquare;
  bool operator==(const StackUp&) const = default;
};
StackUp stackUp(const std::vector<Length>& errors);

// One reason for sideways (crease, ruler, hooping, give of the cloth), one for along (no crease),
// each with what the machine can still take back by `slack`.
Reasons stackUpReasons(const Workshop& workshop, const Slack& slack);

}  // namespace creaseline
