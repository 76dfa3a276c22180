// SPDX-License-Identifier: MIT
// Good files arrive with every value, unknown keys get a note, and references are followed.
#include "creaseline/catalogue/load.h"

#include <catch2/catch.hpp>
#include <cstdlib>
#include <set>

#include "catalogue/catalogue_data.h"
#include "creaseline/catalogue/garment_shape.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;

TEST_CASE("a shop file arrives with every value", "[catalogue]") {
  const Loaded<Shop> loaded = loadShop(goodFile("test.shop.json"), shippedRules());
  CHECK(loaded.notes.empty());
  CHECK(loaded.files == std::vector{goodFile("test.shop.json")});
  const Shop& shop = loaded.value;
  CHECK(shop.name == "Test shop");
  CHECK(shop.units ==
        UnitChoice{LengthUnit::Centimetre, RulerMark::Sixteenth, WeightUnit::OuncesPerSquareYard});
  REQUIRE(shop.machines.size() == 1);
  CHECK(shop.machines[0].needles == 12);
  CHECK(shop.machines[0].stitchesPerMinute == 800);
  CHECK(std::get<Window::Rounded>(shop.machines[0].sewingField.form()) ==
        Window::Rounded{360_mm, 400_mm, 6.5});

  REQUIRE(shop.frames.size() == 2);
  const Frame& square = shop.frames[0];
  CHECK(square.kind == FrameKind::Screw);
  CHECK(std::get<Window::Rectangle>(square.window.form()) ==
        Window::Rectangle{200_mm, 230_mm, 20_mm});
  CHECK(square.body.width() == 230_mm);
  REQUIRE(square.sewingField);
  CHECK(std::holds_alternative<Window::Ellipse>(square.sewingField->form()));
  CHECK(square.clearance == 12_mm);
  CHECK(square.clothMargin == Length::fromInches(0.375));
  CHECK(square.bracket == BracketSide::Top);
  CHECK(square.turns == std::vector{0_deg, 90_deg});
  CHECK(square.panels == std::vector{PanelName::Front, PanelName::Back});
  CHECK(square.quantity == 2);
  const Frame& diamond = shop.frames[1];
  CHECK(diamond.window.width() == 160_mm);
  CHECK(diamond.bracket == BracketSide::Both);
  CHECK(diamond.turns == std::vector{0_deg});
  CHECK(diamond.panels.empty());
  CHECK_FALSE(diamond.clearance);
  CHECK_FALSE(diamond.clothMargin);
  CHECK(shop.frame(FrameId("diamond")) == &diamond);
  CHECK(shop.frame(FrameId("round")) == nullptr);

  REQUIRE(shop.backings.size() == 2);
  CHECK(shop.backings[0].length == Length::fromMm(25 * 914.4));
  CHECK(shop.backings[0].weight == ArealWeight::fromOuncesPerSquareYard(2.5));
  CHECK(shop.backings[1].form == BackingForm::Sheets);
  CHECK(shop.backings[1].sheets == 0);
  CHECK(shop.toppingFilm);
  CHECK(shop.needles == std::vector{NeedleStock{75, NeedlePoint::Ball}});
  REQUIRE(shop.hoopingError);
  CHECK(shop.hoopingError->turn == 1.5_deg);
  REQUIRE(shop.houseRules.size() == 1);
  CHECK(shop.houseRules[0].house);
  CHECK(shop.houseRules[0].sidewaysDistance == 90_mm);
  CHECK(shop.houseRules[0].blanks == std::vector{BlankId("tee")});
}

TEST_CASE("an order arrives with the blanks and designs it refers to", "[catalogue]") {
  const Loaded<Order> loaded = loadOrder(goodFile("test.order.json"), shippedRules());
  CHECK(loaded.notes.empty());
  CHECK(loaded.files.size() == 6);
  CHECK(loaded.files.front() == goodFile("test.order.json"));
  const Order& order = loaded.value;
  CHECK(order.due == "2028-02-29");
  CHECK(order.customer.empty());
  CHECK(order.note == "first line\nsecond line");
  CHECK(order.garments() == 11);
  REQUIRE(order.lines.size() == 2);
  CHECK(order.lines[0].garments() == 3);
  CHECK(order.lines[0].colour == "navy");
  CHECK(order.lines[0].sizes ==
        std::vector{SizeQuantity{SizeName("S"), 2}, SizeQuantity{SizeName("2XL"), 1}});
  const OrderPlacement& placement = order.lines[0].placements.at(0);
  CHECK(placement.location == LocationId("left-chest"));
  CHECK(placement.scale == 0.8);
  CHECK(placement.moveDown == -0.25_in);
  CHECK(placement.turn == 90_deg);
  CHECK(placement.note == "ask first");
  CHECK(order.lines[1].placements.at(1).scale == 1.0);
  REQUIRE(order.blank(BlankId("hoodie")) != nullptr);
  CHECK(order.blank(BlankId("hoodie"))->chart.sizes.size() == 3);
  CHECK(order.blank(BlankId("jacket")) == nullptr);
  REQUIRE(order.design(DesignId("star")) != nullptr);
  CHECK(order.design(DesignId("moon")) == nullptr);
}

