// SPDX-License-Identifier: MIT
// Random edits of garments and designs: undone they give back the identical order, and whatever
// they make can be saved and read again.
#include <random>

#include "creaseline/base/file.h"
#include "creaseline/catalogue/field_check.h"
#include "creaseline/catalogue/save.h"
#include "desk/design_edits.h"
#include "desk/edit_commands.h"
#include "desk/garment_edits.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

// Any edit of garments and designs that the windows would let through.
class LibraryHands {
 public:
  explicit LibraryHands(unsigned seed) : random_(seed) {}

  std::optional<OrderEdit> next(const Order& order) {
    return upTo(2) == 0 ? nextGarment(order) : nextDesign(order);
  }

 private:
  std::size_t upTo(std::size_t count) {
    return std::uniform_int_distribution<std::size_t>(0, count - 1)(random_);
  }
  std::string text() { return "text " + std::to_string(upTo(1000)); }
  Colour colour() {
    const auto part = [this] { return static_cast<std::uint8_t>(upTo(256)); };
    return {part(), part(), part()};
  }
  template <class E>
  E any() {
    return std::data(EnumNames<E>::names)[upTo(std::size(EnumNames<E>::names))].first;
  }

  std::optional<OrderEdit> nextGarment(const Order& order) {
    const GarmentEdits edits(order, shippedRules(), {});
    if (order.blanks.empty()) {
      return edits.add();
    }
    const std::size_t blank = upTo(order.blanks.size());
    const Blank& at = order.blanks[blank];
    switch (upTo(12)) {
      case 0:
        return order.blanks.size() < 12 ? std::optional(edits.add()) : std::nullopt;
      case 1:
        return order.blanks.size() < 12 ? std::optional(edits.duplicate(blank)) : std::nullopt;
      case 2:
        return edits.removeProblem(blank) ? std::nullopt : std::optional(edits.remove(blank));
      case 3:
        return edits.name(blank, text());
      case 4: {
        const auto id = checkBlankId(text(), order, blank);
        return id ? std::optional(edits.id(blank, *id)) : std::nullopt;
      }
      case 5: {
        const KindId kind = shippedRules().kinds[upTo(shippedRules().kinds.size())].id;
        return edits.kindProblem(blank, kind) ? std::nullopt
                                              : std::optional(edits.kind(blank, kind));
      }
      case 6:
        return nextFabric(edits, blank);
      case 7:
      case 8:
        return nextColour(edits, blank, at);
      default:
        return nextSize(edits, blank, at);
    }
  }

  std::optional<OrderEdit> nextFabric(const GarmentEdits& edits, std::size_t blank) {
    switch (upTo(7)) {
      case 0:
        return edits.fabricName(blank, text());
      case 1:
        return edits.weight(
            blank, ArealWeight::fromGramsPerSquareMetre(100.0 + static_cast<double>(upTo(300))));
      case 2:
        return edits.construction(blank, any<Construction>());
      case 3:
        return edits.pile(blank, any<Pile>());
      case 4:
        return edits.stretch(blank, any<Stretch>());
      case 5:
        return edits.sheer(blank, upTo(2) == 0);
      default: {
        const auto share = static_cast<double>(1 + upTo(98));
        return edits.fibres(blank, {{"cotton", share}, {"linen", 100.0 - share}});
      }
    }
  }

  std::optional<OrderEdit> nextColour(const GarmentEdits& edits, std::size_t blank,
                                      const Blank& at) {
    if (at.colours.empty() || upTo(4) == 0) {
      return edits.addColour(blank);
    }
    const std::size_t which = upTo(at.colours.size());
    switch (upTo(4)) {
      case 0:
        return edits.removeColour(blank, which);
      case 1:
        return edits.colourName(blank, which, "colour " + std::to_string(unique_++));
      case 2:
        return edits.colourValue(blank, which, colour());
      default:
        return which > 0 ? std::optional(edits.shiftColour(blank, which, -1)) : std::nullopt;
    }
  }

  std::optional<OrderEdit> nextSize(const GarmentEdits& edits, std::size_t blank, const Blank& at) {
    const std::size_t size = upTo(at.chart.sizes.size());
    switch (upTo(7)) {
      case 0:
        return edits.addSize(blank, size);
      case 1:
        return edits.removeSizeProblem(blank, size) ? std::nullopt
                                                    : std::optional(edits.removeSize(blank, size));
      case 2:
        return size > 0 ? std::optional(edits.shiftSize(blank, size, -1)) : std::nullopt;
      case 3: {
        const auto name = edits.checkSizeName(blank, size, text());
        return name ? std::optional(edits.sizeName(blank, size, *name)) : std::nullopt;
      }
      case 4: {
        const auto band = upTo(2) == 0 ? std::nullopt : std::optional(any<SizeBand>());
        const OrderEdit edit = edits.band(blank, size, band);
        return edits.chartProblem(blank, edit.order.blanks[blank].chart) ? std::nullopt
                                                                         : std::optional(edit);
      }
      default: {
        const auto measure = any<Measure>();
        std::optional<Length> value;
        if (upTo(3) > 0) {
          value = Length::fromInches(static_cast<double>(1 + upTo(400)) / 8.0);
        }
        return edits.measureProblem(blank, size, measure, value)
                   ? std::nullopt
                   : std::optional(edits.measure(blank, size, measure, value));
      }
    }
  }

