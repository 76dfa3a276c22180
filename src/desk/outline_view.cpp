// SPDX-License-Identifier: MIT
#include "desk/outline_view.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr double kOutlineMargin = 10.0;

QPolygonF polygonOf(const Ring& ring) {
  QPolygonF polygon;
  for (const Point& point : ring) {
    polygon.append(QPointF(point.x, point.y));
  }
  return polygon;
}

}  // namespace

OutlineView::OutlineView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("designOutlineView"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void OutlineView::show(const Design& design, const UnitChoice& units) {
  outline_ = design.outline;
  size_ = tr("%1 × %2", "width, height")
              .arg(toQString(formatLength(design.width, units)),
                   toQString(formatLength(design.height, units)));
  setAccessibleName(tr("Outline, %1").arg(size_));
  update();
}

QSize OutlineView::sizeHint() const {
  return {180, 150};
}

QSize OutlineView::minimumSizeHint() const {
  return {120, 80};
}

void OutlineView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), tableGround(palette()));
  const double text = fontMetrics().height() + 4;
  const QRectF room = QRectF(rect()).adjusted(kOutlineMargin, kOutlineMargin, -kOutlineMargin,
                                              -kOutlineMargin / 2.0 - text);
  painter.setPen(palette().color(QPalette::Text));
  painter.drawText(QRectF(0, height() - text - 2, width(), text), Qt::AlignCenter, size_);
  const Box bounds = outline_.bounds();
  if (outline_.empty() || bounds.empty() || room.width() <= 0 || room.height() <= 0) {
    return;
  }
  painter.setRenderHint(QPainter::Antialiasing);
  const double scale = std::min(room.width() / bounds.width(), room.height() / bounds.height());
  painter.translate(room.center());
  painter.scale(scale, scale);
  QPainterPath path;
  for (const Piece& piece : outline_.pieces) {
    path.addPolygon(polygonOf(piece.outer));
    path.closeSubpath();
    for (const Ring& hole : piece.holes) {
      path.addPolygon(polygonOf(hole));
      path.closeSubpath();
    }
  }
  QPen pen(palette().color(QPalette::Text), 1.2);
  pen.setCosmetic(true);
  painter.setPen(pen);
  QColor fill = palette().color(QPalette::Highlight);
  fill.setAlphaF(0.25F);
  painter.setBrush(fill);
  painter.drawPath(path);
}

}  // namespace creaseline::desk
