// SPDX-License-Identifier: MIT
// Reads the rules of the trade, shipped or a shop's own.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/catalogue/rules.h"

namespace creaseline {

// The kind or location of that name; the message lists those that exist.
[[nodiscard]] const GarmentKind& knownKind(const JsonCursor& at, const Rules& rules);
[[nodiscard]] const Location& knownLocation(const JsonCursor& at, const Rules& rules);

// One garment kind: the whole of a kind file, its head checked already.
[[nodiscard]] GarmentKind readKind(JsonObject& top);

// A list of placement rules with distinct ids; kinds and locations must be in `rules`. `house`
// marks them as a shop's own.
[[nodiscard]] std::vector<PlacementRule> readPlacementRules(const JsonCursor& at,
                                                            const Rules& rules, bool house);
[[nodiscard]] std::vector<BackingRule> readBackingRules(const JsonCursor& at);

}  // namespace creaseline
