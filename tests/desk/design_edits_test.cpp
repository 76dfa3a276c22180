// SPDX-License-Identifier: MIT
#include "desk/design_edits.h"

#include "creaseline/catalogue/outline_files.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;
using namespace creaseline::literals;

namespace {

DesignEdits editsOf(const Order& order) {
  return {order, {LengthUnit::Millimetre, RulerMark::Sixteenth, {}}};
}

// The demo's order with a new design at its end.
struct WithDesign {
  Order order = editsOf(demoOrder()).add().order;
  std::size_t index = order.designs.size() - 1;
  [[nodiscard]] DesignEdits edits() const { return editsOf(order); }
  [[nodiscard]] const Design& design() const { return order.designs[index]; }
};

constexpr auto kWidth = DesignEdits::Side::Width;

}  // namespace

TEST_CASE("A design cannot go while places sew it, and says on which lines", "[desk][designs]") {
  const DesignId used = demoOrder().lines[0].placements[0].design;
  for (std::size_t i = 0; i < demoOrder().designs.size(); ++i) {
    if (demoOrder().designs[i].id == used) {
      const auto problem = editsOf(demoOrder()).removeProblem(i);
      REQUIRE(problem);
      CHECK(problem->contains(toQString(demoOrder().lines[0].id)));
      CHECK(editsOf(demoOrder()).id(i, "other").order.lines[0].placements[0].design ==
            DesignId("other"));
    }
  }
  const WithDesign made;
  CHECK_FALSE(made.edits().removeProblem(made.index));
}

TEST_CASE("Width and height go in proportion or alone, and the outline follows",
          "[desk][designs]") {
  WithDesign made;
  made.order = made.edits().side(made.index, kWidth, 60_mm, false).order;
  CHECK(made.design().width == 60_mm);
  CHECK(made.design().height == 90_mm);
  made.order = made.edits().side(made.index, kWidth, 30_mm, true).order;
  CHECK(made.design().height == 45_mm);
  CHECK(made.design().outline == Outline::rectangle(30_mm, 45_mm));
  CHECK_FALSE(made.edits().checkSide(made.index, kWidth, "0.1", true));
  CHECK_FALSE(made.edits().checkSide(made.index, kWidth, "4000", true));
  CHECK(made.edits().checkSide(made.index, kWidth, "3 1/2 in", true));
}

TEST_CASE("An outline from a drawing says the size, and goes back to a rectangle of it",
          "[desk][designs]") {
  WithDesign made;
  const Outline outline =
      readSvgOutline(std::filesystem::path(SOURCE_DIR) / "demo" / "designs" / "kite.svg");
  REQUIRE_FALSE(made.edits().outlineProblem(made.index, outline));
  made.order = made.edits()
                   .outlineFromFile(made.index, OutlineSource::Svg, outline, "designs/kite.svg", 0)
                   .order;
  CHECK(made.design().width == Length::fromMm(outline.bounds().width()));
  CHECK(made.design().outlineFile == "designs/kite.svg");
  CHECK_FALSE(made.edits().maySize(made.index));
  made.order = made.edits().outlineFromBox(made.index).order;
  CHECK(made.edits().maySize(made.index));
  CHECK(made.design().outlineFile.empty());
  CHECK(made.design().outline == Outline::rectangle(made.design().width, made.design().height));
  CHECK(made.edits().outlineProblem(made.index, Outline()));
}

TEST_CASE("The total is the blocks' sum, and the last block leaves it", "[desk][designs]") {
  WithDesign made;
  REQUIRE(made.design().blocks.size() == 1);
  made.order = made.edits().addBlock(made.index, 1).order;
  ThreadBlock block = made.design().blocks[1];
  block.stitches = 2500;
  REQUIRE_FALSE(made.edits().blockProblem(made.index, 1, block));
  made.order = made.edits().block(made.index, 1, block).order;
  CHECK(made.design().stitches == 7500);
  made.order = made.edits().shiftBlock(made.index, 1, -1).order;
  CHECK(made.design().blocks[0].stitches == 2500);
  made.order = made.edits().removeBlock(made.index, 0).order;
  made.order = made.edits().removeBlock(made.index, 0).order;
  CHECK(made.design().blocks.empty());
  CHECK(made.design().stitches == 5000);
  made.order = made.edits().addBlock(made.index, 0).order;
  CHECK(made.design().blocks[0].stitches == 5000);
  block.stitches = 10'000'000;
  CHECK_FALSE(made.edits().blockProblem(made.index, 0, block));
  made.order = made.edits().addBlock(made.index, 1).order;
  CHECK(made.edits().blockProblem(made.index, 0, block));
}

TEST_CASE("Blocks of a piece need one, follow its name, and keep the last one", "[desk][designs]") {
  WithDesign made;
  ThreadBlock block = made.design().blocks[0];
  block.kind = BlockKind::TackDown;
  CHECK(made.edits().blockProblem(made.index, 0, block));
  made.order = made.edits().addPiece(made.index).order;
  made.order = made.edits().addPiece(made.index).order;
  REQUIRE_FALSE(made.edits().blockProblem(made.index, 0, block));
  block.piece = made.design().pieces[0].name;
  made.order = made.edits().block(made.index, 0, block).order;
  AppliquePiece piece = made.design().pieces[0];
  piece.name = "K";
  made.order = made.edits().piece(made.index, 0, piece).order;
  CHECK(made.design().blocks[0].piece == "K");
  // It would be sewn for every piece if its own were gone.
  const auto used = made.edits().removePieceProblem(made.index, 0);
  REQUIRE(used);
  CHECK(used->contains(QStringLiteral("(1)")));
  CHECK_FALSE(made.edits().removePieceProblem(made.index, 1));
  block = made.design().blocks[0];
  block.piece.clear();
  made.order = made.edits().block(made.index, 0, block).order;
  CHECK_FALSE(made.edits().removePieceProblem(made.index, 0));
  made.order = made.edits().removePiece(made.index, 0).order;
  CHECK(made.edits().removePieceProblem(made.index, 0)->contains(QStringLiteral("last piece")));
}

TEST_CASE("A larger centre letter needs three names or a wish", "[desk][designs]") {
  Monogram monogram{"Ada", "", "King", MonogramStyle::EqualLetters, ""};
  CHECK_FALSE(DesignEdits::monogramProblem(monogram));
  monogram.style = MonogramStyle::LargerCentre;
  CHECK(DesignEdits::monogramProblem(monogram));
  monogram.wish = "AKB";
  CHECK_FALSE(DesignEdits::monogramProblem(monogram));
  monogram.surname.clear();
  CHECK(DesignEdits::monogramProblem(monogram));
}
