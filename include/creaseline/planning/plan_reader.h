// SPDX-License-Identifier: MIT
// A plan read back from the JSON that jsonReport() writes, equal to the one that was written: it
// gives the same sheets, the same text and the same JSON to the byte.
//
// All that planning decided is read. What is a pure function of that and of the catalogue, and
// would make the file ten times as long, is made again: the shape of the garment (from the order's
// blank and the size), the design as sewn (the order's design at the placement's scale, and its
// outline turned and moved to the centre that is read), and the room in a frame (from its window,
// the outline and the centres that are read).
#pragma once

#include <string>

#include "creaseline/planning/plan.h"

namespace creaseline {

// `order`, `shop` and `rules` must be those that the plan was made with, and `rules` must outlive
// the plan, whose cautions point into it. A plan that names something which they lack, or says of
// the order what the order does not say (the quantity of a size, the size of a design) or of a
// frame what its window does not give (the slack), is refused
// like one that is damaged: InputError with `file`, place, what was found and what is expected.
// Keys that the reader does not know are passed over.
[[nodiscard]] Plan readPlan(const std::string& text, const std::string& file, const Order& order,
                            const Shop& shop, const Rules& rules);

}  // namespace creaseline
