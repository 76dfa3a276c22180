// SPDX-License-Identifier: MIT
#include "planning/set_cover.h"

#include <algorithm>
#include <cstdint>
#include <map>

namespace creaseline {
namespace {

using Sets = std::vector<std::size_t>;  // of one element, ascending

bool holdsAll(const Sets& larger, const Sets& smaller) {
  return std::includes(larger.begin(), larger.end(), smaller.begin(), smaller.end());
}

bool disjoint(const Sets& a, const Sets& b) {
  auto i = a.begin();
  auto j = b.begin();
  while (i != a.end() && j != b.end()) {
    if (*i == *j) {
      return false;
    }
    (*i < *j ? i : j)++;
  }
  return true;
}

// Each kind of element once, and none whose sets include all those of another: what covers the
// other covers it. Fewest sets first.
std::vector<Sets> hardElements(std::vector<Sets> elements) {
  for (Sets& sets : elements) {
    std::sort(sets.begin(), sets.end());
    sets.erase(std::unique(sets.begin(), sets.end()), sets.end());
  }
  std::sort(elements.begin(), elements.end(), [](const Sets& a, const Sets& b) {
    return a.size() != b.size() ? a.size() < b.size() : a < b;
  });
  std::vector<Sets> hard;
  for (Sets& sets : elements) {
    if (std::none_of(hard.begin(), hard.end(),
                     [&sets](const Sets& known) { return holdsAll(sets, known); })) {
      hard.push_back(std::move(sets));
    }
  }
  return hard;
}

class Search {
 public:
  Search(std::vector<Sets> elements, std::size_t mostSteps)
      : elements_(std::move(elements)), left_(mostSteps) {}

  SetCover run() {
    std::vector<std::size_t> all(elements_.size());
    for (std::size_t i = 0; i < all.size(); ++i) {
      all[i] = i;
    }
    best_ = greedy(all);
    const std::size_t bound = packing(all);
    branch(all);
    std::sort(best_.begin(), best_.end());
    return {best_, left_ > 0 ? best_.size() : bound};
  }

 private:
  [[nodiscard]] std::vector<std::size_t> without(const std::vector<std::size_t>& open,
                                                 std::size_t set) const {
    std::vector<std::size_t> rest;
    for (const std::size_t element : open) {
      if (!std::binary_search(elements_[element].begin(), elements_[element].end(), set)) {
        rest.push_back(element);
      }
    }
    return rest;
  }

  // How many open elements each set holds.
  [[nodiscard]] std::map<std::size_t, std::size_t> gains(
      const std::vector<std::size_t>& open) const {
    std::map<std::size_t, std::size_t> gains;
    for (const std::size_t element : open) {
      for (const std::size_t set : elements_[element]) {
        ++gains[set];
      }
    }
    return gains;
  }

  [[nodiscard]] std::vector<std::size_t> greedy(std::vector<std::size_t> open) const {
    std::vector<std::size_t> chosen;
    while (!open.empty()) {
      const auto gain = gains(open);
      const auto best =
          std::max_element(gain.begin(), gain.end(),
                           [](const auto& a, const auto& b) { return a.second < b.second; });
      chosen.push_back(best->first);
      open = without(open, best->first);
    }
    return chosen;
  }

  // Elements that share no set need one each.
  [[nodiscard]] std::size_t packing(const std::vector<std::size_t>& open) const {
    std::vector<std::size_t> apart;
    for (const std::size_t element : open) {
      if (std::all_of(apart.begin(), apart.end(), [&](std::size_t other) {
            return disjoint(elements_[element], elements_[other]);
          })) {
        apart.push_back(element);
      }
    }
    return apart.size();
  }

  void branch(const std::vector<std::size_t>& open) {
    if (open.empty()) {
      if (chosen_.size() < best_.size()) {
        best_ = chosen_;
      }
      return;
    }
    if (left_ == 0 || chosen_.size() + packing(open) >= best_.size()) {
      return;
    }
    --left_;
    // Open elements keep the order of hardElements(): the first has the fewest sets.
    Sets candidates = elements_[open.front()];
    const auto gain = gains(open);
    std::stable_sort(candidates.begin(), candidates.end(),
                     [&gain](std::size_t a, std::size_t b) { return gain.at(a) > gain.at(b); });
    for (const std::size_t set : candidates) {
      chosen_.push_back(set);
      branch(without(open, set));
      chosen_.pop_back();
    }
  }

  std::vector<Sets> elements_;
  std::size_t left_;
  std::vector<std::size_t> chosen_, best_;
};

}  // namespace

std::optional<SetCover> fewestSets(const std::vector<std::vector<std::size_t>>& servedBy,
                                   std::size_t mostSteps) {
  if (std::any_of(servedBy.begin(), servedBy.end(),
                  [](const Sets& sets) { return sets.empty(); })) {
    return std::nullopt;
  }
  return Search(hardElements(servedBy), mostSteps).run();
}

std::vector<int> fewestPoints(std::vector<WholeInterval> intervals) {
  std::sort(intervals.begin(), intervals.end(),
            [](const WholeInterval& a, const WholeInterval& b) { return a.high < b.high; });
  std::vector<int> points;
  for (const WholeInterval& interval : intervals) {
    if (points.empty() || points.back() < interval.low) {
      points.push_back(interval.high);
    }
  }
  return points;
}

}  // namespace creaseline
