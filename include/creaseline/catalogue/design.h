// SPDX-License-Identifier: MIT
// A design as ordered: size, stitches, thread blocks, appliqué pieces, outline. Not a stitch file.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/base/colour.h"
#include "creaseline/base/length.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/catalogue/identifiers.h"
#include "creaseline/shape/outline.h"

namespace creaseline {

// What one thread block does. The first three belong to an appliqué piece.
enum class BlockKind { PlacementLine, TackDown, Cover, Sew };

// A stretch of sewing with one thread, in sewing order.
struct ThreadBlock {
  std::string thread;  // colour by its everyday name
  Colour colour;
  int stitches = 0;
  BlockKind kind = BlockKind::Sew;
  std::string piece;  // name of the appliqué piece, or empty
  bool operator==(const ThreadBlock&) const = default;
};

struct AppliquePiece {
  std::string name;    // "K"
  std::string fabric;  // "navy twill"
  Length width, height;
  bool operator==(const AppliquePiece&) const = default;
};

// How the three letters of a monogram stand.
enum class MonogramStyle { LargerCentre, EqualLetters };

// The names whose first letters a monogram shows.
struct Monogram {
  std::string first, middle, surname;  // the middle name may be empty where letters are equal
  MonogramStyle style = MonogramStyle::EqualLetters;
  std::string wish;  // the letters as the customer wishes them, whatever the rule; or empty
  bool operator==(const Monogram&) const = default;
};

enum class OutlineSource { BoundingBox, Polygon, Svg, Png };

struct Design {
  DesignId id;
  std::string name;
  Length width, height;  // of the sewn bounding box
  int stitches = 0;      // total; equals the blocks' sum where blocks are given
  std::vector<ThreadBlock> blocks;
  std::vector<AppliquePiece> pieces;
  std::optional<Monogram> monogram;
  Outline outline;  // centred, its bounds are width x height
  OutlineSource outlineSource = OutlineSource::BoundingBox;
  std::string outlineFile;          // of Svg and Png, as written in the order
  double outlineDotsPerInch = 0.0;  // of Png, where the order says it; 0: the picture's own
  bool operator==(const Design&) const = default;

  // Stitches per square millimetre over the area of the outline; pieces that overlap count twice.
  [[nodiscard]] double stitchesPerSquareMm() const;
  // The same design at another size: lengths times factor, stitches times factor squared (fills
  // dominate; an estimate). Density stays as it is.
  [[nodiscard]] Design scaled(double factor) const;
};

template <>
struct EnumNames<BlockKind> {
  static constexpr std::pair<BlockKind, std::string_view> names[] = {
      {BlockKind::PlacementLine, "placement-line"},
      {BlockKind::TackDown, "tack-down"},
      {BlockKind::Cover, "cover"},
      {BlockKind::Sew, "sew"}};
};
template <>
struct EnumNames<MonogramStyle> {
  static constexpr std::pair<MonogramStyle, std::string_view> names[] = {
      {MonogramStyle::LargerCentre, "larger-centre"},
      {MonogramStyle::EqualLetters, "equal-letters"}};
};
template <>
struct EnumNames<OutlineSource> {
  static constexpr std::pair<OutlineSource, std::string_view> names[] = {
      {OutlineSource::BoundingBox, "bounding-box"},
      {OutlineSource::Polygon, "polygon"},
      {OutlineSource::Svg, "svg"},
      {OutlineSource::Png, "png"}};
};

}  // namespace creaseline
