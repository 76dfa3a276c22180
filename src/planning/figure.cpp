// SPDX-License-Identifier: MIT
#include "creaseline/planning/figure.h"

namespace creaseline {

FigureText crossText(const FigureCross& cross) {
  Point at = cross.at;
  switch (cross.side) {
    case TextSide::Left:
      at.x -= kCrossArm;
      break;
    case TextSide::Right:
      at.x += kCrossArm;
      break;
    case TextSide::Above:
      at.y -= kCrossArm;
      break;
    case TextSide::Below:
      at.y += kCrossArm;
      break;
    case TextSide::Centre:
      break;
  }
  return {at, cross.side, cross.text, false, false};
}

}  // namespace creaseline
