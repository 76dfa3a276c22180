// SPDX-License-Identifier: MIT
// Painted parts of the placement sheet that have one place: sizes, banner, numbers, cautions.
#include "sheets/placement_parts.h"

#include <algorithm>
#include <cmath>

#include "sheets/text.h"
#include "sheets/typography.h"

namespace creaseline {

using lettering::TextStyle;
using sheets::printed;
using typography::kHeading;
using typography::kHeadingLight;
using typography::kNumber;
using typography::kStrong;
using typography::kText;

namespace {

constexpr double kCellPadding = 1.6;
constexpr double kCellGap = 1.6;
constexpr double kCellHeight = 7.6;
constexpr double kMostCellRows = 3.0;

constexpr double kBannerPadding = 3.0;
constexpr double kBannerBorder = 1.0;

constexpr double kNumberGap = 1.8;

QString quantityText(const SizeCell& cell) {
  return QStringLiteral("× %1").arg(cell.quantity);
}

double cellWidth(const SizeCell& cell) {
  return lettering::textWidth(cell.size, kHeading) + 1.5 +
         lettering::textWidth(quantityText(cell), kHeadingLight) + 2.0 * kCellPadding;
}

QString totalText(const PlacementFacts& facts) {
  return facts.pieces == 1 ? printed("= 1 piece") : printed("= %1 pieces", facts.pieces);
}

// Cell corners relative to the block's corner, one more for the total; empty if a cell is wider
// than the sheet or there are too many rows, and then the sizes are written as running text.
std::vector<QPointF> cellPlaces(const PlacementFacts& facts, double width) {
  std::vector<double> widths;
  for (const SizeCell& cell : facts.sizes) {
    widths.push_back(cellWidth(cell));
  }
  widths.push_back(lettering::textWidth(totalText(facts), kHeading));
  std::vector<QPointF> places;
  QPointF at;
  for (const double cell : widths) {
    if (at.x() > 0.0 && at.x() + cell > width) {
      at = QPointF(0.0, at.y() + kCellHeight + kCellGap);
    }
    if (cell > width || at.y() > kMostCellRows * (kCellHeight + kCellGap) - kCellHeight) {
      return {};
    }
    places.push_back(at);
    at += QPointF(cell + kCellGap, 0.0);
  }
  return places;
}

QString runningSizes(const PlacementFacts& facts) {
  QStringList parts;
  for (const SizeCell& cell : facts.sizes) {
    parts << cell.size + u' ' + quantityText(cell);
  }
  return parts.join(QStringLiteral(" · ")) + u' ' + totalText(facts);
}

TextStyle styleOf(NumberSize size) {
  switch (size) {
    case NumberSize::ArmsLength:
      return kNumber;
    case NumberSize::Step:
      return kHeading;
    case NumberSize::Close:
      break;
  }
  return kText;
}

// Lines of the banner with their styles, so that measuring and painting cannot differ.
struct BannerText {
  QString text;
  TextStyle style;
  double indent = 0.0;
};
std::vector<BannerText> bannerTexts(const PlacementFacts& facts, const PartChoice& choice) {
  std::vector<BannerText> texts;
  if (!facts.stopSizes.isEmpty()) {
    texts.push_back({printed("these sizes: %1", facts.stopSizes), kHeading});
  }
  if (choice.findingsFlow) {
    texts.push_back({printed("What is wrong stands under “Stop” below."), kStrong});
    return texts;
  }
  for (const FindingText& finding : facts.stops) {
    texts.push_back({finding.text, kStrong});
    if (!finding.numbers.isEmpty()) {
      texts.push_back({finding.numbers.join(QStringLiteral("; ")), kText, 4.0});
    }
    for (const QString& remedy : finding.remedies) {
      texts.push_back({printed("Checked remedy: %1", remedy), kText, 4.0});
    }
    if (finding.remedies.isEmpty()) {
      texts.push_back({printed("No remedy was found. Ask before going on."), kText, 4.0});
    }
  }
  if (facts.stops.empty()) {
    texts.push_back({printed("No frame was found for it. Ask before going on."), kStrong});
  }
  return texts;
}

}  // namespace

void paintSeverity(QPainter& painter, QPointF at, Severity severity, double size) {
  painter.save();
  painter.setPen(QPen(Qt::black, size * 0.12));
  switch (severity) {
    case Severity::Stop:
      painter.fillRect(QRectF(at, QSizeF(size, size)), Qt::black);
      break;
    case Severity::Watch:
      painter.setBrush(Qt::white);
      painter.drawPolygon(QPolygonF(
          {at + QPointF(size / 2.0, 0.0), at + QPointF(size, size), at + QPointF(0.0, size)}));
      break;
    case Severity::Note:
      painter.setBrush(Qt::white);
      painter.drawEllipse(QRectF(at, QSizeF(size, size)).adjusted(0.1, 0.1, -0.1, -0.1));
      break;
  }
  painter.restore();
}

double sizesHeight(const PlacementFacts& facts, double width) {
  const std::vector<QPointF> places = cellPlaces(facts, width);
  const double height = places.empty()
                            ? lettering::wrappedHeight(runningSizes(facts), kStrong, width)
                            : places.back().y() + kCellHeight;
  return height + 2.0;
}

void paintSizes(QPainter& painter, const PlacementFacts& facts, QPointF at, double width) {
  const std::vector<QPointF> places = cellPlaces(facts, width);
  if (places.empty()) {
    lettering::drawWrapped(painter, at, width, runningSizes(facts), kStrong, Qt::black);
    return;
  }
  const double sizeTop = (kCellHeight - lettering::lineHeight(kHeading)) / 2.0;
  // On one baseline.
  const double quantityTop =
      sizeTop + lettering::baseline(kHeading) - lettering::baseline(kHeadingLight);
  for (std::size_t i = 0; i < facts.sizes.size(); ++i) {
    const SizeCell& cell = facts.sizes[i];
    const QPointF corner = at + places[i];
    painter.setPen(QPen(Qt::black, 0.25));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(corner, QSizeF(cellWidth(cell), kCellHeight)));
    lettering::draw(painter, corner + QPointF(kCellPadding, sizeTop), cell.size, kHeading,
                    Qt::black);
    const double x = kCellPadding + lettering::textWidth(cell.size, kHeading) + 1.5;
    lettering::draw(painter, corner + QPointF(x, quantityTop), quantityText(cell), kHeadingLight,
                    Qt::black);
  }
  lettering::draw(painter, at + places.back() + QPointF(0.0, sizeTop), totalText(facts), kHeading,
                  Qt::black);
}

