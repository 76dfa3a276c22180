// SPDX-License-Identifier: MIT
// Length: the one type for every distance in the program. Text forms live in units.h.
#pragma once

#include <cmath>
#include <compare>
#include <cstdint>
#include <limits>
#include <stdexcept>

namespace creaseline {

// A surface, kept in square millimetres. Made by Length * Length.
class Area {
 public:
  constexpr Area() = default;
  [[nodiscard]] static constexpr Area fromSquareMm(double value) { return Area(value); }
  [[nodiscard]] constexpr double squareMm() const { return squareMm_; }
  [[nodiscard]] constexpr double squareCm() const { return squareMm_ / 100.0; }
  constexpr auto operator<=>(const Area&) const = default;
  constexpr Area operator+(Area other) const { return Area(squareMm_ + other.squareMm_); }

 private:
  explicit constexpr Area(double value) : squareMm_(value) {}
  double squareMm_ = 0.0;
};

// A signed distance. Kept as whole nanometres, so that both 0.1 mm and 1/64 in (396 875 nm) are
// exact, sums are exact, and equality means equality.
//
// Range: +-kLimitMm. The range is far beyond any cloth and small enough that sums of thousands of
// lengths cannot overflow. No conversion from or to a bare double is implicit: say fromMm() or
// mm().
class Length {
 public:
  static constexpr double kLimitMm = 1.0e6;
  static constexpr double kNanometresPerMm = 1.0e6;
  static constexpr double kMmPerInch = 25.4;  // international yard and pound agreement, 1959

  constexpr Length() = default;

  // Rounds to the nearest nanometre. Throws std::range_error if not finite or beyond kLimitMm;
  // readers of files check the range first, so this means a bug in our own arithmetic.
  [[nodiscard]] static constexpr Length fromMm(double value) {
    if (!(value >= -kLimitMm && value <= kLimitMm)) {
      throw std::range_error("length out of range");
    }
    const double scaled = value * kNanometresPerMm;
    return Length(static_cast<std::int64_t>(scaled < 0.0 ? scaled - 0.5 : scaled + 0.5));
  }
  [[nodiscard]] static constexpr Length fromInches(double value) {
    return fromMm(value * kMmPerInch);
  }
  [[nodiscard]] static constexpr Length fromNanometres(std::int64_t value) { return Length(value); }

  [[nodiscard]] constexpr double mm() const {
    return static_cast<double>(nanometres_) / kNanometresPerMm;
  }
  [[nodiscard]] constexpr double inches() const { return mm() / kMmPerInch; }
  [[nodiscard]] constexpr std::int64_t nanometres() const { return nanometres_; }

  constexpr auto operator<=>(const Length&) const = default;
  constexpr Length operator-() const { return Length(-nanometres_); }
  constexpr Length operator+(Length other) const { return Length(nanometres_ + other.nanometres_); }
  constexpr Length operator-(Length other) const { return Length(nanometres_ - other.nanometres_); }
  constexpr Length& operator+=(Length other) { return *this = *this + other; }
  constexpr Length& operator-=(Length other) { return *this = *this - other; }
  // Scaling rounds to the nearest nanometre.
  constexpr Length operator*(double factor) const { return fromMm(mm() * factor); }
  constexpr Length operator/(double divisor) const { return fromMm(mm() / divisor); }
  // Like by like is a plain ratio.
  constexpr double operator/(Length other) const {
    return static_cast<double>(nanometres_) / static_cast<double>(other.nanometres_);
  }
  constexpr Area operator*(Length other) const { return Area::fromSquareMm(mm() * other.mm()); }

 private:
  explicit constexpr Length(std::int64_t nanometres) : nanometres_(nanometres) {}
  std::int64_t nanometres_ = 0;
};

constexpr Length operator*(double factor, Length length) {
  return length * factor;
}
[[nodiscard]] constexpr Length abs(Length length) {
  return length < Length() ? -length : length;
}

namespace literals {
consteval Length operator""_mm(unsigned long long value) {
  return Length::fromMm(static_cast<double>(value));
}
consteval Length operator""_mm(long double value) {
  return Length::fromMm(static_cast<double>(value));
}
consteval Length operator""_in(unsigned long long value) {
  return Length::fromInches(static_cast<double>(value));
}
consteval Length operator""_in(long double value) {
  return Length::fromInches(static_cast<double>(value));
}
}  // namespace literals

}  // namespace creaseline
