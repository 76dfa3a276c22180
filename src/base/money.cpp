// SPDX-License-Identifier: MIT
#include "creaseline/base/money.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "base/number_text.h"
#include "base/power_of_ten.h"
#include "base/quoted_text.h"
#include "base/worded.h"

namespace creaseline {
namespace {

constexpr int kPercentDecimals = 2;
constexpr std::int64_t kMostPercentHundredths = 100'000'000;

bool isDigit(char letter) {
  return letter >= '0' && letter <= '9';
}

bool isCapital(char letter) {
  return letter >= 'A' && letter <= 'Z';
}

// A decimal number as a whole number of its last decimal place, without going through a double,
// which holds no 0.1. Nothing if it does not read so, or is more than `most` such places.
std::optional<std::int64_t> readDecimal(std::string_view text, int decimals, std::int64_t most) {
  const std::size_t mark = std::min(text.find_first_of(".,"), text.size());
  const std::string_view whole = text.substr(0, mark);
  const std::string_view part = mark < text.size() ? text.substr(mark + 1) : std::string_view();
  const bool digits = std::all_of(whole.begin(), whole.end(), isDigit) &&
                      std::all_of(part.begin(), part.end(), isDigit);
  if (whole.empty() || !digits || (mark < text.size() && part.empty()) ||
      part.size() > static_cast<std::size_t>(decimals)) {
    return std::nullopt;
  }
  std::string all(whole);
  all += part;
  all.append(static_cast<std::size_t>(decimals) - part.size(), '0');
  std::int64_t value = 0;
  for (const char digit : all) {
    if (value > most) {
      return std::nullopt;
    }
    value = value * 10 + (digit - '0');
  }
  return value <= most ? std::optional(value) : std::nullopt;
}

std::string exampleOf(const Currency& currency) {
  return moneyText(Money::fromMinorUnits(18 * powerOfTen(currency.minorDigits)), currency);
}

}  // namespace

std::string_view currencyCodeOf(std::string_view text) {
  constexpr std::size_t kLetters = 3;
  const std::string_view bare = withoutOuterSpaces(text);
  if (bare.size() < kLetters) {
    return {};
  }
  const std::string_view code = bare.substr(bare.size() - kLetters);
  const bool further = bare.size() > kLetters && isCapital(bare[bare.size() - kLetters - 1]);
  return std::all_of(code.begin(), code.end(), isCapital) && !further ? code : std::string_view();
}

Result<Money> parseMoney(std::string_view text, const Currency& currency) {
  std::string_view number = withoutOuterSpaces(text);
  const std::string_view code = currencyCodeOf(number);
  if (!code.empty() && code != currency.code) {
    return Refusal{worded("{} is not in {}; write an amount such as {}", quotedText(text),
                          currency.code, exampleOf(currency))};
  }
  number.remove_suffix(code.size());
  const auto value =
      readDecimal(withoutOuterSpaces(number), currency.minorDigits, Money::kMostMinorUnits);
  if (!value) {
    return Refusal{
        worded("{} is no amount of 0 or more with at most {} decimals; write one "
               "such as {}",
               quotedText(text), currency.minorDigits, exampleOf(currency))};
  }
  return Money::fromMinorUnits(*value);
}

std::string amountText(Money amount, const Currency& currency) {
  const std::int64_t unit = powerOfTen(currency.minorDigits);
  const std::int64_t minor = amount.minorUnits();
  const std::int64_t size = minor < 0 ? -minor : minor;
  const std::string_view sign = minor < 0 ? "-" : "";
  if (currency.minorDigits == 0) {
    return fmt::format("{}{}", sign, size);
  }
  return fmt::format("{}{}.{:0{}}", sign, size / unit, size % unit, currency.minorDigits);
}

std::string moneyText(Money amount, const Currency& currency) {
  return fmt::format("{} {}", amountText(amount, currency), currency.code);
}

Result<Percent> parsePercent(std::string_view text, Percent most) {
  std::string_view number = withoutOuterSpaces(text);
  if (number.ends_with('%')) {
    number.remove_suffix(1);
  }
  const auto value =
      readDecimal(withoutOuterSpaces(number), kPercentDecimals, kMostPercentHundredths);
  if (!value || *value > most.hundredths()) {
    return Refusal{worded("{} is no share from 0 to {} with at most {} decimals", quotedText(text),
                          percentText(most), kPercentDecimals)};
  }
  return Percent::fromHundredths(static_cast<int>(*value));
}

std::string percentText(Percent share) {
  const int whole = share.hundredths() / 100;
  const int part = share.hundredths() % 100;
  if (part == 0) {
    return fmt::format("{} %", whole);
  }
  return part % 10 == 0 ? fmt::format("{}.{} %", whole, part / 10)
                        : fmt::format("{}.{:02} %", whole, part);
}

}  // namespace creaseline
