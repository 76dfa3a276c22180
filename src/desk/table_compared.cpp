// SPDX-License-Identifier: MIT
// A second size laid over the one on the table: its lines, and where its design goes.
#include <algorithm>
#include <array>

#include "creaseline/planning/wording.h"
#include "desk/table_canvas.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr double kArrow = 5.0;
constexpr double kPlateGap = 6.0;

// A line with arrows at both ends.
void paintMeasured(QPainter& painter, const QLineF& line) {
  painter.drawLine(line);
  for (const auto& [tip, angle] :
       {std::pair(line.p1(), line.angle()), std::pair(line.p2(), line.angle() + 180.0)}) {
    for (const double spread : {-25.0, 25.0}) {
      QLineF barb = QLineF::fromPolar(kArrow, angle + spread);
      barb.translate(tip);
      painter.drawLine(barb);
    }
  }
}

}  // namespace

// Both sizes lie on the mark that panels begin at; of the other one only lines are drawn.
void TableCanvas::paintCompared(QPainter& painter) const {
  DrawingStyle over = style();
  const QColor colour = comparedColour(palette(), cloth_);
  over.palette.cloth = over.palette.neighbour = Qt::transparent;
  over.palette.line = over.palette.faintLine = colour;
  over.palette.designLine = over.palette.frame = colour;
  over.palette.designTone = Qt::transparent;
  over.threadColours = false;
  over.showKeepOuts = over.showDimensions = over.showSides = over.showTurn = false;
  over.showCaption = over.showLabels = over.showRoom = false;
  comparedDrawing_->paint(painter, over, area());
}

std::optional<TableCanvas::ComparedDrop> TableCanvas::comparedDrop() const {
  if (!comparedDrawing_ || !picture_.compared->hasRule) {
    return std::nullopt;
  }
  const Placed& placed = picture_.compared->placed;
  const double away = leadsTowardsDatum(placed.from) ? -1.0 : 1.0;
  const double markY = placed.centre.y - away * placed.centreOffset.mm();
  ComparedDrop drop;
  drop.text = tr("size %1: %2 %3", "size, length, from which mark")
                  .arg(toQString(picture_.compared->size.text()),
                       toQString(formatLength(placed.drop, picture_.planned->units())),
                       toQString(landmarkPhrase(placed.from)));
  const QString shown = tr("%1: %2", "size, length")
                            .arg(toQString(picture_.compared->size.text()),
                                 toQString(formatLength(placed.drop, picture_.planned->units())));
  drop.label = shown;
  QFont bold = font();
  bold.setBold(true);
  const QSizeF size = QSizeF(QFontMetrics(bold).size(Qt::TextSingleLine, shown)) + QSizeF(10, 4);
  std::vector<QRectF> taken;
  for (const DrawnLabel& label : drawing_->labels(style(), area())) {
    taken.emplace_back(toWidget(label.plate.topLeft()), toWidget(label.plate.bottomRight()));
  }
  // Beside the middle of the design, on the first side where its plate covers no other.
  const double half = placed.bounds.width() / 2.0;
  for (const double share : {0.25, -0.25, 0.6, -0.6, 0.95, -0.95, 0.0}) {
    const double x = placed.centre.x + share * half;
    drop.line = {toWidget(comparedDrawing_->toScene({x, markY})),
                 toWidget(comparedDrawing_->toScene({x, markY + away * placed.drop.mm()}))};
    const bool right =
        drop.line.p1().x() >= toWidget(comparedDrawing_->toScene({placed.centre.x, markY})).x();
    drop.plate = QRectF({}, size);
    drop.plate.moveCenter(drop.line.center() +
                          QPointF((right ? 1.0 : -1.0) * (size.width() / 2.0 + kPlateGap), 0.0));
    if (std::none_of(taken.begin(), taken.end(),
                     [&drop](const QRectF& each) { return each.intersects(drop.plate); })) {
      break;
    }
  }
  return drop;
}

void TableCanvas::paintComparedDrop(QPainter& painter) const {
  const auto drop = comparedDrop();
  if (!drop) {
    return;
  }
  const QColor colour = comparedColour(palette(), cloth_);
  painter.save();
  painter.setPen(QPen(colour, 1.6));
  paintMeasured(painter, drop->line);
  painter.setPen(QPen(colour, 1.5));
  painter.setBrush(palette().color(QPalette::Base));
  painter.drawRoundedRect(drop->plate, 3, 3);
  QFont bold = font();
  bold.setBold(true);
  painter.setFont(bold);
  painter.setPen(palette().color(QPalette::Text));
  painter.drawText(drop->plate, Qt::AlignCenter, drop->label);
  painter.restore();
}

}  // namespace creaseline::desk
