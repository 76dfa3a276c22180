// SPDX-License-Identifier: MIT
// Greedy labelling over a grid of candidates; few labels, so exhaustive over places.
#include "sheets/label_layout.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace creaseline {
namespace {

double overlap(double from, double to, double otherFrom, double otherTo) {
  return std::min(to, otherTo) - std::max(from, otherFrom);
}

// Of a label at that distance from its place; no further than to `most`, beyond which it is of no
// interest by how much. Asked thousands of times a drawing.
double costOf(const QRectF& label, double distance, const std::vector<SoftObstacle>& obstacles,
              double most) {
  const double whole = label.width() * label.height();
  double cost = distance;
  for (const SoftObstacle& obstacle : obstacles) {
    if (cost >= most) {
      return cost;
    }
    const QRectF& area = obstacle.area;
    const double width = overlap(label.left(), label.right(), area.left(), area.right());
    const double height = overlap(label.top(), label.bottom(), area.top(), area.bottom());
    if (width > 0.0 && height > 0.0) {
      // Thin obstacles count by the share of themselves too, or a line would cost nothing.
      const double own = area.width() * area.height();
      cost += obstacle.cost * (width * height / whole + width * height / own);
    }
  }
  return cost;
}

bool meetsAny(const QRectF& label, const std::vector<std::optional<QRectF>>& placed, double gap) {
  const QRectF wide = label.adjusted(-gap, -gap, gap, gap);
  for (const auto& other : placed) {
    if (other && wide.intersects(*other)) {
      return true;
    }
  }
  return false;
}

// Cells of the square ring with that radius around the origin.
template <class Visit>
void forRing(int radius, Visit visit) {
  for (int i = -radius; i <= radius; ++i) {
    visit(i, -radius);
    if (radius > 0) {
      visit(i, radius);
    }
    if (i != -radius && i != radius) {
      visit(-radius, i);
      visit(radius, i);
    }
  }
}

std::optional<QRectF> bestPlace(const LabelWish& wish, const std::vector<SoftObstacle>& obstacles,
                                const std::vector<std::optional<QRectF>>& placed,
                                const QRectF& area, double step) {
  std::optional<QRectF> best;
  double least = std::numeric_limits<double>::infinity();
  const auto consider = [&](int column, int row) {
    QRectF label(QPointF(), wish.size);
    label.moveCenter(wish.wanted + QPointF(column * step, row * step));
    if (!area.contains(label)) {
      return;
    }
    const double cost = costOf(label, std::hypot(row, column), obstacles, least);
    if (cost < least && !meetsAny(label, placed, step / 3.0)) {
      least = cost;
      best = label;
    }
  };
  const double width = std::abs(wish.wanted.x() - area.center().x()) + area.width();
  const double height = std::abs(wish.wanted.y() - area.center().y()) + area.height();
  const int reach = static_cast<int>(std::ceil(std::max(width, height) / step));
  // A place on a ring costs its radius at least, so no further ring can be better.
  for (int radius = 0; radius <= reach && radius < least; ++radius) {
    forRing(radius, consider);
  }
  return best;
}

}  // namespace

std::vector<std::optional<QRectF>> placeLabels(const std::vector<LabelWish>& wishes,
                                               const std::vector<SoftObstacle>& obstacles,
                                               const QRectF& area, double step) {
  std::vector<std::optional<QRectF>> placed;
  for (const LabelWish& wish : wishes) {
    placed.push_back(bestPlace(wish, obstacles, placed, area, step));
  }
  return placed;
}

}  // namespace creaseline
