// SPDX-License-Identifier: MIT
// View and painting of the table; the hand on it is in table_hand.cpp.
#include "desk/table_canvas.h"

#include <QAccessible>
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
constexpr double kFitMargin = 34.0;  // pixels round the garment, where labels find room
constexpr double kPlateRoom = 24.0;  // pixels above the garment, beyond the margin
constexpr double kPixelsPerInch = 96.0;
constexpr double kGripRadius = 6.0;  // pixels

}  // namespace

TableCanvas::TableCanvas(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("table"));
  setAccessibleName(tr("Table: the garment with design and frame"));
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::OpenHandCursor);
  setMouseTracking(true);
}

TableCanvas::~TableCanvas() = default;

void TableCanvas::setPicture(Picture picture) {
  const bool same = picture.spot.line == picture_.spot.line &&
                    picture.spot.placement == picture_.spot.placement &&
                    picture.spot.size == picture_.spot.size;
  const bool planned = picture.planned && picture.planned->order() == picture.planned->plannedFor();
  // What was laid stays on show until its plan is here.
  if (!same || planned || picture.plan == nullptr) {
    laid_.reset();
  }
  if (!same) {
    giveUp();
  }
  picture_ = std::move(picture);
  draw();
  if (fitted_ && grip_ == Grip::Nothing) {
    fit();
  }
  describe();
  update();
}

const PlacementPlan* TableCanvas::shownPlan() const {
  return drag_ ? &drag_->plan() : laid_ ? laid_.get() : picture_.plan;
}

// The drawing looks at the plan that is shown.
void TableCanvas::draw() {
  drawing_.reset();
  comparedDrawing_.reset();
  const auto drawable = [](const PlacementPlan* plan) {
    return plan != nullptr && plan->garment && plan->garment->panel(plan->panel) != nullptr;
  };
  if (const PlacementPlan* plan = shownPlan(); picture_.plan != nullptr && drawable(plan)) {
    drawing_.emplace(*plan, picture_.planned->shopForDrawing(), picture_.planned->units());
    cloth_ = picture_.planned->clothColour(picture_.spot.line);
    if (drawable(picture_.compared) && picture_.compared->panel == plan->panel) {
      comparedDrawing_.emplace(*picture_.compared, picture_.planned->shopForDrawing(),
                               picture_.planned->units());
    }
  }
}

void TableCanvas::setStale(bool stale) {
  if (stale_ != stale) {
    stale_ = stale;
    laid_.reset();
    draw();
    describe();
    update();
  }
}

// Screen readers get the numbers that the picture shows.
void TableCanvas::describe() {
  QString text = picture_.why;
  if (drawing_) {
    text = drawing_->caption();
    for (const DrawnLabel& label :
         drawing_->labels(style(), drawing_->extent().marginsAdded({100.0, 100.0, 100.0, 100.0}))) {
      text += QStringLiteral("; ") + label.text;
    }
    if (picture_.compared != nullptr) {
      text += tr("; size %1 drawn over it").arg(toQString(picture_.compared->size.text()));
      if (const auto drop = comparedDrop()) {
        text += QStringLiteral("; ") + drop->text;
      }
    }
  }
  if (unplanned()) {
    text = tr("%1. %2", "state, description").arg(picture_.notPlanned, text);
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
    // What is said over the garment does not cover it.
    const double plate = unplanned() || comparedDrawing_ ? kPlateRoom : 0.0;
    const double across = std::max(1.0, width() - 2.0 * kFitMargin) / extent.width();
    const double down = std::max(1.0, height() - 2.0 * kFitMargin - plate) / extent.height();
    pixelsPerMm_ = std::clamp(std::min(across, down), kLeastPixelsPerMm, kMostPixelsPerMm);
    centre_ = extent.center() - QPointF(0.0, plate / 2.0 / pixelsPerMm_);
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

QPointF TableCanvas::toWidget(QPointF scenePoint) const {
  return QRectF(rect()).center() + (scenePoint - centre_) * pixelsPerMm_;
}

// What the labels may take up, in the scene.
QRectF TableCanvas::area() const {
  return {toScene({6.0, 6.0}), toScene({width() - 6.0, height() - 6.0})};
}

DrawingStyle TableCanvas::style() const {
  DrawingStyle style = drawingStyle(palette(), pixelsPerMm_, cloth_);
  style.showRoom = drag_ != nullptr;
  return style;
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

void TableCanvas::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), tableGround(palette()));
  if (drawing_) {
    paintPicture(painter);
  } else {
    painter.setPen(mutedText(palette()));
    painter.drawText(rect().adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap,
                     picture_.why);
  }
  if (unplanned()) {
    paintPlate(painter, picture_.notPlanned, hairline(palette()), true);
  }
  if (stale_) {
    QColor veil = tableGround(palette());
    veil.setAlphaF(0.55F);
    painter.fillRect(rect(), veil);
    paintPlate(painter, tr("Last good plan, not up to date"),
               stateColour(Severity::Watch, palette()), true);
  }
  if (hasFocus()) {
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
  }
}

