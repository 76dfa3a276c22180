// SPDX-License-Identifier: MIT
// Designs, with their outline from a polygon, a drawing, a picture, or the bounding box.
#include "catalogue/design_reader.h"

#include <algorithm>
#include <cstdint>

#include "base/worded.h"
#include "catalogue/file_kind.h"
#include "catalogue/window_reader.h"
#include "creaseline/base/units.h"
#include "creaseline/catalogue/outline_files.h"

namespace creaseline {

namespace {

constexpr std::size_t kMostBlocks = 1'000;
constexpr std::size_t kMostPieces = 1'000;
constexpr std::size_t kMostRingPoints = 20'000;
constexpr std::size_t kMostOutlinePoints = 50'000;  // of all rings together
constexpr std::size_t kMostHoles = 1'000;

std::vector<AppliquePiece> readPieces(const JsonCursor& at) {
  std::vector<AppliquePiece> pieces;
  std::vector<std::string> names;
  for (const JsonCursor& item : at.items(0, kMostPieces, toBeWorded("pieces"))) {
    JsonObject object = item.object();
    AppliquePiece piece;
    piece.name = object.at("name").label();
    requireDistinct(names, piece.name, item, toBeWorded("piece"));
    names.push_back(piece.name);
    piece.fabric = object.at("fabric").label();
    piece.width = object.at("width").positiveLength();
    piece.height = object.at("height").positiveLength();
    object.finish();
    pieces.push_back(std::move(piece));
  }
  return pieces;
}

void checkPiece(const JsonCursor& block, const std::optional<JsonCursor>& piece, BlockKind kind,
                const std::vector<AppliquePiece>& pieces) {
  std::vector<std::string> names;
  for (const AppliquePiece& known : pieces) {
    names.push_back(known.name);
  }
  if (piece && std::find(names.begin(), names.end(), piece->label()) == names.end()) {
    piece->failShown(offer(piece->label(), names));
  }
  // Without `piece` an appliqué step serves all pieces at once; with none there is nothing to lay.
  if (kind != BlockKind::Sew && pieces.empty()) {
    block.fail(worded("a {} block in a design without pieces", nameOf(kind)),
               worded("the appliqué piece in \"pieces\""));
  }
}

std::vector<ThreadBlock> readBlocks(const JsonCursor& at,
                                    const std::vector<AppliquePiece>& pieces) {
  std::vector<ThreadBlock> blocks;
  for (const JsonCursor& item : at.items(0, kMostBlocks, toBeWorded("thread blocks"))) {
    JsonObject object = item.object();
    ThreadBlock block;
    block.thread = object.at("thread").label();
    block.colour = object.at("colour").colour();
    block.stitches = object.at("stitches").integer(1, kMostStitches);
    block.kind = object.at("kind").enumerator<BlockKind>();
    const auto piece = object.find("piece");
    checkPiece(item, piece, block.kind, pieces);
    block.piece = piece ? piece->label() : std::string();
    object.finish();
    blocks.push_back(std::move(block));
  }
  return blocks;
}

int totalStitches(JsonObject& top, const std::vector<ThreadBlock>& blocks) {
  std::int64_t sum = 0;
  for (const ThreadBlock& block : blocks) {
    sum += block.stitches;
  }
  if (sum > kMostStitches) {
    top.cursor().fail(worded("blocks of {} stitches together", sum),
                      worded("at most {}", kMostStitches));
  }
  const auto stitches = top.find("stitches");
  if (!stitches) {
    if (blocks.empty()) {
      top.cursor().fail(worded("neither \"stitches\" nor \"blocks\""),
                        worded("at least one of them"));
    }
    return static_cast<int>(sum);
  }
  const int total = stitches->integer(1, kMostStitches);
  if (!blocks.empty() && total != sum) {
    stitches->fail(worded("{} stitches", total), worded("{}, the sum of the blocks", sum));
  }
  return total;
}

// Reads a ring and takes its points off what the whole outline may still have: looking for
// crossings of a hostile ring costs the square of its points.
Ring readBoundedRing(const JsonCursor& at, double unitMm, std::size_t& pointsLeft) {
  Ring ring = readRing(at, unitMm, std::min(kMostRingPoints, pointsLeft));
  pointsLeft -= ring.size();
  return ring;
}

Piece readOutlinePiece(const JsonCursor& at, double unitMm, std::size_t& pointsLeft) {
  JsonObject object = at.object();
  const JsonCursor outer = object.at("outer");
  Piece piece{readBoundedRing(outer, unitMm, pointsLeft), {}};
  if (const auto holes = object.find("holes")) {
    const Box bounds = ringBounds(piece.outer);
    double holeArea = 0.0;
    for (const JsonCursor& item : holes->items(0, kMostHoles, toBeWorded("holes"))) {
      Ring hole = readBoundedRing(item, unitMm, pointsLeft);
      const Box inner = ringBounds(hole);
      holeArea += ringArea(hole);
      if (!contains(piece.outer, hole.front()) || inner.min.x < bounds.min.x ||
          inner.min.y < bounds.min.y || inner.max.x > bounds.max.x || inner.max.y > bounds.max.y) {
        item.fail(worded("a hole that is not inside its piece"), worded("a ring inside \"outer\""));
      }
      piece.holes.push_back(std::move(hole));
    }
    if (holeArea >= ringArea(piece.outer)) {
      holes->fail(worded("holes as large as their piece"),
                  worded("holes that leave something to sew"));
    }
  }
  object.finish();
  return piece;
}

Outline readPolygons(JsonObject& outline) {
  const double unitMm = readUnit(outline.at("unit"));
  Outline result;
  std::size_t pointsLeft = kMostOutlinePoints;
  for (const JsonCursor& item : outline.at("pieces").items(1, kMostPieces, toBeWorded("pieces"))) {
    result.pieces.push_back(readOutlinePiece(item, unitMm, pointsLeft));
  }
  return result;
}

void readOutline(const JsonCursor& at, Design& design) {
  JsonObject object = at.object();
  const auto svg = object.find("svg");
  const auto png = object.find("png");
  const auto polygons = object.find("pieces");
  if (int{svg.has_value()} + int{png.has_value()} + int{polygons.has_value()} != 1) {
    at.failShown(worded("exactly one of the keys {}", "\"svg\", \"png\", \"pieces\""));
  }
  if (polygons) {
    design.outlineSource = OutlineSource::Polygon;
    design.outline = readPolygons(object);
  } else {
    const JsonCursor& reference = svg ? *svg : *png;
    const std::filesystem::path path = referredFile(reference);
    design.outlineSource = svg ? OutlineSource::Svg : OutlineSource::Png;
    design.outlineFile = reference.label();
    at.reading().files.push_back(path);
    if (svg) {
      design.outline = readSvgOutline(path);
    } else {
      const auto dpi = object.find("dpi");
      design.outlineDotsPerInch = dpi ? dpi->number(1.0, 10'000.0) : 0.0;
      design.outline = readPngOutline(path, design.outlineDotsPerInch);
    }
  }
  object.finish();
  design.outline = design.outline.centred();
}

enum class Extent { Width, Height };

// Takes the size from the outline; a size that is given as well must agree with it.
Length agreedSize(const std::optional<JsonCursor>& given, double outlineMm, const JsonCursor& at,
                  Extent extent) {
  const bool wide = extent == Extent::Width;
  if (!(outlineMm >= kSmallestDesign.mm() && outlineMm <= kLargestPart.mm())) {
    at.fail(wide ? worded("an outline {:.3f} mm wide", outlineMm)
                 : worded("an outline {:.3f} mm high", outlineMm),
            worded("from {} to {}", exactText(kSmallestDesign), exactText(kLargestPart)));
  }
  const Length measured = Length::fromMm(outlineMm);
  if (given) {
    const Length said = given->positiveLength();
    if (abs(said - measured) > kSizeTolerance) {
      const std::string shown = given->shown();
      given->fail(wide ? worded("{}, while the outline is {:.1f} mm wide", shown, outlineMm)
                       : worded("{}, while the outline is {:.1f} mm high", shown, outlineMm),
                  worded("the outline's size within {}", exactText(kSizeTolerance)));
    }
  }
  return measured;
}

void readSize(JsonObject& top, Design& design) {
  const auto outline = top.find("outline");
  if (!outline) {
    design.width = top.at("width").length(kSmallestDesign, kLargestPart);
    design.height = top.at("height").length(kSmallestDesign, kLargestPart);
    design.outline = Outline::rectangle(design.width, design.height);
    return;
  }
  readOutline(*outline, design);
  const Box bounds = design.outline.bounds();
  if (bounds.empty()) {
    outline->fail(worded("an outline without any shape"), worded("at least one closed shape"));
  }
  design.width = agreedSize(top.find("width"), bounds.width(), *outline, Extent::Width);
  design.height = agreedSize(top.find("height"), bounds.height(), *outline, Extent::Height);
}

Monogram readMonogram(const JsonCursor& at) {
  JsonObject object = at.object();
  Monogram monogram;
  monogram.first = object.at("first").label();
  monogram.middle = object.labelOrEmpty("middle");
  monogram.surname = object.at("surname").label();
  const JsonCursor style = object.at("style");
  monogram.style = style.enumerator<MonogramStyle>();
  monogram.wish = object.labelOrEmpty("wish");
  if (monogram.style == MonogramStyle::LargerCentre && monogram.middle.empty() &&
      monogram.wish.empty()) {
    style.fail(worded("a larger centre letter without a middle name"),
               worded("three names, equal letters, or the customer's wish"));
  }
  object.finish();
  return monogram;
}

}  // namespace

Design readDesign(JsonObject& top) {
  Design design;
  design.id = top.at("id").identifier<DesignId>();
  design.name = top.at("name").label();
  if (const auto pieces = top.find("pieces")) {
    design.pieces = readPieces(*pieces);
  }
  if (const auto monogram = top.find("monogram")) {
    design.monogram = readMonogram(*monogram);
  }
  if (const auto blocks = top.find("blocks")) {
    design.blocks = readBlocks(*blocks, design.pieces);
  }
  design.stitches = totalStitches(top, design.blocks);
  readSize(top, design);
  return design;
}

}  // namespace creaseline
