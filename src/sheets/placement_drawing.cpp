// SPDX-License-Identifier: MIT
// The placement sheet's garment drawing: choice of a round scale, scale line and bar.
#include <algorithm>

#include "creaseline/sheets/garment_drawing.h"
#include "sheets/placement_parts.h"
#include "sheets/text.h"
#include "sheets/typography.h"

namespace creaseline {

using sheets::printed;
using sheets::toQString;
using typography::kStrong;
using typography::kText;

namespace {

constexpr double kScales[] = {1.0, 1.5, 2.0, 2.5,  3.0,  4.0,  5.0, 6.0,
                              7.0, 8.0, 9.0, 10.0, 12.0, 15.0, 20.0};
constexpr double kSidePadding = 3.0;  // around the garment, millimetres of paper
constexpr double kTopPadding = 9.0;   // side labels
constexpr double kBottomPadding = 3.0;
constexpr double kScaleLineHeight = 10.0;  // caption, then scale and bar

// The largest drawing at a round scale; the height may be unlimited.
double chooseScale(const QRectF& extent, double width, double height) {
  for (const double scale : kScales) {
    if (extent.width() / scale + 2.0 * kSidePadding <= width &&
        extent.height() / scale + kTopPadding + kBottomPadding <= height) {
      return scale;
    }
  }
  return *std::rbegin(kScales);
}

// A round length of garment, drawn to scale: 4 in or 10 cm.
struct ScaleBar {
  double lengthMm = 0.0;
  QString text;
};
ScaleBar scaleBar(const UnitChoice& units) {
  if (units.length == LengthUnit::Inch) {
    return {Length::fromInches(4.0).mm(), QStringLiteral("4 in")};
  }
  return {100.0, QStringLiteral("10 cm")};
}

void paintScaleLine(QPainter& painter, const SheetContext& context, const PlacementPlan& plan,
                    double scale, QPointF at) {
  const ScaleBar bar = scaleBar(context.units);
  const double length = bar.lengthMm / scale;
  const double middle = at.y() + lettering::lineHeight(kStrong) / 2.0;
  // Filled, so that its length is exact.
  painter.fillRect(QRectF(at.x(), middle - 0.6, length, 1.2), Qt::black);
  const QString text = printed("= %1 of garment   scale 1 : %2   drawn: size %3", bar.text,
                               sheets::decimalText(scale), plan.size.text());
  lettering::draw(painter, {at.x() + length + 2.0, middle - lettering::lineHeight(kStrong) / 2},
                  text, kStrong, Qt::black);
}

}  // namespace

double drawingHeight(const SheetContext& context, const PlacementFacts& facts, double width) {
  const PlacementPlan& plan = context.plan.placements[facts.drawn];
  const QRectF extent = GarmentDrawing(plan, context.shop, context.units).extent();
  const double scale = chooseScale(extent, width, 1.0e6);
  return extent.height() / scale + kTopPadding + kBottomPadding + kScaleLineHeight;
}

void paintDrawing(QPainter& painter, const SheetContext& context, const PlacementFacts& facts,
                  const QRectF& area) {
  const PlacementPlan& plan = context.plan.placements[facts.drawn];
  const GarmentDrawing drawing(plan, context.shop, context.units);
  const QRectF paper = area.adjusted(0.0, 0.0, 0.0, -kScaleLineHeight);
  const QRectF extent = drawing.extent();
  const double scale = chooseScale(extent, paper.width(), paper.height());
  // Millimetres of paper to millimetres of garment, the garment in the middle of its room.
  const QPointF middle(paper.center().x(),
                       (paper.top() + kTopPadding + paper.bottom() - kBottomPadding) / 2.0);
  const QPointF corner = extent.center() + (paper.topLeft() - middle) * scale;
  painter.save();
  painter.translate(paper.topLeft());
  painter.scale(1.0 / scale, 1.0 / scale);
  painter.translate(-corner);
  DrawingStyle style = DrawingStyle::paper(scale);
  style.showCaption = false;  // it stands over the scale, clear of the garment
  drawing.paint(painter, style, QRectF(corner, paper.size() * scale));
  painter.restore();
  const double below = area.bottom() - kScaleLineHeight + 1.0;
  lettering::draw(painter, {area.left(), below}, drawing.caption(), kText, Qt::black);
  paintScaleLine(painter, context, plan, scale,
                 {area.left(), below + lettering::lineHeight(kText)});
}

}  // namespace creaseline
