// SPDX-License-Identifier: MIT
// Angle: a turn in the plane of the cloth.
#pragma once

#include <cmath>
#include <compare>
#include <cstdint>
#include <numbers>
#include <stdexcept>

namespace creaseline {

// Kept as whole thousandths of a degree, normalised to the half-open range (-180, 180].
//
// Sign: coordinates have +x to the viewer's right and +y down, so a positive angle turns +x
// towards +y, which the viewer sees as *clockwise*.
//
//        -90
//   180   +   0 -> +x
//        +90
//         |
//         v +y
class Angle {
 public:
  constexpr Angle() = default;

  // Rounds to the nearest thousandth of a degree and normalises. Throws std::range_error if not
  // finite or beyond +-1e6 degrees.
  [[nodiscard]] static constexpr Angle fromDegrees(double degrees) {
    if (!(degrees >= -1.0e6 && degrees <= 1.0e6)) {
      throw std::range_error("angle out of range");
    }
    const double scaled = degrees * 1000.0;
    return fromMillidegrees(static_cast<std::int64_t>(scaled < 0.0 ? scaled - 0.5 : scaled + 0.5));
  }
  [[nodiscard]] static constexpr Angle fromMillidegrees(std::int64_t value) {
    std::int64_t turn = value % kFullTurn;
    if (turn <= -kFullTurn / 2) {
      turn += kFullTurn;
    } else if (turn > kFullTurn / 2) {
      turn -= kFullTurn;
    }
    return Angle(static_cast<std::int32_t>(turn));
  }

  [[nodiscard]] constexpr double degrees() const { return millidegrees_ / 1000.0; }
  [[nodiscard]] constexpr double radians() const { return degrees() * std::numbers::pi / 180.0; }
  [[nodiscard]] constexpr std::int32_t millidegrees() const { return millidegrees_; }

  constexpr auto operator<=>(const Angle&) const = default;
  constexpr Angle operator-() const { return fromMillidegrees(-std::int64_t{millidegrees_}); }
  constexpr Angle operator+(Angle other) const {
    return fromMillidegrees(std::int64_t{millidegrees_} + other.millidegrees_);
  }
  constexpr Angle operator-(Angle other) const {
    return fromMillidegrees(std::int64_t{millidegrees_} - other.millidegrees_);
  }

 private:
  static constexpr std::int64_t kFullTurn = 360'000;
  explicit constexpr Angle(std::int32_t millidegrees) : millidegrees_(millidegrees) {}
  std::int32_t millidegrees_ = 0;
};

namespace literals {
consteval Angle operator""_deg(unsigned long long value) {
  return Angle::fromDegrees(static_cast<double>(value));
}
consteval Angle operator""_deg(long double value) {
  return Angle::fromDegrees(static_cast<double>(value));
}
}  // namespace literals

}  // namespace creaseline
