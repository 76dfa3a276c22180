// SPDX-License-Identifier: MIT
#include "desk/order_edits.h"

#include <random>

#include "creaseline/base/file.h"
#include "creaseline/catalogue/save.h"
#include "desk/edit_commands.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;
using namespace creaseline::literals;

namespace {

OrderEdits demoOrderEdits() {
  return {demoOrder(), shippedRules(), {LengthUnit::Inch, RulerMark::Sixteenth, {}}};
}

// Any edit that a person could make, on any line and place.
class Hands {
 public:
  explicit Hands(unsigned seed) : random_(seed) {}

  OrderEdit next(const Order& order) {
    const OrderEdits edits(order, shippedRules(), {});
    if (order.lines.empty()) {
      return edits.addLine(order.blanks.at(upTo(order.blanks.size())));
    }
    const std::size_t line = upTo(order.lines.size());
    const auto& places = order.lines[line].placements;
    const Blank& blank = order.blanks.at(upTo(order.blanks.size()));
    const Design& design = order.designs.at(upTo(order.designs.size()));
    const int what = places.empty() ? static_cast<int>(upTo(10)) : static_cast<int>(upTo(18));
    const std::size_t place = places.empty() ? 0 : upTo(places.size());
    const std::string text = "text " + std::to_string(upTo(1000));
    switch (what) {
      case 0:
        return edits.title(text);
      case 1:
        return edits.customer(text);
      case 2:
        return edits.due("2026-12-0" + std::to_string(1 + upTo(9)));
      case 3:
        return edits.lineNote(line, text);
      case 4:
        return edits.addLine(blank);
      case 5:
        return edits.blank(line, blank);
      case 6:
        return edits.remove({line, std::nullopt});
      case 7:
        return edits.duplicate({line, std::nullopt});
      case 8: {
        const auto added = edits.addPlace(line, design);
        return added ? *added : edits.note(text);
      }
      case 9: {
        const auto& sizes = order.blank(order.lines[line].blank)->chart.sizes;
        return edits.quantity(line, sizes[upTo(sizes.size())].name, static_cast<int>(upTo(20)));
      }
      case 10:
        return edits.remove({line, place});
      case 11:
        return edits.scale(line, place, 0.5 + static_cast<double>(upTo(10)) / 10.0);
      case 12:
        return edits.moveDown(line, place, Length::fromMm(static_cast<double>(upTo(20)) - 10));
      case 13:
        return edits.turn(line, place, Angle::fromDegrees(static_cast<double>(upTo(360))));
      case 14:
        return edits.placeNote(line, place, text);
      case 15:
        return edits.design(line, place, design);
      case 16:
        return edits.split(line, place, upTo(2) == 0);
      case 17:
        return edits.frameTurn(line, place, Angle::fromDegrees(static_cast<double>(upTo(360))));
      case 18:
        return edits.frames(upTo(2) == 0 ? std::vector<FrameId>() : std::vector{FrameId("any")},
                            nullptr);
      case 19: {
        const auto locations = edits.locations(line);
        return edits.location(line, place, locations[upTo(locations.size())]->id);
      }
      default:
        return edits.mayShift({line, place}, 1) ? edits.shift({line, place}, 1)
                                                : edits.duplicate({line, place});
    }
  }

 private:
  std::size_t upTo(std::size_t count) {
    return std::uniform_int_distribution<std::size_t>(0, count - 1)(random_);
  }
  std::mt19937 random_;
};

}  // namespace

TEST_CASE("Steps are named by what they do, in the user's units", "[desk][edit]") {
  const OrderEdits edits = demoOrderEdits();
  CHECK(edits.moveDown(0, 0, Length::fromInches(0.25)).name ==
        QStringLiteral("Move centre chest (line 1) 1/4 in down of the rule"));
  CHECK(edits.moveDown(0, 0, Length::fromInches(-0.5))
            .name.endsWith(QStringLiteral("1/2 in up of the rule")));
  CHECK(edits.quantity(1, SizeName("YM"), 6).name == QStringLiteral("6 × YM on line 2"));
  CHECK(edits.scale(0, 0, 0.9).name.endsWith(QStringLiteral("to 90 %")));
  CHECK(edits.remove({0, std::nullopt}).name.startsWith(QStringLiteral("Remove line 1")));
}

