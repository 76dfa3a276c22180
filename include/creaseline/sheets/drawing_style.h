// SPDX-License-Identifier: MIT
// How the garment drawing looks: colours, sizes of strokes and text, and what is shown.
#pragma once

#include <QColor>
#include <optional>

namespace creaseline {

struct DrawingPalette {
  QColor ground;      // behind the garment
  QColor cloth;       // the panel
  QColor neighbour;   // sleeves, hood, collar beside it
  QColor line;        // panel outline
  QColor faintLine;   // seams, neighbours, centre crease
  QColor designLine;  // outline of the design
  QColor designTone;  // its filling where no thread colour is used
  QColor frame;       // window and body
  QColor keepOut;     // hatching
  QColor dimension;   // dimension lines and their text
  QColor plate;       // behind labels
  QColor text;
  QColor room;  // where the design's centre may lie
};

// Everything is drawn in millimetres of garment; `unit` says how many of them show as one
// millimetre to the eye, and all strokes and texts are multiples of it. So a drawing at 1 : 5 on
// paper has unit 5, and a view that shows one garment millimetre as 0.8 pixels of 0.26 mm has
// unit 1 / (0.8 * 0.26).
struct DrawingStyle {
  DrawingPalette palette;
  double unit = 1.0;
  double textSize = 3.0;      // em, in units
  double valueSize = 4.4;     // em of the numbers on dimension lines, in units
  double lineWidth = 0.3;     // panel outline, in units; others follow from it
  double finest = 0.0;        // millimetres: points of a design no further apart are drawn as one
  bool threadColours = true;  // fill the design in its main thread's colour, softened on paper
  bool softened = true;       // mix thread colours with the cloth, to save ink
  bool showCentre = true;     // cross on the design's centre
  bool showFrame = true;
  bool showKeepOuts = true;
  bool showDimensions = true;
  bool wholeDesign = false;  // also what other hoopings sew of it, alike; else faintly
  bool showRoom = false;     // outline in which the design's centre may lie
  bool showSides = true;     // wearer's and viewer's side at both edges
  bool showTurn = true;
  bool showCaption = true;  // which panel is seen, and what is on top
  bool showLabels = true;   // any text at all; off for thumbnails

  // Black on white, little ink, safe in greyscale. `scale` 5 means 1 : 5.
  [[nodiscard]] static DrawingStyle paper(double scale);
  // For a window; `cloth` is the garment's own colour, or the palette's default.
  [[nodiscard]] static DrawingStyle screenLight(double unit, std::optional<QColor> cloth = {});
  [[nodiscard]] static DrawingStyle screenDark(double unit, std::optional<QColor> cloth = {});
};

}  // namespace creaseline
