// SPDX-License-Identifier: MIT
// The hand on the table: pans the garment, lays and turns the design, types a dimension.
#include <QApplication>
#include <QKeyEvent>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "creaseline/catalogue/field_check.h"
#include "desk/field_edit.h"
#include "desk/form_parts.h"
#include "desk/table_canvas.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr double kPanStep = 40.0;      // pixels
constexpr double kReachPixels = 7.0;   // within which the design catches
constexpr double kReachDegrees = 3.0;  // likewise while it is turned
constexpr double kGripReach = 11.0;    // pixels round the grip that count as the grip
constexpr double kGripAway = 16.0;     // pixels from the design's corner to the grip
constexpr double kDesignSlack = 4.0;   // pixels round a design that count as the design
constexpr int kLargeNudge = 4;         // marks, with Shift

double degreesOf(QPointF direction) {
  return std::atan2(direction.y(), direction.x()) * 180.0 / std::numbers::pi;
}

// A drag with Control goes exactly where the hand is. (Many window managers take Alt.)
bool isFree(const QInputEvent& event) {
  return event.modifiers() & Qt::ControlModifier;
}

}  // namespace

std::optional<QPointF> TableCanvas::designAt() const {
  const PlacementPlan* plan = shownPlan();
  return drawing_ && plan->hasRule && !unplanned()
             ? std::optional(toWidget(drawing_->toScene(PlacementDrag::centreOf(*plan))))
             : std::nullopt;
}

// Beyond the corner of the design that is top right as it is read.
std::optional<QPointF> TableCanvas::turnGripAt() const {
  const auto centre = designAt();
  if (!centre) {
    return std::nullopt;
  }
  const PlacementPlan& plan = *shownPlan();
  const Point corner =
      turned({plan.design.width.mm() / 2.0, -plan.design.height.mm() / 2.0}, plan.placed.panelTurn);
  const QPointF reach = (drawing_->toScene(corner) - drawing_->toScene(Point{})) * pixelsPerMm_;
  const double length = std::hypot(reach.x(), reach.y());
  return *centre + reach * ((length + kGripAway) / std::max(length, 1.0));
}

// Laying the labels out is the work: all plates are asked for at once.
std::vector<std::pair<Dimension, QRectF>> TableCanvas::dimensions() const {
  std::vector<std::pair<Dimension, QRectF>> plates;
  for (const DrawnLabel& label :
       drawing_ && !unplanned() ? drawing_->labels(style(), area()) : std::vector<DrawnLabel>()) {
    if (label.dimension) {
      plates.emplace_back(*label.dimension, QRectF(toWidget(label.plate.topLeft()),
                                                   toWidget(label.plate.bottomRight())));
    }
  }
  return plates;
}

std::optional<QRectF> TableCanvas::dimensionAt(Dimension dimension) const {
  for (const auto& [each, plate] : dimensions()) {
    if (each == dimension) {
      return plate;
    }
  }
  return std::nullopt;
}

std::optional<Dimension> TableCanvas::dimensionUnder(QPointF widgetPoint) const {
  for (const auto& [each, plate] : dimensions()) {
    if (plate.contains(widgetPoint)) {
      return each;
    }
  }
  return std::nullopt;
}

TableCanvas::Grip TableCanvas::gripAt(QPointF widgetPoint) const {
  if (const auto grip = turnGripAt(); grip && !stale_) {
    const QPointF off = widgetPoint - *grip;
    if (std::hypot(off.x(), off.y()) <= kGripReach) {
      return Grip::Turn;
    }
    const Box& box = shownPlan()->placed.bounds;
    const QRectF design =
        QRectF(toWidget(drawing_->toScene(box.min)), toWidget(drawing_->toScene(box.max)))
            .normalized();
    if (design.adjusted(-kDesignSlack, -kDesignSlack, kDesignSlack, kDesignSlack)
            .contains(widgetPoint)) {
      return Grip::Design;
    }
  }
  return Grip::Garment;
}

