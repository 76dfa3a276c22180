// SPDX-License-Identifier: MIT
// Regions: convex sets between two chains.
#include "creaseline/shape/region.h"

#include "shape/chain.h"
#include "shape/nearest.h"

namespace creaseline {

namespace {

// Rows and columns of a region that is a mere segment must be found in spite of rounding.
constexpr double kRoundingMm = 1e-11;

std::optional<Region::Interval> whereAtMost(const Chain& chain, double y) {
  return whereSumAtMostZero(
      chain, {lineSpan(chain.front().from, chain.back().to, 0.0, -(y + kRoundingMm))});
}

// The point of an upper-edge piece nearest to a given one.
Point nearestOnSpan(const Span& span, Point point) {
  const Point start{span.from, valueAt(span, span.from)};
  const Point end{span.to, valueAt(span, span.to)};
  if (span.radius == 0.0) {
    return nearestOnSegment(start, end, point);
  }
  const Point out = point - span.centre;
  const double distance = norm(out);
  if (distance > 0.0) {
    const Point on = span.centre + out * (span.radius / distance);
    if (out.y <= 0.0 && on.x >= span.from && on.x <= span.to) {
      return on;
    }
  }
  return norm(point - start) < norm(point - end) ? start : end;
}

void keepNearer(Point& best, Point candidate, Point wanted) {
  if (norm(candidate - wanted) < norm(best - wanted)) {
    best = candidate;
  }
}

// Points along an upper edge from left to right.
void appendPoints(Polyline& points, const Chain& chain, double tolerance) {
  points.push_back({chain.front().from, valueAt(chain.front(), chain.front().from)});
  for (const Span& span : chain) {
    if (span.radius > 0.0) {
      const auto angleOf = [&](double x) {
        return std::acos(std::clamp((x - span.centre.x) / span.radius, -1.0, 1.0));
      };
      const double start = angleOf(span.from);
      const double sweep = start - angleOf(span.to);
      const double step =
          2.0 * std::acos(std::max(0.0, 1.0 - std::max(tolerance, 1e-6) / span.radius));
      const int count = std::max(1, static_cast<int>(std::ceil(sweep / step)));
      for (int i = 1; i < count; ++i) {
        const double angle = start - sweep * i / count;
        points.push_back(span.centre + Point{std::cos(angle), -std::sin(angle)} * span.radius);
      }
    }
    points.push_back({span.to, valueAt(span, span.to)});
  }
}

// Distance from a point inside to an upper edge above it.
double distanceToEdge(const Chain& chain, Point point) {
  double least = std::numeric_limits<double>::infinity();
  for (const Span& span : chain) {
    least = std::min(least, norm(nearestOnSpan(span, point) - point));
  }
  return least;
}

// How far a point inside can go along (1, -1) or (-1, -1), in steps of that, before it meets the
// upper edge.
double stepsToEdge(const Chain& chain, Point point, double sideways) {
  // Where the edge meets the line y = point.y - sideways * (x - point.x): the edge less the line
  // is convex and not positive at the point.
  const Span line = lineSpan(chain.front().from, chain.back().to, sideways,
                             -(point.y + kRoundingMm) - sideways * point.x);
  const auto inside = whereSumAtMostZero(chain, {line});
  if (!inside) {
    return 0.0;
  }
  return std::max(0.0, sideways > 0.0 ? inside->high - point.x : point.x - inside->low);
}

std::optional<Region::Interval> rowBetween(const Chain& top, const Chain& flippedBottom, double y) {
  const auto belowTop = whereAtMost(top, y);
  const auto aboveBottom = whereAtMost(flippedBottom, -y);
  if (!belowTop || !aboveBottom) {
    return std::nullopt;
  }
  const Region::Interval both{std::max(belowTop->low, aboveBottom->low),
                              std::min(belowTop->high, aboveBottom->high)};
  if (both.low > both.high) {
    return std::nullopt;
  }
  return both;
}

OpenRegion opened(const std::vector<Span>& top, const std::vector<Span>& bottom) {
  return {top.front().from, top.back().to, top, flipped(bottom)};
}

}  // namespace

Region::Region(std::vector<Span> top, std::vector<Span> bottom)
    : top_(std::move(top)), bottom_(std::move(bottom)) {
}

bool Region::contains(Point point, double tolerance) const {
  if (empty()) {
    return false;
  }
  if (const auto open = column(point.x); open && open->low <= point.y && point.y <= open->high) {
    return true;
  }
  return tolerance > 0.0 && norm(nearest(point) - point) <= tolerance;
}

Box Region::bounds() const {
  if (empty()) {
    return {};
  }
  return {{top_.front().from, leastValue(top_)}, {top_.back().to, -leastValue(flipped(bottom_))}};
}

std::optional<Region::Interval> Region::column(double x) const {
  if (empty() || x < top_.front().from || x > top_.back().to) {
    return std::nullopt;
  }
  double low = valueAt(top_, x);
  double high = -valueAtFlipped(bottom_, x);
  if (low > high) {
    low = high = (low + high) / 2.0;
  }
  return Interval{low, high};
}

std::optional<Region::Interval> Region::row(double y) const {
  if (empty()) {
    return std::nullopt;
  }
  return rowBetween(top_, flipped(bottom_), y);
}

Point Region::balancedPoint() const {
  constexpr int kMostRounds = 100;
  const Chain below = flipped(bottom_);
  Point point = bounds().centre();
  for (int round = 0; round < kMostRounds; ++round) {
    const Point before = point;
    if (const auto open = rowBetween(top_, below, point.y)) {
      point.x = open->middle();
    }
    if (const auto open = column(point.x)) {
      point.y = open->middle();
    }
    if (norm(point - before) < 1e-10) {
      break;
    }
  }
  return point;
}

Point Region::nearest(Point point) const {
  if (contains(point)) {
    return point;
  }
  Point best{std::numeric_limits<double>::infinity(), 0.0};
  for (const Span& span : top_) {
    keepNearer(best, nearestOnSpan(span, point), point);
  }
  for (const Span& span : flipped(bottom_)) {
    const Point on = nearestOnSpan(span, {point.x, -point.y});
    keepNearer(best, {on.x, -on.y}, point);
  }
  for (const double x : {top_.front().from, top_.back().to}) {
    const auto open = column(x);
    keepNearer(best, {x, std::clamp(point.y, open->low, open->high)}, point);
  }
  return best;
}

double Region::discAround(Point point) const {
  if (!contains(point)) {
    return 0.0;
  }
  return std::min({distanceToEdge(top_, point),
                   distanceToEdge(flipped(bottom_), {point.x, -point.y}),
                   point.x - top_.front().from, top_.back().to - point.x});
}

double Region::squareAround(Point point) const {
  if (!contains(point)) {
    return 0.0;
  }
  const Chain bottom = flipped(bottom_);
  const Point below{point.x, -point.y};
  return std::min({stepsToEdge(top_, point, 1.0), stepsToEdge(top_, point, -1.0),
                   stepsToEdge(bottom, below, 1.0), stepsToEdge(bottom, below, -1.0)});
}

Ring Region::boundary(double tolerance) const {
  Polyline points;
  if (empty()) {
    return points;
  }
  appendPoints(points, top_, tolerance);
  Polyline below;
  appendPoints(below, flipped(bottom_), tolerance);
  for (auto point = below.rbegin(); point != below.rend(); ++point) {
    points.push_back({point->x, -point->y});
  }
  return points;
}

Region Region::intersected(const Region& other) const {
  if (empty() || other.empty()) {
    return {};
  }
  return closed(creaseline::intersected(opened(top_, bottom_), opened(other.top_, other.bottom_)));
}

}  // namespace creaseline
