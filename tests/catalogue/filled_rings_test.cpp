// SPDX-License-Identifier: MIT
// Pieces and holes by the fill rules, against winding numbers counted point by point.
#include "catalogue/filled_rings.h"

#include <catch2/catch.hpp>
#include <random>

#include "catalogue/outline_oracle.h"

namespace creaseline {
namespace {

struct Rectangle {
  int left, top, right, bottom;
  bool clockwise;
  [[nodiscard]] Ring ring() const {
    const double l = left;
    const double t = top;
    const double r = right;
    const double b = bottom;
    return clockwise ? Ring{{l, t}, {r, t}, {r, b}, {l, b}} : Ring{{l, t}, {l, b}, {r, b}, {r, t}};
  }
  [[nodiscard]] int winding(Point p) const {
    const bool inside = p.x > left && p.x < right && p.y > top && p.y < bottom;
    return inside ? (clockwise ? 1 : -1) : 0;
  }
  // Some of the one's boundary on either side of the other's.
  [[nodiscard]] bool crosses(const Rectangle& o) const {
    const bool apart = right <= o.left || o.right <= left || bottom <= o.top || o.bottom <= top;
    const bool within = left >= o.left && right <= o.right && top >= o.top && bottom <= o.bottom;
    const bool around = left <= o.left && right >= o.right && top <= o.top && bottom >= o.bottom;
    return !apart && !within && !around;
  }
};

Rectangle randomRectangle(std::mt19937& random) {
  std::uniform_int_distribution<int> place(0, 30);
  std::uniform_int_distribution<int> size(1, 25);
  const int left = place(random);
  const int top = place(random);
  return {left, top, left + size(random), top + size(random), random() % 2 == 0};
}

bool covered(const std::vector<Piece>& pieces, Point point) {
  for (const Piece& piece : pieces) {
    bool inside = contains(piece.outer, point);
    for (const Ring& hole : piece.holes) {
      inside = inside && !contains(hole, point);
    }
    if (inside) {
      return true;
    }
  }
  return false;
}

}  // namespace

TEST_CASE("filled parts agree with winding numbers point by point", "[catalogue][outline]") {
  const unsigned seed = 20266;
  CAPTURE(seed);
  std::mt19937 random(seed);
  int filledCases = 0;
  int refusedCases = 0;
  for (int i = 0; i < 4000; ++i) {
    CAPTURE(i);
    const FillRule rule = i % 2 == 0 ? FillRule::NonZero : FillRule::EvenOdd;
    std::vector<Rectangle> rectangles;
    std::vector<Ring> rings;
    bool unclear = false;
    for (std::size_t k = 0; k < 2 + random() % 4; ++k) {
      const Rectangle next = randomRectangle(random);
      for (const Rectangle& old : rectangles) {
        unclear = unclear || (next.crosses(old) &&
                              (rule == FillRule::EvenOdd || next.clockwise != old.clockwise));
      }
      rectangles.push_back(next);
      rings.push_back(next.ring());
    }
    const FilledRings filled = fillRings(rings, rule);
    CHECK(filled.crossing.has_value() == unclear);
    ++(unclear ? refusedCases : filledCases);
    if (filled.crossing) {
      continue;
    }
    for (double x = 0.5; x < 56; x += 1.0) {
      for (double y = 0.5; y < 56; y += 3.0) {
        int winding = 0;
        for (const Rectangle& rectangle : rectangles) {
          winding += rectangle.winding({x, y});
        }
        const bool expected = rule == FillRule::NonZero ? winding != 0 : winding % 2 != 0;
        if (covered(filled.pieces, {x, y}) != expected) {
          CAPTURE(x, y, winding);
          FAIL("a point is on the wrong side");
        }
      }
    }
  }
  CHECK(filledCases > 500);
  CHECK(refusedCases > 500);
}

TEST_CASE("a ring is tidied of repeated points and dropped if it is flat", "[catalogue][outline]") {
  CHECK(tidyRing({{0, 0}, {1, 0}, {1, 1e-9}, {1, 1}, {0, 1}, {1e-9, 0}}).size() == 4);
  CHECK(tidyRing({{0, 0}, {1, 0}, {2, 0}}).empty());
  CHECK(tidyRing({{0, 0}, {1, 0}}).empty());
  CHECK(tidyRing({}).empty());
  CHECK(tidyRing({{0, 0}, {1, 1}, {1, 0}, {0, 1}}).size() == 4);  // a bow is not flat
}

}  // namespace creaseline