TEST_CASE("A quantity takes its place in the chart's order, and none takes the size out",
          "[desk][edit]") {
  const OrderLine& before = demoOrder().lines[1];
  const auto& chart = demoOrder().blank(before.blank)->chart.sizes;
  Order order = demoOrderEdits().quantity(1, before.sizes[0].size, 0).order;
  CHECK(order.lines[1].sizes.size() == before.sizes.size() - 1);
  order = OrderEdits(order, shippedRules(), {}).quantity(1, before.sizes[0].size, 9).order;
  REQUIRE(order.lines[1].sizes.size() == before.sizes.size());
  std::vector<SizeName> inChart;
  for (const ChartSize& size : chart) {
    for (const SizeQuantity& each : order.lines[1].sizes) {
      if (each.size == size.name) {
        inChart.push_back(each.size);
      }
    }
  }
  for (std::size_t i = 0; i < inChart.size(); ++i) {
    CHECK(order.lines[1].sizes[i].size == inChart[i]);
  }
}

TEST_CASE("Another garment keeps the sizes and places that it has, and says what was left out",
          "[desk][edit]") {
  const Order& order = demoOrder();
  // Line 1 is a hoodie with a design on its hood; a shirt has none.
  const auto shirt = std::find_if(order.blanks.begin(), order.blanks.end(), [](const Blank& blank) {
    return blank.kind == KindId("t-shirt");
  });
  REQUIRE(shirt != order.blanks.end());
  const OrderEdit edit = demoOrderEdits().blank(0, *shirt);
  for (const OrderPlacement& each : edit.order.lines[0].placements) {
    CHECK(shippedRules().location(each.location)->panel != PanelName::Hood);
  }
  CHECK(edit.order.lines[0].placements.size() < order.lines[0].placements.size());
  CHECK(edit.name.contains(QStringLiteral("left out")));
}

TEST_CASE("A place moved to another location starts there at the rule", "[desk][edit]") {
  Order order = demoOrderEdits().moveDown(0, 0, 5_mm).order;
  order = OrderEdits(order, shippedRules(), {}).turn(0, 0, 10_deg).order;
  order = OrderEdits(order, shippedRules(), {}).location(0, 0, LocationId("upper-back")).order;
  CHECK(order.lines[0].placements[0].moveDown == Length());
  CHECK(order.lines[0].placements[0].turn == Angle());
}

TEST_CASE("Nudges of one place in a row are one step", "[desk][edit][undo]") {
  const DemoCopy demo;
  Settings settings(demo.settings());
  Document document(sharedRules(), settings);
  document.openOrder(demo.order());
  REQUIRE(waitFor([&] { return !document.busy() && document.orderInHand() != nullptr; }));
  for (int i = 1; i <= 4; ++i) {
    const OrderEdits edits(*document.orderInHand(), shippedRules(), document.units());
    REQUIRE(applyEdit(document, edits.moveDown(0, 0, Length::fromMm(i))));
  }
  CHECK(document.undoStack().count() == 1);
  const OrderEdits edits(*document.orderInHand(), shippedRules(), document.units());
  applyEdit(document, edits.moveDown(0, 1, 1_mm));
  CHECK(document.undoStack().count() == 2);
  document.undoStack().undo();
  document.undoStack().undo();
  CHECK_FALSE(document.modified());
  CHECK(document.orderInHand()->lines[0].placements[0].moveDown == Length());
}

TEST_CASE("A thousand random edits and their undo give back the identical file",
          "[desk][edit][undo][random]") {
  const DemoCopy demo;
  const Loaded<Order> read = loadOrder(demo.order(), shippedRules());
  const std::string before = orderText(read.value, read.original);
  Settings settings(demo.settings());
  Document document(sharedRules(), settings);
  document.openOrder(demo.order());
  REQUIRE(waitFor([&] { return !document.busy() && document.orderInHand() != nullptr; }));
  const unsigned seed = 20261125;
  CAPTURE(seed);
  Hands hands(seed);
  int made = 0;
  for (int i = 0; i < 1000; ++i) {
    made += applyEdit(document, hands.next(*document.orderInHand()));
  }
  REQUIRE(made > 700);
  // Saved in the middle and read again, the edited order is the same.
  const std::filesystem::path copy = demo.folder() / "copy.order.json";
  writeFileAtomically(copy, orderText(*document.orderInHand(), document.original()));
  CHECK(loadOrderDraft(copy, shippedRules()).value == *document.orderInHand());
  while (document.undoStack().canUndo()) {
    document.undoStack().undo();
  }
  CHECK_FALSE(document.modified());
  REQUIRE(document.saveAs(demo.folder() / "again.order.json", {}) == SaveResult::Saved);
  CHECK((readFile(demo.folder() / "again.order.json") == before));
}