double bannerHeight(const PlacementFacts& facts, const PartChoice& choice, double width) {
  double height = 2.0 * kBannerPadding + lettering::lineHeight(kNumber) + 2.0;
  for (const BannerText& text : bannerTexts(facts, choice)) {
    height +=
        lettering::wrappedHeight(text.text, text.style, width - 2.0 * kBannerPadding - text.indent);
  }
  return height;
}

void paintBanner(QPainter& painter, const PlacementFacts& facts, const PartChoice& choice,
                 QPointF at, double width) {
  const double height = bannerHeight(facts, choice, width) - 2.0;
  painter.setPen(QPen(Qt::black, kBannerBorder, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.setBrush(Qt::NoBrush);
  const double half = kBannerBorder / 2.0;
  painter.drawRect(QRectF(at, QSizeF(width, height)).adjusted(half, half, -half, -half));
  const double left = at.x() + kBannerPadding;
  double y = at.y() + kBannerPadding;
  const double square = kNumber.size * 0.8;
  paintSeverity(painter, {left, y + (lettering::lineHeight(kNumber) - square) / 2.0},
                Severity::Stop, square);
  lettering::draw(painter, {left + square + 4.0, y}, printed("DO NOT SEW"), kNumber, Qt::black);
  y += lettering::lineHeight(kNumber);
  for (const BannerText& text : bannerTexts(facts, choice)) {
    y += lettering::drawWrapped(painter, {left + text.indent, y},
                                width - 2.0 * kBannerPadding - text.indent, text.text, text.style,
                                Qt::black);
  }
}

double numbersHeight(const PlacementFacts& facts, double width) {
  double height = 0.0;
  for (const BigNumber& number : facts.numbers) {
    height += lettering::lineHeight(kStrong) + kNumberGap;
    height += lettering::wrappedHeight(number.value, styleOf(number.size), width);
    if (!number.note.isEmpty()) {
      height += lettering::wrappedHeight(number.note, kText, width);
    }
  }
  return height;
}

void paintNumbers(QPainter& painter, const PlacementFacts& facts, QPointF at, double width) {
  double y = at.y();
  const auto add = [&](const QString& text, TextStyle style) {
    y += lettering::drawWrapped(painter, {at.x(), y}, width, text, style, Qt::black);
  };
  for (const BigNumber& number : facts.numbers) {
    add(number.label.toUpper(), kStrong);
    add(number.value, styleOf(number.size));
    if (!number.note.isEmpty()) {
      add(number.note, kText);
    }
    y += kNumberGap;
  }
}

double cautionsHeight(const PlacementFacts& facts, double width) {
  return lettering::lineHeight(kStrong) + 1.0 +
         lettering::wrappedHeight(facts.cautions.join(u' '), kText, width);
}

void paintCautions(QPainter& painter, const PlacementFacts& facts, QPointF at, double width) {
  painter.setPen(QPen(Qt::black, 0.25));
  painter.drawLine(at, at + QPointF(width, 0.0));
  lettering::draw(painter, at + QPointF(0.0, 0.6), printed("Cautions"), kStrong, Qt::black);
  lettering::drawWrapped(painter, at + QPointF(0.0, 0.6 + lettering::lineHeight(kStrong)), width,
                         facts.cautions.join(u' '), kText, Qt::black);
}

}  // namespace creaseline
