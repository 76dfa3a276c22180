// SPDX-License-Identifier: MIT
// The code on every page (QR Code, ISO/IEC 18004) by which a page is found again.
#pragma once

#include <QPainter>
#include <QPointF>
#include <QString>

#include "creaseline/planning/plan.h"

namespace creaseline {

inline constexpr double kPageCodeSize = 18.0;  // millimetres, quiet zone included

// What the code of a page says: "Creaseline 2026-118 page 12/47 line 3 left-chest".
[[nodiscard]] QString pageCodeText(const QString& orderId, int number, int count,
                                   const QString& about);

// The part of a design that is sewn in several, for what a code says: ", part 1 of 2", ", part 3 of
// 4 (row 2, column 1)". The same in every language, as are codes; empty for a whole design.
[[nodiscard]] QString pageCodePart(const PlacementPlan& plan);

// Paints the code with its quiet zone into a square of kPageCodeSize at `topLeft`. A text that no
// code of this size can carry readably is cut at its end, where the least important words are.
void paintPageCode(QPainter& painter, QPointF topLeft, const QString& text);

}  // namespace creaseline