TEST_CASE("a blank or design inside an order needs no head of its own", "[catalogue]") {
  const TemporaryFolder folder;
  const std::string tee = replaced(contentOf(goodFile("tee.blank.json")),
                                   "\"format\": \"creaseline-blank\",\n  \"version\": 1,", "");
  std::string text = contentOf(goodFile("test.order.json"));
  text = replaced(text, "\"tee.blank.json\"", tee);
  for (const char* name : {"hoodie.blank.json", "star.design.json", "letters.design.json"}) {
    text = replaced(text, name, "parts/" + std::string(name));
    static_cast<void>(folder.write("parts/" + std::string(name), contentOf(goodFile(name))));
  }
  static_cast<void>(folder.write("parts/hoodie.csv", contentOf(goodFile("hoodie.csv"))));
  const Loaded<Order> inPlace = loadOrder(folder.write("x.order.json", text), shippedRules());
  const Loaded<Order> byFile = loadOrder(goodFile("test.order.json"), shippedRules());
  CHECK(inPlace.notes.empty());
  CHECK(inPlace.value == byFile.value);
}

TEST_CASE("a blank arrives with fabric, colours and chart", "[catalogue]") {
  const Blank tee = loadBlank(goodFile("tee.blank.json"), shippedRules()).value;
  CHECK(tee.kind == KindId("t-shirt"));
  CHECK(tee.fabric.fibres == std::vector{FibreShare{"cotton", 90.0}, FibreShare{"elastane", 10.0}});
  CHECK(tee.fabric.weight == ArealWeight::fromGramsPerSquareMetre(180.0));
  CHECK(tee.fabric.stretch == Stretch::Some);
  CHECK(tee.colours.at(1) == ClothColour{"navy", {0x1f, 0x2a, 0x44}});
  const ChartSize* small = tee.chart.find(SizeName("S"));
  REQUIRE(small != nullptr);
  CHECK(small->measures.at(Measure::BodyWidth) == 19_in);
  CHECK(small->measures.size() == 5);
}

TEST_CASE("a size names the measures that nobody has measured yet", "[catalogue]") {
  const TemporaryFolder folder;
  const std::string text = contentOf(goodFile("tee.blank.json"));
  const auto load = [&](const char* proposed) {
    const std::string with = replaced(text, R"("size": "S",)",
                                      std::string(R"("size": "S", "proposed": )") + proposed + ",");
    return loadBlank(folder.write("x.blank.json", with), shippedRules());
  };
  const Loaded<Blank> blank = load(R"(["neck-width", "body-width"])");
  CHECK(blank.notes.empty());
  const ChartSize small = *blank.value.chart.find(SizeName("S"));
  CHECK(small.proposed == std::set{Measure::BodyWidth, Measure::NeckWidth});
  const GarmentShape shape =
      garmentShape(*shippedRules().kind(blank.value.kind), small, "x.blank.json", "size S");
  CHECK(shape.measures.at(Measure::BodyWidth).assumed);
  CHECK(shape.measures.at(Measure::BodyWidth).value == 19_in);
  CHECK_FALSE(shape.measures.at(Measure::BodyLength).assumed);
  CHECK_THROWS_AS(load(R"(["cuff-width"])"), InputError);  // of which it gives none
  CHECK_THROWS_AS(load(R"(["neck-width", "neck-width"])"), InputError);
  CHECK_THROWS_AS(load("[]"), InputError);
}

