// SPDX-License-Identifier: MIT
// Finding kinds and locations among the rules.
#include "creaseline/catalogue/rules.h"

#include <algorithm>

namespace creaseline {

const GarmentKind* Rules::kind(const KindId& id) const {
  const auto found = std::find_if(kinds.begin(), kinds.end(),
                                  [&](const GarmentKind& each) { return each.id == id; });
  return found == kinds.end() ? nullptr : &*found;
}

const Location* Rules::location(const LocationId& id) const {
  const auto found = std::find_if(locations.begin(), locations.end(),
                                  [&](const Location& each) { return each.id == id; });
  return found == locations.end() ? nullptr : &*found;
}

}  // namespace creaseline
