// SPDX-License-Identifier: MIT
// How the program's own sentences are written: in English at their place in the code, said in the
// language spoken. tests/house/phrases.py finds them by these names.
#pragma once

#include <fmt/format.h>

#include <string>
#include <string_view>

#include "creaseline/base/phrasebook.h"

namespace creaseline {

// Fills a sentence; the English one is checked by the compiler, the others by a test.
[[nodiscard]] std::string wordedFrom(fmt::string_view english, fmt::format_args arguments);

// fmt::format() in the language spoken. Whole sentences or whole names, no piece that begins or
// ends with a space: other languages order their words otherwise.
template <class... Arguments>
[[nodiscard]] std::string worded(fmt::format_string<Arguments...> english,
                                 Arguments&&... arguments) {
  return wordedFrom(english, fmt::make_format_args(arguments...));
}

// Marks a constant that is said later, by inLanguage().
constexpr std::string_view toBeWorded(std::string_view english) {
  return english;
}

}  // namespace creaseline
