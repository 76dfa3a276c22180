// SPDX-License-Identifier: MIT
// Text in any unit: measured and drawn with one font whose metrics do not depend on the device.
// Not a typesetter: one style a line, breaks at blanks.
#pragma once

#include <QColor>
#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <string>

namespace creaseline::lettering {

// `size` is the em in the painter's own units.
struct TextStyle {
  double size = 1.0;
  bool bold = false;
};

inline constexpr double kMmPerPoint = 25.4 / 72.0;
[[nodiscard]] constexpr double points(double value) {
  return value * kMmPerPoint;
}

// From one baseline to the next; the lines' boxes never touch.
[[nodiscard]] constexpr double lineHeight(TextStyle style) {
  return style.size * 1.22;
}
// From the top of a line to its baseline.
[[nodiscard]] constexpr double baseline(TextStyle style) {
  return style.size * 0.95;
}

[[nodiscard]] double textWidth(const QString& text, TextStyle style);
// Breaks at blanks, but not between a number and its fraction or unit, and within a word only where
// it alone is wider than the line. At least one line; no line is wider than `width` unless a single
// character is.
[[nodiscard]] QStringList wrapped(const QString& text, TextStyle style, double width);
// Of the widest word, which is the least that a line of this text needs.
[[nodiscard]] double widestWord(const QString& text, TextStyle style);
// Cut with an ellipsis to fit.
[[nodiscard]] QString elided(const QString& text, TextStyle style, double width);
[[nodiscard]] double wrappedHeight(const QString& text, TextStyle style, double width);

// `topLeft` is the corner of the line's box, not the baseline.
void draw(QPainter& painter, QPointF topLeft, const QString& text, TextStyle style,
          const QColor& colour);
// Draws wrapped lines; returns the height used.
double drawWrapped(QPainter& painter, QPointF topLeft, double width, const QString& text,
                   TextStyle style, const QColor& colour);

// Empty if the font that the sheets are made for is there; else a sentence that says what to
// install and what is used instead.
[[nodiscard]] std::string missingFontNote();

}  // namespace creaseline::lettering
