// SPDX-License-Identifier: MIT
// Reads the geometry attributes of one element.
#include "catalogue/svg_shapes.h"

#include <algorithm>
#include <string>
#include <utility>

#include "base/quoted_text.h"
#include "base/worded.h"
#include "catalogue/svg_path_data.h"
#include "catalogue/svg_scanner.h"

namespace creaseline {
namespace {

using Rings = Result<std::vector<Polyline>>;

// Reads the lengths of one element; the first bad one is remembered.
class Lengths {
 public:
  explicit Lengths(const SvgAttributes& attributes) : attributes_(attributes) {}

  // In user units; 0 if it is not there. Physical units count as CSS pixels do.
  double of(const char* name) {
    const std::string_view text = attributes_.value(name);
    if (text.empty()) {
      return 0.0;
    }
    SvgScanner scanner(text);
    const auto number = scanner.takeNumber();
    const std::string_view unit = scanner.takeWord();
    const auto mm = unit.empty() || unit == "px" ? kMmPerSvgPixel : mmPerSvgUnit(unit);
    if (!number || !mm || !scanner.atEnd()) {
      fail(std::string(name) + " " + quotedText(text));
      return 0.0;
    }
    return unit.empty() ? *number : *number * (*mm / kMmPerSvgPixel);
  }

  double notNegative(const char* name) {
    const double value = of(name);
    if (value < 0.0) {
      fail(std::string(name) + " " + quotedText(attributes_.value(name)));
    }
    return value;
  }

  [[nodiscard]] const std::string& problem() const { return problem_; }

 private:
  void fail(std::string problem) {
    if (problem_.empty()) {
      problem_ = std::move(problem);
    }
  }
  const SvgAttributes& attributes_;
  std::string problem_;
};

Refusal outOfRange() {
  return Refusal{worded("too many points, or a point out of range")};
}

Rings rectangleRings(const SvgAttributes& attributes, const CurveFlattener& flattener) {
  Lengths lengths(attributes);
  const double x = lengths.of("x");
  const double y = lengths.of("y");
  const double width = lengths.notNegative("width");
  const double height = lengths.notNegative("height");
  double radiusX = lengths.notNegative("rx");
  double radiusY = lengths.notNegative("ry");
  if (!lengths.problem().empty()) {
    return Refusal{lengths.problem()};
  }
  // Section 9.2: a radius that is not given is the other one; none exceeds half a side.
  radiusX = attributes.has("rx") ? radiusX : radiusY;
  radiusY = attributes.has("ry") ? radiusY : radiusX;
  radiusX = std::min(radiusX, width / 2.0);
  radiusY = std::min(radiusY, height / 2.0);
  Polyline ring{{x + radiusX, y}};
  bool fits = true;
  const auto corner = [&](Point end) {
    fits = fits && flattener.arc(ring, {radiusX, radiusY, 0.0, false, true, end});
  };
  const auto side = [&](Point end) { fits = fits && flattener.line(ring, end); };
  side({x + width - radiusX, y});
  corner({x + width, y + radiusY});
  side({x + width, y + height - radiusY});
  corner({x + width - radiusX, y + height});
  side({x + radiusX, y + height});
  corner({x, y + height - radiusY});
  side({x, y + radiusY});
  corner({x + radiusX, y});
  return fits ? Rings(std::vector<Polyline>{ring}) : Rings(outOfRange());
}

Rings ellipseRings(const SvgAttributes& attributes, const CurveFlattener& flattener, bool circle) {
  Lengths lengths(attributes);
  const Point centre{lengths.of("cx"), lengths.of("cy")};
  const double radiusX = lengths.notNegative(circle ? "r" : "rx");
  const double radiusY = circle ? radiusX : lengths.notNegative("ry");
  if (!lengths.problem().empty()) {
    return Refusal{lengths.problem()};
  }
  if (radiusX == 0.0 || radiusY == 0.0) {
    return std::vector<Polyline>{};  // section 9.3: not drawn
  }
  Ring ring;
  return flattener.ellipse(ring, centre, radiusX, radiusY) ? Rings(std::vector<Polyline>{ring})
                                                           : Rings(outOfRange());
}

Rings polygonRings(const SvgAttributes& attributes, const CurveFlattener& flattener) {
  SvgScanner scanner(attributes.value("points"));
  Polyline ring;
  scanner.skipSpaces();
  while (!scanner.atEnd()) {
    const auto x = scanner.takeNumber();
    scanner.skipSeparator();
    const auto y = x ? scanner.takeNumber() : std::nullopt;
    scanner.skipSeparator();
    if (!y) {
      return Refusal{worded("points {} where two numbers are due", quotedText(scanner.rest()))};
    }
    if (!flattener.line(ring, {*x, *y})) {
      return outOfRange();
    }
  }
  return std::vector<Polyline>{ring};
}

}  // namespace

std::optional<Result<std::vector<Polyline>>> shapeRings(std::string_view element,
                                                        const SvgAttributes& attributes,
                                                        const CurveFlattener& flattener,
                                                        std::size_t mostPoints) {
  if (element == "path") {
    return parsePathData(attributes.value("d"), flattener, mostPoints);
  }
  if (element == "rect") {
    return rectangleRings(attributes, flattener);
  }
  if (element == "circle" || element == "ellipse") {
    return ellipseRings(attributes, flattener, element == "circle");
  }
  if (element == "polygon" || element == "polyline") {
    return polygonRings(attributes, flattener);
  }
  return std::nullopt;
}

}  // namespace creaseline
