// SPDX-License-Identifier: MIT
// One line on a terminal that tells how far long work has come.
#pragma once

#include <chrono>
#include <string>

namespace creaseline {

// Shows nothing unless standard error is a terminal, nor before the work has taken half a second.
// The line is wiped when the object ends. The clock decides about the display alone.
class ProgressLine {
 public:
  ProgressLine(std::string what, bool wanted);
  ~ProgressLine();
  ProgressLine(const ProgressLine&) = delete;
  ProgressLine& operator=(const ProgressLine&) = delete;

  // Share done, 0 to 1.
  void show(double share);

 private:
  std::string what_;
  bool wanted_;
  int shownPercent_ = -1;
  std::chrono::steady_clock::time_point start_;
};

}  // namespace creaseline
