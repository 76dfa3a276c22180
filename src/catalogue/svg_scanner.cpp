// SPDX-License-Identifier: MIT
// Locale-free scanning of SVG attribute values.
#include "catalogue/svg_scanner.h"

#include <charconv>
#include <cmath>
#include <cstddef>

namespace creaseline {
namespace {

bool isSpace(char character) {
  return character == ' ' || character == '\t' || character == '\n' || character == '\r' ||
         character == '\f';
}

bool isDigit(char character) {
  return character >= '0' && character <= '9';
}

}  // namespace

void SvgScanner::skipSpaces() {
  while (!rest_.empty() && isSpace(rest_.front())) {
    skip();
  }
}

void SvgScanner::skipSeparator() {
  skipSpaces();
  if (take(',')) {
    skipSpaces();
  }
}

bool SvgScanner::take(char wanted) {
  if (peek() != wanted || rest_.empty()) {
    return false;
  }
  skip();
  return true;
}

std::string_view SvgScanner::takeWord() {
  std::size_t length = 0;
  while (length < rest_.size() && ((rest_[length] >= 'a' && rest_[length] <= 'z') ||
                                   (rest_[length] >= 'A' && rest_[length] <= 'Z'))) {
    ++length;
  }
  const std::string_view word = rest_.substr(0, length);
  rest_.remove_prefix(length);
  return word;
}

std::optional<double> SvgScanner::takeNumber() {
  std::string_view digits = rest_;
  const bool negative = digits.starts_with('-');
  if (negative || digits.starts_with('+')) {
    digits.remove_prefix(1);
  }
  // std::from_chars would also take a second sign, "inf" and "nan".
  const bool begins =
      !digits.empty() &&
      (isDigit(digits[0]) || (digits.size() > 1 && digits[0] == '.' && isDigit(digits[1])));
  if (!begins) {
    return std::nullopt;
  }
  double value = 0.0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (error != std::errc() || !std::isfinite(value)) {
    return std::nullopt;
  }
  rest_.remove_prefix(static_cast<std::size_t>(end - rest_.data()));
  return negative ? -value : value;
}

std::optional<bool> SvgScanner::takeFlag() {
  if (peek() != '0' && peek() != '1') {
    return std::nullopt;
  }
  const bool flag = peek() == '1';
  skip();
  return flag;
}

}  // namespace creaseline
