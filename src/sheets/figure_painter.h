// SPDX-License-Identifier: MIT
// Strokes a figure in true scale: one millimetre of figure is one of the painter's.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QSizeF>
#include <QTransform>
#include <vector>

#include "creaseline/planning/figure.h"

namespace creaseline {

// A figure as it lies on paper: moved so that its bounds begin at the origin, and perhaps turned
// by 90 degrees clockwise.
class FigureOnPaper {
 public:
  FigureOnPaper(Figure figure, bool turned);

  [[nodiscard]] QSizeF size() const { return size_; }
  [[nodiscard]] bool turned() const { return turned_; }
  [[nodiscard]] QPointF place(Point figurePoint) const;
  // Boxes of all words, in the order of texts, then crosses.
  [[nodiscard]] const std::vector<QRectF>& words() const { return words_; }

  // Boxes of what is measured from: each cross; crease and ruler together.
  [[nodiscard]] std::vector<QRectF> exact() const;

  // A word by its index in words(), and where it is put.
  struct WordPlace {
    std::size_t index = 0;
    QRectF box;
  };
  // Paints what lies in the window, its top left corner where the painter's origin is, and these
  // words.
  void paint(QPainter& painter, const QRectF& window, const std::vector<WordPlace>& words) const;
  [[nodiscard]] std::vector<WordPlace> allWords() const;

 private:
  void paintStrokes(QPainter& painter, const QRectF& window) const;
  void paintCross(QPainter& painter, const QRectF& window, const FigureCross& cross) const;
  void paintWord(QPainter& painter, const FigureText& text, const QRectF& box) const;
  [[nodiscard]] QPolygonF placed(const Polyline& line, bool closed) const;

  Figure figure_;
  bool turned_;
  QSizeF size_;
  QTransform transform_;
  std::vector<FigureText> texts_;  // and those of the crosses
  std::vector<QRectF> words_;
};

}  // namespace creaseline
