// SPDX-License-Identifier: MIT
// Finds places for labels on a drawing so that none overlaps another and each lies near what it
// names.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <optional>
#include <vector>

namespace creaseline {

// A label that wants its centre at `wanted`.
struct LabelWish {
  QSizeF size;
  QPointF wanted;
};
// Something that a label should rather not cover; the cost is per unit of covered share.
struct SoftObstacle {
  QRectF area;
  double cost = 1.0;
};

// Places labels in the given order: each takes the free place of least cost, which is the distance
// from its wanted place in steps plus the cost of what it covers. A label that finds no place
// inside `area` gets nothing. Candidates lie on a grid of `step` through the wanted place, so the
// same wishes always give the same places.
// O(labels * candidates * (labels + obstacles)).
[[nodiscard]] std::vector<std::optional<QRectF>> placeLabels(
    const std::vector<LabelWish>& wishes, const std::vector<SoftObstacle>& obstacles,
    const QRectF& area, double step);

}  // namespace creaseline
