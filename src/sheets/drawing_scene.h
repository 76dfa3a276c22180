// SPDX-License-Identifier: MIT
// What the garment drawing lays over the garment: dimension lines, marks and labels, gathered
// before anything is painted so that labels can avoid one another.
#pragma once

#include <optional>
#include <vector>

#include "creaseline/sheets/garment_drawing.h"
#include "sheets/label_layout.h"
#include "sheets/lettering.h"

namespace creaseline {

struct SceneLine {
  QPointF from, to;
  bool arrows = false;  // both ends carry one; without it is an extension line
};
struct SceneLabelLine {
  QString text;
  lettering::TextStyle style;
};
struct SceneLabel {
  std::vector<SceneLabelLine> lines;
  QPointF wanted;                 // centre of the plate
  std::optional<QPointF> anchor;  // what a leader leads to if the label had to move away
  QSizeF size;
  std::optional<Dimension> dimension;
};

struct GarmentDrawing::Scene {
  std::vector<SceneLine> lines;
  std::vector<SceneLabel> labels;  // most important first
  std::vector<SoftObstacle> obstacles;
  std::vector<std::optional<QRectF>> places;  // of the labels
  std::optional<SceneLine> turnArrow;         // from the design's centre beyond its top
  std::vector<QPolygonF> brackets;            // marks on the frame body

  // Adds a label whose texts wrap at `width`.
  void addLabel(const std::vector<SceneLabelLine>& texts, double width, QPointF wanted,
                std::optional<QPointF> anchor, std::optional<Dimension> dimension = {});
  // A closed outline as an obstacle for labels, `half` as wide to either side.
  void addOutline(QPolygonF outline, double half, double cost);
  // A line as an obstacle for labels.
  void addLine(const SceneLine& line, double thickness);
};

}  // namespace creaseline
