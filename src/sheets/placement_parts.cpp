// SPDX-License-Identifier: MIT
// Painted parts of the placement sheet that have one place: sizes, banner, numbers, cautions.
#include "sheets/placement_parts.h"

#include <algorithm>
#include <cmath>

namespace creaseline {

using lettering::TextStyle;

namespace {

constexpr TextStyle kSize{lettering::points(14.0), true};
constexpr TextStyle kQuantity{lettering::points(11.0), false};
constexpr TextStyle kManySizes{lettering::points(9.5), true};
constexpr double kCellPadding = 1.6;
constexpr double kCellGap = 1.6;
constexpr double kCellHeight = 7.6;
constexpr double kMostCellRows = 3.0;

constexpr TextStyle kLoud{lettering::points(28.0), true};
constexpr TextStyle kLoudSizes{lettering::points(13.0), true};
constexpr TextStyle kWrong{lettering::points(10.5), true};
constexpr TextStyle kRemedy{lettering::points(10.0), false};
constexpr double kBannerPadding = 3.0;
constexpr double kBannerBorder = 1.0;

constexpr TextStyle kLabel{lettering::points(8.5), true};
constexpr TextStyle kNote{lettering::points(9.0), false};
constexpr TextStyle kMiddle{lettering::points(11.5), true};
constexpr double kLargestNumber = lettering::points(32.0);
constexpr double kSmallestNumber = lettering::points(24.0);
constexpr double kNumberGap = 1.8;

constexpr TextStyle kCaution{lettering::points(7.5), false};
constexpr TextStyle kCautionHeading{lettering::points(8.0), true};

QString quantityText(const SizeCell& cell) {
  return QStringLiteral("× %1").arg(cell.quantity);
}

double cellWidth(const SizeCell& cell) {
  return lettering::textWidth(cell.size, kSize) + 1.5 +
         lettering::textWidth(quantityText(cell), kQuantity) + 2.0 * kCellPadding;
}

QString totalText(const PlacementFacts& facts) {
  return facts.pieces == 1 ? QStringLiteral("= 1 piece")
                           : QStringLiteral("= %1 pieces").arg(facts.pieces);
}

// Cell corners relative to the block's corner, one more for the total; empty if a cell is wider
// than the sheet or there are too many rows, and then the sizes are written as running text.
std::vector<QPointF> cellPlaces(const PlacementFacts& facts, double width) {
  std::vector<double> widths;
  for (const SizeCell& cell : facts.sizes) {
    widths.push_back(cellWidth(cell));
  }
  widths.push_back(lettering::textWidth(totalText(facts), kSize));
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

TextStyle largeStyle(const QString& text, double width) {
  const double whole = lettering::textWidth(text, {1.0, true});
  return {std::clamp(width / whole, kSmallestNumber, kLargestNumber), true};
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
    texts.push_back({QStringLiteral("these sizes: ") + facts.stopSizes, kLoudSizes});
  }
  if (choice.findingsFlow) {
    texts.push_back({QStringLiteral("What is wrong stands under “Stop” below."), kWrong});
    return texts;
  }
  for (const FindingText& finding : facts.stops) {
    texts.push_back({finding.text, kWrong});
    if (!finding.numbers.isEmpty()) {
      texts.push_back({finding.numbers.join(QStringLiteral("; ")), kRemedy, 4.0});
    }
    for (const QString& remedy : finding.remedies) {
      texts.push_back({QStringLiteral("Checked remedy: ") + remedy, kRemedy, 4.0});
    }
    if (finding.remedies.isEmpty()) {
      texts.push_back({QStringLiteral("No remedy was found. Ask before going on."), kRemedy, 4.0});
    }
  }
  if (facts.stops.empty()) {
    texts.push_back({QStringLiteral("No frame was found for it. Ask before going on."), kWrong});
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
                            ? lettering::wrappedHeight(runningSizes(facts), kManySizes, width)
                            : places.back().y() + kCellHeight;
  return height + 2.0;
}

void paintSizes(QPainter& painter, const PlacementFacts& facts, QPointF at, double width) {
  const std::vector<QPointF> places = cellPlaces(facts, width);
  if (places.empty()) {
    lettering::drawWrapped(painter, at, width, runningSizes(facts), kManySizes, Qt::black);
    return;
  }
  const double sizeTop = (kCellHeight - lettering::lineHeight(kSize)) / 2.0;
  // On one baseline.
  const double quantityTop = sizeTop + lettering::baseline(kSize) - lettering::baseline(kQuantity);
  for (std::size_t i = 0; i < facts.sizes.size(); ++i) {
    const SizeCell& cell = facts.sizes[i];
    const QPointF corner = at + places[i];
    painter.setPen(QPen(Qt::black, 0.25));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(corner, QSizeF(cellWidth(cell), kCellHeight)));
    lettering::draw(painter, corner + QPointF(kCellPadding, sizeTop), cell.size, kSize, Qt::black);
    const double x = kCellPadding + lettering::textWidth(cell.size, kSize) + 1.5;
    lettering::draw(painter, corner + QPointF(x, quantityTop), quantityText(cell), kQuantity,
                    Qt::black);
  }
  lettering::draw(painter, at + places.back() + QPointF(0.0, sizeTop), totalText(facts), kSize,
                  Qt::black);
}

double bannerHeight(const PlacementFacts& facts, const PartChoice& choice, double width) {
  double height = 2.0 * kBannerPadding + lettering::lineHeight(kLoud) + 2.0;
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
  const double square = kLoud.size * 0.8;
  paintSeverity(painter, {left, y + (lettering::lineHeight(kLoud) - square) / 2.0}, Severity::Stop,
                square);
  lettering::draw(painter, {left + square + 4.0, y}, QStringLiteral("DO NOT SEW"), kLoud,
                  Qt::black);
  y += lettering::lineHeight(kLoud);
  for (const BannerText& text : bannerTexts(facts, choice)) {
    y += lettering::drawWrapped(painter, {left + text.indent, y},
                                width - 2.0 * kBannerPadding - text.indent, text.text, text.style,
                                Qt::black);
  }
}

double numbersHeight(const PlacementFacts& facts, double width) {
  double height = 0.0;
  for (const BigNumber& number : facts.numbers) {
    height += lettering::lineHeight(kLabel) + kNumberGap;
    height += number.large ? lettering::lineHeight(largeStyle(number.value, width))
                           : lettering::wrappedHeight(number.value, kMiddle, width);
    if (!number.note.isEmpty()) {
      height += lettering::wrappedHeight(number.note, kNote, width);
    }
  }
  return height;
}

void paintNumbers(QPainter& painter, const PlacementFacts& facts, QPointF at, double width) {
  double y = at.y();
  for (const BigNumber& number : facts.numbers) {
    lettering::draw(painter, {at.x(), y}, number.label.toUpper(), kLabel, Qt::black);
    y += lettering::lineHeight(kLabel);
    if (number.large) {
      const TextStyle style = largeStyle(number.value, width);
      lettering::draw(painter, {at.x(), y}, number.value, style, Qt::black);
      y += lettering::lineHeight(style);
    } else {
      y += lettering::drawWrapped(painter, {at.x(), y}, width, number.value, kMiddle, Qt::black);
    }
    if (!number.note.isEmpty()) {
      y += lettering::drawWrapped(painter, {at.x(), y}, width, number.note, kNote, Qt::black);
    }
    y += kNumberGap;
  }
}

double cautionsHeight(const PlacementFacts& facts, double width) {
  return lettering::lineHeight(kCautionHeading) + 1.0 +
         lettering::wrappedHeight(facts.cautions.join(u' '), kCaution, width);
}

void paintCautions(QPainter& painter, const PlacementFacts& facts, QPointF at, double width) {
  painter.setPen(QPen(Qt::black, 0.25));
  painter.drawLine(at, at + QPointF(width, 0.0));
  lettering::draw(painter, at + QPointF(0.0, 0.6), QStringLiteral("Cautions"), kCautionHeading,
                  Qt::black);
  lettering::drawWrapped(painter, at + QPointF(0.0, 0.6 + lettering::lineHeight(kCautionHeading)),
                         width, facts.cautions.join(u' '), kCaution, Qt::black);
}

}  // namespace creaseline
