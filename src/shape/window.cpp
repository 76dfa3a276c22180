// SPDX-License-Identifier: MIT
// Windows: making them with checks, their size and their boundary.
#include "creaseline/shape/window.h"

#include <numbers>

#include "base/worded.h"
#include "creaseline/base/spoken_units.h"
#include "creaseline/shape/outline.h"
#include "shape/rounded_curve.h"

namespace creaseline {

namespace {

constexpr double kQuarter = std::numbers::pi / 2.0;
// Finer boundaries than this serve nobody and would exhaust memory.
constexpr double kFinestToleranceMm = 1e-6;

// Largest step along a circle of this radius whose chord stays within the tolerance.
double largestStep(double radius, double tolerance) {
  const double cosine = 1.0 - std::max(tolerance, kFinestToleranceMm) / radius;
  return cosine <= 0.0 ? kQuarter : 2.0 * std::acos(cosine);
}

int stepsPerQuarter(double radius, double tolerance) {
  return std::max(1, static_cast<int>(std::ceil(kQuarter / largestStep(radius, tolerance))));
}

void addPoint(Ring& ring, Point point) {
  if (ring.empty() || norm(ring.back() - point) > 1e-9) {
    ring.push_back(point);
  }
}

// Unit vector of the given share of a quarter, exact at its ends.
Point quarterPoint(int quarter, int step, int steps) {
  static constexpr Point kAxes[] = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
  if (step == 0 || step == steps) {
    return kAxes[(quarter + (step == 0 ? 0 : 1)) % 4];
  }
  const double angle = kQuarter * (quarter + static_cast<double>(step) / steps);
  return {std::cos(angle), std::sin(angle)};
}

Ring boundaryOf(const Window::Rectangle& form, double tolerance) {
  const double radius = form.cornerRadius.mm();
  const double x = form.width.mm() / 2.0 - radius;
  const double y = form.height.mm() / 2.0 - radius;
  const int steps = radius > 0.0 ? stepsPerQuarter(radius, tolerance) : 0;
  static constexpr Point kRoundedCorners[] = {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}};
  Ring ring;
  for (int quarter = 0; quarter < 4; ++quarter) {
    const Point centre{kRoundedCorners[quarter].x * x, kRoundedCorners[quarter].y * y};
    for (int step = 0; step <= steps; ++step) {
      addPoint(ring, centre + quarterPoint(quarter, step, steps) * radius);
    }
  }
  if (norm(ring.front() - ring.back()) <= 1e-9) {
    ring.pop_back();
  }
  return ring;
}

Ring boundaryOf(const Window::Ellipse& form, double tolerance) {
  const double x = form.width.mm() / 2.0;
  const double y = form.height.mm() / 2.0;
  // A chord over an eccentric angle u lies at most (1 - cos(u/2)) * (half axis) off the curve:
  // the ellipse is an affine image of the circle of its longer half axis.
  const int steps = stepsPerQuarter(std::max(x, y), tolerance);
  Ring ring;
  for (int quarter = 0; quarter < 4; ++quarter) {
    for (int step = 0; step < steps; ++step) {
      const Point unit = quarterPoint(quarter, step, steps);
      ring.push_back({unit.x * x, unit.y * y});
    }
  }
  return ring;
}

Ring boundaryOf(const Window::Rounded& form, double tolerance) {
  return roundedCurve(form.width.mm() / 2.0, form.height.mm() / 2.0, form.fullness,
                      std::max(tolerance, kFinestToleranceMm));
}

Ring boundaryOf(const Window::Polygon& form, double /*tolerance*/) {
  return form.points;
}

Refusal withoutArea(Length width, Length height) {
  return Refusal{worded("a window must have a positive width and height, not {} x {}",
                        spokenLength(width), spokenLength(height))};
}

}  // namespace

