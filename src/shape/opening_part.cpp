// SPDX-License-Identifier: MIT
// Parts of an opening: preparation from a window, depth of a point.
#include "shape/opening_part.h"

#include <algorithm>

namespace creaseline {

namespace {

// Sine below which a face is upright.
constexpr double kUpright = 1e-12;
// Opposite faces that differ by no more than this, in millimetres and as unit vectors, are alike.
constexpr double kSameFace = 1e-11;

// From left (-180 degrees) over up (-90) to right (0) and down.
double faceAngle(Point normal) {
  const double angle = std::atan2(normal.y, normal.x);
  return normal.y == 0.0 && normal.x < 0.0 ? -angle : angle;
}

FacetedShape facesOf(const Ring& clockwise) {
  FacetedShape shape;
  shape.faces.reserve(clockwise.size());
  for (std::size_t i = 0; i < clockwise.size(); ++i) {
    const Point from = clockwise[i];
    const Point along = clockwise[(i + 1) % clockwise.size()] - from;
    const Point normal = Point{along.y, -along.x} * (1.0 / norm(along));
    const bool upright = std::abs(normal.y) <= kUpright;
    shape.faces.push_back({normal, dot(normal, from), upright ? 0.0 : -normal.x / normal.y,
                           upright ? 0.0 : 1.0 / normal.y, faceAngle(normal)});
  }
  std::stable_sort(shape.faces.begin(), shape.faces.end(),
                   [](const auto& a, const auto& b) { return a.angle < b.angle; });
  return shape;
}

std::variant<RoundedShape, FacetedShape> shapeOf(const Window& window, double ellipseTolerance) {
  if (const auto* rectangle = std::get_if<Window::Rectangle>(&window.form())) {
    return RoundedShape{rectangle->width.mm() / 2.0, rectangle->height.mm() / 2.0,
                        rectangle->cornerRadius.mm()};
  }
  return facesOf(window.boundary(Length::fromMm(ellipseTolerance)));
}

}  // namespace

// Signed distance from a rounded rectangle: the distance from the rectangle of the corners'
// centres, less the radius. Beyond a square corner the larger of the two overhangs counts: that
// is how much each side must gain.
double depthIn(const RoundedShape& shape, Point point) {
  const double x = std::abs(point.x) - (shape.halfWidth - shape.radius);
  const double y = std::abs(point.y) - (shape.halfHeight - shape.radius);
  if (shape.radius > 0.0 && x > 0.0 && y > 0.0) {
    return shape.radius - std::sqrt(x * x + y * y);
  }
  return shape.radius - std::max(x, y);
}

double depthIn(const FacetedShape& shape, Point point) {
  double depth = std::numeric_limits<double>::infinity();
  for (const FacetedShape::Face& face : shape.faces) {
    depth = std::min(depth, face.offset - dot(face.normal, point));
  }
  return depth;
}

OpeningPart::OpeningPart(const Window& window, double clearance, double ellipseTolerance)
    : shape_(shapeOf(window, ellipseTolerance)),
      clearance_(clearance),
      mostInset_(std::min(window.width(), window.height()).mm() / 2.0 - clearance),
      size_{window.width().mm(), window.height().mm()} {
}

OpenRegion OpeningPart::translations(std::span<const Point> hull, double furtherInset) const {
  const double inset = clearance_ + furtherInset - kTouchMm;
  if (const auto* rounded = std::get_if<RoundedShape>(&shape_)) {
    return translationsIn(rounded->inset(inset), hull);
  }
  return translationsIn(std::get<FacetedShape>(shape_), inset, hull);
}

double OpeningPart::depth(Point point) const {
  return std::visit([&](const auto& shape) { return depthIn(shape, point); }, shape_) - clearance_;
}

double OpeningPart::turnLimit(std::span<const Point> hull, Point at, double limit) const {
  const double inset = clearance_ - kTouchMm;
  if (const auto* rounded = std::get_if<RoundedShape>(&shape_)) {
    return turnLimitIn(rounded->inset(inset), hull, at, limit);
  }
  return turnLimitIn(std::get<FacetedShape>(shape_), inset, hull, at, limit);
}

bool OpeningPart::holds(const RigidTurn& turn) const {
  const double inset = clearance_ - kTouchMm;
  if (const auto* rounded = std::get_if<RoundedShape>(&shape_)) {
    return holdsIn(rounded->inset(inset), turn);
  }
  return holdsIn(std::get<FacetedShape>(shape_), inset, turn);
}

bool OpeningPart::symmetric() const {
  const auto* faceted = std::get_if<FacetedShape>(&shape_);
  if (faceted == nullptr) {
    return true;
  }
  const auto& faces = faceted->faces;
  const std::size_t half = faces.size() / 2;
  for (std::size_t i = 0; i < half; ++i) {
    if (norm(faces[i].normal + faces[i + half].normal) > kSameFace ||
        std::abs(faces[i].offset - faces[i + half].offset) > kSameFace) {
      return false;
    }
  }
  return faces.size() % 2 == 0;
}

}  // namespace creaseline
