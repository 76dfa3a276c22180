// SPDX-License-Identifier: MIT
#include "planning/thread_names.h"

#include <fmt/format.h>

#include <algorithm>

namespace creaseline {

ThreadNames::ThreadNames(const Plan& plan) {
  for (const PlacementPlan& placement : plan.placements) {
    for (const ThreadBlock& block : placement.design.blocks) {
      std::vector<Colour>& colours = colours_[block.thread];
      if (std::find(colours.begin(), colours.end(), block.colour) == colours.end()) {
        colours.push_back(block.colour);
      }
    }
  }
}

std::string ThreadNames::of(const ThreadBlock& block) const {
  const auto known = colours_.find(block.thread);
  const bool several = known != colours_.end() && known->second.size() > 1;
  return several && !block.thread.empty()
             ? fmt::format("{} ({})", block.thread, colourText(block.colour))
             : block.thread;
}

}  // namespace creaseline