TEST_CASE("a size takes its band from the chart, else its name, else its body width",
          "[catalogue]") {
  const SizeChart chart = loadBlank(goodFile("tee.blank.json"), shippedRules()).value.chart;
  CHECK(chart.find(SizeName("tall"))->band == SizeBand::AdultAboveXl);
  CHECK(chart.find(SizeName("tall"))->bandGiven);
  CHECK(chart.find(SizeName("2XL"))->band == SizeBand::AdultAboveXl);
  CHECK_FALSE(chart.find(SizeName("2XL"))->bandGiven);
  CHECK(chart.find(SizeName("48"))->band == SizeBand::Adult);

  const TemporaryFolder folder;
  const std::string text = contentOf(goodFile("tee.blank.json"));
  const auto bandOfWidth = [&](const char* width) {
    const std::string other = replaced(text, "52 cm", width);
    return loadBlank(folder.write("x.blank.json", other), shippedRules())
        .value.chart.find(SizeName("48"))
        ->band;
  };
  // resources/rules/defaults.json: youth below 43 cm, above XL beyond 66 cm.
  CHECK(bandOfWidth("42 cm") == SizeBand::Youth);
  CHECK(bandOfWidth("43 cm") == SizeBand::Adult);
  CHECK(bandOfWidth("66 cm") == SizeBand::Adult);
  CHECK(bandOfWidth("67 cm") == SizeBand::AdultAboveXl);
}

TEST_CASE("a design with a polygon takes its size from it and is centred", "[catalogue]") {
  const Design star = loadDesign(goodFile("star.design.json")).value;
  CHECK(star.outlineSource == OutlineSource::Polygon);
  CHECK(star.width == 101.6_mm);
  CHECK(star.height == 100_mm);
  CHECK(star.stitches == 5200);
  CHECK(star.outline.bounds().centre().x == Approx(0.0).margin(1e-9));
  CHECK(star.outline.bounds().min.y == Approx(-50.0));
  REQUIRE(star.outline.pieces.size() == 1);
  CHECK(star.outline.pieces[0].holes.size() == 1);
}

TEST_CASE("a design without an outline is its bounding box and counts its blocks", "[catalogue]") {
  const Design letters = loadDesign(goodFile("letters.design.json")).value;
  CHECK(letters.outlineSource == OutlineSource::BoundingBox);
  CHECK(letters.outline == Outline::rectangle(200_mm, 80_mm));
  CHECK(letters.stitches == 150 + 300 + 2200);
  CHECK(letters.blocks.at(0).kind == BlockKind::PlacementLine);
  CHECK(letters.blocks.at(0).piece == "A");
  CHECK(letters.blocks.at(2).piece.empty());
  CHECK(letters.pieces == std::vector{AppliquePiece{"A", "red twill", 80_mm, 80_mm}});
}

TEST_CASE("an unknown key is named in a note and changes nothing", "[catalogue]") {
  const TemporaryFolder folder;
  const std::string text = contentOf(goodFile("star.design.json"));
  const auto file = folder.write(
      "x.design.json", replaced(text, "\"stitches\": 5200,", "\"stitches\": 5200, \"nmae\": 3,"));
  const Loaded<Design> loaded = loadDesign(file);
  CHECK(loaded.value == loadDesign(goodFile("star.design.json")).value);
  REQUIRE(loaded.notes.size() == 1);
  CHECK(loaded.notes[0] == LoadNote{file.string(), "top level",
                                    "the unknown key \"nmae\" is ignored; did you mean \"name\"?"});
}

TEST_CASE("a note is kept for every unknown key up to a bound", "[catalogue]") {
  const TemporaryFolder folder;
  std::string keys;
  for (int i = 0; i < 1000; ++i) {
    keys += "\"unheard-of-" + std::to_string(i) + "\": [],";
  }
  const std::string text = replaced(contentOf(goodFile("star.design.json")), "\"stitches\": 5200,",
                                    "\"stitches\": 5200," + keys);
  CHECK(loadDesign(folder.write("x.design.json", text)).notes.size() == 21);
}

TEST_CASE("a byte-order mark before JSON is read over", "[catalogue]") {
  const TemporaryFolder folder;
  const auto file =
      folder.write("x.design.json", "\xEF\xBB\xBF" + contentOf(goodFile("star.design.json")));
  CHECK(loadDesign(file).value == loadDesign(goodFile("star.design.json")).value);
}

TEST_CASE("reading the same file twice gives the same value", "[catalogue]") {
  CHECK(loadOrder(goodFile("test.order.json"), shippedRules()).value ==
        loadOrder(goodFile("test.order.json"), shippedRules()).value);
  CHECK(loadShop(goodFile("test.shop.json"), shippedRules()).value ==
        loadShop(goodFile("test.shop.json"), shippedRules()).value);
}
