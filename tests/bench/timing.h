// SPDX-License-Identifier: MIT
// Timing by medians: one slow repeat, when the machine was busy elsewhere, does not count.
#pragma once

#include <algorithm>
#include <chrono>
#include <vector>

namespace creaseline::bench {

// Keeps a result from being optimised away.
inline volatile double sink = 0.0;

// Median seconds of one call over `repeats` rounds of `calls` calls each.
template <class Function>
double medianSeconds(int repeats, int calls, Function function) {
  std::vector<double> seconds;
  for (int repeat = 0; repeat < repeats; ++repeat) {
    const auto start = std::chrono::steady_clock::now();
    for (int call = 0; call < calls; ++call) {
      sink = sink + function();
    }
    const std::chrono::duration<double> time = std::chrono::steady_clock::now() - start;
    seconds.push_back(time.count() / calls);
  }
  std::sort(seconds.begin(), seconds.end());
  return seconds[seconds.size() / 2];
}

}  // namespace creaseline::bench
