// SPDX-License-Identifier: MIT
// The palettes: paper in greys that survive a black-and-white printer, and two for the screen.
#include "creaseline/sheets/drawing_style.h"

#include "sheets/colour_mix.h"
#include "sheets/typography.h"

namespace creaseline {
namespace {

QColor rgb(int value) {
  return QColor::fromRgb(static_cast<QRgb>(value));
}

// Text and plate differ by far more than 4.5 : 1 in every palette (W3C WCAG 2.2, 1.4.3).
DrawingPalette paperPalette() {
  DrawingPalette palette;
  palette.ground = rgb(0xffffff);
  palette.cloth = rgb(0xffffff);
  palette.neighbour = rgb(0xffffff);
  palette.line = rgb(0x000000);
  palette.faintLine = rgb(0x8a8a8a);
  palette.designLine = rgb(0x000000);
  palette.designTone = rgb(0xd8d8d8);
  palette.frame = rgb(0x303030);
  palette.keepOut = rgb(0x8a8a8a);
  palette.dimension = rgb(0x000000);
  palette.plate = rgb(0xffffff);
  palette.text = rgb(0x000000);
  palette.room = rgb(0x505050);
  return palette;
}

DrawingPalette lightPalette() {
  DrawingPalette palette;
  palette.ground = rgb(0xf4f2ee);
  palette.cloth = rgb(0xe7e4dd);
  palette.neighbour = rgb(0xefede8);
  palette.line = rgb(0x2b2b2b);
  palette.faintLine = rgb(0x8d8a84);
  palette.designLine = rgb(0x14375e);
  palette.designTone = rgb(0xbcd3ea);
  palette.frame = rgb(0x0b5a8a);
  palette.keepOut = rgb(0xa4503a);
  palette.dimension = rgb(0x1c1c1c);
  palette.plate = rgb(0xffffff);
  palette.text = rgb(0x161616);
  palette.room = rgb(0x1d6b3a);
  return palette;
}

DrawingPalette darkPalette() {
  DrawingPalette palette;
  palette.ground = rgb(0x1e2023);
  palette.cloth = rgb(0x3a3d42);
  palette.neighbour = rgb(0x2c2f33);
  palette.line = rgb(0xd8d8d8);
  palette.faintLine = rgb(0x868a90);
  palette.designLine = rgb(0xe8f1fb);
  palette.designTone = rgb(0x4d6f92);
  palette.frame = rgb(0x7cc4f2);
  palette.keepOut = rgb(0xe59a80);
  palette.dimension = rgb(0xf0f0f0);
  palette.plate = rgb(0x141518);
  palette.text = rgb(0xf4f4f4);
  palette.room = rgb(0x7fd8a0);
  return palette;
}

DrawingStyle screen(const DrawingPalette& palette, double unit, std::optional<QColor> cloth) {
  DrawingStyle style;
  style.palette = palette;
  style.unit = unit;
  style.lineWidth = 0.4;
  style.softened = false;
  style.textSize = 3.2;
  if (cloth) {
    style.palette.cloth = *cloth;
    // Sleeves and hood are of the same cloth, and further from what is looked at.
    style.palette.neighbour = mixed(*cloth, palette.ground, 0.5);
    // Lines on the garment must be seen on its own colour.
    const bool dark = cloth->lightnessF() < 0.45F;
    const DrawingPalette lines = dark ? darkPalette() : lightPalette();
    style.palette.faintLine = lines.faintLine;
    style.palette.designLine = lines.designLine;
    style.palette.frame = lines.frame;
    style.palette.keepOut = lines.keepOut;
    style.palette.room = lines.room;
  }
  return style;
}

}  // namespace

DrawingStyle DrawingStyle::paper(double scale) {
  DrawingStyle style;
  style.palette = paperPalette();
  style.unit = scale;
  style.textSize = typography::kText.size;
  style.valueSize = typography::kHeading.size;
  return style;
}

DrawingStyle DrawingStyle::screenLight(double unit, std::optional<QColor> cloth) {
  return screen(lightPalette(), unit, cloth);
}

DrawingStyle DrawingStyle::screenDark(double unit, std::optional<QColor> cloth) {
  return screen(darkPalette(), unit, cloth);
}

}  // namespace creaseline
