// SPDX-License-Identifier: MIT
#include "creaseline/shape/cut.h"

#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <cmath>
#include <optional>
#include <utility>

#include "shape/nearest.h"

namespace creaseline {
namespace {

namespace bg = boost::geometry;

using ClipPoint = bg::model::d2::point_xy<double>;
using ClipPolygon = bg::model::polygon<ClipPoint>;

constexpr double kLeastAreaSquareMm = 1e-6;
constexpr double kSameMm = 1e-6;        // coordinates nearer than this are one event
constexpr double kSameLengthMm = 1e-6;  // crossed lengths, which are sums over many sides

// The length of a piece that a cut crosses as it changes at one coordinate: from there on slope and
// intercept are larger by these.
struct Change {
  double at = 0.0, slope = 0.0, intercept = 0.0;
  std::size_t piece = 0;
};

// A length as a function of the cut's coordinate.
struct Line {
  double slope = 0.0, intercept = 0.0;
  [[nodiscard]] double at(double coordinate) const {
    return std::max(0.0, slope * coordinate + intercept);
  }
  void add(const Change& change) {
    slope += change.slope;
    intercept += change.intercept;
  }
};

// A ring's boundary passes a cut to and fro; the signed sum of the passages is the length inside.
void addChanges(std::vector<Change>& changes, const Ring& ring, CutDirection direction, bool hole,
                std::size_t piece) {
  const double orientation = windingSum(ring) < 0.0 ? -1.0 : 1.0;
  // Upright and level see the same winding from different hands.
  const double hand = direction == CutDirection::Upright ? -1.0 : 1.0;
  const double sign = orientation * hand * (hole ? -1.0 : 1.0);
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    const double from = acrossCut(a, direction);
    const double to = acrossCut(b, direction);
    if (from == to) {
      continue;
    }
    const double slope = (alongCut(b, direction) - alongCut(a, direction)) / (to - from);
    const double intercept = alongCut(a, direction) - slope * from;
    const double way = to > from ? sign : -sign;
    changes.push_back({std::min(from, to), way * slope, way * intercept, piece});
    changes.push_back({std::max(from, to), -way * slope, -way * intercept, piece});
  }
}

std::vector<Change> changesOf(const Outline& outline, CutDirection direction) {
  std::vector<Change> changes;
  for (std::size_t i = 0; i < outline.pieces.size(); ++i) {
    addChanges(changes, outline.pieces[i].outer, direction, false, i);
    for (const Ring& hole : outline.pieces[i].holes) {
      addChanges(changes, hole, direction, true, i);
    }
  }
  std::sort(changes.begin(), changes.end(),
            [](const Change& a, const Change& b) { return a.at < b.at; });
  return changes;
}

// The crossed length just before every corner, at it and just after it, in order.
std::vector<CutPlace> profileOf(const Outline& outline, CutDirection direction) {
  const std::vector<Change> changes = changesOf(outline, direction);
  std::vector<CutPlace> profile;
  std::vector<Line> lines(outline.pieces.size());
  Line sum;
  std::vector<std::pair<std::size_t, double>> touched;  // pieces and their lengths before
  for (std::size_t i = 0; i < changes.size();) {
    const double at = changes[i].at;
    const bool first = i == 0;
    const double before = sum.at(at);
    touched.clear();
    for (; i < changes.size() && changes[i].at <= at + kSameMm; ++i) {
      const std::size_t piece = changes[i].piece;
      if (std::none_of(touched.begin(), touched.end(),
                       [piece](const auto& each) { return each.first == piece; })) {
        touched.emplace_back(piece, lines[piece].at(at));
      }
      lines[piece].add(changes[i]);
      sum.add(changes[i]);
    }
    // Of a piece with a side along the cut only what lies on both sides of it is crossed.
    double here = before;
    for (const auto& [piece, length] : touched) {
      here -= std::max(0.0, length - lines[piece].at(at));
    }
    if (!first) {
      profile.push_back({at, before});
    }
    profile.push_back({at, std::max(0.0, here)});
    if (i < changes.size()) {
      profile.push_back({at, sum.at(at)});
    }
  }
  return profile;
}

// Where a ring's boundary passes the cut; a side belongs to one of its ends, so that a corner on
// the cut counts once. What is nearer than kSameMm lies on the cut.
void addPassages(std::vector<double>& passages, const Ring& ring, CutDirection direction, double at,
                 bool before) {
  const double side = before ? -kSameMm : kSameMm;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    const double from = acrossCut(a, direction) - at;
    const double to = acrossCut(b, direction) - at;
    if ((from < side) != (to < side)) {
      const double share = std::clamp(from / (from - to), 0.0, 1.0);
      passages.push_back(alongCut(a, direction) +
                         share * (alongCut(b, direction) - alongCut(a, direction)));
    }
  }
}