void TableCanvas::paintPicture(QPainter& painter) const {
  painter.save();
  painter.translate(QRectF(rect()).center());
  painter.scale(pixelsPerMm_, pixelsPerMm_);
  painter.translate(-centre_);
  drawing_->paint(painter, style(), area());
  if (comparedDrawing_) {
    paintCompared(painter);
  }
  painter.restore();
  if (comparedDrawing_) {
    paintPlate(
        painter,
        tr("Size %1, over it size %2")
            .arg(toQString(shownPlan()->size.text()), toQString(picture_.compared->size.text())),
        comparedColour(palette()), true);
    paintComparedDrop(painter);
  }
  paintHand(painter);
}

// What a hand can take hold of, and while it does, what the design has caught on.
void TableCanvas::paintHand(QPainter& painter) const {
  const auto grip = turnGripAt();
  if (!grip || stale_) {
    return;
  }
  const QColor accent = palette().color(QPalette::Highlight);
  if (drag_) {
    const PlacementDrag::Caught& caught = drag_->caught();
    const QPointF centre = toWidget(drawing_->toScene(drag_->centre()));
    painter.setPen(QPen(accent, 1.5, Qt::DashLine));
    if (caught.centreLine || caught.ruleSideways) {
      painter.drawLine(QPointF(centre.x(), 0.0), QPointF(centre.x(), height()));
    }
    if (caught.ruleHeight) {
      painter.drawLine(QPointF(0.0, centre.y()), QPointF(width(), centre.y()));
    }
    paintPlate(painter, drag_->words(),
               drag_->plan().frame ? accent : stateColour(Severity::Stop, palette()), false);
  }
  if (hasFocus() || underMouse()) {
    painter.setPen(QPen(accent, 1.6));
    painter.setBrush(palette().color(QPalette::Base));
    painter.drawEllipse(*grip, kGripRadius, kGripRadius);
    painter.setBrush(Qt::NoBrush);
    painter.drawArc(QRectF(grip->x() - 3.0, grip->y() - 3.0, 6.0, 6.0), 30 * 16, 270 * 16);
  }
}

void TableCanvas::paintPlate(QPainter& painter, const QString& text, const QColor& edge,
                             bool atTop) const {
  QFont bold = font();
  bold.setBold(true);
  painter.setFont(bold);
  const QRectF room = QRectF(rect()).adjusted(24.0, 10.0, -24.0, -10.0);
  const int flags = Qt::AlignCenter | Qt::TextWordWrap;
  QRectF plate = painter.boundingRect(room, flags, text).adjusted(-14.0, -6.0, 14.0, 6.0);
  plate.moveCenter({width() / 2.0,
                    atTop ? plate.height() / 2.0 + 10.0 : height() - plate.height() / 2.0 - 10.0});
  painter.setPen(QPen(edge, 1.5));
  painter.setBrush(palette().color(QPalette::Base));
  painter.drawRoundedRect(plate, 4, 4);
  painter.setPen(palette().color(QPalette::Text));
  painter.drawText(plate, flags, text);
}

}  // namespace creaseline::desk
