// SPDX-License-Identifier: MIT
// The fewest frames in which a whole order can be sewn as well as it is planned.
#pragma once

#include <functional>
#include <optional>

#include "creaseline/planning/finding.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

// A frame serves a hooping as well as the one that is planned if it bears the shop's hooping error
// or the planned one does not and leaves no more room. Where fewer frames than planned serve every
// hooping, a note with the remedy of naming them in the order: offered if the order so planned, by
// `plan`, has no stop and no watch that it has not now. Nothing otherwise.
//
// A frame is free again after each garment, so one of each sews any number. A second one alike is
// what lets the next garment be hooped while the machine sews: first come the fewest frames that
// leave every hooping that can be made ready ahead as planned so, then fewer that do not.
std::optional<Finding> fewestFrames(const Order& order, const Shop& shop, const Plan& planned,
                                    const std::function<Plan(const Order&)>& plan);

}  // namespace creaseline
