// SPDX-License-Identifier: MIT
#include "shape/misfit.h"

#include <cmath>
#include <numbers>

namespace creaseline {

namespace {

// Adds the limit with that normal, times the weight, to what the proof says about turning.
void addLimit(Misfit& misfit, std::span<const Point> hull, Point normal, double weight) {
  if (weight <= 0.0) {
    return;
  }
  Point bearing = hull.front();
  double farthest = dot(bearing, normal);
  for (const Point& point : hull) {
    const double distance = dot(point, normal);
    if (distance > farthest) {
      farthest = distance;
      bearing = point;
    }
  }
  misfit.along += weight * farthest;
  misfit.across += weight * dot(normal, {-bearing.y, bearing.x});
}

}  // namespace

// With u = tan(a / 2) the zeros of the sum are those of (gap + 2 along) u^2 - 2 across u + gap;
// the stable form of the quadratic formula keeps the small one exact.
std::optional<double> Misfit::turnToOpen(double way) const {
  const double swing = across * way;
  const double square = gap + 2.0 * along;
  const double discriminant = swing * swing - square * gap;
  if (discriminant < 0.0) {
    return std::nullopt;
  }
  const double sum = swing + std::copysign(std::sqrt(discriminant), swing);
  if (sum == 0.0) {
    return std::nullopt;
  }
  const auto turnOf = [](double tangent) {
    const double turn = 2.0 * std::atan(tangent);
    return turn > 0.0 ? turn : turn + 2.0 * std::numbers::pi;
  };
  return std::min(turnOf(sum / square), turnOf(gap / sum));
}

Misfit misfitOf(const OpenRegion& open, std::span<const Point> hull) {
  Misfit misfit;
  if (open.from > open.to) {
    misfit.gap = open.to - open.from;
    addLimit(misfit, hull, {-1, 0}, 1.0);
    addLimit(misfit, hull, {1, 0}, 1.0);
    return misfit;
  }
  // In the tallest column, tangents above and below whose slopes cancel; at a kink a mixture of
  // those to its left and to its right, at an end of the interval the upright limit there.
  const LeastSum least = leastSum(open.top, open.flippedBottom);
  const Slopes top = slopesAt(open.top, least.x);
  const Slopes bottom = slopesAt(open.flippedBottom, least.x);
  const double before = top.before + bottom.before;
  const double after = top.after + bottom.after;
  double share = before >= 0.0 ? 1.0 : 0.0;  // of the tangents to the left
  if (before < 0.0 && after > 0.0) {
    share = after / (after - before);
  }
  addLimit(misfit, hull, {top.before, -1}, share);
  addLimit(misfit, hull, {top.after, -1}, 1.0 - share);
  addLimit(misfit, hull, {bottom.before, 1}, share);
  addLimit(misfit, hull, {bottom.after, 1}, 1.0 - share);
  misfit.gap = -least.value;
  const double rest = share * before + (1.0 - share) * after;
  // Slopes that cancel but for rounding need no upright limit, which may be kilometres away.
  constexpr double kCancelled = 1e-12;
  if (std::abs(rest) > kCancelled * (std::abs(top.after) + std::abs(bottom.after) + 1.0)) {
    addLimit(misfit, hull, {rest > 0.0 ? -1.0 : 1.0, 0}, std::abs(rest));
    misfit.gap += std::abs(rest) * (rest > 0.0 ? least.x - open.from : open.to - least.x);
  }
  return misfit;
}

}  // namespace creaseline
