// SPDX-License-Identifier: MIT
// UTF-8 checks, printable excerpts and spelling suggestions.
#include "catalogue/text_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

#include "base/worded.h"

namespace creaseline {

namespace {

constexpr std::size_t kNamesOffered = 24;

// Bytes of the well-formed sequence at the start of `text`, or 0.
std::size_t sequenceLength(std::string_view text) {
  const auto byte = [&](std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : std::uint8_t{0};
  };
  const auto follows = [&](std::size_t i) { return (byte(i) & 0xC0U) == 0x80U; };
  const unsigned first = byte(0);
  if (first < 0x80U) {
    return 1;
  }
  if (first >= 0xC2U && first <= 0xDFU) {
    return follows(1) ? 2 : 0;
  }
  if (first >= 0xE0U && first <= 0xEFU) {
    const bool overlong = first == 0xE0U && byte(1) < 0xA0U;
    const bool surrogate = first == 0xEDU && byte(1) > 0x9FU;
    return follows(1) && follows(2) && !overlong && !surrogate ? 3 : 0;
  }
  if (first >= 0xF0U && first <= 0xF4U) {
    const bool overlong = first == 0xF0U && byte(1) < 0x90U;
    const bool beyond = first == 0xF4U && byte(1) > 0x8FU;
    return follows(1) && follows(2) && follows(3) && !overlong && !beyond ? 4 : 0;
  }
  return 0;
}

bool isControl(char character) {
  const auto code = static_cast<unsigned char>(character);
  return code < 0x20U || code == 0x7FU;
}

std::string lowerCase(std::string_view text) {
  std::string result(text);
  std::transform(result.begin(), result.end(), result.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return result;
}

// Restricted Damerau-Levenshtein distance (F. J. Damerau, Communications of the ACM 7(3), 1964).
std::size_t spellingDistance(const std::string& a, const std::string& b) {
  std::vector<std::size_t> beforeLast, last(b.size() + 1), current(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) {
    last[j] = j;
  }
  for (std::size_t i = 1; i <= a.size(); ++i) {
    current[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t replace = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      current[j] = std::min({last[j] + 1, current[j - 1] + 1, replace});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
        current[j] = std::min(current[j], beforeLast[j - 2] + 1);
      }
    }
    beforeLast = last;
    last = current;
  }
  return last[b.size()];
}

}  // namespace

bool isUtf8(std::string_view text) {
  while (!text.empty()) {
    const std::size_t length = sequenceLength(text);
    if (length == 0) {
      return false;
    }
    text.remove_prefix(length);
  }
  return true;
}

bool hasControlCharacter(std::string_view text, bool allowLineBreaks) {
  return std::any_of(text.begin(), text.end(), [&](char c) {
    return isControl(c) && !(allowLineBreaks && (c == '\n' || c == '\t'));
  });
}

std::size_t characterCount(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  }));
}

std::string printable(std::string_view text, std::size_t limit) {
  std::string shown;
  for (std::size_t count = 0; !text.empty(); ++count) {
    if (count == limit) {
      return shown + "...";
    }
    const std::size_t length = sequenceLength(text);
    if (length == 0 || isControl(text.front())) {
      shown += fmt::format("\\x{:02x}", static_cast<unsigned char>(text.front()));
      text.remove_prefix(1);
    } else {
      shown += text.substr(0, length);
      text.remove_prefix(length);
    }
  }
  return shown;
}

std::string inQuotes(std::string_view text, std::size_t limit) {
  return '"' + printable(text, limit) + '"';
}

std::string nearestName(std::string_view text, const std::vector<std::string>& names) {
  // Long texts are no slips of the finger, and the distance costs the product of the lengths.
  if (text.empty() || text.size() > 100) {
    return {};
  }
  const std::string wanted = lowerCase(text);
  const std::size_t most = std::max<std::size_t>(1, wanted.size() / 3);
  std::string best;
  std::size_t bestDistance = most + 1;
  for (const std::string& name : names) {
    const std::size_t difference =
        name.size() > wanted.size() ? name.size() - wanted.size() : wanted.size() - name.size();
    if (difference >= bestDistance) {
      continue;
    }
    const std::size_t distance = spellingDistance(wanted, lowerCase(name));
    // A name of which nothing is left is no suggestion.
    if (distance < bestDistance && distance < name.size()) {
      best = name;
      bestDistance = distance;
    }
  }
  return best;
}

std::string offer(std::string_view text, const std::vector<std::string>& names) {
  if (names.empty()) {
    return worded("one that exists, but there is none");
  }
  std::string list;
  for (std::size_t i = 0; i < std::min(names.size(), kNamesOffered); ++i) {
    list += (i == 0 ? "" : ", ") + printable(names[i]);
  }
  if (names.size() > kNamesOffered) {
    list = worded("{} and {} more", list, names.size() - kNamesOffered);
  }
  if (names.size() > 1) {
    list = worded("one of {}", list);
  }
  const std::string near = nearestName(text, names);
  return near.empty() ? list : worded("{}; did you mean {}?", list, inQuotes(near));
}

}  // namespace creaseline
