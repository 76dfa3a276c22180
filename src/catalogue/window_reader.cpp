// SPDX-License-Identifier: MIT
// Windows of frames and rings of outlines.
#include "catalogue/window_reader.h"

#include "base/worded.h"
#include "creaseline/shape/outline.h"

namespace creaseline {

namespace {

constexpr std::size_t kMostWindowPoints = 1'000;
constexpr double kSmallestRingSquareMm = 1.0e-3;

Point readPoint(const JsonCursor& at, double unitMm) {
  const std::vector<JsonCursor> pair = at.items(2, 2, toBeWorded("coordinates, [x, y]"));
  const double limit = kLargestPart.mm() / unitMm;
  return {pair[0].number(-limit, limit) * unitMm, pair[1].number(-limit, limit) * unitMm};
}

Window usable(const Result<Window>& window, const JsonCursor& at) {
  if (!window) {
    at.failShown(worded("what makes a window: {}", window.message()));
  }
  return *window;
}

std::pair<Length, Length> readSides(const JsonCursor& at) {
  const std::vector<JsonCursor> sides = at.items(2, 2, toBeWorded("lengths, [width, height]"));
  return {sides[0].positiveLength(), sides[1].positiveLength()};
}

Window readPolygon(JsonObject& window, const JsonCursor& points) {
  Ring ring = readRing(points, readUnit(window.at("unit")), kMostWindowPoints);
  if (!isConvex(ring)) {
    points.fail(worded("a polygon that is not convex"),
                worded("corners that all turn the same way"));
  }
  return usable(Window::polygon(std::move(ring)), points);
}

}  // namespace

double readUnit(const JsonCursor& at) {
  const std::string unit = at.label();
  if (unit == "mm") {
    return 1.0;
  }
  if (unit == "cm") {
    return 10.0;
  }
  if (unit == "in") {
    return Length::kMmPerInch;
  }
  at.failShown(worded("one of {}", "mm, cm, in"));
}

Ring readRing(const JsonCursor& at, double unitMm, std::size_t most) {
  Ring ring;
  for (const JsonCursor& item : at.items(3, most, toBeWorded("points, [[x, y], ...]"))) {
    const Point point = readPoint(item, unitMm);
    if (ring.empty() || !(ring.back() == point)) {
      ring.push_back(point);
    }
  }
  while (ring.size() > 1 && ring.front() == ring.back()) {
    ring.pop_back();
  }
  if (ring.size() < 3) {
    at.fail(worded("a ring of {} different points", ring.size()), worded("at least 3"));
  }
  if (const std::optional<Point> crossing = selfCrossing(ring)) {
    at.fail(worded("an outline that crosses itself near ({:.2f} mm, {:.2f} mm)", crossing->x,
                   crossing->y),
            worded("sides that meet only at their ends"));
  }
  if (ringArea(ring) < kSmallestRingSquareMm) {
    at.fail(worded("a ring that encloses nothing"), worded("points around an area"));
  }
  return ring;
}

Window readWindow(const JsonCursor& at) {
  JsonObject window = at.object();
  const auto rectangle = window.find("rectangle");
  const auto ellipse = window.find("ellipse");
  const auto rounded = window.find("rounded");
  const auto polygon = window.find("polygon");
  if (int{rectangle.has_value()} + int{ellipse.has_value()} + int{rounded.has_value()} +
          int{polygon.has_value()} !=
      1) {
    at.failShown(worded("exactly one of the keys {}",
                        "\"rectangle\", \"ellipse\", \"rounded\", \"polygon\""));
  }
  Result<Window> result = Refusal{};
  if (rectangle) {
    const auto [width, height] = readSides(*rectangle);
    const auto radius = window.find("corner-radius");
    result = usable(
        Window::rectangle(width, height, radius ? radius->length({}, kLargestPart) : Length()),
        radius ? *radius : at);
  } else if (ellipse) {
    const auto [width, height] = readSides(*ellipse);
    result = usable(Window::ellipse(width, height), *ellipse);
  } else if (rounded) {
    const auto [width, height] = readSides(*rounded);
    const double fullness = window.at("fullness").number(2.0, Window::kMostFullness);
    result = usable(Window::rounded(width, height, fullness), *rounded);
  } else {
    result = readPolygon(window, *polygon);
  }
  window.finish();
  return *result;
}

}  // namespace creaseline
