// SPDX-License-Identifier: MIT
// Text as it comes out of files: is it UTF-8, how is it shown in a message, and which known name
// is nearest to a misspelt one.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace creaseline {

// True for well-formed UTF-8 (RFC 3629): no overlong forms, no surrogates, nothing above U+10FFFF.
[[nodiscard]] bool isUtf8(std::string_view text);
// True if the text holds a C0 control or DEL; line feed and tab are let through on request.
[[nodiscard]] bool hasControlCharacter(std::string_view text, bool allowLineBreaks);
// Number of characters of a UTF-8 text.
[[nodiscard]] std::size_t characterCount(std::string_view text);

// For messages: at most `limit` characters, then "..."; controls and bytes that are not UTF-8 as
// \xNN, so that a message never damages a terminal.
[[nodiscard]] std::string printable(std::string_view text, std::size_t limit = 60);
// The same in double quotes.
[[nodiscard]] std::string inQuotes(std::string_view text, std::size_t limit = 60);

// The name that a person most likely meant, or empty: fewest insertions, deletions, replacements
// and swaps of neighbours, letter case aside, and no more than a third of the letters.
[[nodiscard]] std::string nearestName(std::string_view text, const std::vector<std::string>& names);
// "one of a, b, c; did you mean "b"?": what a message offers instead of an unknown name.
[[nodiscard]] std::string offer(std::string_view text, const std::vector<std::string>& names);
// The names to offer for catalogue entries.
template <class Entry>
[[nodiscard]] std::vector<std::string> idsOf(const std::vector<Entry>& entries) {
  std::vector<std::string> ids;
  for (const Entry& entry : entries) {
    ids.push_back(entry.id.text());
  }
  return ids;
}

}  // namespace creaseline
