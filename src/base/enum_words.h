// SPDX-License-Identifier: MIT
// The names of enumerators in files are the field's own words; here they are said to people.
// tests/house/phrases.py knows which enumerations are.
#pragma once

#include <algorithm>
#include <string>

#include "creaseline/base/named_enum.h"
#include "creaseline/base/phrasebook.h"

namespace creaseline {

// "cut-away"
template <class Enum>
[[nodiscard]] std::string wordOf(Enum value) {
  return inLanguage(nameOf(value));
}

// With spaces for hyphens: "light ball".
template <class Enum>
[[nodiscard]] std::string spacedWordOf(Enum value) {
  std::string text(nameOf(value));
  std::replace(text.begin(), text.end(), '-', ' ');
  return inLanguage(text);
}

}  // namespace creaseline