void TableCanvas::showGrip(QPointF widgetPoint) {
  switch (gripAt(widgetPoint)) {
    case Grip::Design:
      setCursor(Qt::SizeAllCursor);
      setToolTip(tr("Drag to lay the design elsewhere; Control leaves out the ruler marks"));
      break;
    case Grip::Turn:
      setCursor(Qt::CrossCursor);
      setToolTip(tr("Drag to turn the design"));
      break;
    default: {
      const bool onDimension = !stale_ && dimensionUnder(widgetPoint).has_value();
      setCursor(onDimension ? Qt::IBeamCursor : Qt::OpenHandCursor);
      setToolTip(onDimension ? tr("Click to type the length") : QString());
    }
  }
}

bool TableCanvas::take(Grip grip, QPointF widgetPoint) {
  drag_ = PlacementDrag::begin(picture_.planned, picture_.spot);
  if (!drag_) {
    return false;
  }
  grip_ = grip;
  centreHeld_ = drag_->centre();
  draw();
  turnHeld_ = drag_->asked().turn.degrees() -
              degreesOf(widgetPoint - toWidget(drawing_->toScene(centreHeld_)));
  return true;
}

void TableCanvas::follow(QPointF widgetPoint, bool free) {
  const auto reach = [free](double value) { return free ? std::nullopt : std::optional(value); };
  if (grip_ == Grip::Turn) {
    const QPointF centre = toWidget(drawing_->toScene(centreHeld_));
    drag_->turnTo(Angle::fromDegrees(turnHeld_ + degreesOf(widgetPoint - centre)),
                  reach(kReachDegrees));
  } else {
    const Point by = drawing_->toPanel(toScene(widgetPoint)) - drawing_->toPanel(toScene(heldAt_));
    drag_->layAt(centreHeld_ + by, reach(kReachPixels / pixelsPerMm_));
  }
  draw();
  update();
}

void TableCanvas::letGo(bool nudged) {
  grip_ = Grip::Nothing;
  const std::unique_ptr<PlacementDrag> done = std::exchange(drag_, nullptr);
  if (done->moved()) {
    laid_ = std::make_unique<PlacementPlan>(done->plan());
  }
  draw();
  update();
  if (done->moved()) {
    Q_EMIT laid(done->spot(), done->asked(), nudged);
  }
}

void TableCanvas::giveUp() {
  closeEditor();
  grip_ = Grip::Nothing;
  if (drag_) {
    drag_.reset();
    draw();
    update();
  }
}

bool TableCanvas::nudge(int right, int down) {
  if (stale_ || !designAt() || !take(Grip::Design, {})) {
    return false;
  }
  // On the screen a sleeve lies the other way round than in its own coordinates.
  const double turnedRound = drawing_->toScene({1.0, 0.0}).x();
  const int sign = turnedRound < 0.0 ? -1 : 1;
  drag_->nudge(sign * right, sign * down);
  letGo(true);
  return true;
}

bool TableCanvas::turnBy(double degrees) {
  if (stale_ || !designAt() || !take(Grip::Turn, {})) {
    return false;
  }
  drag_->turnTo(drag_->asked().turn + Angle::fromDegrees(degrees), std::nullopt);
  letGo(true);
  return true;
}

