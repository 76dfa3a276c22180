// SPDX-License-Identifier: MIT
// The fewest sizes of a design that serve all lines of an order that sew it.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "planning/questions.h"

namespace creaseline {

// A design that several lines sew at the same width.
struct SharedDesign {
  std::vector<std::size_t> questions;  // indices into Questions::asked
  std::optional<Finding> finding;      // about its sizes
};

// Those of an order. A design is the same under another id if all else of it is: what it is called
// and how large, its stitches, pieces, letters and outline.
std::vector<SharedDesign> sharedDesigns(const Questions& questions, const Order& order,
                                        const OrderIndex& index);

// Every size that a design is made in costs money once, whichever lines are sewn with it. Where the
// lines together need fewer than the different sizes that each needs for itself: who gets which,
// offered if every line so planned is without a stop. Nothing otherwise. The questions must have
// been answered.
std::optional<Finding> fewestSizesOfLines(const SharedDesign& design, const Questions& questions,
                                          const Order& order, const Workshop& workshop);

// Puts a finding about all lines in the place of those about each.
void replaceByWholeOrder(std::vector<Finding>& findings, SharedDesign& design,
                         const Questions& questions);

}  // namespace creaseline
