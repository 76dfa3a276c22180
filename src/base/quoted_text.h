// SPDX-License-Identifier: MIT
// Text from outside, made fit to stand in a message: short, on one line, valid UTF-8 at its end.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace creaseline {

// The longest piece of somebody's file that an error message repeats, in bytes.
inline constexpr std::size_t kLongestFoundText = 120;
// The same for what somebody typed into a field.
inline constexpr std::size_t kLongestTypedText = 40;

// Control characters become spaces; a text of more than `limit` bytes is cut before a whole
// character and ends in "...".
std::string shortenedText(std::string_view text, std::size_t limit);

// shortenedText() between quotation marks.
std::string quotedText(std::string_view text, std::size_t limit = kLongestTypedText);

}  // namespace creaseline
