// SPDX-License-Identifier: MIT
// Attribute values of SVG elements and inherited painting.
#include "catalogue/svg_attributes.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "base/number_text.h"
#include "base/quoted_text.h"
#include "base/worded.h"
#include "catalogue/svg_scanner.h"
#include "creaseline/base/length.h"

namespace creaseline {
namespace {

struct ViewBox {
  double x = 0.0, y = 0.0, width = 0.0, height = 0.0;
};

std::optional<ViewBox> parseViewBox(std::string_view text) {
  SvgScanner scanner(text);
  ViewBox box;
  for (double* number : {&box.x, &box.y, &box.width, &box.height}) {
    scanner.skipSeparator();
    const auto value = scanner.takeNumber();
    if (!value) {
      return std::nullopt;
    }
    *number = *value;
  }
  scanner.skipSpaces();
  if (!scanner.atEnd() || !(box.width > 0.0 && box.height > 0.0)) {
    return std::nullopt;
  }
  return box;
}

}  // namespace

bool isSvgZero(std::string_view text) {
  SvgScanner scanner(text);
  scanner.skipSpaces();
  const auto number = scanner.takeNumber();
  return number && *number <= 0.0;
}

std::optional<double> mmPerSvgUnit(std::string_view unit) {
  constexpr std::pair<std::string_view, double> kUnits[] = {{"mm", 1.0},
                                                            {"cm", 10.0},
                                                            {"in", Length::kMmPerInch},
                                                            {"pt", Length::kMmPerInch / 72.0},
                                                            {"pc", Length::kMmPerInch / 6.0}};
  for (const auto& [name, mm] : kUnits) {
    if (name == unit) {
      return mm;
    }
  }
  return std::nullopt;
}

SvgAttributes::SvgAttributes(const char* const* namesAndValues) {
  for (const char* const* entry = namesAndValues; entry[0] != nullptr; entry += 2) {
    values_.insert_or_assign(entry[0], entry[1]);
  }
  const auto style = values_.find("style");
  if (style != values_.end()) {
    addStyle(std::string(style->second));
  }
}

void SvgAttributes::addStyle(std::string_view style) {
  while (!style.empty()) {
    const std::size_t end = std::min(style.find(';'), style.size());
    const std::string_view declaration = style.substr(0, end);
    style.remove_prefix(std::min(end + 1, style.size()));
    const std::size_t colon = declaration.find(':');
    if (colon != std::string_view::npos) {
      values_.insert_or_assign(std::string(withoutOuterSpaces(declaration.substr(0, colon))),
                               std::string(withoutOuterSpaces(declaration.substr(colon + 1))));
    }
  }
}

std::string_view SvgAttributes::value(std::string_view name) const {
  const auto found = values_.find(name);
  return found == values_.end() ? std::string_view() : withoutOuterSpaces(found->second);
}

SvgPaint SvgPaint::inheritedBy(const SvgAttributes& attributes) const {
  SvgPaint paint = *this;
  const std::string_view fill = attributes.value("fill");
  if (!fill.empty() && fill != "inherit") {
    paint.filled = fill != "none" && fill != "transparent";
  }
  const std::string_view fillRule = attributes.value("fill-rule");
  if (fillRule == "evenodd" || fillRule == "nonzero") {
    paint.rule = fillRule == "evenodd" ? FillRule::EvenOdd : FillRule::NonZero;
  }
  const std::string_view shown = attributes.value("visibility");
  if (shown == "hidden" || shown == "collapse") {
    paint.visible = false;
  } else if (shown == "visible") {
    paint.visible = true;
  }
  if (isSvgZero(attributes.value("fill-opacity"))) {
    paint.filled = false;
  }
  return paint;
}

Result<double> parsePhysicalSize(std::string_view text) {
  SvgScanner scanner(text);
  scanner.skipSpaces();
  const auto number = scanner.takeNumber();
  scanner.skipSpaces();
  const auto unit = mmPerSvgUnit(scanner.takeWord());
  scanner.skipSpaces();
  const double mm = number && unit ? *number * *unit : 0.0;
  if (!scanner.atEnd() || !(mm > 0.0 && mm <= Length::kLimitMm)) {
    return Refusal{text.empty() ? worded("no width or height")
                                : worded("a size of {}", quotedText(text))};
  }
  return mm;
}

Result<Affine> viewportMap(const SvgAttributes& root) {
  const auto width = parsePhysicalSize(root.value("width"));
  const auto height = parsePhysicalSize(root.value("height"));
  if (!width || !height) {
    return Refusal{(width ? height : width).message()};
  }
  if (!root.has("viewBox")) {
    return Affine{kMmPerSvgPixel, 0.0, 0.0, kMmPerSvgPixel, 0.0, 0.0};
  }
  const auto box = parseViewBox(root.value("viewBox"));
  if (!box) {
    return Refusal{worded("a viewBox {}", quotedText(root.value("viewBox")))};
  }
  double scaleX = *width / box->width;
  double scaleY = *height / box->height;
  const std::string_view aspect = root.value("preserveAspectRatio");
  if (!aspect.starts_with("none")) {
    const bool slice = aspect.find("slice") != std::string_view::npos;
    scaleX = scaleY = slice ? std::max(scaleX, scaleY) : std::min(scaleX, scaleY);
  }
  return Affine{scaleX, 0.0, 0.0, scaleY, -box->x * scaleX, -box->y * scaleY};
}

}  // namespace creaseline
