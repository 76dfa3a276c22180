// SPDX-License-Identifier: MIT
// ArealWeight: mass of cloth per area, the trade's measure of how heavy a fabric or backing is.
#pragma once

#include <compare>
#include <cstdint>
#include <stdexcept>

namespace creaseline {

// Kept as whole milligrams per square metre. Never negative.
class ArealWeight {
 public:
  // 28.349523125 g / (0.9144 m)^2, both exact by definition (NIST SP 811, appendix B).
  static constexpr double kGramsPerSquareMetrePerOunce = 28.349523125 / (0.9144 * 0.9144);
  static constexpr double kLimitGramsPerSquareMetre = 1.0e5;

  constexpr ArealWeight() = default;

  // Throws std::range_error if negative, not finite, or beyond the limit.
  [[nodiscard]] static constexpr ArealWeight fromGramsPerSquareMetre(double value) {
    if (!(value >= 0.0 && value <= kLimitGramsPerSquareMetre)) {
      throw std::range_error("areal weight out of range");
    }
    return ArealWeight(static_cast<std::int64_t>(value * 1000.0 + 0.5));
  }
  [[nodiscard]] static constexpr ArealWeight fromOuncesPerSquareYard(double value) {
    return fromGramsPerSquareMetre(value * kGramsPerSquareMetrePerOunce);
  }

  [[nodiscard]] constexpr double gramsPerSquareMetre() const {
    return static_cast<double>(milligrams_) / 1000.0;
  }
  [[nodiscard]] constexpr double ouncesPerSquareYard() const {
    return gramsPerSquareMetre() / kGramsPerSquareMetrePerOunce;
  }

  constexpr auto operator<=>(const ArealWeight&) const = default;

 private:
  explicit constexpr ArealWeight(std::int64_t milligrams) : milligrams_(milligrams) {}
  std::int64_t milligrams_ = 0;
};

}  // namespace creaseline
