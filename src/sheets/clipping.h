// SPDX-License-Identifier: MIT
// Lines and areas cut to a rectangle, and lines cut to dashes. Done on the points themselves,
// because pictures in SVG keep neither a painter's clip nor the lengths of a pen's dashes.
#pragma once

#include <QPolygonF>
#include <QRectF>
#include <vector>

namespace creaseline {

// The parts of a chain that lie in the rectangle (K. Liang and B. Barsky, ACM Transactions on
// Graphics 3(1), 1984, side by side).
[[nodiscard]] std::vector<QPolygonF> clippedLine(const QPolygonF& line, const QRectF& to);
// The area of a ring in the rectangle, as one ring that may run along the rectangle's sides
// (I. Sutherland and G. Hodgman, Communications of the ACM 17(1), 1974). Empty if nothing is.
[[nodiscard]] QPolygonF clippedArea(const QPolygonF& ring, const QRectF& to);

// The drawn parts of a line whose parts of these lengths are drawn and left out by turns.
[[nodiscard]] std::vector<QPolygonF> dashes(const QPolygonF& line,
                                            const std::vector<double>& lengths);

}  // namespace creaseline
