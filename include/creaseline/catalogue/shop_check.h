// SPDX-License-Identifier: MIT
// Whether a shop that is being edited could be read again once it is saved. It asks the reader
// itself, so that the two never differ.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/catalogue/load.h"
#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline {

// What would keep the shop from being read, as one sentence without a full stop that names the part
// of the shop as a person would ("window of frame \"Medium\": ...") and says lengths in `units`;
// nothing if it would do. The first that is wrong, where there are several.
[[nodiscard]] std::optional<std::string> shopProblem(const Shop& shop, const Rules& rules,
                                                     const UnitChoice& units);

// Part of a shop that a JSON pointer of its file leads to, in words: "window of frame \"Medium\"",
// "price of backing \"Cut-away\"", "rates". Empty for the shop as a whole.
[[nodiscard]] std::string shopPlaceWords(const Shop& shop, std::string_view pointer);

// The shop's rules for places that the order sews which name blanks that it lacks, or sizes that no
// size chart of theirs has: they would never be used, most likely for a slip in the name. In the
// order of the shop's rules.
struct IdleHouseRule {
  std::size_t rule = 0;  // into Shop::houseRules
  LoadNote note;         // names the rule; its file is empty
  bool operator==(const IdleHouseRule&) const = default;
};
[[nodiscard]] std::vector<IdleHouseRule> idleHouseRules(const Order& order, const Shop& shop);

}  // namespace creaseline
