// SPDX-License-Identifier: MIT
// The fewest of what serves all: sets that cover elements, points that pierce intervals.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace creaseline {

struct SetCover {
  std::vector<std::size_t> chosen;  // indices of sets, ascending
  std::size_t atLeast = 0;          // no cover has fewer
  [[nodiscard]] bool proved() const { return chosen.size() == atLeast; }
};

// The fewest sets that hold every element between them. `servedBy[e]` lists the sets that hold
// element e. Between equal covers the earlier sets are preferred, though not strictly. Nothing if
// an element is in no set. Exact by branch and bound on the element with the fewest sets; after
// `mostSteps` branches the best cover so far comes back, with the bound of elements of which no two
// share a set.
[[nodiscard]] std::optional<SetCover> fewestSets(
    const std::vector<std::vector<std::size_t>>& servedBy, std::size_t mostSteps = 200'000);

// A closed interval of whole numbers.
struct WholeInterval {
  int low = 0, high = 0;
};
// The fewest numbers such that every interval holds one, ascending; each as large as it may be.
// Taking the least upper end of what is left is optimal (the stabbing problem; see for example
// "interval scheduling" in any text on greedy algorithms).
[[nodiscard]] std::vector<int> fewestPoints(std::vector<WholeInterval> intervals);

}  // namespace creaseline
