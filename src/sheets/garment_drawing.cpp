// SPDX-License-Identifier: MIT
// Paints the garment drawing. What it shows over the garment is gathered in drawing_scene.cpp.
#include "creaseline/sheets/garment_drawing.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "creaseline/planning/wording.h"
#include "sheets/colour_mix.h"
#include "sheets/drawing_scene.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
using sheets::printed;
using sheets::toQString;

namespace {

constexpr Length kCurveTolerance = Length::fromNanometres(50'000);

const PanelShape& panelOf(const PlacementPlan& plan) {
  const PanelShape* panel = plan.garment ? plan.garment->panel(plan.panel) : nullptr;
  if (panel == nullptr) {
    throw std::invalid_argument("garment drawing: the plan has no such panel");
  }
  return *panel;
}

QPen pen(const QColor& colour, double width, Qt::PenStyle kind = Qt::SolidLine) {
  QPen result(colour, width, kind, Qt::FlatCap, Qt::RoundJoin);
  return result;
}

// Dashes in multiples of the pen's width, as Qt wants them.
QPen dashed(const QColor& colour, double width, double dash, double space) {
  QPen result = pen(colour, width);
  result.setDashPattern({dash / width, space / width});
  return result;
}

// Slanted lines inside a path; `rising` tells which way they slant.
void hatch(QPainter& painter, const QPainterPath& path, const QPen& stroke, double spacing,
           bool rising) {
  painter.save();
  painter.setClipPath(path, Qt::IntersectClip);
  painter.setPen(stroke);
  const QRectF box = path.boundingRect();
  const double height = box.height();
  for (double x = box.left() - height; x < box.right(); x += spacing) {
    const double low = rising ? x : x + height;
    const double high = rising ? x + height : x;
    painter.drawLine(QPointF(low, box.bottom()), QPointF(high, box.top()));
  }
  painter.restore();
}

void arrowHead(QPainter& painter, QPointF tip, QPointF from, double size, const QColor& colour) {
  const QPointF along = tip - from;
  const double length = std::hypot(along.x(), along.y());
  if (length <= 0.0) {
    return;
  }
  const QPointF unit = along / length;
  const QPointF across(-unit.y(), unit.x());
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  painter.drawPolygon(QPolygonF(
      {tip, tip - unit * size + across * size * 0.32, tip - unit * size - across * size * 0.32}));
  painter.setBrush(Qt::NoBrush);
}

// Without the points that are no further than `finest` from the last one kept.
Ring thinned(const Ring& ring, double finest) {
  if (finest <= 0.0 || ring.empty()) {
    return ring;
  }
  Ring kept{ring.front()};
  for (const Point& point : ring) {
    if (norm(point - kept.back()) > finest) {
      kept.push_back(point);
    }
  }
  return kept;
}

// Colour of the thread with most stitches among the blocks that `wanted` picks.
template <class Wanted>
std::optional<QColor> mainThread(const Design& design, Wanted wanted) {
  const ThreadBlock* most = nullptr;
  for (const ThreadBlock& block : design.blocks) {
    if (wanted(block) && (most == nullptr || block.stitches > most->stitches)) {
      most = &block;
    }
  }
  if (most == nullptr) {
    return std::nullopt;
  }
  return QColor(most->colour.red, most->colour.green, most->colour.blue);
}

}  // namespace

GarmentDrawing::GarmentDrawing(const PlacementPlan& plan, const Shop& shop, const UnitChoice& units)
    : plan_(plan), panel_(panelOf(plan)), units_(units) {
  if (plan.frame) {
    frame_ = shop.frame(plan.frame->frame);
  }
  if (isSleeve(plan.panel)) {
    fromPanel_.rotate(180.0);
  }
  panelBounds_ = mapped(panel_.outline).boundingRect();
}

QPointF GarmentDrawing::toScene(Point panelPoint) const {
  return fromPanel_.map(QPointF(panelPoint.x, panelPoint.y));
}

Point GarmentDrawing::toPanel(QPointF scenePoint) const {
  const QPointF point = fromPanel_.inverted().map(scenePoint);
  return {point.x(), point.y()};
}

QRectF GarmentDrawing::extent() const {
  QRectF box = panelBounds_;
  if (plan_.hasRule) {
    box = box.united(designBounds());
    for (const Piece& piece : plan_.part ? plan_.part->wholeOnPanel.pieces : std::vector<Piece>()) {
      box = box.united(mapped(piece.outer).boundingRect());
    }
  }
  if (frame_ != nullptr) {
    box = box.united(framePolygon(frame_->body).boundingRect());
  }
  return box;
}

QString GarmentDrawing::caption() const {
  switch (plan_.panel) {
    case PanelName::Front:
      return printed("Front, seen from outside; collar on top");
    case PanelName::Back:
      return printed("Back, seen from outside; collar on top");
    case PanelName::Hood:
      return printed("Hood as it lies back, seen from behind; face edge on top");
    case PanelName::LeftSleeve:
    case PanelName::RightSleeve:
      return capitalised(
          printed("%1, outer half on its fold; cuff at the bottom", panelPhrase(plan_.panel)));
    case PanelName::Flat:
      return panel_.has(EdgeName::TurnUpFold)
                 ? printed("Cuff as it is turned up and shows when worn; its open edge on top")
                 : printed("Flat piece, seen from outside; top edge on top");
    case PanelName::LeftLeg:
    case PanelName::RightLeg:
      return capitalised(
          printed("%1, front half on its crease; waist on top", panelPhrase(plan_.panel)));
  }
  return {};
}

QString GarmentDrawing::viewerLeft() const {
  switch (plan_.panel) {
    case PanelName::Front:
      return printed("wearer's right");
    case PanelName::Back:
    case PanelName::Hood:
      return printed("wearer's left");
    case PanelName::LeftSleeve:
      return printed("garment's front");
    case PanelName::RightSleeve:
      return printed("garment's back");
    case PanelName::Flat:
      return printed("viewer's left");
    case PanelName::LeftLeg:
      return printed("inner side");
    case PanelName::RightLeg:
      return printed("outer side");
  }
  return {};
}

QString GarmentDrawing::viewerRight() const {
  switch (plan_.panel) {
    case PanelName::Front:
      return printed("wearer's left");
    case PanelName::Back:
    case PanelName::Hood:
      return printed("wearer's right");
    case PanelName::LeftSleeve:
      return printed("garment's back");
    case PanelName::RightSleeve:
      return printed("garment's front");
    case PanelName::Flat:
      return printed("viewer's right");
    case PanelName::LeftLeg:
      return printed("outer side");
    case PanelName::RightLeg:
      return printed("inner side");
  }
  return {};
}

QPolygonF GarmentDrawing::mapped(const std::vector<Point>& points) const {
  QPolygonF polygon;
  for (const Point& point : points) {
    polygon << toScene(point);
  }
  return polygon;
}

QPolygonF GarmentDrawing::framePolygon(const Window& window) const {
  const Point centre = plan_.frame->centre;
  return mapped(transformedRing(window.boundary(kCurveTolerance), plan_.frame->turn, centre));
}

QRectF GarmentDrawing::designBounds() const {
  const Box& box = plan_.placed.bounds;
  return QRectF(toScene(box.min), toScene(box.max)).normalized();
}

void GarmentDrawing::paint(QPainter& painter, const DrawingStyle& style, const QRectF& area) const {
  painter.save();
  painter.setClipRect(area, Qt::IntersectClip);
  painter.setBrush(Qt::NoBrush);
  paintPanel(painter, style);
  if (style.showKeepOuts) {
    paintKeepOuts(painter, style);
  }
  if (plan_.hasRule) {
    paintDesign(painter, style);
  }
  if (frame_ != nullptr && style.showFrame) {
    paintFrame(painter, style);
  }
  paintScene(painter, style, scene(style, area));
  painter.restore();
}

std::vector<DrawnLabel> GarmentDrawing::labels(const DrawingStyle& style,
                                               const QRectF& area) const {
  std::vector<DrawnLabel> result;
  const Scene laidOut = scene(style, area);
  for (std::size_t i = 0; i < laidOut.labels.size(); ++i) {
    if (!laidOut.places[i]) {
      continue;
    }
    QStringList words;
    for (const SceneLabelLine& line : laidOut.labels[i].lines) {
      words << line.text;
    }
    const QPointF off = laidOut.places[i]->center() - laidOut.labels[i].wanted;
    result.push_back({words.join(u' '), *laidOut.places[i], off.manhattanLength() > style.unit,
                      laidOut.labels[i].dimension});
  }
  return result;
}

void GarmentDrawing::paintPanel(QPainter& painter, const DrawingStyle& style) const {
  const double width = style.lineWidth * style.unit;
  const QPen faint = pen(style.palette.faintLine, width * 0.6);
  painter.setPen(faint);
  for (const Detail& detail : panel_.details) {
    if (detail.closed) {
      painter.setBrush(style.palette.neighbour);
      painter.drawPolygon(mapped(detail.line));
    }
  }
  painter.setBrush(style.palette.cloth);
  painter.setPen(pen(style.palette.line, width));
  painter.drawPolygon(mapped(panel_.outline));
  painter.setBrush(Qt::NoBrush);
  for (const Detail& detail : panel_.details) {
    if (!detail.closed) {
      const bool rib = detail.kind == DetailKind::Rib || detail.kind == DetailKind::Seam;
      painter.setPen(rib ? faint : pen(style.palette.line, width * 0.6));
      painter.drawPolyline(mapped(detail.line));
    }
  }
  QPen crease = pen(style.palette.faintLine, width * 0.6);
  crease.setDashPattern({12.0, 4.0, 2.0, 4.0});
  painter.setPen(crease);
  painter.drawLine(QPointF(0.0, panelBounds_.top()), QPointF(0.0, panelBounds_.bottom()));
}

void GarmentDrawing::paintKeepOuts(QPainter& painter, const DrawingStyle& style) const {
  const double unit = style.unit;
  for (const KeepOut& keepOut : panel_.keepOuts) {
    QPainterPath path;
    path.addPolygon(mapped(keepOut.area));
    path.closeSubpath();
    hatch(painter, path, pen(style.palette.keepOut, 0.12 * unit), 1.3 * unit, true);
    painter.setPen(keepOut.assumed ? dashed(style.palette.keepOut, 0.15 * unit, unit, unit)
                                   : pen(style.palette.keepOut, 0.15 * unit));
    painter.drawPath(path);
  }
}

// The garment's pieces of appliqué take their own cover thread where design and outline agree on
// how many there are; everything else takes the main thread.
void GarmentDrawing::paintDesign(QPainter& painter, const DrawingStyle& style) const {
  const double unit = style.unit;
  const auto toned = [&](const std::optional<QColor>& thread) {
    if (!thread || !style.threadColours) {
      return style.palette.designTone;
    }
    return style.softened ? mixed(*thread, style.palette.cloth, 0.62) : *thread;
  };
  const Design& design = plan_.design;
  const Outline& outline =
      plan_.part && style.wholeDesign ? plan_.part->wholeOnPanel : plan_.outlineOnPanel;
  const bool appliqued = !design.pieces.empty() && design.pieces.size() == outline.pieces.size();
  if (plan_.part && !style.wholeDesign) {
    painter.setPen(pen(style.palette.faintLine, style.lineWidth * unit * 0.8));
    for (const Piece& piece : plan_.part->wholeOnPanel.pieces) {
      painter.drawPath(pathOf(piece, style));
    }
  }
  for (std::size_t i = 0; i < outline.pieces.size(); ++i) {
    const QPainterPath path = pathOf(outline.pieces[i], style);
    const auto thread = mainThread(design, [&](const ThreadBlock& block) {
      return appliqued ? block.piece == design.pieces[i].name : true;
    });
    painter.fillPath(path, toned(thread));
    if (!appliqued) {
      // Sewing is hatched, cloth that is laid on is not.
      hatch(painter, path, pen(mixed(style.palette.designLine, toned(thread), 0.55), 0.1 * unit),
            1.0 * unit, false);
    }
    painter.setPen(pen(style.palette.designLine, style.lineWidth * unit * 0.8));
    painter.drawPath(path);
  }
  if (!style.wholeDesign) {
    paintRegisterMarks(painter, style);
  }
  if (!style.showCentre) {
    return;
  }
  const QPointF centre = toScene(plan_.placed.centre);
  const double arm = 2.2 * unit;
  // A light ring under the cross keeps it visible on dark threads.
  for (const QPen& stroke :
       {pen(style.palette.plate, 0.7 * unit), pen(style.palette.dimension, 0.25 * unit)}) {
    painter.setPen(stroke);
    painter.drawLine(centre - QPointF(arm, 0.0), centre + QPointF(arm, 0.0));
    painter.drawLine(centre - QPointF(0.0, arm), centre + QPointF(0.0, arm));
  }
}

QPainterPath GarmentDrawing::pathOf(const Piece& piece, const DrawingStyle& style) const {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  const auto add = [&](const Ring& ring) {
    path.addPolygon(mapped(thinned(ring, style.finest)));
    path.closeSubpath();
  };
  add(piece.outer);
  for (const Ring& hole : piece.holes) {
    add(hole);
  }
  return path;
}

void GarmentDrawing::paintRegisterMarks(QPainter& painter, const DrawingStyle& style) const {
  if (!plan_.part) {
    return;
  }
  painter.setPen(pen(style.palette.designLine, style.lineWidth * style.unit));
  for (const RegisterMark& mark : plan_.part->marks) {
    for (const Point way : {Point{1.0, 0.0}, Point{0.0, 1.0}}) {
      const Point arm = turned(way * (mark.extent.mm() / 2.0), plan_.placed.panelTurn);
      painter.drawLine(toScene(mark.at - arm), toScene(mark.at + arm));
    }
  }
}

void GarmentDrawing::paintFrame(QPainter& painter, const DrawingStyle& style) const {
  const double unit = style.unit;
  painter.setPen(dashed(style.palette.frame, style.lineWidth * unit, 1.6 * unit, 0.9 * unit));
  painter.drawPolygon(framePolygon(frame_->window));
  painter.setPen(pen(style.palette.frame, style.lineWidth * unit * 0.7));
  painter.drawPolygon(framePolygon(frame_->body));
  if (style.showRoom && !plan_.frame->room.empty()) {
    const QPolygonF room = mapped(plan_.frame->room.boundary(kCurveTolerance.mm()));
    // On a band, to be seen over threads of any colour.
    painter.setPen(pen(style.palette.plate, style.lineWidth * unit * 2.4));
    painter.drawPolygon(room);
    painter.setPen(
        dashed(style.palette.room, style.lineWidth * unit * 1.2, 1.0 * unit, 0.6 * unit));
    painter.drawPolygon(room);
  }
}

void GarmentDrawing::paintScene(QPainter& painter, const DrawingStyle& style,
                                const Scene& scene) const {
  const double unit = style.unit;
  painter.setPen(Qt::NoPen);
  painter.setBrush(style.palette.frame);
  for (const QPolygonF& bracket : scene.brackets) {
    painter.drawPolygon(bracket);
  }
  painter.setBrush(Qt::NoBrush);
  for (const SceneLine& line : scene.lines) {
    painter.setPen(pen(style.palette.dimension, (line.arrows ? 0.25 : 0.13) * unit));
    painter.drawLine(line.from, line.to);
    if (line.arrows) {
      const double head = std::min(2.0 * unit, 0.4 * (line.to - line.from).manhattanLength());
      arrowHead(painter, line.to, line.from, head, style.palette.dimension);
      arrowHead(painter, line.from, line.to, head, style.palette.dimension);
    }
  }
  if (scene.turnArrow) {
    painter.setPen(pen(style.palette.designLine, 0.5 * unit));
    const QPointF along = scene.turnArrow->to - scene.turnArrow->from;
    painter.drawLine(scene.turnArrow->from, scene.turnArrow->to - along * 0.1);
    arrowHead(painter, scene.turnArrow->to, scene.turnArrow->from, 2.6 * unit,
              style.palette.designLine);
  }
  for (std::size_t i = 0; i < scene.labels.size(); ++i) {
    const SceneLabel& label = scene.labels[i];
    const auto& place = scene.places[i];
    if (place && label.anchor &&
        !place->adjusted(-3 * unit, -3 * unit, 3 * unit, 3 * unit).contains(*label.anchor)) {
      painter.setPen(pen(style.palette.dimension, 0.13 * unit));
      painter.drawLine(place->center(), *label.anchor);
    }
  }
  for (std::size_t i = 0; i < scene.labels.size(); ++i) {
    const auto& place = scene.places[i];
    if (!place) {
      continue;
    }
    painter.fillRect(*place, style.palette.plate);
    double y = place->top() + (place->height() - scene.labels[i].size.height()) / 2.0;
    for (const SceneLabelLine& line : scene.labels[i].lines) {
      const double x = place->center().x() - lettering::textWidth(line.text, line.style) / 2.0;
      lettering::draw(painter, {x, y}, line.text, line.style, style.palette.text);
      y += lettering::lineHeight(line.style);
    }
  }
}

}  // namespace creaseline
