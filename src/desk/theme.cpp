// SPDX-License-Identifier: MIT
// Colours, shapes, words and icons.
#include "desk/theme.h"

#include <QApplication>
#include <QFile>
#include <QIconEngine>
#include <QPainterPath>
#include <QSvgRenderer>
#include <algorithm>

namespace creaseline::desk {

namespace {

// Millimetres of one logical pixel at 96 per inch, the size that desktop systems assume.
constexpr double kMmPerPixel = 25.4 / 96.0;

// Logical pixels: on screens of up to twice as many dots, half a dot.
constexpr double kFinestPixels = 0.25;

class PaletteIconEngine : public QIconEngine {
 public:
  explicit PaletteIconEngine(QString name) : name_(std::move(name)) {}

  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
    QFile file(QStringLiteral(":/creaseline/icons/%1.svg").arg(name_));
    if (!file.open(QIODevice::ReadOnly)) {
      return;
    }
    const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
    const QColor colour = QApplication::palette().color(group, QPalette::ButtonText);
    QByteArray svg = file.readAll();
    svg.replace("currentColor", colour.name().toLatin1());
    QSvgRenderer renderer(svg);
    renderer.render(painter, rect);
  }

  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap pixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paint(&painter, QRect(QPoint(0, 0), size), mode, state);
    return pixmap;
  }

  QIconEngine* clone() const override { return new PaletteIconEngine(name_); }

 private:
  QString name_;
};

QColor mixed(const QColor& a, const QColor& b, double shareOfB) {
  const auto channel = [&](int from, int to) {
    return static_cast<int>(from * (1.0 - shareOfB) + to * shareOfB);
  };
  return {channel(a.red(), b.red()), channel(a.green(), b.green()), channel(a.blue(), b.blue())};
}

Colour toColour(const QColor& colour) {
  return {static_cast<std::uint8_t>(colour.red()), static_cast<std::uint8_t>(colour.green()),
          static_cast<std::uint8_t>(colour.blue())};
}

// Dimension lines run over the cloth and over the table: of the colours whose text can be read on
// the labels' plate, the one seen best on both.
QColor dimensionColour(const DrawingPalette& palette) {
  constexpr double kReadable = 4.5;  // W3C WCAG 2.2, success criterion 1.4.3
  QColor best = palette.dimension;
  double bestSeen = 0.0;
  for (const QColor& candidate :
       {palette.dimension, QColor(0xc2, 0x41, 0x0c), QColor(0x0f, 0x76, 0x6e),
        QColor(0xf5, 0x9e, 0x42), QColor(0x4f, 0xc3, 0xb5)}) {
    const Colour colour = toColour(candidate);
    const double seen = std::min(contrastRatio(colour, toColour(palette.cloth)),
                                 contrastRatio(colour, toColour(palette.ground)));
    if (contrastRatio(colour, toColour(palette.plate)) >= kReadable && seen > bestSeen) {
      best = candidate;
      bestSeen = seen;
    }
  }
  return best;
}

}  // namespace

bool isDark(const QPalette& palette) {
  return palette.color(QPalette::Base).lightness() < 128;
}

QColor stateColour(Severity severity, const QPalette& palette) {
  const bool dark = isDark(palette);
  switch (severity) {
    case Severity::Stop:
      return dark ? QColor(0xff, 0x8f, 0x82) : QColor(0xa8, 0x21, 0x1a);
    case Severity::Watch:
      return dark ? QColor(0xf2, 0xc1, 0x4e) : QColor(0x7d, 0x53, 0x00);
    case Severity::Note:
      return dark ? QColor(0x86, 0xd4, 0xa5) : QColor(0x1c, 0x66, 0x3a);
  }
  return palette.color(QPalette::Text);
}

QColor mutedText(const QPalette& palette) {
  return mixed(palette.color(QPalette::Text), palette.color(QPalette::Base), 0.32);
}

QColor hairline(const QPalette& palette) {
  return mixed(palette.color(QPalette::Base), palette.color(QPalette::Text), 0.16);
}

