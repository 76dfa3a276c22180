// SPDX-License-Identifier: MIT
// The table: one garment panel flat, with design, frame, keep-outs and dimension lines. Zooms and
// pans; draws through the one drawing that the sheets use, too.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "creaseline/sheets/garment_drawing.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

class TableCanvas : public QWidget {
  Q_OBJECT

 public:
  static constexpr double kLeastPixelsPerMm = 0.05;
  static constexpr double kMostPixelsPerMm = 40.0;

  explicit TableCanvas(QWidget* parent = nullptr);

  // `plan` belongs to `planned`; null clears the table and shows `why` instead.
  void setPicture(std::shared_ptr<const PlannedOrder> planned, const PlacementPlan* plan,
                  const QString& why = {});
  // Greys the picture and says over it that it is the last good plan.
  void setStale(bool stale);

  [[nodiscard]] double pixelsPerMm() const { return pixelsPerMm_; }
  [[nodiscard]] QPointF centre() const { return centre_; }  // scene point in the middle
  // Of the garment's true size on this screen.
  [[nodiscard]] int percentOfTrueSize() const;

  void zoomIn();
  void zoomOut();
  void fit();

  QSize minimumSizeHint() const override { return {260, 220}; }
  QSize sizeHint() const override { return {620, 520}; }

 Q_SIGNALS:
  void zoomChanged();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void zoomAt(QPointF widgetPoint, double factor);
  void pan(QPointF pixels);
  [[nodiscard]] QPointF toScene(QPointF widgetPoint) const;
  void describe();
  void paintPicture(QPainter& painter) const;
  void paintStale(QPainter& painter) const;

  std::shared_ptr<const PlannedOrder> planned_;
  std::optional<GarmentDrawing> drawing_;
  std::optional<Colour> cloth_;
  QString why_;
  double pixelsPerMm_ = 1.0;
  QPointF centre_;
  bool fitted_ = true;  // until the user zooms or pans
  bool stale_ = false;
  std::optional<QPointF> dragFrom_;
};

}  // namespace creaseline::desk
