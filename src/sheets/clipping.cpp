// SPDX-License-Identifier: MIT
#include "sheets/clipping.h"

#include <cmath>
#include <optional>

namespace creaseline {

namespace {

struct Span {
  double from = 0.0, to = 1.0;
};

// Narrows the span to where `at + t * by` is at least zero; false if nothing is left.
bool narrow(Span& span, double at, double by) {
  if (by == 0.0) {
    return at >= 0.0;
  }
  const double t = -at / by;
  if (by > 0.0) {
    span.from = std::max(span.from, t);
  } else {
    span.to = std::min(span.to, t);
  }
  return span.from <= span.to;
}

std::optional<Span> inside(QPointF a, QPointF b, const QRectF& to) {
  const QPointF by = b - a;
  Span span;
  if (narrow(span, a.x() - to.left(), by.x()) && narrow(span, to.right() - a.x(), -by.x()) &&
      narrow(span, a.y() - to.top(), by.y()) && narrow(span, to.bottom() - a.y(), -by.y())) {
    return span;
  }
  return std::nullopt;
}

// The part of a ring where `depth`, linear in the plane, is at least zero.
template <class Depth>
QPolygonF clippedHalf(const QPolygonF& ring, Depth depth) {
  QPolygonF kept;
  for (qsizetype i = 0; i < ring.size(); ++i) {
    const QPointF a = ring[i];
    const QPointF b = ring[(i + 1) % ring.size()];
    const double depthA = depth(a);
    const double depthB = depth(b);
    if (depthA >= 0.0) {
      kept << a;
    }
    if ((depthA >= 0.0) != (depthB >= 0.0)) {
      kept << a + (b - a) * (depthA / (depthA - depthB));
    }
  }
  return kept;
}

}  // namespace

std::vector<QPolygonF> clippedLine(const QPolygonF& line, const QRectF& to) {
  std::vector<QPolygonF> parts;
  bool open = false;
  for (qsizetype i = 1; i < line.size(); ++i) {
    const QPointF a = line[i - 1];
    const QPointF by = line[i] - a;
    const auto span = inside(a, line[i], to);
    if (!span) {
      open = false;
      continue;
    }
    if (!open || span->from > 0.0) {
      parts.push_back({a + by * span->from});
    }
    parts.back() << a + by * span->to;
    open = span->to == 1.0;
  }
  return parts;
}

QPolygonF clippedArea(const QPolygonF& ring, const QRectF& to) {
  QPolygonF area = clippedHalf(ring, [&](QPointF p) { return p.x() - to.left(); });
  area = clippedHalf(area, [&](QPointF p) { return to.right() - p.x(); });
  area = clippedHalf(area, [&](QPointF p) { return p.y() - to.top(); });
  return clippedHalf(area, [&](QPointF p) { return to.bottom() - p.y(); });
}

std::vector<QPolygonF> dashes(const QPolygonF& line, const std::vector<double>& lengths) {
  std::vector<QPolygonF> drawn;
  std::size_t part = 0;  // even ones are drawn
  double left = lengths.front();
  if (!line.isEmpty()) {
    drawn.push_back({line.first()});
  }
  for (qsizetype i = 1; i < line.size(); ++i) {
    QPointF at = line[i - 1];
    double rest = std::hypot(line[i].x() - at.x(), line[i].y() - at.y());
    while (rest > left) {
      at += (line[i] - at) * (left / rest);
      rest -= left;
      if (part % 2 == 0) {
        drawn.back() << at;
      } else {
        drawn.push_back({at});
      }
      part = (part + 1) % lengths.size();
      left = lengths[part];
    }
    left -= rest;
    if (part % 2 == 0) {
      drawn.back() << line[i];
    }
  }
  return drawn;
}

}  // namespace creaseline
