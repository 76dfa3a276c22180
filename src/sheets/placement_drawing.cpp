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

// What stands under the drawing: its caption, then the bar with the scale in words beside it.
class ScaleLines {
 public:
  ScaleLines(const SheetContext& context, const PlacementPlan& plan, QString caption, double width)
      : bar_(scaleBar(context.units)),
        size_(toQString(plan.size.text())),
        caption_(std::move(caption)),
        width_(width) {}

  [[nodiscard]] double height(double scale) const {
    return std::max(kLeastHeight,
                    kAboveCaption + lettering::wrappedHeight(caption_, kText, width_) +
                        static_cast<double>(words(scale).size()) * lettering::lineHeight(kStrong));
  }

  void paint(QPainter& painter, QPointF at, double scale) const {
    at.ry() += kAboveCaption;
    at.ry() += lettering::drawWrapped(painter, at, width_, caption_, kText, Qt::black);
    const double length = bar_.lengthMm / scale;
    const double middle = at.y() + lettering::lineHeight(kStrong) / 2.0;
    // Filled, so that its length is exact.
    painter.fillRect(QRectF(at.x(), middle - 0.6, length, 1.2), Qt::black);
    for (const QString& line : words(scale)) {
      lettering::draw(painter, at + QPointF(length + kAfterBar, 0.0), line, kStrong, Qt::black);
      at.ry() += lettering::lineHeight(kStrong);
    }
  }

 private:
  static constexpr double kLeastHeight = 10.0;
  static constexpr double kAboveCaption = 1.0;
  static constexpr double kAfterBar = 2.0;

  // In one line where there is room for it beside the bar.
  [[nodiscard]] QStringList words(double scale) const {
    const QString text = printed("= %1 of garment   scale 1 : %2   drawn: size %3", bar_.text,
                                 sheets::decimalText(scale), size_);
    const double room = width_ - bar_.lengthMm / scale - kAfterBar;
    return lettering::textWidth(text, kStrong) <= room ? QStringList(text)
                                                       : lettering::wrapped(text, kStrong, room);
  }

  ScaleBar bar_;
  QString size_;
  QString caption_;
  double width_;
};

// The largest drawing at a round scale; the height may be unlimited.
double chooseScale(const QRectF& extent, double width, double height, const ScaleLines& lines) {
  for (const double scale : kScales) {
    if (extent.width() / scale + 2.0 * kSidePadding <= width &&
        extent.height() / scale + kTopPadding + kBottomPadding + lines.height(scale) <= height) {
      return scale;
    }
  }
  return *std::rbegin(kScales);
}

}  // namespace

double drawingHeight(const SheetContext& context, const PlacementFacts& facts, double width) {
  const PlacementPlan& plan = context.plan.placements[facts.drawn];
  const GarmentDrawing drawing(plan, context.shop, context.units);
  const QRectF extent = drawing.extent();
  const ScaleLines lines(context, plan, drawing.caption(), width);
  const double scale = chooseScale(extent, width, 1.0e6, lines);
  return extent.height() / scale + kTopPadding + kBottomPadding + lines.height(scale);
}

void paintDrawing(QPainter& painter, const SheetContext& context, const PlacementFacts& facts,
                  const QRectF& area) {
  const PlacementPlan& plan = context.plan.placements[facts.drawn];
  const GarmentDrawing drawing(plan, context.shop, context.units);
  const QRectF extent = drawing.extent();
  const ScaleLines lines(context, plan, drawing.caption(), area.width());
  const double scale = chooseScale(extent, area.width(), area.height(), lines);
  const QRectF paper = area.adjusted(0.0, 0.0, 0.0, -lines.height(scale));
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
  lines.paint(painter, {area.left(), paper.bottom()}, scale);
}

}  // namespace creaseline
