// SPDX-License-Identifier: MIT
// Which thread sits on which needle over a sequence of runs on one machine.
#pragma once

#include <string>
#include <vector>

namespace creaseline {

// A thread that the hands put on a needle before a run.
struct NeedleLoad {
  int needle = 0;  // counted from 1
  std::string thread;
  std::string replaced;  // what was on it; empty if it was free
  bool operator==(const NeedleLoad&) const = default;
};

struct NeedleUse {
  std::vector<NeedleLoad> before;  // by needle
  std::vector<int> needles;        // of each block
  // Of a run with more threads than needles: this needle carries one of `shared` after another.
  int sharedNeedle = 0;
  std::vector<std::string> shared;  // in order of first use
};

// `runs` holds the thread of each block of each run; blocks without a thread are given no needle.
// In a run that needs more threads than the machine has needles the last needle carries several in
// turn. One after another, the thread that saves most changes by hand gets a needle of its own (a
// greedy choice; of equals, the one first used). The run ends with the thread on the shared needle
// with which it began. Precondition: needles >= 1.
[[nodiscard]] std::vector<NeedleUse> assignNeedles(
    const std::vector<std::vector<std::string>>& runs, int needles);

}  // namespace creaseline