// The stretches of a piece just before the cut, or just after it, in order.
std::vector<Region::Interval> stretchesBeside(const Piece& piece, CutDirection direction, double at,
                                              bool before) {
  std::vector<double> passages;
  addPassages(passages, piece.outer, direction, at, before);
  for (const Ring& hole : piece.holes) {
    addPassages(passages, hole, direction, at, before);
  }
  std::sort(passages.begin(), passages.end());
  std::vector<Region::Interval> stretches;
  for (std::size_t i = 0; i + 1 < passages.size(); i += 2) {
    stretches.push_back({passages[i], passages[i + 1]});
  }
  return stretches;
}

double lengthWithin(const std::vector<Region::Interval>& stretches, Region::Interval along) {
  double sum = 0.0;
  for (const Region::Interval& stretch : stretches) {
    sum += std::max(0.0, std::min(stretch.high, along.high) - std::max(stretch.low, along.low));
  }
  return sum;
}

ClipPolygon clipPolygon(const Piece& piece) {
  ClipPolygon polygon;
  const auto append = [](auto& to, const Ring& ring) {
    for (const Point& point : ring) {
      bg::append(to, ClipPoint(point.x, point.y));
    }
  };
  append(polygon.outer(), piece.outer);
  for (const Ring& hole : piece.holes) {
    polygon.inners().emplace_back();
    append(polygon.inners().back(), hole);
  }
  bg::correct(polygon);
  return polygon;
}

// Without the repeated last point.
template <class ClipRing>
Ring ringOf(const ClipRing& clip) {
  Ring ring;
  for (const ClipPoint& point : clip) {
    ring.push_back({point.x(), point.y()});
  }
  if (ring.size() > 1 && ring.front() == ring.back()) {
    ring.pop_back();
  }
  return ring;
}

void clipPiece(std::vector<Piece>& result, const Piece& piece, const Box& box) {
  const bg::model::box<ClipPoint> clip({box.min.x, box.min.y}, {box.max.x, box.max.y});
  bg::model::multi_polygon<ClipPolygon> parts;
  bg::intersection(clipPolygon(piece), clip, parts);
  for (const ClipPolygon& part : parts) {
    Piece kept{ringOf(part.outer()), {}};
    if (kept.outer.size() < 3 || ringArea(kept.outer) < kLeastAreaSquareMm) {
      continue;
    }
    for (const auto& inner : part.inners()) {
      Ring hole = ringOf(inner);
      if (hole.size() >= 3 && ringArea(hole) >= kLeastAreaSquareMm) {
        kept.holes.push_back(std::move(hole));
      }
    }
    result.push_back(std::move(kept));
  }
}

}  // namespace

double acrossCut(Point point, CutDirection direction) {
  return direction == CutDirection::Upright ? point.x : point.y;
}

double alongCut(Point point, CutDirection direction) {
  return direction == CutDirection::Upright ? point.y : point.x;
}

Point pointOnCut(CutDirection direction, double across, double along) {
  return direction == CutDirection::Upright ? Point{across, along} : Point{along, across};
}

std::vector<CutPlace> cutPlaces(const Outline& outline, CutDirection direction) {
  const std::vector<CutPlace> profile = profileOf(outline, direction);
  const Box box = outline.bounds();
  const Region::Interval extent{alongCut(box.min, direction), alongCut(box.max, direction)};
  std::vector<CutPlace> places;
  for (std::size_t first = 0; first < profile.size();) {
    const double crossed = profile[first].crossed;
    std::size_t last = first;
    while (last + 1 < profile.size() &&
           std::abs(profile[last + 1].crossed - crossed) <= kSameLengthMm) {
      ++last;
    }
    // At the ends of the outline there is nothing to cut off.
    const bool inside = first > 0 && last + 1 < profile.size();
    if (inside && profile[first - 1].crossed > crossed && profile[last + 1].crossed > crossed) {
      const double at = (profile[first].at + profile[last].at) / 2.0;
      places.push_back(
          {at, crossed, crossed > kSameLengthMm || sewingMeets(outline, direction, at, extent)});
    }
    first = last + 1;
  }
  return places;
}

double crossedLength(const Outline& outline, CutDirection direction, double at) {
  std::vector<Line> before(outline.pieces.size());
  std::vector<Line> after(outline.pieces.size());
  for (const Change& change : changesOf(outline, direction)) {
    if (change.at < at - kSameMm) {
      before[change.piece].add(change);
    }
    if (change.at <= at + kSameMm) {
      after[change.piece].add(change);
    }
  }
  double sum = 0.0;
  for (std::size_t i = 0; i < before.size(); ++i) {
    sum += std::min(before[i].at(at), after[i].at(at));
  }
  return sum;
}

double crossedLength(const Outline& outline, CutDirection direction, double at,
                     Region::Interval along) {
  double sum = 0.0;
  for (const Piece& piece : outline.pieces) {
    sum += std::min(lengthWithin(stretchesBeside(piece, direction, at, true), along),
                    lengthWithin(stretchesBeside(piece, direction, at, false), along));
  }
  return sum;
}

