// SPDX-License-Identifier: MIT
// Composes affine maps and reads them.
#include "catalogue/affine.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <string>
#include <vector>

#include "base/quoted_text.h"
#include "base/worded.h"
#include "catalogue/svg_scanner.h"

namespace creaseline {
namespace {

constexpr std::size_t kMostArguments = 6;

Affine translation(double x, double y) {
  return {1.0, 0.0, 0.0, 1.0, x, y};
}

double radians(double degrees) {
  return std::remainder(degrees, 360.0) * std::numbers::pi / 180.0;
}

Affine rotation(double degrees) {
  const double sine = std::sin(radians(degrees));
  const double cosine = std::cos(radians(degrees));
  return {cosine, sine, -sine, cosine, 0.0, 0.0};
}

// Nothing if there is no such function with that many arguments.
std::optional<Affine> functionOf(std::string_view name, const std::vector<double>& v) {
  const std::size_t n = v.size();
  if (name == "matrix" && n == 6) {
    return Affine{v[0], v[1], v[2], v[3], v[4], v[5]};
  }
  if (name == "translate" && (n == 1 || n == 2)) {
    return translation(v[0], n == 2 ? v[1] : 0.0);
  }
  if (name == "scale" && (n == 1 || n == 2)) {
    return Affine{v[0], 0.0, 0.0, n == 2 ? v[1] : v[0], 0.0, 0.0};
  }
  if (name == "rotate" && n == 1) {
    return rotation(v[0]);
  }
  if (name == "rotate" && n == 3) {
    return translation(v[1], v[2]).after(rotation(v[0])).after(translation(-v[1], -v[2]));
  }
  if (name == "skewX" && n == 1) {
    return Affine{1.0, 0.0, std::tan(radians(v[0])), 1.0, 0.0, 0.0};
  }
  if (name == "skewY" && n == 1) {
    return Affine{1.0, std::tan(radians(v[0])), 0.0, 1.0, 0.0, 0.0};
  }
  return std::nullopt;
}

std::optional<std::vector<double>> takeArguments(SvgScanner& scanner) {
  scanner.skipSpaces();
  if (!scanner.take('(')) {
    return std::nullopt;
  }
  std::vector<double> arguments;
  scanner.skipSpaces();
  while (!scanner.take(')')) {
    const auto number = scanner.takeNumber();
    if (!number || arguments.size() == kMostArguments) {
      return std::nullopt;
    }
    arguments.push_back(*number);
    scanner.skipSeparator();
  }
  return arguments;
}

}  // namespace

Affine Affine::after(const Affine& inner) const {
  return {a * inner.a + c * inner.b, b * inner.a + d * inner.b,     a * inner.c + c * inner.d,
          b * inner.c + d * inner.d, a * inner.e + c * inner.f + e, b * inner.e + d * inner.f + f};
}

double Affine::largestStretch() const {
  return std::hypot(std::hypot(a, b), std::hypot(c, d));
}

Result<Affine> parseTransform(std::string_view text) {
  SvgScanner scanner(text);
  Affine whole;
  scanner.skipSpaces();
  while (!scanner.atEnd()) {
    const std::string_view name = scanner.takeWord();
    const auto arguments = takeArguments(scanner);
    const auto function = arguments ? functionOf(name, *arguments) : std::nullopt;
    if (!function) {
      return Refusal{worded("a transform {}", quotedText(text))};
    }
    whole = whole.after(*function);
    scanner.skipSeparator();
  }
  return whole;
}

}  // namespace creaseline
