// SPDX-License-Identifier: MIT
// What the attributes of an SVG element say about its size and filling.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "catalogue/affine.h"
#include "catalogue/filled_rings.h"
#include "creaseline/base/length.h"
#include "creaseline/base/result.h"

namespace creaseline {

// Attributes by name; the declarations of a style attribute stand for the attributes of the same
// name and win over them.
class SvgAttributes {
 public:
  // As expat hands them over: name, value, name, value, null.
  explicit SvgAttributes(const char* const* namesAndValues);

  // Empty if it is not there.
  [[nodiscard]] std::string_view value(std::string_view name) const;
  [[nodiscard]] bool has(std::string_view name) const { return !value(name).empty(); }

 private:
  void addStyle(std::string_view style);
  std::map<std::string, std::string, std::less<>> values_;
};

// CSS 2.1, section 4.3.2: 96 px, 72 pt and 6 pc are an inch.
inline constexpr double kMmPerSvgPixel = Length::kMmPerInch / 96.0;
// For mm, cm, in, pt and pc.
std::optional<double> mmPerSvgUnit(std::string_view unit);

// True for a number that is zero or less, as opacities may be.
bool isSvgZero(std::string_view text);

// How elements inherit painting.
struct SvgPaint {
  bool filled = true;
  bool visible = true;
  FillRule rule = FillRule::NonZero;

  [[nodiscard]] SvgPaint inheritedBy(const SvgAttributes& attributes) const;
};

// Millimetres of "210mm", "8.5in", "21 cm", "72pt". A refusal if there is no such unit.
Result<double> parsePhysicalSize(std::string_view text);

// The map from user units to millimetres that the root's width, height, viewBox and
// preserveAspectRatio describe. W3C, SVG 1.1 (Second Edition), sections 7.2, 7.7 and 7.8.
Result<Affine> viewportMap(const SvgAttributes& root);

}  // namespace creaseline
