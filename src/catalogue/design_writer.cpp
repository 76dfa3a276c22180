// SPDX-License-Identifier: MIT
// Designs as JSON.
#include "catalogue/design_reader.h"
#include "catalogue/writers.h"

namespace creaseline {

namespace {

JsonNode blocksNode(const JsonNode* before, const std::vector<ThreadBlock>& blocks) {
  const auto key = [](const std::string& thread, const std::string& kind, const std::string& piece,
                      const std::string& stitches) {
    return EntryNames{thread + '\n' + kind + '\n' + piece + '\n' + stitches,
                      thread + '\n' + kind + '\n' + piece};
  };
  return listNode(
      before, blocks,
      [&](const ThreadBlock& block) {
        return key(block.thread, std::string(nameOf(block.kind)), block.piece,
                   std::to_string(block.stitches));
      },
      [&](const JsonNode& old) {
        const JsonNode* stitches = memberOf(&old, "stitches");
        const auto* number =
            stitches == nullptr ? nullptr : std::get_if<JsonNumber>(&stitches->content);
        return key(textOf(&old, "thread"), textOf(&old, "kind"), textOf(&old, "piece"),
                   number == nullptr ? "" : number->text);
      },
      [](const ThreadBlock& block, const JsonNode* old) {
        JsonObjectWriter object(old);
        object.text("thread", block.thread);
        object.put("colour", colourNode(object.before("colour"), block.colour));
        object.put("stitches", amountNode(object.before("stitches"), block.stitches));
        object.enumerator("kind", block.kind);
        object.textIfAny("piece", block.piece);
        return object.take();
      });
}

JsonNode piecesNode(const JsonNode* before, const std::vector<AppliquePiece>& pieces,
                    LengthUnit unit) {
  return listNode(
      before, pieces, [](const AppliquePiece& piece) { return EntryNames{piece.name}; },
      [](const JsonNode& old) { return EntryNames{textOf(&old, "name")}; },
      [unit](const AppliquePiece& piece, const JsonNode* old) {
        JsonObjectWriter object(old);
        object.text("name", piece.name);
        object.text("fabric", piece.fabric);
        object.put("width", lengthNode(object.before("width"), piece.width, unit));
        object.put("height", lengthNode(object.before("height"), piece.height, unit));
        return object.take();
      });
}

JsonNode monogramNode(const JsonNode* before, const Monogram& monogram) {
  JsonObjectWriter object(before);
  object.text("first", monogram.first);
  object.textIfAny("middle", monogram.middle);
  object.text("surname", monogram.surname);
  object.enumerator("style", monogram.style);
  object.textIfAny("wish", monogram.wish);
  return object.take();
}

JsonNode polygonsNode(const JsonNode* before, const Outline& outline) {
  return listNode(
      before, outline.pieces, [](const Piece&) { return EntryNames(); },
      [](const JsonNode&) { return EntryNames(); },
      [](const Piece& piece, const JsonNode* old) {
        JsonObjectWriter object(old);
        object.put("outer", ringNode(piece.outer));
        JsonNode::Array holes;
        for (const Ring& hole : piece.holes) {
          holes.push_back(ringNode(hole));
        }
        object.putUnless(piece.holes.empty(), "holes", JsonNode{std::move(holes)});
        return object.take();
      });
}

// A drawing or picture is referred to. Polygons that have not changed keep their own unit and
// origin.
JsonNode outlineNode(const Design& design, const Before<Design>& before, const Writing& writing) {
  const JsonNode* old = memberOf(before.text, "outline");
  JsonObjectWriter object(old);
  const bool polygon = design.outlineSource == OutlineSource::Polygon;
  const bool png = design.outlineSource == OutlineSource::Png;
  for (const auto& [key, source] :
       {std::pair("svg", OutlineSource::Svg), std::pair("png", OutlineSource::Png)}) {
    if (design.outlineSource == source) {
      object.text(key, writing.reference(design.outlineFile));
    } else {
      object.leaveOut(key);
    }
  }
  if (png && design.outlineDotsPerInch > 0.0) {
    object.put("dpi", amountNode(object.before("dpi"), design.outlineDotsPerInch));
  } else {
    object.leaveOut("dpi");
  }
  if (!polygon) {
    object.leaveOut("unit");
    object.leaveOut("pieces");
    return object.take();
  }
  const JsonNode* unit = object.before("unit");
  const JsonNode* pieces = object.before("pieces");
  const bool same = unit != nullptr && pieces != nullptr && before.value != nullptr &&
                    before.value->outline == design.outline;
  object.put("unit", same ? *unit : textNode("mm"));
  object.put("pieces", same ? *pieces : polygonsNode(pieces, design.outline));
  return object.take();
}

// With an outline the size follows from it; a size that was given beside it is kept while it
// agrees.
void putSize(JsonObjectWriter& object, const Design& design, const Writing& writing) {
  const bool follows = design.outlineSource != OutlineSource::BoundingBox;
  for (const auto& [key, size] :
       {std::pair("width", design.width), std::pair("height", design.height)}) {
    const JsonNode* old = object.before(key);
    const bool agrees = follows && readsAs(old, true, [size = size](const JsonCursor& at) {
                          return abs(at.positiveLength() - size) <= kSizeTolerance;
                        });
    if (follows && old == nullptr && object.before() != nullptr) {
      object.leaveOut(key);
    } else {
      object.put(key, agrees ? *old : lengthNode(old, size, writing.lengths));
    }
  }
}

}  // namespace

JsonNode designNode(const Design& design, const Before<Design>& before, const Writing& writing,
                    bool ownFile) {
  JsonObjectWriter object(before.text);
  putHead(object, FileKind::Design, ownFile);
  object.text("id", design.id.text());
  object.text("name", design.name);
  putSize(object, design, writing);
  const bool sumSays = !design.blocks.empty() && before.text != nullptr;
  if (sumSays && object.before("stitches") == nullptr) {
    object.leaveOut("stitches");
  } else {
    object.put("stitches", amountNode(object.before("stitches"), design.stitches));
  }
  object.putUnless(design.blocks.empty(), "blocks",
                   blocksNode(object.before("blocks"), design.blocks));
  object.putUnless(design.pieces.empty(), "pieces",
                   piecesNode(object.before("pieces"), design.pieces, writing.lengths));
  if (design.monogram) {
    object.put("monogram", monogramNode(object.before("monogram"), *design.monogram));
  } else {
    object.leaveOut("monogram");
  }
  if (design.outlineSource == OutlineSource::BoundingBox) {
    object.leaveOut("outline");
  } else {
    object.put("outline", outlineNode(design, before, writing));
  }
  return object.take();
}

}  // namespace creaseline
