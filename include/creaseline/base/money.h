// SPDX-License-Identifier: MIT
// Money: an amount of one currency, and what is needed to read and write it.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "creaseline/base/result.h"

namespace creaseline {

// Kept as whole minor units (cents where a currency has them), so that sums are exact. Which
// currency it is, who holds the amount knows.
class Money {
 public:
  // Far beyond any order, and sums of many such still fit.
  static constexpr std::int64_t kMostMinorUnits = 1'000'000'000'000;

  constexpr Money() = default;

  [[nodiscard]] static constexpr Money fromMinorUnits(std::int64_t value) { return Money(value); }
  [[nodiscard]] constexpr std::int64_t minorUnits() const { return minorUnits_; }

  constexpr auto operator<=>(const Money&) const = default;
  constexpr Money operator+(Money other) const { return Money(minorUnits_ + other.minorUnits_); }
  constexpr Money operator-(Money other) const { return Money(minorUnits_ - other.minorUnits_); }
  constexpr Money& operator+=(Money other) { return *this = *this + other; }

 private:
  explicit constexpr Money(std::int64_t minorUnits) : minorUnits_(minorUnits) {}
  std::int64_t minorUnits_ = 0;
};

// A currency of ISO 4217.
struct Currency {
  std::string code;     // "EUR"
  int minorDigits = 2;  // decimals of its minor unit: 100 cents are one euro
  bool operator==(const Currency&) const = default;
};

// Reads "18.50 EUR", "18,5 EUR", "18.50", "18": 0 or more, in that currency where one is named.
// Refuses another currency, more decimals than the currency has, thousands separators, negatives
// and more than kMostMinorUnits.
[[nodiscard]] Result<Money> parseMoney(std::string_view text, const Currency& currency);

// The code at the end of "18.50 EUR"; empty if there is none.
[[nodiscard]] std::string_view currencyCodeOf(std::string_view text);

// "18.50 EUR", "1234 JPY": exact, with all decimals of the currency, and without separators.
[[nodiscard]] std::string moneyText(Money amount, const Currency& currency);
// The same without the code: "18.50".
[[nodiscard]] std::string amountText(Money amount, const Currency& currency);

// A share, kept as whole hundredths of a percent.
class Percent {
 public:
  static constexpr int kHundredthsPerWhole = 10'000;

  constexpr Percent() = default;
  [[nodiscard]] static constexpr Percent fromHundredths(int value) { return Percent(value); }
  [[nodiscard]] constexpr int hundredths() const { return hundredths_; }
  constexpr auto operator<=>(const Percent&) const = default;

 private:
  explicit constexpr Percent(int hundredths) : hundredths_(hundredths) {}
  int hundredths_ = 0;
};

// Reads "30 %", "12,5 %", "30": from 0 to `most`, with two decimals at most.
[[nodiscard]] Result<Percent> parsePercent(std::string_view text, Percent most);
// "30 %", "12.5 %"
[[nodiscard]] std::string percentText(Percent share);

}  // namespace creaseline
