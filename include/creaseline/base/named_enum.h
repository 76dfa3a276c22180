// SPDX-License-Identifier: MIT
// Names of enumerators as they stand in files and reports, kept once per enumeration.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace creaseline {

// Specialise for an enumeration with
//   static constexpr std::pair<E, std::string_view> names[] = {{E::A, "a"}, ...};
template <class E>
struct EnumNames;

// The file name of an enumerator, "left-chest". Every enumerator has one; a missing name is a bug
// and comes back as "?".
template <class E>
[[nodiscard]] constexpr std::string_view nameOf(E value) {
  for (const auto& [candidate, name] : EnumNames<E>::names) {
    if (candidate == value) {
      return name;
    }
  }
  return "?";
}

// The enumerator of that file name, or nothing.
template <class E>
[[nodiscard]] constexpr std::optional<E> enumFromName(std::string_view text) {
  for (const auto& [candidate, name] : EnumNames<E>::names) {
    if (name == text) {
      return candidate;
    }
  }
  return std::nullopt;
}

// "front, back, hood": what an error message offers.
template <class E>
[[nodiscard]] std::string allNames() {
  std::string list;
  for (const auto& entry : EnumNames<E>::names) {
    if (!list.empty()) {
      list += ", ";
    }
    list += entry.second;
  }
  return list;
}

}  // namespace creaseline
