// SPDX-License-Identifier: MIT
// Names of threads that cannot be mistaken for one another within an order.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "creaseline/planning/plan.h"

namespace creaseline {

class ThreadNames {
 public:
  explicit ThreadNames(const Plan& plan);

  // "navy", or "navy (#1f2a44)" where the order has another navy as well. Empty for a block without
  // a thread.
  [[nodiscard]] std::string of(const ThreadBlock& block) const;

 private:
  std::map<std::string, std::vector<Colour>> colours_;
};

}  // namespace creaseline
