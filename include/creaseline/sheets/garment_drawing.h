// SPDX-License-Identifier: MIT
// The one drawing of a garment panel with design, frame and dimensions, used by sheet and desk.
//
// It draws from a PlacementPlan and the shop's frame and computes no planning number. Scene
// coordinates are millimetres of garment in the view that a person sees: front, back and hood as
// in panel coordinates (collar or face edge on top), sleeves turned so that the cuff is at the
// bottom.
#pragma once

#include <QPainter>
#include <QPainterPath>
#include <QRectF>
#include <QString>
#include <QTransform>
#include <optional>
#include <vector>

#include "creaseline/base/units.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/plan.h"
#include "creaseline/sheets/drawing_style.h"

namespace creaseline {

// Directions in which a frame's bracket lies, in the frame's own view.
[[nodiscard]] std::vector<Point> bracketDirections(BracketSide side);

// The dimensions that say where the design goes.
enum class Dimension { Drop, Centre, Sideways };

// A text on its plate, as laid out.
struct DrawnLabel {
  QString text;        // lines joined by a blank
  QRectF plate;        // scene millimetres
  bool moved = false;  // away from its place, so that a leader leads to it
  std::optional<Dimension> dimension;
};

class GarmentDrawing {
 public:
  // `plan` and `shop` must outlive the drawing. plan.garment must be set and hold plan.panel;
  // std::invalid_argument otherwise.
  GarmentDrawing(const PlacementPlan& plan, const Shop& shop, const UnitChoice& units);

  // From panel coordinates to the scene: a turn by 180 degrees for sleeves, else nothing.
  [[nodiscard]] const QTransform& fromPanel() const { return fromPanel_; }
  [[nodiscard]] QPointF toScene(Point panelPoint) const;
  [[nodiscard]] Point toPanel(QPointF scenePoint) const;

  // The panel alone, and all that must be in view: panel, design, frame body.
  [[nodiscard]] QRectF panelBounds() const { return panelBounds_; }
  [[nodiscard]] QRectF extent() const;

  // "Front seen from outside, collar on top".
  [[nodiscard]] QString caption() const;
  // What lies at the viewer's left and right: "wearer's right", "front of the garment".
  [[nodiscard]] QString viewerLeft() const;
  [[nodiscard]] QString viewerRight() const;

  // Draws into `area` (scene millimetres); what reaches beyond it, such as a long neighbouring
  // sleeve, is cut at its edge. The painter's coordinates are the scene's. All labels lie inside
  // `area` and none overlaps another; one that finds no room is left out, least important first
  // (the order is: sides, drop, centre, sideways, top of the design, bracket, caption, keep-outs).
  void paint(QPainter& painter, const DrawingStyle& style, const QRectF& area) const;

  // The labels that paint() would draw.
  [[nodiscard]] std::vector<DrawnLabel> labels(const DrawingStyle& style, const QRectF& area) const;

 private:
  struct Scene;
  [[nodiscard]] Scene scene(const DrawingStyle& style, const QRectF& area) const;
  void paintPanel(QPainter& painter, const DrawingStyle& style) const;
  void paintKeepOuts(QPainter& painter, const DrawingStyle& style) const;
  void paintFrame(QPainter& painter, const DrawingStyle& style) const;
  void paintDesign(QPainter& painter, const DrawingStyle& style) const;
  void paintRegisterMarks(QPainter& painter, const DrawingStyle& style) const;
  [[nodiscard]] QPainterPath pathOf(const Piece& piece, const DrawingStyle& style) const;
  void paintScene(QPainter& painter, const DrawingStyle& style, const Scene& scene) const;
  void addSides(Scene& scene, const DrawingStyle& style, const QRectF& area) const;
  void addDimensions(Scene& scene, const DrawingStyle& style) const;
  void addTexts(Scene& scene, const DrawingStyle& style, const QRectF& area) const;
  [[nodiscard]] QPolygonF mapped(const std::vector<Point>& points) const;
  [[nodiscard]] QPolygonF framePolygon(const Window& window) const;
  [[nodiscard]] QRectF designBounds() const;

  const PlacementPlan& plan_;
  const PanelShape& panel_;
  const Frame* frame_ = nullptr;  // the chosen one
  UnitChoice units_;
  QTransform fromPanel_;
  QRectF panelBounds_;
};

}  // namespace creaseline