Result<Window> Window::rectangle(Length width, Length height, Length cornerRadius) {
  if (width <= Length() || height <= Length()) {
    return withoutArea(width, height);
  }
  if (cornerRadius < Length() || cornerRadius + cornerRadius > std::min(width, height)) {
    return Refusal{worded("the corner radius must be from 0 to half the smaller side ({}), not {}",
                          spokenLength(std::min(width, height) * 0.5), spokenLength(cornerRadius))};
  }
  return Window(Rectangle{width, height, cornerRadius});
}

Result<Window> Window::ellipse(Length width, Length height) {
  if (width <= Length() || height <= Length()) {
    return withoutArea(width, height);
  }
  return Window(Ellipse{width, height});
}

Result<Window> Window::rounded(Length width, Length height, double fullness) {
  if (width <= Length() || height <= Length()) {
    return withoutArea(width, height);
  }
  if (!(fullness >= 2.0 && fullness <= kMostFullness)) {
    return Refusal{
        worded("the fullness must be from 2 (an ellipse) to {}, not {}", kMostFullness, fullness)};
  }
  return Window(Rounded{width, height, fullness});
}

Result<Window> Window::polygon(Ring points) {
  for (const Point& point : points) {
    if (!(std::abs(point.x) <= Length::kLimitMm && std::abs(point.y) <= Length::kLimitMm)) {
      return Refusal{worded("every corner of a window must be a number within 1 km of the origin")};
    }
  }
  if (!isConvex(points)) {
    return Refusal{
        worded("a window's polygon must be convex and have three or more corners that are not in "
               "line")};
  }
  Ring hull = convexHull(std::move(points));
  const Point centre = ringBounds(hull).centre();
  if (norm(centre) > kCentredMm) {
    for (Point& point : hull) {
      point = point - centre;
    }
  }
  Window window(Polygon{std::move(hull)});
  if (window.width() <= Length() || window.height() <= Length()) {
    return Refusal{worded("a window must enclose an area")};
  }
  return window;
}

Length Window::width() const {
  if (const auto* polygon = std::get_if<Polygon>(&form_)) {
    return Length::fromMm(ringBounds(polygon->points).width());
  }
  if (const auto* rounded = std::get_if<Rounded>(&form_)) {
    return rounded->width;
  }
  const auto* rectangle = std::get_if<Rectangle>(&form_);
  return rectangle ? rectangle->width : std::get<Ellipse>(form_).width;
}

Length Window::height() const {
  if (const auto* polygon = std::get_if<Polygon>(&form_)) {
    return Length::fromMm(ringBounds(polygon->points).height());
  }
  if (const auto* rounded = std::get_if<Rounded>(&form_)) {
    return rounded->height;
  }
  const auto* rectangle = std::get_if<Rectangle>(&form_);
  return rectangle ? rectangle->height : std::get<Ellipse>(form_).height;
}

Area Window::area() const {
  if (const auto* polygon = std::get_if<Polygon>(&form_)) {
    return Area::fromSquareMm(ringArea(polygon->points));
  }
  if (const auto* ellipse = std::get_if<Ellipse>(&form_)) {
    return Area::fromSquareMm((ellipse->width * ellipse->height).squareMm() * kQuarter / 2.0);
  }
  if (const auto* rounded = std::get_if<Rounded>(&form_)) {
    // The area under Lamé's curve, by the beta function.
    const double share = std::tgamma(1.0 + 1.0 / rounded->fullness);
    return Area::fromSquareMm((rounded->width * rounded->height).squareMm() * share * share /
                              std::tgamma(1.0 + 2.0 / rounded->fullness));
  }
  const auto& rectangle = std::get<Rectangle>(form_);
  const double radius = rectangle.cornerRadius.mm();
  return Area::fromSquareMm((rectangle.width * rectangle.height).squareMm() -
                            (4.0 - std::numbers::pi) * radius * radius);
}

Ring Window::boundary(Length tolerance) const {
  return std::visit([&](const auto& form) { return boundaryOf(form, tolerance.mm()); }, form_);
}

}  // namespace creaseline
