// SPDX-License-Identifier: MIT
// The table: one garment panel flat, with design, frame, keep-outs and dimension lines. Zooms and
// pans; the design can be laid elsewhere and turned by hand, a dimension typed. Draws through the
// one drawing that the sheets use, too.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "creaseline/sheets/garment_drawing.h"
#include "desk/placement_drag.h"
#include "desk/unplanned.h"

namespace creaseline::desk {

class FieldEdit;

class TableCanvas : public QWidget {
  Q_OBJECT

 public:
  static constexpr double kLeastPixelsPerMm = 0.05;
  static constexpr double kMostPixelsPerMm = 40.0;

  // What is on the table.
  struct Picture {
    std::shared_ptr<const PlannedOrder> planned;
    LivePlanner::Spot spot;                   // in the order as it is now
    const PlacementPlan* plan = nullptr;      // belongs to `planned`; null clears the table
    const PlacementPlan* compared = nullptr;  // another size, drawn over it; or null
    // Keeps `plan` where it is not planned, but laid flat only; a hand cannot move it then.
    std::shared_ptr<const Laid> laid;
    QString notPlanned;  // said over it then
    QString why;         // shown on an empty table
  };

  explicit TableCanvas(QWidget* parent = nullptr);
  ~TableCanvas() override;

  void setPicture(Picture picture);
  // Greys the picture and says over it that it is the last good plan.
  void setStale(bool stale);

  [[nodiscard]] double pixelsPerMm() const { return pixelsPerMm_; }
  [[nodiscard]] QPointF centre() const { return centre_; }  // scene point in the middle
  // Of the garment's true size on this screen.
  [[nodiscard]] int percentOfTrueSize() const;
  // Where a hand takes hold of the design, to move it and to turn it; nothing without a design.
  [[nodiscard]] std::optional<QPointF> designAt() const;
  [[nodiscard]] std::optional<QPointF> turnGripAt() const;
  // The plate of a dimension, on which one clicks to type it.
  [[nodiscard]] std::optional<QRectF> dimensionAt(Dimension dimension) const;

  void zoomIn();
  void zoomOut();
  void fit();

  // How far down the design of the compared size goes, as drawn; nothing if none is compared.
  struct ComparedDrop {
    QLineF line;    // from the mark to the design, in the widget
    QRectF plate;   // of the label
    QString label;  // "XL: 3 3/8 in"
    QString text;   // "size XL: 3 3/8 in below the collar seam"
  };
  [[nodiscard]] std::optional<ComparedDrop> comparedDrop() const;
  QSize minimumSizeHint() const override { return {260, 220}; }
  QSize sizeHint() const override { return {620, 520}; }

 Q_SIGNALS:
  void zoomChanged();
  // The design was laid so; `nudged`: by keys.
  void laid(const creaseline::LivePlanner::Spot& spot, const creaseline::OrderPlacement& asked,
            bool nudged);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  enum class Grip { Nothing, Garment, Design, Turn };

  void zoomAt(QPointF widgetPoint, double factor);
  void pan(QPointF pixels);
  [[nodiscard]] QPointF toScene(QPointF widgetPoint) const;
  [[nodiscard]] QPointF toWidget(QPointF scenePoint) const;
  [[nodiscard]] QRectF area() const;
  [[nodiscard]] DrawingStyle style() const;
  [[nodiscard]] const PlacementPlan* shownPlan() const;
  void draw();
  void describe();
  void paintPicture(QPainter& painter) const;
  // The second size, in table_compared.cpp.
  void paintCompared(QPainter& painter) const;
  void paintComparedDrop(QPainter& painter) const;
  void paintHand(QPainter& painter) const;
  [[nodiscard]] bool unplanned() const { return picture_.plan != nullptr && picture_.laid; }
  void paintPlate(QPainter& painter, const QString& text, const QColor& edge, bool atTop) const;

  // The hand, in table_hand.cpp.
  [[nodiscard]] Grip gripAt(QPointF widgetPoint) const;
  [[nodiscard]] std::vector<std::pair<Dimension, QRectF>> dimensions() const;  // their plates
  [[nodiscard]] std::optional<Dimension> dimensionUnder(QPointF widgetPoint) const;
  void showGrip(QPointF widgetPoint);
  bool take(Grip grip, QPointF widgetPoint);
  void follow(QPointF widgetPoint, bool free);
  void letGo(bool nudged);
  void giveUp();
  bool nudge(int right, int down);
  bool turnBy(double degrees);
  void typeDimension(Dimension dimension);
  void closeEditor();

  Picture picture_;
  std::optional<GarmentDrawing> drawing_;
  std::optional<GarmentDrawing> comparedDrawing_;
  std::optional<Colour> cloth_;
  double pixelsPerMm_ = 1.0;
  QPointF centre_;
  bool fitted_ = true;  // until the user zooms or pans
  bool stale_ = false;

  Grip grip_ = Grip::Nothing;
  QPointF heldAt_;           // where the hand took hold
  QPointF lastAt_;           // where it was last
  Point centreHeld_;         // of the design, then
  double turnHeld_ = 0.0;    // degrees between the design's turn and the hand's direction, then
  bool beyondSlop_ = false;  // moved so far that it is no click
  std::unique_ptr<PlacementDrag> drag_;
  // What the hand has laid, until it is planned.
  std::unique_ptr<PlacementPlan> laid_;
  FieldEdit* editor_ = nullptr;
};

}  // namespace creaseline::desk
