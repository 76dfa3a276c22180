// SPDX-License-Identifier: MIT
#include "creaseline/base/duration.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

#include "base/number_text.h"
#include "base/quoted_text.h"
#include "base/worded.h"

namespace creaseline {
namespace {

constexpr std::int64_t kSecond = 1'000;
constexpr std::int64_t kMinute = 60 * kSecond;
constexpr std::int64_t kHour = 60 * kMinute;
constexpr double kMostSeconds = 3'600'000.0;

constexpr std::pair<std::string_view, std::int64_t> kUnits[] = {
    {"s", kSecond},   {"sec", kSecond},    {"second", kSecond},  {"seconds", kSecond},
    {"min", kMinute}, {"minute", kMinute}, {"minutes", kMinute}, {"h", kHour},
    {"hour", kHour},  {"hours", kHour}};

// "3 h 5 min", "3 h": of two units, the smaller only if there is any of it.
std::string twoUnits(std::int64_t value, std::string_view large, std::string_view small) {
  std::string text;
  if (value / 60 != 0) {
    text = fmt::format("{} {}", value / 60, large);
  }
  if (value % 60 != 0 || text.empty()) {
    text += fmt::format("{}{} {}", text.empty() ? "" : " ", value % 60, small);
  }
  return text;
}

}  // namespace

Result<Duration> parseDuration(std::string_view text) {
  const auto number = readLeadingNumber(text);
  if (!number) {
    return Refusal{worded("{}; write a time such as 8 s or 2 min", number.message())};
  }
  const auto unit = std::find_if(std::begin(kUnits), std::end(kUnits), [&](const auto& candidate) {
    return candidate.first == number->rest;
  });
  if (unit == std::end(kUnits)) {
    return Refusal{worded("{} has no unit of time; write s, min or h", quotedText(text))};
  }
  const double seconds =
      number->value * static_cast<double>(unit->second) / Duration::kMillisecondsPerSecond;
  if (!(seconds >= 0.0 && seconds <= kMostSeconds)) {
    return Refusal{worded("{} is out of range; a time is from 0 to 1000 h", quotedText(text))};
  }
  return Duration::fromSeconds(seconds);
}

std::string formatDuration(Duration duration) {
  const auto rounded = [&](std::int64_t unit) {
    return (duration.milliseconds() + unit / 2) / unit;
  };
  constexpr std::int64_t kSecondsShownBelow = 600;
  const std::int64_t seconds = rounded(kSecond);
  return seconds < kSecondsShownBelow ? twoUnits(seconds, "min", "s")
                                      : twoUnits(rounded(kMinute), "h", "min");
}

}  // namespace creaseline
