// SPDX-License-Identifier: MIT
// When two placements share backing, topping and needle.
#pragma once

#include "creaseline/planning/plan.h"

namespace creaseline {

// All that is asked of backing, its cut size and stock, topping and needle are equal; the reasons
// may differ.
bool sameBacking(const BackingChoice& a, const BackingChoice& b);

}  // namespace creaseline
