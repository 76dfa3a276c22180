// SPDX-License-Identifier: MIT
// Merging of an order that two people changed at the same time.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "creaseline/catalogue/order.h"

namespace creaseline {

enum class MergeSide { Mine, Theirs };

// Both changed the same thing, and differently.
struct MergeConflict {
  std::string place;   // what it is, "line 2, size M"; distinct, and the key of a choice
  std::string mine;    // in words, fit to be shown beside each other: "3", "taken out"
  std::string theirs;  // likewise
  bool operator==(const MergeConflict&) const = default;
};

struct OrderMerge {
  Order order;  // with the chosen side where there is a conflict, mine where none was chosen
  std::vector<MergeConflict> conflicts;
  // What fits on neither side alone and must be mended by hand, a sentence each: a size ordered
  // here that the changed chart there does not have.
  std::vector<std::string> toMend;
};

// What either side changed against `base` is taken. Lines are told apart by their ids, sizes by
// their names, placements by their location, blanks and designs by their ids; within a line and a
// placement each field is merged on its own, a blank or a design as a whole. A blank or design
// that is still needed is not lost because the other side took it out. The lists keep the order
// that mine has, or theirs where mine is as it was.
//
// `choices` decides conflicts, by their place.
[[nodiscard]] OrderMerge mergeOrders(const Order& base, const Order& mine, const Order& theirs,
                                     const std::map<std::string, MergeSide>& choices = {});

}  // namespace creaseline
