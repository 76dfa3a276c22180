// SPDX-License-Identifier: MIT
// A figure in true scale: what a template or gauge shows, in millimetres of paper, as the planner
// lays it out. Sheets stroke it and cut it into tiles; they compute none of it.
#pragma once

#include <string>
#include <vector>

#include "creaseline/base/angle.h"
#include "creaseline/shape/point.h"

namespace creaseline {

enum class StrokeKind {
  Design,    // outline of the design, solid, filled lightly
  Hole,      // in it, filled with the paper
  Cut,       // line to cut along, solid
  Crease,    // centre crease, dash-dot
  Guide,     // thin lines to lay the paper by: middle of the design, side that the drop runs to
  Fold,      // short marks at which to fold the paper, so that the centre is found without a ruler
  Window,    // window of the frame, dashed
  Collar,    // edge of the garment that is laid to the cloth: collar seam, face edge, cuff edge
  Ruler,     // ruler marks
  Register,  // register marks of a design that is sewn in parts
  Arrow      // closed, filled: "up when worn"
};

struct Stroke {
  StrokeKind kind{};
  Polyline line;
  bool closed = false;
};

// Where a text stands to its point.
enum class TextSide { Left, Right, Above, Below, Centre };

struct FigureText {
  Point at;
  TextSide side = TextSide::Right;
  std::string text;
  bool strong = false;
  bool large = false;  // what must not be overlooked: a mirrored template
};

// A cross to be punched through, with a ring round it.
struct FigureCross {
  Point at;
  Angle turn;        // of its arms
  std::string text;  // "centre of the design, S M L"; may be empty
  TextSide side = TextSide::Right;
};

// From a point to the text that stands beside it, in millimetres.
inline constexpr double kTextGap = 1.0;
// Half the length of a cross's arms, and the radius of its ring: as wide as a leather punch of
// usual size makes it, so that chalk or pen goes through (common practice, no source).
inline constexpr double kCrossArm = 5.0;
inline constexpr double kCrossRing = 1.75;

// A cross's text, beside the end of its arm.
[[nodiscard]] FigureText crossText(const FigureCross& cross);

// +y is down the paper, origin anywhere. Texts are about 3.2 mm high and must have room.
struct Figure {
  std::vector<Stroke> strokes;
  std::vector<FigureText> texts;
  std::vector<FigureCross> crosses;
  Box bounds;  // all strokes, crosses and anchors of texts, with room for the texts
};

}  // namespace creaseline
