// SPDX-License-Identifier: MIT
// Finding things in a shop.
#include "creaseline/catalogue/shop.h"

#include <algorithm>

namespace creaseline {

const Frame* Shop::frame(const FrameId& id) const {
  const auto found =
      std::find_if(frames.begin(), frames.end(), [&](const Frame& each) { return each.id == id; });
  return found == frames.end() ? nullptr : &*found;
}

}  // namespace creaseline
