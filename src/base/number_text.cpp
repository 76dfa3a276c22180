// SPDX-License-Identifier: MIT
// A scanner for numbers with fractions. Locale-free: std::from_chars knows only the point.
#include "base/number_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>

#include "base/quoted_text.h"
#include "base/worded.h"

namespace creaseline {
namespace {

using namespace std::string_view_literals;

constexpr std::array kSpaces{" "sv, "\t"sv, "\u00A0"sv, "\u2009"sv, "\u202F"sv};
constexpr std::array kMinusSigns{"-"sv, "\u2212"sv};
constexpr std::array kFractionBars{"/"sv, "\u2044"sv};
constexpr std::pair<std::string_view, double> kVulgarFractions[] = {
    {"½", 1.0 / 2.0}, {"¼", 1.0 / 4.0}, {"¾", 3.0 / 4.0}, {"⅛", 1.0 / 8.0}, {"⅜", 3.0 / 8.0},
    {"⅝", 5.0 / 8.0}, {"⅞", 7.0 / 8.0}, {"⅓", 1.0 / 3.0}, {"⅔", 2.0 / 3.0},
};

template <class Candidates>
bool takeAny(std::string_view& text, const Candidates& candidates) {
  for (const std::string_view candidate : candidates) {
    if (text.starts_with(candidate)) {
      text.remove_prefix(candidate.size());
      return true;
    }
  }
  return false;
}

bool skipSpaces(std::string_view& text) {
  bool any = false;
  while (takeAny(text, kSpaces)) {
    any = true;
  }
  return any;
}

std::string_view takeDigits(std::string_view& text) {
  std::size_t count = 0;
  while (count < text.size() && text[count] >= '0' && text[count] <= '9') {
    ++count;
  }
  const std::string_view digits = text.substr(0, count);
  text.remove_prefix(count);
  return digits;
}

std::optional<double> takeVulgarFraction(std::string_view& text) {
  for (const auto& [sign, value] : kVulgarFractions) {
    if (text.starts_with(sign)) {
      text.remove_prefix(sign.size());
      return value;
    }
  }
  return std::nullopt;
}

// Digits that overflow a double come back as nothing.
std::optional<double> decimalValue(std::string_view whole, std::string_view fraction) {
  std::string text(whole.empty() ? "0"sv : whole);
  text += '.';
  text += fraction.empty() ? "0"sv : fraction;
  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value)) {
    return std::nullopt;
  }
  return value;
}

class NumberReader {
 public:
  explicit NumberReader(std::string_view text) : all_(text), rest_(text) {}

  Result<LeadingNumber> read() {
    const bool negative = takeAny(rest_, kMinusSigns);
    if (!negative && rest_.starts_with('+')) {
      rest_.remove_prefix(1);
    }
    if (!readMagnitude()) {
      return Refusal{problem_};
    }
    return LeadingNumber{negative ? -value_ : value_, withoutOuterSpaces(rest_)};
  }

 private:
  bool fail(std::string problem) {
    problem_ = std::move(problem);
    return false;
  }
  bool failAtStart() { return fail(worded("{} does not begin with a number", quotedText(all_))); }
  bool failAsTooLarge() { return fail(worded("{} is too large", quotedText(all_))); }

  bool readMagnitude() {
    if (const auto vulgar = takeVulgarFraction(rest_)) {
      value_ = *vulgar;
      return true;
    }
    const std::string_view whole = takeDigits(rest_);
    if (takeAny(rest_, kFractionBars)) {
      return readFraction(whole);
    }
    if (rest_.starts_with('.') || rest_.starts_with(',')) {
      return readDecimals(whole);
    }
    if (whole.empty()) {
      return failAtStart();
    }
    const auto value = decimalValue(whole, {});
    if (!value) {
      return failAsTooLarge();
    }
    value_ = *value;
    return readFractionAfterWhole();
  }

  // "1,234" is 1.234 to one reader and 1234 to another; a guess would be wrong by a thousand.
  static bool mayBeThousands(char separator, std::string_view whole, std::string_view decimals) {
    return separator == ',' && decimals.size() == 3 && !whole.empty() && whole.size() <= 3 &&
           whole.front() != '0';
  }

  bool readDecimals(std::string_view whole) {
    const char separator = rest_.front();
    rest_.remove_prefix(1);
    const std::string_view decimals = takeDigits(rest_);
    if (decimals.empty()) {
      return whole.empty()
                 ? failAtStart()
                 : fail(worded("{} has no digit after the decimal separator", quotedText(all_)));
    }
    if (mayBeThousands(separator, whole, decimals)) {
      return fail(
          worded("{} may have a thousands separator; write a decimal point, or no separator",
                 quotedText(all_)));
    }
    const auto value = decimalValue(whole, decimals);
    if (!value) {
      return failAsTooLarge();
    }
    value_ = *value;
    return true;
  }

  bool readFraction(std::string_view numeratorDigits) {
    const std::string_view denominatorDigits = takeDigits(rest_);
    if (numeratorDigits.empty() || denominatorDigits.empty()) {
      return fail(worded("{} has an unfinished fraction", quotedText(all_)));
    }
    const auto numerator = decimalValue(numeratorDigits, {});
    const auto denominator = decimalValue(denominatorDigits, {});
    if (!numerator || !denominator) {
      return failAsTooLarge();
    }
    if (*denominator == 0.0) {
      return fail(worded("{} has a fraction with the denominator zero", quotedText(all_)));
    }
    value_ = *numerator / *denominator;
    return true;
  }

  // After a whole number: " 1/2", "-1/2", "½", " ½", "-½" or nothing.
  bool readFractionAfterWhole() {
    std::string_view ahead = rest_;
    const bool separated = skipSpaces(ahead) || takeAny(ahead, kMinusSigns);
    if (const auto vulgar = takeVulgarFraction(ahead)) {
      value_ += *vulgar;
      rest_ = ahead;
      return true;
    }
    const std::string_view numerator = takeDigits(ahead);
    if (!separated || numerator.empty() || !takeAny(ahead, kFractionBars)) {
      return true;  // no fraction here; what follows is for the reader of units
    }
    const double whole = value_;
    rest_ = ahead;
    if (!readFraction(numerator)) {
      return false;
    }
    if (value_ >= 1.0) {
      return fail(
          worded("{} has a fraction of one or more after the whole number", quotedText(all_)));
    }
    value_ += whole;
    return true;
  }

  std::string_view all_;
  std::string_view rest_;
  double value_ = 0.0;
  std::string problem_;
};

}  // namespace

std::string_view withoutOuterSpaces(std::string_view text) {
  skipSpaces(text);
  for (bool again = true; again;) {
    again = false;
    for (const std::string_view space : kSpaces) {
      if (text.ends_with(space)) {
        text.remove_suffix(space.size());
        again = true;
      }
    }
  }
  return text;
}

Result<LeadingNumber> readLeadingNumber(std::string_view text) {
  return NumberReader(withoutOuterSpaces(text)).read();
}

}  // namespace creaseline
