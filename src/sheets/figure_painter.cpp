// SPDX-License-Identifier: MIT
#include "sheets/figure_painter.h"

#include <QPainterPath>
#include <cmath>
#include <numbers>

#include "sheets/clipping.h"
#include "sheets/text.h"
#include "sheets/typography.h"

namespace creaseline {

using sheets::toQString;
using typography::kHeading;
using typography::kStrong;
using typography::kText;

namespace {

const QColor kTone(232, 232, 232);  // of the design: seen on paper, little ink
constexpr double kHair = 0.15;
constexpr double kThin = 0.25;
constexpr double kFirm = 0.35;
constexpr int kRingSides = 48;

lettering::TextStyle styleOf(const FigureText& text) {
  if (text.large) {
    return kHeading;
  }
  return text.strong ? kStrong : kText;
}

QPen flatPen(double width) {
  QPen pen(Qt::black, width);
  pen.setCapStyle(Qt::FlatCap);
  return pen;
}

QPen penOf(StrokeKind kind) {
  switch (kind) {
    case StrokeKind::Guide:
      return flatPen(kHair);
    case StrokeKind::Window:
    case StrokeKind::Collar:
    case StrokeKind::Fold:
      return flatPen(kFirm);
    case StrokeKind::Arrow:
      return QPen(Qt::NoPen);
    case StrokeKind::Crease:
    case StrokeKind::Design:
    case StrokeKind::Hole:
    case StrokeKind::Cut:
    case StrokeKind::Ruler:
    case StrokeKind::Register:
      break;
  }
  return flatPen(kThin);
}

// The line as its kind is drawn: whole, dashed or dash-dotted.
std::vector<QPolygonF> drawnParts(StrokeKind kind, const QPolygonF& line) {
  if (kind == StrokeKind::Crease) {
    return dashes(line, {6.0, 1.2, 0.6, 1.2});
  }
  if (kind == StrokeKind::Window) {
    return dashes(line, {3.0, 2.0});
  }
  return {line};
}

QRectF boxOf(const FigureText& text) {
  const lettering::TextStyle style = styleOf(text);
  const double width = lettering::textWidth(toQString(text.text), style);
  const double height = lettering::lineHeight(style);
  QPointF corner(text.at.x - width / 2.0, text.at.y - height / 2.0);
  switch (text.side) {
    case TextSide::Left:
      corner.setX(text.at.x - kTextGap - width);
      break;
    case TextSide::Right:
      corner.setX(text.at.x + kTextGap);
      break;
    case TextSide::Above:
      corner.setY(text.at.y - kTextGap - height);
      break;
    case TextSide::Below:
      corner.setY(text.at.y + kTextGap);
      break;
    case TextSide::Centre:
      break;
  }
  return {corner, QSizeF(width, height)};
}

}  // namespace

FigureOnPaper::FigureOnPaper(Figure figure, bool turned)
    : figure_(std::move(figure)), turned_(turned) {
  const Box& bounds = figure_.bounds;
  size_ = QSizeF(bounds.width(), bounds.height());
  transform_ = QTransform::fromTranslate(-bounds.min.x, -bounds.min.y);
  if (turned_) {
    // (x, y) to (height - y, x)
    transform_ *= QTransform(0.0, 1.0, -1.0, 0.0, bounds.height(), 0.0);
    size_.transpose();
  }
  texts_ = figure_.texts;
  for (const FigureCross& cross : figure_.crosses) {
    texts_.push_back(crossText(cross));
  }
  for (const FigureText& text : texts_) {
    words_.push_back(transform_.mapRect(boxOf(text)));
  }
}

QPointF FigureOnPaper::place(Point figurePoint) const {
  return transform_.map(QPointF(figurePoint.x, figurePoint.y));
}

QPolygonF FigureOnPaper::placed(const Polyline& line, bool closed) const {
  QPolygonF polygon;
  for (const Point point : line) {
    polygon << place(point);
  }
  if (closed && !line.empty()) {
    polygon << polygon.first();
  }
  return polygon;
}

void FigureOnPaper::paintStrokes(QPainter& painter, const QRectF& window) const {
  painter.setPen(Qt::NoPen);
  for (std::size_t i = 0; i < figure_.strokes.size(); ++i) {
    const StrokeKind kind = figure_.strokes[i].kind;
    if (kind != StrokeKind::Design && kind != StrokeKind::Arrow) {
      continue;
    }
    // A piece of the design and its holes are one area, so that what lies in a hole stays.
    QPainterPath area;
    area.setFillRule(Qt::OddEvenFill);
    area.addPolygon(clippedArea(placed(figure_.strokes[i].line, false), window));
    for (std::size_t k = i + 1; kind == StrokeKind::Design && k < figure_.strokes.size() &&
                                figure_.strokes[k].kind == StrokeKind::Hole;
         ++k) {
      area.addPolygon(clippedArea(placed(figure_.strokes[k].line, false), window));
    }
    painter.setBrush(kind == StrokeKind::Arrow ? QColor(Qt::black) : kTone);
    painter.drawPath(area);
  }
  painter.setBrush(Qt::NoBrush);
  for (const Stroke& stroke : figure_.strokes) {
    const QPen pen = penOf(stroke.kind);
    if (pen.style() == Qt::NoPen) {
      continue;
    }
    painter.setPen(pen);
    for (const QPolygonF& drawn : drawnParts(stroke.kind, placed(stroke.line, stroke.closed))) {
      for (const QPolygonF& part : clippedLine(drawn, window)) {
        painter.drawPolyline(part);
      }
    }
  }
}

void FigureOnPaper::paintCross(QPainter& painter, const QRectF& window,
                               const FigureCross& cross) const {
  Polyline ring;
  for (int i = 0; i < kRingSides; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / kRingSides;
    ring.push_back(cross.at + Point{std::cos(angle), std::sin(angle)} * kCrossRing);
  }
  painter.setPen(Qt::NoPen);
  painter.setBrush(Qt::white);
  painter.drawPolygon(clippedArea(placed(ring, false), window));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(Qt::black, kThin));
  const Point across = creaseline::turned({kCrossArm, 0.0}, cross.turn);
  const Point along = creaseline::turned({0.0, kCrossArm}, cross.turn);
  for (const Polyline& line : {Polyline{cross.at - across, cross.at + across},
                               Polyline{cross.at - along, cross.at + along}}) {
    for (const QPolygonF& part : clippedLine(placed(line, false), window)) {
      painter.drawPolyline(part);
    }
  }
  for (const QPolygonF& part : clippedLine(placed(ring, true), window)) {
    painter.drawPolyline(part);
  }
}

