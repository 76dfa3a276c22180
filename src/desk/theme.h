// SPDX-License-Identifier: MIT
// The desk's own colours beside the palette of the system, for light and dark, and the three
// states with their shapes and words. No state is ever told by colour alone.
#pragma once

#include <QColor>
#include <QIcon>
#include <QPainter>
#include <QPalette>
#include <QString>
#include <optional>

#include "creaseline/catalogue/rules.h"
#include "creaseline/planning/finding.h"
#include "creaseline/sheets/drawing_style.h"

namespace creaseline::desk {

[[nodiscard]] bool isDark(const QPalette& palette);

// Text colours of the states, each with a contrast of at least 4.5 to 1 on the palette's base
// (W3C WCAG 2.2, success criterion 1.4.3).
[[nodiscard]] QColor stateColour(Severity severity, const QPalette& palette);
// Secondary text, same contrast.
[[nodiscard]] QColor mutedText(const QPalette& palette);
// Thin lines between parts.
[[nodiscard]] QColor hairline(const QPalette& palette);
// Lines of a second size over the first; contrast of at least 3 to 1 on the table's ground (W3C
// WCAG 2.2, success criterion 1.4.11).
[[nodiscard]] QColor comparedColour(const QPalette& palette);
// The same over cloth of a colour: of the hues for it the one that is seen there at 3 to 1, and
// among those best on the ground as well.
[[nodiscard]] QColor comparedColour(const QPalette& palette, std::optional<Colour> cloth);
// Ground of the table canvas and of the size rail.
[[nodiscard]] QColor tableGround(const QPalette& palette);

// "■", "▲", "●"
[[nodiscard]] QString stateShape(Severity severity);
// Of a finding: "stop", "watch", "note". Of a garment: "stop", "watch", "fine".
[[nodiscard]] QString findingWord(Severity severity);
[[nodiscard]] QString garmentWord(Severity severity);
// Draws the shape itself, so that it does not depend on a font having it.
void paintState(QPainter& painter, const QRectF& box, Severity severity, const QColor& colour);

// The style of the shared garment drawing for this palette; `pixelsPerMm` of garment.
[[nodiscard]] DrawingStyle drawingStyle(const QPalette& palette, double pixelsPerMm,
                                        std::optional<Colour> cloth);

// An icon of the project, drawn in the palette's text colour at any size and pixel ratio.
[[nodiscard]] QIcon deskIcon(const QString& name);

}  // namespace creaseline::desk
