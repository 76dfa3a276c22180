// SPDX-License-Identifier: MIT
#include "desk/frame_picture.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "creaseline/sheets/garment_drawing.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr Length kTolerance = Length::fromNanometres(100'000);
constexpr double kMargin = 14.0;  // pixels, where the bracket finds room
constexpr double kBracket = 7.0;

QPainterPath pathOf(const Window& window) {
  QPolygonF polygon;
  for (const Point point : window.boundary(kTolerance)) {
    polygon << QPointF(point.x, point.y);
  }
  QPainterPath path;
  path.addPolygon(polygon);
  path.closeSubpath();
  return path;
}

}  // namespace

FramePicture::FramePicture(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("framePicture"));
  setAccessibleName(tr("Picture of the frame"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void FramePicture::show(const Frame& frame, Length clearance, const Window& field) {
  shown_ = Shown{frame, clearance, field};
  update();
}

void FramePicture::paintEvent(QPaintEvent*) {
  if (!shown_) {
    return;
  }
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Frame& frame = shown_->frame;
  const double scale = std::min((width() - 2.0 * kMargin) / frame.body.width().mm(),
                                (height() - 2.0 * kMargin) / frame.body.height().mm());
  painter.translate(QRectF(rect()).center());
  painter.scale(scale, scale);
  const auto line = [&](const QColor& colour, double pixels, Qt::PenStyle style = Qt::SolidLine) {
    QPen pen(colour, pixels, style);
    pen.setCosmetic(true);
    return pen;
  };
  const QColor text = palette().color(QPalette::Text);
  const QPainterPath window = pathOf(frame.window);
  painter.setPen(line(text, 1.4));
  painter.setBrush(hairline(palette()));
  painter.drawPath(pathOf(frame.body));
  painter.setBrush(palette().color(QPalette::Base));
  painter.drawPath(window);
  // What is sewn must lie in both: the window less the foot's clearance, and the machine's field.
  painter.save();
  painter.setClipPath(window);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(line(mutedText(palette()), 1.0, Qt::DashLine));
  painter.drawPath(pathOf(shown_->field));
  QPen clearance(hairline(palette()), 2.0 * shown_->clearance.mm(), Qt::SolidLine, Qt::FlatCap,
                 Qt::MiterJoin);
  painter.setPen(clearance);
  painter.setOpacity(0.5);
  painter.drawPath(window);
  painter.restore();
  painter.setPen(Qt::NoPen);
  painter.setBrush(text);
  const QSizeF body(frame.body.width().mm(), frame.body.height().mm());
  for (const Point side : bracketDirections(frame.bracket)) {
    const QPointF at(side.x * body.width() / 2.0, side.y * body.height() / 2.0);
    const double out = kBracket / scale;
    const double half = std::min(body.width(), body.height()) / 6.0;
    painter.drawRect(side.x == 0.0
                         ? QRectF(-half, std::min(at.y(), at.y() + side.y * out), 2.0 * half, out)
                         : QRectF(std::min(at.x(), at.x() + side.x * out), -half, out, 2.0 * half));
  }
}

}  // namespace creaseline::desk
