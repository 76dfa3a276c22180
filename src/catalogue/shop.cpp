// SPDX-License-Identifier: MIT
// Finding things in a shop, and the lengths of its rolls.
#include "creaseline/catalogue/shop.h"

#include <fmt/format.h>
#include <algorithm>

#include "base/worded.h"

namespace creaseline {

const Frame* Shop::frame(const FrameId& id) const {
  const auto found =
      std::find_if(frames.begin(), frames.end(), [&](const Frame& each) { return each.id == id; });
  return found == frames.end() ? nullptr : &*found;
}

// Metres and yards are units that no other length is given in.
Result<Length> parseRollLength(std::string_view text) {
  constexpr std::pair<std::string_view, double> kUnits[] = {{"yd", 914.4}, {"m", 1000.0}};
  const auto inRange = [](Length length) { return length >= Length() && length <= kLongestRoll; };
  for (const auto& [unit, mm] : kUnits) {
    if (!text.ends_with(unit) || text.size() == unit.size()) {
      continue;
    }
    const Result<Length> number =
        parseLength(text.substr(0, text.size() - unit.size()), LengthUnit::Millimetre);
    if (number && number->mm() * mm <= kLongestRoll.mm() && inRange(*number * mm)) {
      return *number * mm;
    }
  }
  const Result<Length> length = parseLength(text);
  if (!length) {
    return length;
  }
  if (!inRange(*length)) {
    return Refusal{worded("it must be from 0 to {:.0f} m", kLongestRoll.mm() / 1000.0)};
  }
  return *length;
}

std::string rollLengthText(Length length, LengthUnit unit) {
  constexpr std::int64_t kMetre = 1'000'000'000;
  constexpr std::int64_t kYard = 914'400'000;
  const std::int64_t nanometres = length.nanometres();
  if (unit == LengthUnit::Inch && nanometres % kYard == 0) {
    return fmt::format("{} yd", nanometres / kYard);
  }
  // Rolls are sold by the metre or the yard; what was given in the other is told in metres too.
  constexpr std::int64_t kMillimetre = 1'000'000;
  if (nanometres < kMetre || nanometres % kMillimetre != 0) {
    return nanometres == 0 ? "0 m" : exactText(length);
  }
  std::string metres =
      fmt::format("{}.{:03}", nanometres / kMetre, nanometres % kMetre / kMillimetre);
  metres.erase(metres.find_last_not_of('0') + 1);
  return (metres.back() == '.' ? metres.substr(0, metres.size() - 1) : metres) + " m";
}

}  // namespace creaseline
