// SPDX-License-Identifier: MIT
// Whose letter stands where in a monogram.
#pragma once

#include <optional>
#include <string>

#include "creaseline/catalogue/design.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/planning/reason.h"

namespace creaseline {

struct MonogramLetters {
  std::string letters;  // "A L M"
  Reason reason;
};
// The first letters of the names in the order of the rule for the style, or as the customer wishes
// them. A middle name that is not given leaves its place out.
[[nodiscard]] MonogramLetters monogramLetters(const Monogram& monogram, const Rules& rules);

// The style as drawn: whether the middle one of three pieces is higher than both others by that
// share. Nothing where the outline is not three pieces beside each other.
[[nodiscard]] std::optional<MonogramStyle> drawnStyle(const Outline& outline, double larger);

// "a larger centre letter", "equal letters"
[[nodiscard]] std::string stylePhrase(MonogramStyle style);

}  // namespace creaseline
