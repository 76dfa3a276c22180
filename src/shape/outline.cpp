// SPDX-License-Identifier: MIT
// Outlines as wholes: bounds, area, movement, hull. Work on single rings is in ring.cpp.
#include "creaseline/shape/outline.h"

namespace creaseline {

namespace {

Ring transformedBy(const Ring& ring, Angle turn, double scale, Point shift) {
  Ring result;
  result.reserve(ring.size());
  for (const Point& point : ring) {
    result.push_back(turned(point, turn) * scale + shift);
  }
  return result;
}

}  // namespace

Outline Outline::rectangle(Length width, Length height) {
  const double x = width.mm() / 2.0;
  const double y = height.mm() / 2.0;
  return {{Piece{{{-x, -y}, {x, -y}, {x, y}, {-x, y}}, {}}}};
}

Box Outline::bounds() const {
  Box box;
  for (const Piece& piece : pieces) {
    for (const Point& point : piece.outer) {
      box.add(point);
    }
  }
  return box;
}

Area Outline::area() const {
  double sum = 0.0;
  for (const Piece& piece : pieces) {
    sum += ringArea(piece.outer);
    for (const Ring& hole : piece.holes) {
      sum -= ringArea(hole);
    }
  }
  return Area::fromSquareMm(sum);
}

Outline Outline::transformed(Angle turn, double scale, Point shift) const {
  Outline result;
  result.pieces.reserve(pieces.size());
  for (const Piece& piece : pieces) {
    Piece moved{transformedBy(piece.outer, turn, scale, shift), {}};
    for (const Ring& hole : piece.holes) {
      moved.holes.push_back(transformedBy(hole, turn, scale, shift));
    }
    result.pieces.push_back(std::move(moved));
  }
  return result;
}

Outline Outline::centred() const {
  const Box box = bounds();
  return box.empty() || norm(box.centre()) <= kCentredMm ? *this
                                                         : transformed(Angle(), 1.0, -box.centre());
}

Ring Outline::hull() const {
  std::vector<Point> points;
  for (const Piece& piece : pieces) {
    points.insert(points.end(), piece.outer.begin(), piece.outer.end());
  }
  return convexHull(std::move(points));
}

}  // namespace creaseline
