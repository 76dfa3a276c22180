// SPDX-License-Identifier: MIT
// Reads the small grammars inside SVG attributes: numbers, flags and lists of them.
// Source: W3C, SVG 1.1 (Second Edition), sections 4.2, 7.6 and 8.3.9.
#pragma once

#include <optional>
#include <string_view>

namespace creaseline {

class SvgScanner {
 public:
  explicit SvgScanner(std::string_view text) : rest_(text) {}

  [[nodiscard]] bool atEnd() const { return rest_.empty(); }
  // The next character, or 0 at the end.
  [[nodiscard]] char peek() const { return rest_.empty() ? '\0' : rest_.front(); }
  [[nodiscard]] std::string_view rest() const { return rest_; }
  void skip() { rest_.remove_prefix(1); }
  void skipSpaces();
  // Spaces with at most one comma among them.
  void skipSeparator();
  bool take(char wanted);
  // Letters only, such as the name of a transform or a unit.
  std::string_view takeWord();

  // A finite number, or nothing (and nothing is consumed).
  std::optional<double> takeNumber();
  // '0' or '1', which need no separator after them.
  std::optional<bool> takeFlag();

 private:
  std::string_view rest_;
};

}  // namespace creaseline
