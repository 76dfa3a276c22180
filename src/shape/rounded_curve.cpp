// SPDX-License-Identifier: MIT
#include "shape/rounded_curve.h"

#include <cmath>

namespace creaseline {

namespace {

struct Corner {
  Point normal;  // unit vector, outwards
  Point at;
};

class Quarter {
 public:
  Quarter(double halfWidth, double halfHeight, double fullness, double tolerance)
      : halfWidth_(halfWidth),
        halfHeight_(halfHeight),
        fullness_(fullness),
        tolerance_(tolerance) {}

  // From (halfWidth, 0) to (0, halfHeight), without the last.
  [[nodiscard]] Ring points() {
    const Corner first{{1, 0}, {halfWidth_, 0}};
    const Corner last{{0, 1}, {0, halfHeight_}};
    ring_ = {first.at};
    addBetween(first, last, 0);
    ring_.pop_back();
    return std::move(ring_);
  }

 private:
  // The point with that normal, which is square to neither axis. The normal has the direction of
  // ((x/a)^(f-1) / a, (y/b)^(f-1) / b), so x/a and y/b have the ratio of (a nx)^(1/(f-1)) and
  // (b ny)^(1/(f-1)).
  [[nodiscard]] Corner cornerAt(Point normal) const {
    const double exponent = 1.0 / (fullness_ - 1.0);
    const double x = std::pow(halfWidth_ * normal.x, exponent);
    const double y = std::pow(halfHeight_ * normal.y, exponent);
    const double size = std::pow(std::pow(x, fullness_) + std::pow(y, fullness_), 1.0 / fullness_);
    return {normal, {halfWidth_ * x / size, halfHeight_ * y / size}};
  }

  // Height of the triangle of chord and tangents over the chord.
  [[nodiscard]] static double largestError(const Corner& a, const Corner& b) {
    const Point chord = b.at - a.at;
    const double turn = cross(a.normal, b.normal);
    // The tangents meet at a.at + tangent * along.
    const Point tangent{-a.normal.y, a.normal.x};
    const double along = dot(b.normal, chord) / turn;
    return std::abs(cross(chord, tangent * along)) / norm(chord);
  }

  void addBetween(const Corner& a, const Corner& b, int depth) {
    constexpr int kDeepest = 48;  // normals closer than this are the same number
    if (depth == kDeepest || largestError(a, b) <= tolerance_) {
      ring_.push_back(b.at);
      return;
    }
    const Point sum = a.normal + b.normal;
    const Corner middle = cornerAt(sum * (1.0 / norm(sum)));
    addBetween(a, middle, depth + 1);
    addBetween(middle, b, depth + 1);
  }

  double halfWidth_, halfHeight_, fullness_, tolerance_;
  Ring ring_;
};

}  // namespace

Ring roundedCurve(double halfWidth, double halfHeight, double fullness, double tolerance) {
  const Ring quarter = Quarter(halfWidth, halfHeight, fullness, tolerance).points();
  // Mirrored, so that opposite sides are alike to the last digit.
  Ring ring = quarter;
  ring.push_back({0, halfHeight});
  for (std::size_t i = quarter.size(); i-- > 0;) {
    ring.push_back({-quarter[i].x, quarter[i].y});
  }
  for (std::size_t i = 1; i < quarter.size(); ++i) {
    ring.push_back({-quarter[i].x, -quarter[i].y});
  }
  ring.push_back({0, -halfHeight});
  for (std::size_t i = quarter.size(); --i > 0;) {
    ring.push_back({quarter[i].x, -quarter[i].y});
  }
  return ring;
}

}  // namespace creaseline