bool sewingMeets(const Outline& outline, CutDirection direction, double at,
                 Region::Interval along) {
  std::vector<Region::Interval> before;
  std::vector<Region::Interval> after;
  for (const Piece& piece : outline.pieces) {
    for (const Region::Interval& stretch : stretchesBeside(piece, direction, at, true)) {
      before.push_back(stretch);
    }
    for (const Region::Interval& stretch : stretchesBeside(piece, direction, at, false)) {
      after.push_back(stretch);
    }
  }
  return std::any_of(before.begin(), before.end(), [&](const Region::Interval& one) {
    return lengthWithin(after, {std::max(one.low, along.low), std::min(one.high, along.high)}) >
           kSameLengthMm;
  });
}

Outline clipped(const Outline& outline, const Box& box) {
  Outline result;
  for (const Piece& piece : outline.pieces) {
    const Box extent = ringBounds(piece.outer);
    const bool inside = extent.min.x >= box.min.x && extent.min.y >= box.min.y &&
                        extent.max.x <= box.max.x && extent.max.y <= box.max.y;
    if (inside) {
      result.pieces.push_back(piece);
    } else if (gapBetween(extent, box) < 0.0) {
      clipPiece(result.pieces, piece, box);
    }
  }
  return result;
}

namespace {

// The stretch of a side that lies in the box, as shares of its length (Liang and Barsky, 1984).
std::optional<Region::Interval> stretchIn(Point from, Point along, const Box& box) {
  Region::Interval share{0.0, 1.0};
  const auto cut = [&share](double direction, double room) {
    if (direction == 0.0) {
      return room >= 0.0;
    }
    const double at = room / direction;
    (direction < 0.0 ? share.low : share.high) =
        direction < 0.0 ? std::max(share.low, at) : std::min(share.high, at);
    return share.low <= share.high;
  };
  const bool meets = cut(-along.x, from.x - box.min.x) && cut(along.x, box.max.x - from.x) &&
                     cut(-along.y, from.y - box.min.y) && cut(along.y, box.max.y - from.y);
  return meets ? std::optional(share) : std::nullopt;
}

void addSides(Box& bounds, const Ring& ring, const Box& box) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point from = ring[i];
    const Point along = ring[(i + 1) % ring.size()] - from;
    if (const auto share = stretchIn(from, along, box)) {
      bounds.add(from + along * share->low);
      bounds.add(from + along * share->high);
    }
  }
}

}  // namespace

Box boundsWithin(const Outline& outline, const Box& box) {
  constexpr double kSliver = 0.01;
  const Box inner = box.grown(-kSliver);
  Box bounds;
  if (inner.empty()) {
    return bounds;
  }
  for (const Piece& piece : outline.pieces) {
    if (gapBetween(ringBounds(piece.outer), inner) >= 0.0) {
      continue;
    }
    addSides(bounds, piece.outer, inner);
    for (const Ring& hole : piece.holes) {
      addSides(bounds, hole, inner);
    }
    // A corner of the box that lies in the sewing, with no side of it near.
    for (const Point corner :
         {inner.min, Point{inner.max.x, inner.min.y}, inner.max, Point{inner.min.x, inner.max.y}}) {
      const bool known = corner.x >= bounds.min.x && corner.x <= bounds.max.x &&
                         corner.y >= bounds.min.y && corner.y <= bounds.max.y;
      const bool sewn = !known && contains(piece.outer, corner) &&
                        std::none_of(piece.holes.begin(), piece.holes.end(),
                                     [corner](const Ring& hole) { return contains(hole, corner); });
      if (sewn) {
        bounds.add(corner);
      }
    }
  }
  return bounds;
}

std::vector<Region::Interval> clearStretches(const Outline& outline, CutDirection direction,
                                             double at, double clearance, Region::Interval range) {
  const Box band = [&] {
    Box box;
    box.add(pointOnCut(direction, at - clearance, range.low - clearance));
    box.add(pointOnCut(direction, at + clearance, range.high + clearance));
    return box;
  }();
  std::vector<Region::Interval> taken;
  for (const Piece& piece : clipped(outline, band).pieces) {
    const Box box = ringBounds(piece.outer);
    taken.push_back(
        {alongCut(box.min, direction) - clearance, alongCut(box.max, direction) + clearance});
  }
  std::sort(taken.begin(), taken.end(), [](const auto& a, const auto& b) { return a.low < b.low; });
  std::vector<Region::Interval> clear;
  double from = range.low;
  for (const Region::Interval& stretch : taken) {
    if (stretch.low > from) {
      clear.push_back({from, std::min(stretch.low, range.high)});
    }
    from = std::max(from, stretch.high);
  }
  if (from < range.high) {
    clear.push_back({from, range.high});
  }
  return clear;
}

}  // namespace creaseline