QColor tableGround(const QPalette& palette) {
  return (isDark(palette) ? DrawingStyle::screenDark(1.0) : DrawingStyle::screenLight(1.0))
      .palette.ground;
}

QColor comparedColour(const QPalette& palette) {
  return isDark(palette) ? QColor(0xe0, 0x8a, 0xd0) : QColor(0x96, 0x2d, 0x86);
}

QColor comparedColour(const QPalette& palette, std::optional<Colour> cloth) {
  if (!cloth) {
    return comparedColour(palette);
  }
  const Colour ground = toColour(tableGround(palette));
  // Most of its lines run over the cloth: first they must be seen there.
  constexpr double kSeen = 3.0;  // W3C WCAG 2.2, success criterion 1.4.11
  QColor best;
  std::pair<double, double> bestSeen{-1.0, -1.0};
  for (const QColor& candidate :
       {comparedColour(palette), QColor(0x96, 0x2d, 0x86), QColor(0xe0, 0x8a, 0xd0),
        QColor(0xc8, 0x3f, 0xb4), QColor(0xfb, 0xd0, 0xf3), QColor(0x4a, 0x08, 0x40)}) {
    const double onCloth = contrastRatio(toColour(candidate), *cloth);
    const std::pair seen{std::min(onCloth, kSeen),
                         std::min(onCloth, contrastRatio(toColour(candidate), ground))};
    if (seen > bestSeen) {
      best = candidate;
      bestSeen = seen;
    }
  }
  return best;
}

QString stateShape(Severity severity) {
  switch (severity) {
    case Severity::Stop:
      return QStringLiteral("■");
    case Severity::Watch:
      return QStringLiteral("▲");
    case Severity::Note:
      return QStringLiteral("●");
  }
  return {};
}

QString findingWord(Severity severity) {
  switch (severity) {
    case Severity::Stop:
      return QCoreApplication::translate("creaseline::desk", "stop");
    case Severity::Watch:
      return QCoreApplication::translate("creaseline::desk", "watch");
    case Severity::Note:
      return QCoreApplication::translate("creaseline::desk", "note");
  }
  return {};
}

QString garmentWord(Severity severity) {
  return severity == Severity::Note ? QCoreApplication::translate("creaseline::desk", "fine")
                                    : findingWord(severity);
}

void paintState(QPainter& painter, const QRectF& box, Severity severity, const QColor& colour) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  const double side = std::min(box.width(), box.height());
  QRectF square(0, 0, side, side);
  square.moveCenter(box.center());
  switch (severity) {
    case Severity::Stop:
      painter.drawRect(square.adjusted(side * 0.08, side * 0.08, -side * 0.08, -side * 0.08));
      break;
    case Severity::Watch:
      painter.drawPolygon(QPolygonF({QPointF(square.center().x(), square.top()),
                                     QPointF(square.right(), square.bottom() - side * 0.06),
                                     QPointF(square.left(), square.bottom() - side * 0.06)}));
      break;
    case Severity::Note:
      painter.drawEllipse(square.adjusted(side * 0.1, side * 0.1, -side * 0.1, -side * 0.1));
      break;
  }
  painter.restore();
}

DrawingStyle drawingStyle(const QPalette& palette, double pixelsPerMm,
                          std::optional<Colour> cloth) {
  std::optional<QColor> clothColour;
  if (cloth) {
    clothColour = QColor(cloth->red, cloth->green, cloth->blue);
  }
  const double unit = 1.0 / (pixelsPerMm * kMmPerPixel);
  DrawingStyle style = isDark(palette) ? DrawingStyle::screenDark(unit, clothColour)
                                       : DrawingStyle::screenLight(unit, clothColour);
  style.palette.dimension = dimensionColour(style.palette);
  style.finest = kFinestPixels / pixelsPerMm;
  return style;
}

QIcon deskIcon(const QString& name) {
  return QIcon(new PaletteIconEngine(name));
}

}  // namespace creaseline::desk