void FigureOnPaper::paintWord(QPainter& painter, const FigureText& text, const QRectF& box) const {
  // White under it, so that lines do not run through the letters.
  painter.fillRect(box, Qt::white);
  painter.save();
  painter.translate(turned_ ? box.topRight() : box.topLeft());
  if (turned_) {
    painter.rotate(90.0);
  }
  lettering::draw(painter, {0.0, 0.0}, toQString(text.text), styleOf(text), Qt::black);
  painter.restore();
}

std::vector<FigureOnPaper::WordPlace> FigureOnPaper::allWords() const {
  std::vector<WordPlace> places;
  for (std::size_t i = 0; i < words_.size(); ++i) {
    places.push_back({i, words_[i]});
  }
  return places;
}

std::vector<QRectF> FigureOnPaper::exact() const {
  const QPointF arms(kCrossArm, kCrossArm);
  std::vector<QRectF> boxes;
  for (const FigureCross& cross : figure_.crosses) {
    boxes.emplace_back(place(cross.at) - arms, place(cross.at) + arms);
  }
  QRectF rule;
  for (const Stroke& stroke : figure_.strokes) {
    if (stroke.kind == StrokeKind::Crease || stroke.kind == StrokeKind::Ruler) {
      // Lines have no area, which would be left out of a union of rectangles.
      rule |= placed(stroke.line, false).boundingRect().adjusted(-0.1, -0.1, 0.1, 0.1);
    }
  }
  if (!rule.isEmpty()) {
    boxes.push_back(rule);
  }
  return boxes;
}

void FigureOnPaper::paint(QPainter& painter, const QRectF& window,
                          const std::vector<WordPlace>& words) const {
  painter.save();
  painter.translate(-window.topLeft());
  paintStrokes(painter, window);
  for (const WordPlace& word : words) {
    if (!texts_[word.index].text.empty()) {
      paintWord(painter, texts_[word.index], word.box);
    }
  }
  for (const FigureCross& cross : figure_.crosses) {
    paintCross(painter, window, cross);
  }
  painter.restore();
}

}  // namespace creaseline
