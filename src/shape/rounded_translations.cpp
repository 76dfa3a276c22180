// SPDX-License-Identifier: MIT
// Translations that keep a hull inside a rectangle with rounded corners.
//
// Seen from the top left corner, whose arc has its centre at c, hull point p may not come closer
// to the outside than the quarter arc around c - p. All those arcs are translates of one convex
// curve, and two translates of a convex curve cross at most once: of two points, the one further
// left limits the left part and the one further up limits the right part. So a stack over the
// hull's points from the leftmost to the topmost gives the exact envelope in linear time. The
// other corners are the same picture mirrored.
#include <algorithm>
#include <limits>

#include "shape/nearest.h"
#include "shape/opening_part.h"

namespace creaseline {

namespace {

// Narrower regions are one column: their pieces would be shorter than rounding.
constexpr double kSingleColumnMm = 1e-12;

// Arcs of one corner's envelope, from the left; beyond the last one lies the flat side.
struct CornerArc {
  double from = 0.0;
  Point centre;
};

// `left` and `right` are the centres of the arcs of two hull points, with left.x > right.x and
// left.y < right.y: the first limits the left part. Returns where the second one takes over.
double takeover(Point left, Point right, double radius) {
  const double dx = left.x - right.x;
  const double dy = right.y - left.y;
  const double startOff = std::min(0.0, dx - radius);
  if (dy >= radius || startOff * startOff + dy * dy >= radius * radius) {
    // Where the first curve begins, the second one is already more strict.
    return -std::numeric_limits<double>::infinity();
  }
  const double squared = dx * dx + dy * dy;
  const double half = std::sqrt(std::max(0.0, radius * radius - squared / 4.0));
  const double shift = half * dy / std::sqrt(squared);
  if (shift >= dx / 2.0) {
    return (left.x + right.x) / 2.0 - shift;
  }
  // The first arc falls to the flat side of the second.
  const double height = left.y - (right.y - radius);
  return left.x - std::sqrt(std::max(0.0, radius * radius - height * height));
}

// Extremes of the hull as seen from a corner: sign turns it into the top left one.
struct CornerExtremes {
  std::size_t leftmost = 0;  // the highest of them
  std::size_t topmost = 0;   // the leftmost of them
};

Point mirrored(Point p, Point sign) {
  return {p.x * sign.x, p.y * sign.y};
}

CornerExtremes extremesSeenFrom(std::span<const Point> hull, Point sign) {
  CornerExtremes found;
  Point left = mirrored(hull[0], sign);
  Point top = left;
  for (std::size_t i = 1; i < hull.size(); ++i) {
    const Point p = mirrored(hull[i], sign);
    if (p.x < left.x || (p.x == left.x && p.y < left.y)) {
      left = p;
      found.leftmost = i;
    }
    if (p.y < top.y || (p.y == top.y && p.x < top.x)) {
      top = p;
      found.topmost = i;
    }
  }
  return found;
}

struct Walk {
  CornerExtremes ends;
  bool forwards = true;  // order of the hull's points from the leftmost to the topmost
};

// A rounded corner in mirrored coordinates, and the range of translations that it limits.
struct RoundedCorner {
  Point sign;
  Point centre;
  double radius = 0.0;
  double from = 0.0;   // least x that the straight side allows
  double level = 0.0;  // least y that the flat side allows
};

// A point whose arc is already below the flat side where the range begins limits nothing.
bool limitsNothing(Point centre, const RoundedCorner& corner) {
  const Point off{corner.from - centre.x, corner.level - centre.y};
  return off.x >= 0.0 || dot(off, off) <= corner.radius * corner.radius;
}

// Envelope of the corner's arcs in mirrored coordinates; the topmost point closes it.
std::vector<CornerArc> cornerEnvelope(std::span<const Point> hull, Walk walk,
                                      const RoundedCorner& corner) {
  std::vector<CornerArc> arcs;
  const std::size_t count = hull.size();
  for (std::size_t i = walk.ends.leftmost;;) {
    const Point centre = corner.centre - mirrored(hull[i], corner.sign);
    const bool last = i == walk.ends.topmost;
    double from = corner.from;
    bool limits = last || !limitsNothing(centre, corner);
    while (limits && !arcs.empty()) {
      const CornerArc& before = arcs.back();
      limits = centre.y > before.centre.y;  // if not: rounding of a level side, nothing new
      from =
          centre.x < before.centre.x ? takeover(before.centre, centre, corner.radius) : before.from;
      if (!limits || from > before.from) {
        break;
      }
      from = before.from;
      arcs.pop_back();
    }
    if (limits) {
      arcs.push_back({from, centre});
    }
    if (last) {
      return arcs;
    }
    i = walk.forwards ? (i + 1 == count ? 0 : i + 1) : (i == 0 ? count - 1 : i - 1);
  }
}

// The piece of a corner's curve in one column, in that corner's mirrored coordinates.
Span columnPiece(const std::vector<CornerArc>& arcs, double x, double level, double radius) {
  std::size_t i = arcs.size() - 1;
  while (i > 0 && arcs[i].from > x) {
    --i;
  }
  return x >= arcs[i].centre.x ? lineSpan(x, x, 0.0, level) : arcSpan(x, x, arcs[i].centre, radius);
}

// The pieces of a corner's curve within [from, to], without the flat side, in the corner's own
// coordinates from the left.
Chain arcPieces(const std::vector<CornerArc>& arcs, double from, double to, double radius) {
  Chain pieces;
  pieces.reserve(2 * arcs.size() + 2);
  for (std::size_t i = 0; i < arcs.size(); ++i) {
    const double start = std::max(from, arcs[i].from);
    const double end = std::min(to, i + 1 < arcs.size() ? arcs[i + 1].from : arcs[i].centre.x);
    if (start < end) {
      pieces.push_back(arcSpan(start, end, arcs[i].centre, radius));
    }
  }
  return pieces;
}

void mirrorInX(Chain& chain) {
  std::reverse(chain.begin(), chain.end());
  for (Span& span : chain) {
    span = arcSpan(-span.to, -span.from, {-span.centre.x, span.centre.y}, span.radius);
  }
}

// The larger of a left corner's piece and a right one's, which is mirrored, in a single column.
Span singleColumn(Span left, Span right, double from, double to) {
  right.centre.x = -right.centre.x;
  Span piece = valueAt(left, from) >= valueAt(right, to) ? left : right;
  piece.from = from;
  piece.to = to;
  return piece;
}

// The upper edge that two corners and the flat side between them make: the larger of the left
// corner's falling curve and the right corner's rising one.
Chain upperEdge(const std::vector<CornerArc>& left, const std::vector<CornerArc>& rightMirrored,
                double from, double to, double level, double radius) {
  if (to - from <= kSingleColumnMm) {
    return {singleColumn(columnPiece(left, from, level, radius),
                         columnPiece(rightMirrored, -to, level, radius), from, to)};
  }
  Chain falling = arcPieces(left, from, to, radius);
  Chain rising = arcPieces(rightMirrored, -to, -from, radius);
  mirrorInX(rising);
  const double flatFrom = falling.empty() ? from : falling.back().to;
  const double flatTo = rising.empty() ? to : rising.front().from;
  if (flatFrom <= flatTo) {
    if (flatFrom < flatTo) {
      falling.push_back(lineSpan(flatFrom, flatTo, 0.0, level));
    }
    falling.insert(falling.end(), rising.begin(), rising.end());
    return falling;
  }
  if (flatFrom < to) {
    falling.push_back(lineSpan(flatFrom, to, 0.0, level));
  }
  if (flatTo > from) {
    rising.insert(rising.begin(), lineSpan(from, flatTo, 0.0, level));
  }
  return larger(falling, rising);
}

}  // namespace

OpenRegion translationsIn(const RoundedShape& shape, std::span<const Point> hull) {
  static constexpr Point kSigns[4] = {{1, 1}, {-1, 1}, {1, -1}, {-1, -1}};
  CornerExtremes ends[4];
  for (std::size_t i = 0; i < 4; ++i) {
    ends[i] = extremesSeenFrom(hull, kSigns[i]);
  }
  const Box bounds{{hull[ends[0].leftmost].x, hull[ends[0].topmost].y},
                   {hull[ends[1].leftmost].x, hull[ends[2].topmost].y}};
  OpenRegion open{-shape.halfWidth - bounds.min.x, shape.halfWidth - bounds.max.x, {}, {}};
  if (open.from > open.to) {
    return open;
  }
  const double top = -shape.halfHeight - bounds.min.y;
  const double flippedBottom = -shape.halfHeight + bounds.max.y;
  if (shape.radius == 0.0) {
    open.top = {lineSpan(open.from, open.to, 0.0, top)};
    open.flippedBottom = {lineSpan(open.from, open.to, 0.0, flippedBottom)};
    return open;
  }
  const Point centre{shape.radius - shape.halfWidth, shape.radius - shape.halfHeight};
  const bool clockwise = windingSum(hull) >= 0.0;
  std::vector<CornerArc> arcs[4];
  for (std::size_t i = 0; i < 4; ++i) {
    // Clockwise leads from the leftmost point up; a mirror image turns that round.
    const bool mirror = kSigns[i].x * kSigns[i].y < 0.0;
    const RoundedCorner corner{kSigns[i], centre, shape.radius,
                               kSigns[i].x > 0.0 ? open.from : -open.to,
                               kSigns[i].y > 0.0 ? top : flippedBottom};
    arcs[i] = cornerEnvelope(hull, {ends[i], clockwise != mirror}, corner);
  }
  open.top = upperEdge(arcs[0], arcs[1], open.from, open.to, top, shape.radius);
  open.flippedBottom = upperEdge(arcs[2], arcs[3], open.from, open.to, flippedBottom, shape.radius);
  return open;
}

}  // namespace creaseline