  std::optional<OrderEdit> nextDesign(const Order& order) {
    const DesignEdits edits(order, {});
    if (order.designs.empty()) {
      return edits.add();
    }
    const std::size_t design = upTo(order.designs.size());
    const Design& at = order.designs[design];
    switch (upTo(10)) {
      case 0:
        return order.designs.size() < 15 ? std::optional(edits.add()) : std::nullopt;
      case 1:
        return edits.removeProblem(design) ? std::nullopt : std::optional(edits.remove(design));
      case 2:
        return edits.name(design, text());
      case 3: {
        const auto side = upTo(2) == 0 ? DesignEdits::Side::Width : DesignEdits::Side::Height;
        const bool proportional = upTo(2) == 0;
        const std::string typed = std::to_string(10 + upTo(200)) + " mm";
        const auto length = edits.checkSide(design, side, typed, proportional);
        return length && edits.maySize(design)
                   ? std::optional(edits.side(design, side, *length, proportional))
                   : std::nullopt;
      }
      case 4: {
        Monogram monogram{text(), upTo(2) == 0 ? text() : "", text(), any<MonogramStyle>(), ""};
        return upTo(3) == 0 ? std::optional(edits.monogram(design, std::nullopt))
               : DesignEdits::monogramProblem(monogram)
                   ? std::nullopt
                   : std::optional(edits.monogram(design, monogram));
      }
      case 5:
        return at.blocks.empty()
                   ? std::optional(edits.stitches(design, static_cast<int>(1 + upTo(9000))))
                   : std::nullopt;
      case 6:
        return edits.outlineFromBox(design);
      case 7:
        return nextPiece(edits, design, at);
      default:
        return nextBlock(edits, design, at);
    }
  }

  std::optional<OrderEdit> nextBlock(const DesignEdits& edits, std::size_t design,
                                     const Design& at) {
    if (at.blocks.empty() || upTo(4) == 0) {
      return edits.addBlock(design, upTo(at.blocks.size() + 1));
    }
    const std::size_t which = upTo(at.blocks.size());
    if (upTo(4) == 0) {
      return edits.removeBlock(design, which);
    }
    if (upTo(4) == 0) {
      return which > 0 ? std::optional(edits.shiftBlock(design, which, -1)) : std::nullopt;
    }
    ThreadBlock block{text(), colour(), static_cast<int>(1 + upTo(5000)), any<BlockKind>(), {}};
    if (!at.pieces.empty() && upTo(2) == 0) {
      block.piece = at.pieces[upTo(at.pieces.size())].name;
    }
    return edits.blockProblem(design, which, block)
               ? std::nullopt
               : std::optional(edits.block(design, which, block));
  }

  std::optional<OrderEdit> nextPiece(const DesignEdits& edits, std::size_t design,
                                     const Design& at) {
    if (at.pieces.empty() || upTo(3) == 0) {
      return edits.addPiece(design);
    }
    const std::size_t which = upTo(at.pieces.size());
    if (upTo(3) == 0) {
      return edits.removePieceProblem(design, which)
                 ? std::nullopt
                 : std::optional(edits.removePiece(design, which));
    }
    AppliquePiece piece = at.pieces[which];
    piece.name = "piece " + std::to_string(unique_++);
    piece.width = Length::fromMm(static_cast<double>(1 + upTo(200)));
    return edits.piece(design, which, piece);
  }

  std::mt19937 random_;
  int unique_ = 0;
};

// What lies in a file of its own names its outline from there.
std::vector<Design> withoutPaths(std::vector<Design> designs) {
  for (Design& design : designs) {
    design.outlineFile.clear();
  }
  return designs;
}

}  // namespace

TEST_CASE("Random edits of garments and designs can be saved and read at any time, and undone",
          "[desk][garments][designs][undo][random]") {
  const DemoCopy demo;
  const Loaded<Order> read = loadOrder(demo.order(), shippedRules());
  const std::string before = orderText(read.value, read.original);
  Settings settings(demo.settings());
  Document document(sharedRules(), settings);
  document.openOrder(demo.order());
  REQUIRE(waitFor([&] { return !document.busy() && document.orderInHand() != nullptr; }));
  const unsigned seed = 20261128;
  CAPTURE(seed);
  LibraryHands hands(seed);
  int made = 0;
  for (int i = 0; i < 600; ++i) {
    if (auto edit = hands.next(*document.orderInHand())) {
      CAPTURE(i, edit->name);
      made += applyEdit(document, *std::move(edit));
      if (i % 30 == 0) {
        // All in one file, so that every garment and design is written anew and checked.
        const std::filesystem::path copy = demo.folder() / "copy.order.json";
        SaveStyle style;
        style.folder = demo.folder();
        writeFileAtomically(copy,
                            recoveryText(*document.orderInHand(), document.original(), style));
        const Order again = loadOrderDraft(copy, shippedRules()).value;
        CHECK(again.blanks == document.orderInHand()->blanks);
        CHECK((withoutPaths(again.designs) == withoutPaths(document.orderInHand()->designs)));
      }
    }
  }
  REQUIRE(made > 300);
  while (document.undoStack().canUndo()) {
    document.undoStack().undo();
  }
  CHECK_FALSE(document.modified());
  REQUIRE(document.saveAs(demo.folder() / "again.order.json", {}) == SaveResult::Saved);
  CHECK((readFile(demo.folder() / "again.order.json") == before));
}
