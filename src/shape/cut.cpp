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
constexpr double kSameMm = 1e-9;        // coordinates nearer than this are one event
constexpr double kSameLengthMm = 1e-6;  // crossed lengths, which are sums over many sides

// The crossed length as it changes at one coordinate: from there on slope and intercept are larger
// by these.
struct Change {
  double at = 0.0, slope = 0.0, intercept = 0.0;
};

// A ring's boundary passes a cut to and fro; the signed sum of the passages is the length inside.
void addChanges(std::vector<Change>& changes, const Ring& ring, CutDirection direction, bool hole) {
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
    changes.push_back({std::min(from, to), way * slope, way * intercept});
    changes.push_back({std::max(from, to), -way * slope, -way * intercept});
  }
}

std::vector<Change> changesOf(const Outline& outline, CutDirection direction) {
  std::vector<Change> changes;
  for (const Piece& piece : outline.pieces) {
    addChanges(changes, piece.outer, direction, false);
    for (const Ring& hole : piece.holes) {
      addChanges(changes, hole, direction, true);
    }
  }
  std::sort(changes.begin(), changes.end(),
            [](const Change& a, const Change& b) { return a.at < b.at; });
  return changes;
}

// The crossed length just after and just before every corner, in order: two entries for each
// stretch between neighbouring corners.
std::vector<CutPlace> profileOf(const Outline& outline, CutDirection direction) {
  const std::vector<Change> changes = changesOf(outline, direction);
  std::vector<CutPlace> profile;
  double slope = 0.0;
  double intercept = 0.0;
  for (std::size_t i = 0; i < changes.size();) {
    const double at = changes[i].at;
    if (i > 0) {
      profile.push_back({at, std::max(0.0, slope * at + intercept)});
    }
    for (; i < changes.size() && changes[i].at <= at + kSameMm; ++i) {
      slope += changes[i].slope;
      intercept += changes[i].intercept;
    }
    if (i < changes.size()) {
      profile.push_back({at, std::max(0.0, slope * at + intercept)});
    }
  }
  return profile;
}

// Where a ring's boundary passes the cut; a side belongs to one of its ends, so that a corner on
// the cut counts once.
void addPassages(std::vector<double>& passages, const Ring& ring, CutDirection direction, double at,
                 bool before) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    const double from = acrossCut(a, direction) - at;
    const double to = acrossCut(b, direction) - at;
    const bool passes = before ? (from < 0.0) != (to < 0.0) : (from <= 0.0) != (to <= 0.0);
    if (passes) {
      const double share = from / (from - to);
      passages.push_back(alongCut(a, direction) +
                         share * (alongCut(b, direction) - alongCut(a, direction)));
    }
  }
}

// Just before the cut, or just after it.
double crossedBeside(const Outline& outline, CutDirection direction, double at,
                     Region::Interval along, bool before) {
  double sum = 0.0;
  std::vector<double> passages;
  for (const Piece& piece : outline.pieces) {
    passages.clear();
    addPassages(passages, piece.outer, direction, at, before);
    for (const Ring& hole : piece.holes) {
      addPassages(passages, hole, direction, at, before);
    }
    std::sort(passages.begin(), passages.end());
    for (std::size_t i = 0; i + 1 < passages.size(); i += 2) {
      sum +=
          std::max(0.0, std::min(passages[i + 1], along.high) - std::max(passages[i], along.low));
    }
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
      places.push_back({(profile[first].at + profile[last].at) / 2.0, crossed});
    }
    first = last + 1;
  }
  return places;
}

double crossedLength(const Outline& outline, CutDirection direction, double at) {
  double before = 0.0;
  double after = 0.0;
  for (const Change& change : changesOf(outline, direction)) {
    const double length = change.slope * at + change.intercept;
    before += change.at < at ? length : 0.0;
    after += change.at <= at ? length : 0.0;
  }
  return std::max(0.0, std::min(before, after));
}

double crossedLength(const Outline& outline, CutDirection direction, double at,
                     Region::Interval along) {
  return std::min(crossedBeside(outline, direction, at, along, true),
                  crossedBeside(outline, direction, at, along, false));
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
