// SPDX-License-Identifier: MIT
// Progress by carriage return, for terminals only.
#include "progress_line.h"

#include <fmt/format.h>
#include <unistd.h>

#include <cstdio>

namespace creaseline {

ProgressLine::ProgressLine(std::string what, bool wanted)
    : what_(std::move(what)),
      wanted_(wanted && ::isatty(STDERR_FILENO) == 1),
      start_(std::chrono::steady_clock::now()) {
}

ProgressLine::~ProgressLine() {
  if (shownPercent_ >= 0) {
    std::fputs("\r\x1b[K", stderr);
  }
}

void ProgressLine::show(double share) {
  constexpr auto kPatience = std::chrono::milliseconds(500);
  const int percent = static_cast<int>(share * 100.0);
  if (!wanted_ || percent == shownPercent_ ||
      std::chrono::steady_clock::now() - start_ < kPatience) {
    return;
  }
  shownPercent_ = percent;
  std::fputs(fmt::format("\rcreaseline: {} {} %\x1b[K", what_, percent).c_str(), stderr);
}

}  // namespace creaseline