void TableCanvas::typeDimension(Dimension dimension) {
  const auto plate = dimensionAt(dimension);
  if (!plate || stale_) {
    return;
  }
  closeEditor();
  const Placed& placed = shownPlan()->placed;
  const Length shown = dimension == Dimension::Drop     ? placed.drop
                       : dimension == Dimension::Centre ? placed.centreOffset
                                                        : abs(placed.lateral);
  const UnitChoice units = picture_.planned->units();
  const auto check = [units](const QString& text) { return checkMove(toUtf8(text), units.length); };
  const QString words = dimension == Dimension::Drop ? tr("Length from the mark to the design")
                        : dimension == Dimension::Centre
                            ? tr("Length from the mark to the design's centre")
                            : tr("Length sideways to the design's centre");
  editor_ = new FieldEdit(
      QStringLiteral("dimension"), words,
      [check](const QString& text) { return problemOf(check(text)); }, this);
  editor_->setAutoFillBackground(true);
  editor_->setText(toQString(formatLength(shown, units)));
  connect(editor_, &FieldEdit::committed, this, [this, dimension, check](const QString& text) {
    const Length typed = *check(text);
    closeEditor();
    if (take(Grip::Design, {})) {
      drag_->setDimension(dimension, typed);
      letGo(false);
    }
    setFocus();
  });
  connect(&editor_->edit(), &QLineEdit::editingFinished, this, [this] {
    // What is not a length stays to be mended; what is as it was is done with.
    if (editor_ != nullptr && editor_->problem().isEmpty()) {
      closeEditor();
    }
  });
  // What is wrong with a length is said below it, and needs its room.
  connect(&editor_->edit(), &QLineEdit::textEdited, editor_, [this] {
    editor_->layout()->activate();
    editor_->resize(editor_->width(), editor_->layout()->totalHeightForWidth(editor_->width()));
    editor_->move(editor_->x(),
                  std::clamp(editor_->y(), 4, std::max(4, height() - 4 - editor_->height())));
  });
  const int width = std::max(static_cast<int>(plate->width()) + 20, 180);
  const QSize size(width, editor_->sizeHint().height());
  QRect place(plate->center().toPoint() - QPoint(size.width() / 2, size.height() / 2), size);
  place.moveLeft(std::clamp(place.left(), 4, std::max(4, this->width() - size.width() - 4)));
  editor_->move(place.topLeft());
  editor_->setFixedWidth(size.width());
  editor_->show();
  editor_->edit().selectAll();
  editor_->setFocus();
}

void TableCanvas::closeEditor() {
  if (FieldEdit* closed = std::exchange(editor_, nullptr)) {
    closed->hide();
    closed->deleteLater();  // it may be the one that asks for it
  }
}

void TableCanvas::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) {
    return;
  }
  closeEditor();
  heldAt_ = lastAt_ = event->position();
  beyondSlop_ = false;
  const Grip grip = event->button() == Qt::LeftButton ? gripAt(event->position()) : Grip::Garment;
  if (grip == Grip::Garment || !take(grip, event->position())) {
    grip_ = Grip::Garment;
    setCursor(Qt::ClosedHandCursor);
  }
  update();
}

void TableCanvas::mouseMoveEvent(QMouseEvent* event) {
  const QPointF at = event->position();
  if (grip_ == Grip::Nothing) {
    showGrip(at);
    return;
  }
  beyondSlop_ =
      beyondSlop_ || (at - heldAt_).manhattanLength() >= QApplication::startDragDistance() / 2.0;
  if (!beyondSlop_) {
    return;  // a click that trembles moves nothing
  }
  if (grip_ == Grip::Garment) {
    pan(at - lastAt_);
  } else {
    follow(at, isFree(*event));
  }
  lastAt_ = at;
}

void TableCanvas::mouseReleaseEvent(QMouseEvent* event) {
  const QPointF at = event->position();
  if (drag_) {
    letGo(false);
  } else if (grip_ == Grip::Garment && !beyondSlop_ && event->button() == Qt::LeftButton) {
    if (const auto dimension = stale_ ? std::nullopt : dimensionUnder(at)) {
      typeDimension(*dimension);
    }
  }
  grip_ = Grip::Nothing;
  showGrip(at);
}

void TableCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
  if (gripAt(event->position()) == Grip::Garment && !dimensionUnder(event->position())) {
    fit();
  }
}

void TableCanvas::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

void TableCanvas::keyPressEvent(QKeyEvent* event) {
  const bool pans = event->modifiers() & Qt::ControlModifier;
  const int marks = event->modifiers() & Qt::ShiftModifier ? kLargeNudge : 1;
  const auto go = [&](int right, int down) {
    if (pans || !nudge(right * marks, down * marks)) {
      pan({-kPanStep * right, -kPanStep * down});
    }
  };
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
      go(-1, 0);
      break;
    case Qt::Key_Right:
      go(1, 0);
      break;
    case Qt::Key_Up:
      go(0, -1);
      break;
    case Qt::Key_Down:
      go(0, 1);
      break;
    case Qt::Key_Period:
      turnBy(marks);
      break;
    case Qt::Key_Comma:
      turnBy(-marks);
      break;
    case Qt::Key_F2:
      typeDimension(event->modifiers() & Qt::ShiftModifier ? Dimension::Sideways : Dimension::Drop);
      break;
    case Qt::Key_Escape:
      giveUp();
      setFocus();
      break;
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace creaseline::desk
