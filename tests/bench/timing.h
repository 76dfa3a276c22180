// SPDX-License-Identifier: MIT
// Timing by medians: one slow repeat, when the machine was busy elsewhere, does not count.
#pragma once

#include <algorithm>
#include <chrono>
#include <vector>

namespace creaseline::bench {

// Keeps a result from being optimised away.
inline volatile double sink = 0.0;

inline double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

// Seconds of one call, over one round of them.
template <class Function>
double secondsPerCall(int calls, Function function) {
  const auto start = std::chrono::steady_clock::now();
  for (int call = 0; call < calls; ++call) {
    sink = sink + function();
  }
  const std::chrono::duration<double> time = std::chrono::steady_clock::now() - start;
  return time.count() / calls;
}

// Two functions timed in turns, so that a busy machine slows both: medians of their seconds and
// of the ratio of each pair of rounds.
struct Paired {
  double first = 0.0, second = 0.0, ratio = 0.0;
};
template <class First, class Second>
Paired pairedMedians(int rounds, int calls, First first, Second second) {
  std::vector<double> firsts;
  std::vector<double> seconds;
  std::vector<double> ratios;
  for (int round = 0; round < rounds; ++round) {
    firsts.push_back(secondsPerCall(calls, first));
    seconds.push_back(secondsPerCall(calls, second));
    ratios.push_back(firsts.back() / seconds.back());
  }
  return {median(firsts), median(seconds), median(ratios)};
}

}  // namespace creaseline::bench
