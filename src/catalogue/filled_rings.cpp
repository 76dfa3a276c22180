// SPDX-License-Identifier: MIT
// Nesting of rings. Each ring is judged by the winding just outside and just inside of it: filled
// only inside is an outer ring, filled only outside is a hole, and else it is no boundary.
#include "catalogue/filled_rings.h"

#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/index/rtree.hpp>
#include <cmath>
#include <cstdlib>
#include <iterator>
#include <set>
#include <utility>

#include "shape/nearest.h"

namespace creaseline {
namespace {

namespace bg = boost::geometry;
namespace bgi = boost::geometry::index;

using TreePoint = bg::model::point<double, 2, bg::cs::cartesian>;
using TreeBox = bg::model::box<TreePoint>;

constexpr double kLeastAreaSquareMm = 1e-6;
constexpr double kSamePointMm = 1e-6;
// Nearer than this to a boundary a point is on it. Millimetres.
constexpr double kOnBoundaryMm = 1e-7;

struct RingSide {
  std::size_t ring = 0;
  Point from, to;
};

using RingPair = std::pair<std::size_t, std::size_t>;

TreeBox boxOf(Point a, Point b) {
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

double turnOf(Point a, Point b, Point c) {
  return cross(b - a, c - a);
}

bool oppositeSigns(double a, double b) {
  return (a < 0.0 && b > 0.0) || (a > 0.0 && b < 0.0);
}

// Where the sides cross inside both of them, if they do.
std::optional<Point> properCrossing(const RingSide& a, const RingSide& b) {
  const double atFrom = turnOf(b.from, b.to, a.from);
  const double atTo = turnOf(b.from, b.to, a.to);
  if (!oppositeSigns(atFrom, atTo) ||
      !oppositeSigns(turnOf(a.from, a.to, b.from), turnOf(a.from, a.to, b.to))) {
    return std::nullopt;
  }
  return a.from + (a.to - a.from) * (atFrom / (atFrom - atTo));
}

bool onBoundary(const Ring& ring, Point point) {
  return nearestSide(ring, point).distance <= kOnBoundaryMm;
}

// Corners and the middles of sides: rings that share parts of sides may have no corner off the
// other's boundary.
Ring probesOf(const Ring& ring) {
  Ring probes;
  probes.reserve(2 * ring.size());
  for (std::size_t i = 0; i < ring.size(); ++i) {
    probes.push_back(ring[i]);
    probes.push_back((ring[i] + ring[(i + 1) % ring.size()]) * 0.5);
  }
  return probes;
}

// A probe of `a` inside `b`, if `a` has probes both inside and outside.
std::optional<Point> crossingAtProbes(const Ring& a, const Ring& b) {
  std::optional<Point> inside;
  bool outside = false;
  for (const Point& probe : probesOf(a)) {
    if (onBoundary(b, probe)) {
      continue;
    }
    if (contains(b, probe)) {
      inside = probe;
    } else {
      outside = true;
    }
  }
  return outside ? inside : std::nullopt;
}

class Nesting {
 public:
  Nesting(const std::vector<Ring>& rings, FillRule rule) : rings_(rings), rule_(rule) {
    areas_.reserve(rings.size());
    for (const Ring& ring : rings) {
      areas_.push_back(windingSum(ring) / 2.0);
    }
  }

  FilledRings fill() {
    if (rings_.size() > 1) {
      meetSides();
    }
    if (crossing_) {
      return {{}, crossing_};
    }
    return {piecesWithHoles(), std::nullopt};
  }

 private:
  [[nodiscard]] bool mayOverlap(std::size_t a, std::size_t b) const {
    return rule_ == FillRule::NonZero && (areas_[a] > 0.0) == (areas_[b] > 0.0);
  }

  void noteCrossing(std::size_t a, std::size_t b, Point at) {
    if (mayOverlap(a, b)) {
      overlapping_.insert(std::minmax(a, b));
    } else {
      crossing_ = at;
    }
  }

  // Finds all pairs of rings whose boundaries meet.
  void meetSides() {
    using Entry = std::pair<TreeBox, std::size_t>;
    std::vector<RingSide> sides;
    std::vector<Entry> entries;
    for (std::size_t ring = 0; ring < rings_.size(); ++ring) {
      for (std::size_t i = 0; i < rings_[ring].size(); ++i) {
        const RingSide side{ring, rings_[ring][i], rings_[ring][(i + 1) % rings_[ring].size()]};
        entries.emplace_back(boxOf(side.from, side.to), sides.size());
        sides.push_back(side);
      }
    }
    const bgi::rtree<Entry, bgi::quadratic<16>> tree(entries);
    std::set<RingPair> near;
    for (std::size_t i = 0; i < sides.size() && !crossing_; ++i) {
      const auto meeting = bgi::intersects(entries[i].first);
      for (auto other = tree.qbegin(meeting); other != tree.qend() && !crossing_; ++other) {
        const RingSide& b = sides[other->second];
        if (b.ring <= sides[i].ring) {
          continue;
        }
        if (const auto at = properCrossing(sides[i], b)) {
          noteCrossing(sides[i].ring, b.ring, *at);
        } else if (onBoundary({b.from, b.to}, sides[i].from) ||
                   onBoundary({sides[i].from, sides[i].to}, b.from)) {
          near.emplace(sides[i].ring, b.ring);
        }
      }
    }
    meetCorners(near);
  }

  // Rings may also cross where the corner of one lies on the other.
  void meetCorners(const std::set<RingPair>& touching) {
    for (const auto& [a, b] : touching) {
      if (crossing_) {
        return;
      }
      auto at = crossingAtProbes(rings_[a], rings_[b]);
      at = at ? at : crossingAtProbes(rings_[b], rings_[a]);
      if (at) {
        noteCrossing(a, b, *at);
      }
    }
  }

  // Rings that do not cross: one probe off the boundary decides.
  [[nodiscard]] bool holds(std::size_t outer, std::size_t inner) const {
    if (std::abs(areas_[outer]) <= std::abs(areas_[inner]) ||
        overlapping_.contains(std::minmax(outer, inner))) {
      return false;
    }
    for (const Point& probe : probesOf(rings_[inner])) {
      if (!onBoundary(rings_[outer], probe)) {
        return contains(rings_[outer], probe);
      }
    }
    return true;  // all of it along the boundary of a larger ring
  }

  [[nodiscard]] std::vector<std::vector<std::size_t>> holders() const {
    using Entry = std::pair<TreeBox, std::size_t>;
    std::vector<Entry> entries;
    for (std::size_t i = 0; i < rings_.size(); ++i) {
      const Box box = ringBounds(rings_[i]);
      entries.emplace_back(boxOf(box.min, box.max), i);
    }
    const bgi::rtree<Entry, bgi::quadratic<16>> tree(entries);
    std::vector<std::vector<std::size_t>> holders(rings_.size());
    for (const auto& [box, ring] : entries) {
      std::vector<Entry> around;
      tree.query(bgi::covers(box), std::back_inserter(around));
      for (const Entry& candidate : around) {
        if (candidate.second != ring && holds(candidate.second, ring)) {
          holders[ring].push_back(candidate.second);
        }
      }
    }
    return holders;
  }

  [[nodiscard]] bool filled(int winding) const {
    return rule_ == FillRule::EvenOdd ? winding % 2 != 0 : winding != 0;
  }

  [[nodiscard]] int turns(std::size_t ring) const { return areas_[ring] > 0.0 ? 1 : -1; }

  [[nodiscard]] std::vector<Piece> piecesWithHoles() const {
    const auto around = holders();
    constexpr std::size_t kNoPiece = static_cast<std::size_t>(-1);
    std::vector<std::size_t> pieceOf(rings_.size(), kNoPiece);
    std::vector<std::size_t> holes;
    std::vector<Piece> pieces;
    for (std::size_t ring = 0; ring < rings_.size(); ++ring) {
      int outside = 0;
      for (const std::size_t holder : around[ring]) {
        outside += turns(holder);
      }
      const bool filledOutside = filled(outside);
      const bool filledInside = filled(outside + turns(ring));
      if (filledInside && !filledOutside) {
        pieceOf[ring] = pieces.size();
        pieces.push_back({rings_[ring], {}});
      } else if (filledOutside && !filledInside) {
        holes.push_back(ring);
      }
    }
    for (const std::size_t hole : holes) {
      std::size_t nearest = kNoPiece;
      for (const std::size_t holder : around[hole]) {
        if (pieceOf[holder] != kNoPiece &&
            (nearest == kNoPiece || std::abs(areas_[holder]) < std::abs(areas_[nearest]))) {
          nearest = holder;
        }
      }
      if (nearest != kNoPiece) {
        pieces[pieceOf[nearest]].holes.push_back(rings_[hole]);
      }
    }
    return pieces;
  }

  const std::vector<Ring>& rings_;
  FillRule rule_;
  std::vector<double> areas_;
  std::set<RingPair> overlapping_;
  std::optional<Point> crossing_;
};

}  // namespace

FilledRings fillRings(const std::vector<Ring>& rings, FillRule rule) {
  return Nesting(rings, rule).fill();
}

Ring tidyRing(Ring ring) {
  // Arcs come back to their start only up to rounding.
  const auto same = [](Point a, Point b) { return norm(a - b) <= kSamePointMm; };
  ring.erase(std::unique(ring.begin(), ring.end(), same), ring.end());
  while (ring.size() > 1 && same(ring.front(), ring.back())) {
    ring.pop_back();
  }
  // The ring's own area may be zero although it is wide: the two halves of a bow cancel out.
  return ringArea(convexHull(ring)) < kLeastAreaSquareMm ? Ring() : ring;
}

}  // namespace creaseline
