// SPDX-License-Identifier: MIT
// Gathers dimension lines, marks and labels of the garment drawing and places the labels.
#include "sheets/drawing_scene.h"

#include <algorithm>
#include <cmath>

#include "creaseline/planning/wording.h"
#include "sheets/text.h"

namespace creaseline {

using lettering::TextStyle;
using sheets::printed;
using sheets::toQString;

namespace {

constexpr double kPadding = 0.7;       // of a plate around its text, in units
constexpr double kLabelWidth = 30.0;   // texts wrap there, in units
constexpr double kDimensionGap = 3.5;  // from frame to dimension line, in units

bool isNamed(const KeepOut& keepOut) {
  return keepOut.frame && keepOut.name != KeepOutName::CollarSeam;
}

}  // namespace

std::vector<Point> bracketDirections(BracketSide side) {
  switch (side) {
    case BracketSide::Top:
      return {{0.0, -1.0}};
    case BracketSide::Bottom:
      return {{0.0, 1.0}};
    case BracketSide::Left:
      return {{-1.0, 0.0}};
    case BracketSide::Right:
      return {{1.0, 0.0}};
    case BracketSide::Both:
      return {{-1.0, 0.0}, {1.0, 0.0}};
  }
  return {};
}

void GarmentDrawing::Scene::addLabel(const std::vector<SceneLabelLine>& texts, double width,
                                     QPointF wanted, std::optional<QPointF> anchor,
                                     std::optional<Dimension> dimension) {
  SceneLabel label;
  label.dimension = dimension;
  label.wanted = wanted;
  label.anchor = anchor;
  double widest = 0.0;
  double height = 0.0;
  for (const SceneLabelLine& text : texts) {
    for (const QString& line : lettering::wrapped(text.text, text.style, width)) {
      label.lines.push_back({line, text.style});
      widest = std::max(widest, lettering::textWidth(line, text.style));
      height += lettering::lineHeight(text.style);
    }
  }
  const double padding = texts.empty() ? 0.0 : 2.0 * kPadding * texts.back().style.size / 3.0;
  label.size = QSizeF(widest + padding, height + padding / 2.0);
  labels.push_back(label);
}

void GarmentDrawing::Scene::addLine(const SceneLine& line, double thickness) {
  lines.push_back(line);
  const QRectF box = QRectF(line.from, line.to).normalized();
  obstacles.push_back(
      {box.adjusted(-thickness, -thickness, thickness, thickness), line.arrows ? 12.0 : 3.0});
}

GarmentDrawing::Scene GarmentDrawing::scene(const DrawingStyle& style, const QRectF& area) const {
  Scene result;
  if (style.showSides) {
    addSides(result, style, area);
  }
  if (plan_.hasRule && style.showDimensions) {
    addDimensions(result, style);
  }
  addTexts(result, style, area);
  if (!style.showLabels) {
    result.labels.clear();
  }
  result.addOutline(mapped(panel_.outline), style.unit / 2.0, 1.5);
  if (plan_.hasRule) {
    result.obstacles.push_back({designBounds(), 25.0});
  }
  if (frame_ != nullptr && style.showFrame) {
    const QPolygonF body = framePolygon(frame_->body);
    result.obstacles.push_back({body.boundingRect(), 4.0});
    result.addOutline(body, style.unit / 2.0, 3.0);
  }
  std::vector<LabelWish> wishes;
  for (const SceneLabel& label : result.labels) {
    wishes.push_back({label.size, label.wanted});
  }
  const double inset = 0.5 * style.unit;
  result.places = placeLabels(wishes, result.obstacles, area.adjusted(inset, inset, -inset, -inset),
                              style.textSize * style.unit / 2.0);
  return result;
}

// An outline in short pieces, so that labels keep off slanted sides too.
void GarmentDrawing::Scene::addOutline(QPolygonF outline, double half, double cost) {
  outline << outline.first();
  for (qsizetype i = 0; i + 1 < outline.size(); ++i) {
    const QPointF side = outline[i + 1] - outline[i];
    const int pieces = std::max(1, static_cast<int>(std::hypot(side.x(), side.y()) / (4 * half)));
    for (int piece = 0; piece < pieces; ++piece) {
      const QPointF at = outline[i] + side * ((piece + 0.5) / pieces);
      obstacles.push_back({QRectF(at.x() - half, at.y() - half, 2.0 * half, 2.0 * half), cost});
    }
  }
}

// Drop on the side of the design that looks to the centre line, centre on the other side, and the
// sideways distance below the frame:
//
//      L ---+------- landmark --------+---
//       drop|   +-----------+         |
//           +---|  design   |         |centre
//               |     +-----|---------+
//               +-----------+
//      crease |<----->|   sideways
void GarmentDrawing::addDimensions(Scene& scene, const DrawingStyle& style) const {
  const double unit = style.unit;
  const Placed& placed = plan_.placed;
  const double away = leadsTowardsDatum(placed.from) ? -1.0 : 1.0;
  const double landmarkY = placed.centre.y - away * placed.centreOffset.mm();
  double landmarkX = 0.0;
  const auto neck = plan_.garment->measures.find(Measure::NeckWidth);
  if (placed.from == Landmark::ShoulderPoint && neck != plan_.garment->measures.end()) {
    landmarkX = std::copysign(neck->second.value.mm() / 2.0, placed.lateral.mm());
  }
  const QPointF landmark = toScene({landmarkX, landmarkY});
  const QPointF nearEdge = toScene({placed.centre.x, landmarkY + away * placed.drop.mm()});
  const QPointF centre = toScene(placed.centre);

  QRectF around = designBounds();
  if (frame_ != nullptr && style.showFrame) {
    around = around.united(framePolygon(frame_->body).boundingRect());
  }
  const double dropSide = centre.x() < -1.0 ? 1.0 : -1.0;  // -1: at the viewer's left
  const double gap = kDimensionGap * unit;
  const double dropX = dropSide < 0.0 ? around.left() - gap : around.right() + gap;
  const double centreX = dropSide < 0.0 ? around.right() + gap : around.left() - gap;
  const double over = unit;

  const double low = std::min({dropX, centreX, landmark.x()});
  const double high = std::max({dropX, centreX, landmark.x()});
  scene.addLine({{low - over, landmark.y()}, {high + over, landmark.y()}}, 0.3 * unit);
  scene.addLine({{dropX + dropSide * over, nearEdge.y()}, {nearEdge.x(), nearEdge.y()}},
                0.3 * unit);
  scene.addLine({{centreX - dropSide * over, centre.y()}, centre}, 0.3 * unit);
  scene.addLine({{dropX, landmark.y()}, {dropX, nearEdge.y()}, true}, 0.8 * unit);
  scene.addLine({{centreX, landmark.y()}, {centreX, centre.y()}, true}, 0.8 * unit);

  const TextStyle value{style.valueSize * unit, true};
  const TextStyle small{style.textSize * unit, false};
  const double width = kLabelWidth * unit;
  const double outward = 11.0 * unit;
  scene.addLabel({{toQString(formatLength(placed.drop, units_)), value},
                  {toQString(landmarkPhrase(placed.from)), small}},
                 width, {dropX + dropSide * outward, (landmark.y() + nearEdge.y()) / 2.0},
                 QPointF(dropX, (landmark.y() + nearEdge.y()) / 2.0), Dimension::Drop);
  scene.addLabel({{toQString(formatLength(placed.centreOffset, units_)), value},
                  {printed("to the centre"), small}},
                 width, {centreX - dropSide * outward, (landmark.y() + centre.y()) / 2.0},
                 QPointF(centreX, (landmark.y() + centre.y()) / 2.0), Dimension::Centre);
  if (roundToMark(placed.lateral, units_) != Length()) {
    const double y = around.bottom() + gap;
    const QPointF crease = toScene({placed.centre.x - placed.lateral.mm(), placed.centre.y});
    scene.addLine({{centre.x(), centre.y()}, {centre.x(), y + over}}, 0.3 * unit);
    scene.addLine({{crease.x(), y - over}, {crease.x(), y + over}}, 0.3 * unit);
    scene.addLine({{crease.x(), y}, {centre.x(), y}, true}, 0.8 * unit);
    const QPointF middle((crease.x() + centre.x()) / 2.0, y);
    scene.addLabel({{toQString(formatLength(abs(placed.lateral), units_)), value},
                    {printed("from %1", centreLinePhrase(plan_)), small}},
                   width, middle + QPointF(0.0, 6.0 * unit), middle, Dimension::Sideways);
  }
}

// First of all labels: a side that is told anywhere but at that side would mislead.
void GarmentDrawing::addSides(Scene& scene, const DrawingStyle& style, const QRectF& area) const {
  const double unit = style.unit;
  const TextStyle small{style.textSize * unit, false};
  const TextStyle strong{style.textSize * unit, true};
  const double width = kLabelWidth * unit;
  const double y = area.top() + 5.0 * unit;
  // Nobody wears a flat piece: its sides are the viewer's and are said once.
  const auto side = [&](const QString& own, const QString& viewers) {
    return own == viewers ? std::vector<SceneLabelLine>{{own, strong}}
                          : std::vector<SceneLabelLine>{{own, strong}, {viewers, small}};
  };
  scene.addLabel(side(viewerLeft(), printed("viewer's left")), width,
                 {area.left() + 12.0 * unit, y}, {});
  scene.addLabel(side(viewerRight(), printed("viewer's right")), width,
                 {area.right() - 12.0 * unit, y}, {});
}

void GarmentDrawing::addTexts(Scene& scene, const DrawingStyle& style, const QRectF& area) const {
  const double unit = style.unit;
  const TextStyle small{style.textSize * unit, false};
  const double width = kLabelWidth * unit;
  if (style.showTurn && plan_.hasRule) {
    const Point up = turned({0.0, -1.0}, plan_.placed.panelTurn);
    const double reach = plan_.design.height.mm() / 2.0;
    const QPointF base = toScene(plan_.placed.centre + up * (reach * 0.45));
    const QPointF tip = toScene(plan_.placed.centre + up * (reach + 4.0 * unit));
    scene.turnArrow = SceneLine{base, tip, true};
    const QRectF box = QRectF(base, tip).normalized();
    scene.obstacles.push_back({box.adjusted(-unit, -unit, unit, unit), 20.0});
    scene.addLabel({{printed("top of design"), small}}, width,
                   tip + (tip - base) / std::hypot((tip - base).x(), (tip - base).y()) * 3.0 * unit,
                   tip);
  }
  if (frame_ != nullptr && style.showFrame) {
    const QRectF body = framePolygon(frame_->body).boundingRect();
    for (const Point& side : bracketDirections(frame_->bracket)) {
      const QPointF direction = toScene(turned(side, plan_.frame->turn)) - toScene(Point{});
      const QPointF across(direction.y(), direction.x());
      const QPointF edge = toScene(plan_.frame->centre) +
                           QPointF(direction.x() * body.width(), direction.y() * body.height()) / 2;
      const double half = std::min(body.width(), body.height()) / 6.0;
      const QPointF out = direction * 2.0 * unit;
      scene.brackets.push_back(
          QPolygonF({edge - across * half, edge + across * half, edge + across * half * 0.6 + out,
                     edge - across * half * 0.6 + out}));
      scene.obstacles.push_back({scene.brackets.back().boundingRect(), 20.0});
    }
    const QRectF bracket = scene.brackets.front().boundingRect();
    const bool below = bracket.center().y() > body.center().y();
    scene.addLabel({{printed("bracket"), small}}, width,
                   bracket.center() + QPointF(0.0, (below ? 4.0 : -4.0) * unit), bracket.center());
  }
  if (style.showCaption) {
    scene.addLabel({{caption(), small}}, area.width() - 4.0 * unit,
                   {area.center().x(), area.bottom() - 3.0 * unit}, {});
  }
  if (style.showKeepOuts) {
    std::vector<KeepOutName> named;
    for (const KeepOut& keepOut : panel_.keepOuts) {
      if (!isNamed(keepOut) || std::find(named.begin(), named.end(), keepOut.name) != named.end()) {
        continue;
      }
      named.push_back(keepOut.name);
      const QPointF middle = mapped(keepOut.area).boundingRect().center();
      scene.addLabel({{toQString(keepOutPhrase(keepOut.name)), small}}, width, middle, middle);
    }
  }
}

}  // namespace creaseline
