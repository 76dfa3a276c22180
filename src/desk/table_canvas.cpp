// SPDX-License-Identifier: MIT
// View transform, input and painting of the table.
#include "desk/table_canvas.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr double kZoomStep = 1.25;
constexpr double kWheelNotch = 120.0;
constexpr double kPanStep = 40.0;    // pixels
constexpr double kFitMargin = 34.0;  // pixels round the garment, where labels find room
constexpr double kPixelsPerInch = 96.0;

}  // namespace

TableCanvas::TableCanvas(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("table"));
  setAccessibleName(tr("Table: the garment with design and frame"));
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::OpenHandCursor);
}

void TableCanvas::setPicture(std::shared_ptr<const PlannedOrder> planned, const PlacementPlan* plan,
                             const QString& why) {
  planned_ = std::move(planned);
  why_ = why;
  drawing_.reset();
  if (plan != nullptr && plan->garment && plan->garment->panel(plan->panel) != nullptr) {
    drawing_.emplace(*plan, *planned_->shop(), planned_->units());
    cloth_ = planned_->clothColour(plan->line);
  }
  if (fitted_) {
    fit();
  }
  describe();
  update();
}

void TableCanvas::setStale(bool stale) {
  if (stale_ != stale) {
    stale_ = stale;
    describe();
    update();
  }
}

// Screen readers get the numbers that the picture shows.
void TableCanvas::describe() {
  QString text = why_;
  if (drawing_) {
    text = drawing_->caption();
    const DrawingStyle style = drawingStyle(palette(), pixelsPerMm_, cloth_);
    for (const DrawnLabel& label :
         drawing_->labels(style, drawing_->extent().marginsAdded({100.0, 100.0, 100.0, 100.0}))) {
      text += QStringLiteral("; ") + label.text;
    }
  }
  if (stale_) {
    text = tr("Last good plan, not up to date. %1").arg(text);
  }
  setAccessibleDescription(text);
  QAccessibleEvent event(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&event);
}

int TableCanvas::percentOfTrueSize() const {
  return static_cast<int>(std::lround(pixelsPerMm_ / (kPixelsPerInch / 25.4) * 100.0));
}

void TableCanvas::fit() {
  fitted_ = true;
  if (drawing_) {
    const QRectF extent = drawing_->extent();
    const double across = std::max(1.0, width() - 2.0 * kFitMargin) / extent.width();
    const double down = std::max(1.0, height() - 2.0 * kFitMargin) / extent.height();
    pixelsPerMm_ = std::clamp(std::min(across, down), kLeastPixelsPerMm, kMostPixelsPerMm);
    centre_ = extent.center();
  }
  update();
  Q_EMIT zoomChanged();
}

void TableCanvas::zoomIn() {
  zoomAt(QRectF(rect()).center(), kZoomStep);
}

void TableCanvas::zoomOut() {
  zoomAt(QRectF(rect()).center(), 1.0 / kZoomStep);
}

QPointF TableCanvas::toScene(QPointF widgetPoint) const {
  return centre_ + (widgetPoint - QRectF(rect()).center()) / pixelsPerMm_;
}

// The garment's point under the pointer stays under it.
void TableCanvas::zoomAt(QPointF widgetPoint, double factor) {
  const QPointF held = toScene(widgetPoint);
  pixelsPerMm_ = std::clamp(pixelsPerMm_ * factor, kLeastPixelsPerMm, kMostPixelsPerMm);
  centre_ = held - (widgetPoint - QRectF(rect()).center()) / pixelsPerMm_;
  fitted_ = false;
  update();
  Q_EMIT zoomChanged();
}

void TableCanvas::pan(QPointF pixels) {
  if (!drawing_) {
    return;
  }
  // Some of the garment always stays in view, so that it cannot get lost.
  const QRectF extent = drawing_->extent();
  centre_ -= pixels / pixelsPerMm_;
  centre_ = {std::clamp(centre_.x(), extent.left(), extent.right()),
             std::clamp(centre_.y(), extent.top(), extent.bottom())};
  fitted_ = false;
  update();
}

void TableCanvas::resizeEvent(QResizeEvent*) {
  if (fitted_) {
    fit();
  }
}

void TableCanvas::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / kWheelNotch;
  if (notches != 0.0) {
    zoomAt(event->position(), std::pow(kZoomStep, notches));
  }
  event->accept();
}

void TableCanvas::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton || event->button() == Qt::MiddleButton) {
    dragFrom_ = event->position();
    setCursor(Qt::ClosedHandCursor);
  }
}

void TableCanvas::mouseMoveEvent(QMouseEvent* event) {
  if (dragFrom_) {
    pan(event->position() - *dragFrom_);
    dragFrom_ = event->position();
  }
}

void TableCanvas::mouseReleaseEvent(QMouseEvent*) {
  dragFrom_.reset();
  setCursor(Qt::OpenHandCursor);
}

void TableCanvas::mouseDoubleClickEvent(QMouseEvent*) {
  fit();
}

void TableCanvas::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      zoomIn();
      break;
    case Qt::Key_Minus:
      zoomOut();
      break;
    case Qt::Key_0:
    case Qt::Key_Home:
      fit();
      break;
    case Qt::Key_Left:
      pan({kPanStep, 0.0});
      break;
    case Qt::Key_Right:
      pan({-kPanStep, 0.0});
      break;
    case Qt::Key_Up:
      pan({0.0, kPanStep});
      break;
    case Qt::Key_Down:
      pan({0.0, -kPanStep});
      break;
    default:
      QWidget::keyPressEvent(event);
  }
}

void TableCanvas::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), tableGround(palette()));
  if (drawing_) {
    paintPicture(painter);
  } else {
    painter.setPen(mutedText(palette()));
    painter.drawText(rect().adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap, why_);
  }
  if (stale_) {
    paintStale(painter);
  }
  if (hasFocus()) {
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
  }
}

void TableCanvas::paintPicture(QPainter& painter) const {
  const DrawingStyle style = drawingStyle(palette(), pixelsPerMm_, cloth_);
  painter.save();
  painter.translate(QRectF(rect()).center());
  painter.scale(pixelsPerMm_, pixelsPerMm_);
  painter.translate(-centre_);
  const QRectF area(toScene({6.0, 6.0}), toScene({width() - 6.0, height() - 6.0}));
  drawing_->paint(painter, style, area);
  painter.restore();
}

void TableCanvas::paintStale(QPainter& painter) const {
  QColor veil = tableGround(palette());
  veil.setAlphaF(0.55F);
  painter.fillRect(rect(), veil);
  const QString text = tr("Last good plan, not up to date");
  QFont bold = font();
  bold.setBold(true);
  painter.setFont(bold);
  const QRect words = QFontMetrics(bold).boundingRect(text);
  QRectF plate(0, 0, words.width() + 28, words.height() + 12);
  plate.moveCenter({width() / 2.0, plate.height() / 2.0 + 10.0});
  painter.setPen(QPen(stateColour(Severity::Watch, palette()), 1.5));
  painter.setBrush(palette().color(QPalette::Base));
  painter.drawRoundedRect(plate, 4, 4);
  painter.drawText(plate, Qt::AlignCenter, text);
}

}  // namespace creaseline::desk
