// SPDX-License-Identifier: MIT
// Duration: how long work takes. Read from defaults, summed, shown on run cards.
#pragma once

#include <cmath>
#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "creaseline/base/result.h"

namespace creaseline {

// Kept as whole milliseconds, so that sums are exact and do not depend on their order.
class Duration {
 public:
  static constexpr double kMillisecondsPerSecond = 1000.0;

  constexpr Duration() = default;

  [[nodiscard]] static constexpr Duration fromMilliseconds(std::int64_t value) {
    return Duration(value);
  }
  // Rounds to the nearest millisecond.
  [[nodiscard]] static Duration fromSeconds(double seconds) {
    return Duration(std::llround(seconds * kMillisecondsPerSecond));
  }

  [[nodiscard]] constexpr std::int64_t milliseconds() const { return milliseconds_; }
  [[nodiscard]] constexpr double seconds() const {
    return static_cast<double>(milliseconds_) / kMillisecondsPerSecond;
  }

  constexpr auto operator<=>(const Duration&) const = default;
  constexpr Duration operator+(Duration other) const {
    return Duration(milliseconds_ + other.milliseconds_);
  }
  constexpr Duration& operator+=(Duration other) { return *this = *this + other; }
  constexpr Duration operator*(int times) const { return Duration(milliseconds_ * times); }

 private:
  explicit constexpr Duration(std::int64_t milliseconds) : milliseconds_(milliseconds) {}
  std::int64_t milliseconds_ = 0;
};

// Reads "8 s", "90 sec", "1,5 min", "2 minutes", "1 h". Refuses a bare number, negatives, trailing
// text and more than 1000 hours.
Result<Duration> parseDuration(std::string_view text);

// For people: to the second below ten minutes ("45 s", "9 min 30 s", "2 min"), else to the minute
// ("25 min", "3 h 5 min", "2 h"). Rounds half up.
std::string formatDuration(Duration duration);

}  // namespace creaseline
