// SPDX-License-Identifier: MIT
// Writing back: what is loaded again is the same, and what the program does not know is kept.
#include "creaseline/catalogue/save.h"

#include <catch2/catch.hpp>

#include "catalogue/catalogue_data.h"
#include "catalogue/json_writer.h"
#include "catalogue/random_files.h"
#include "creaseline/base/file.h"
#include "creaseline/base/units.h"
#include "support/case_count.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;

namespace {

std::filesystem::path demoFile(const std::string& name) {
  return std::filesystem::path(SOURCE_DIR) / "demo" / name;
}

// The good files, where a test may change them.
struct SavedFiles : TemporaryFolder {
  SavedFiles() {
    for (const auto& entry : std::filesystem::directory_iterator(goodFile(""))) {
      std::filesystem::copy(entry.path(), path() / entry.path().filename());
    }
  }
  [[nodiscard]] Loaded<Order> order() const {
    return loadOrder(path() / "test.order.json", shippedRules());
  }
  [[nodiscard]] std::string content(const std::string& name) const {
    return contentOf(path() / name);
  }
};

const std::vector<LengthUnit> kUnits = {LengthUnit::Inch, LengthUnit::Centimetre,
                                        LengthUnit::Millimetre};

}  // namespace

TEST_CASE("files in the project's own form come back as they are", "[catalogue][save]") {
  const Loaded<Order> order = loadOrder(demoFile("regatta.order.json"), shippedRules());
  CHECK(orderText(order.value, order.original) == contentOf(demoFile("regatta.order.json")));
  const Loaded<Shop> shop = loadShop(demoFile("workshop.shop.json"), shippedRules());
  CHECK(shopText(shop.value, shop.original) == contentOf(demoFile("workshop.shop.json")));
  int files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(demoFile("blanks"))) {
    if (entry.path().extension() == ".json") {
      const Loaded<Blank> blank = loadBlank(entry.path(), shippedRules());
      CHECK(blankText(blank.value, blank.original) == contentOf(entry.path()));
      ++files;
    }
  }
  for (const auto& entry : std::filesystem::directory_iterator(demoFile("designs"))) {
    if (entry.path().extension() == ".json") {
      const Loaded<Design> design = loadDesign(entry.path());
      CHECK(designText(design.value, design.original) == contentOf(entry.path()));
      ++files;
    }
  }
  CHECK(files == 17);
}

TEST_CASE("files in another form keep every value's text and stay as they are from then on",
          "[catalogue][save]") {
  const SavedFiles files;
  const Loaded<Order> order = files.order();
  const std::string text = orderText(order.value, order.original);
  CHECK(sameNode(parseJson(text, "saved"), *order.original.text));
  const Loaded<Order> again = loadOrder(files.write("test.order.json", text), shippedRules());
  CHECK(again.value == order.value);
  CHECK(orderText(again.value, again.original) == text);

  const Loaded<Shop> shop = loadShop(goodFile("test.shop.json"), shippedRules());
  CHECK(sameNode(parseJson(shopText(shop.value, shop.original), "saved"), *shop.original.text));
}

TEST_CASE("random orders are loaded as they were saved", "[catalogue][save]") {
  const TemporaryFolder folder;
  const auto orders = static_cast<unsigned>(4 * test::caseCount(250));
  for (unsigned seed = 1; seed <= orders; ++seed) {
    CAPTURE(seed);
    RandomFiles random(seed);
    const Order order = random.order();
    const SaveStyle style{random.oneOf(kUnits), {}};
    const std::string text = orderText(order, {}, style);
    const auto file = folder.write("random.order.json", text);
    const Loaded<Order> loaded = loadOrder(file, shippedRules());
    REQUIRE(loaded.value == order);
    REQUIRE(loaded.notes.empty());
    REQUIRE(orderText(loaded.value, loaded.original) == text);
  }
}

TEST_CASE("random shops, blanks and designs are loaded as they were saved", "[catalogue][save]") {
  const TemporaryFolder folder;
  const auto shops = static_cast<unsigned>(2 * test::caseCount(150));
  for (unsigned seed = 1; seed <= shops; ++seed) {
    CAPTURE(seed);
    RandomFiles random(seed);
    const SaveStyle style{random.oneOf(kUnits), {}};
    const Shop shop = random.shop();
    const std::string shopFile = shopText(shop, {}, style);
    const Loaded<Shop> shopAgain =
        loadShop(folder.write("random.shop.json", shopFile), shippedRules());
    REQUIRE(shopAgain.value == shop);
    REQUIRE(shopAgain.notes.empty());
    REQUIRE(shopText(shopAgain.value, shopAgain.original) == shopFile);

    const Blank blank = random.blank(1);
    const Loaded<Blank> blankAgain =
        loadBlank(folder.write("random.blank.json", blankText(blank, {}, style)), shippedRules());
    REQUIRE(blankAgain.value == blank);
    const Design design = random.design(1);
    REQUIRE(loadDesign(folder.write("random.design.json", designText(design, {}, style))).value ==
            design);
  }
}

TEST_CASE("edits of what was read are loaded as they were saved", "[catalogue][save]") {
  const TemporaryFolder folder;
  for (unsigned seed = 1; seed <= 100; ++seed) {
    CAPTURE(seed);
    RandomFiles random(seed);
    const auto file = folder.write("edited.order.json", orderText(random.order()));
    const Loaded<Order> loaded = loadOrder(file, shippedRules());
    // Another order altogether over the old text, and one that shares half of it.
    const Order other = random.order();
    writeFileAtomically(file, orderText(other, loaded.original));
    REQUIRE(loadOrder(file, shippedRules()).value == other);
    Order half = loaded.value;
    std::reverse(half.lines.begin(), half.lines.end());
    half.lines.front().note = random.prose();
    half.lines.back().placements.front().moveDown = random.length(-9, 9);
    half.designs.front() = random.design(99);
    half.lines.front().placements.front().design = half.designs.front().id;
    half.lines.erase(std::remove_if(half.lines.begin(), half.lines.end(),
                                    [&](const OrderLine& line) {
                                      return std::any_of(
                                          line.placements.begin(), line.placements.end(),
                                          [&](const OrderPlacement& placement) {
                                            return half.design(placement.design) == nullptr;
                                          });
                                    }),
                     half.lines.end());
    if (!half.lines.empty()) {
      writeFileAtomically(file, orderText(half, loaded.original));
      REQUIRE(loadOrder(file, shippedRules()).value == half);
    }
  }
}

TEST_CASE("a value keeps the text that the user gave it, until it changes", "[catalogue][save]") {
  const SavedFiles files;
  Loaded<Order> order = files.order();
  OrderPlacement& placement = order.value.lines[0].placements[0];
  REQUIRE(placement.moveDown == Length::fromInches(-0.25));
  CHECK_THAT(orderText(order.value, order.original), Catch::Contains(R"("move-down": "-1/4 in")"));

  placement.moveDown = Length::fromInches(-3.5);
  CHECK_THAT(orderText(order.value, order.original), Catch::Contains(R"("-88.9 mm")"));
  CHECK_THAT(orderText(order.value, order.original, {LengthUnit::Inch, {}}),
             Catch::Contains(R"("-3 1/2 in")"));
  CHECK_THAT(orderText(order.value, order.original, {LengthUnit::Centimetre, {}}),
             Catch::Contains(R"("-8.89 cm")"));
  placement.moveDown = Length();
  CHECK_THAT(orderText(order.value, order.original), !Catch::Contains("move-down"));
}

TEST_CASE("lengths are written in one's own unit only where that is exact", "[catalogue][save]") {
  CHECK(exactText(Length::fromInches(3.5), LengthUnit::Inch) == "3 1/2 in");
  CHECK(exactText(Length::fromInches(-1.0 / 64.0), LengthUnit::Inch) == "-1/64 in");
  CHECK(exactText(Length(), LengthUnit::Inch) == "0 in");
  CHECK(exactText(89_mm, LengthUnit::Inch) == "89 mm");
  CHECK(exactText(89_mm, LengthUnit::Centimetre) == "8.9 cm");
  RandomFiles random(7);
  for (int i = 0; i < 3000; ++i) {
    const Length length = random.length(-900, 900);
    for (const LengthUnit unit : kUnits) {
      REQUIRE(*parseLength(exactText(length, unit)) == length);
    }
  }
}

TEST_CASE("a default that stood in the file stays, one that did not is not added",
          "[catalogue][save]") {
  const SavedFiles files;
  writeFileAtomically(files.path() / "test.order.json",
                      replaced(files.content("test.order.json"), R"("location": "centre-chest",)",
                               R"("location": "centre-chest", "scale": 1.0,)"));
  Loaded<Order> order = files.order();
  CHECK_THAT(orderText(order.value, order.original), Catch::Contains(R"("scale": 1.0)"));
  order.value.lines[0].placements[0].scale = 1.0;  // was 0.8: back to what needs no word
  CHECK_THAT(orderText(order.value, order.original), !Catch::Contains("0.8"));
}

TEST_CASE("an order in the making is saved and loaded as a draft only", "[catalogue][save]") {
  const TemporaryFolder folder;
  Order order;
  order.id = "new";
  const auto file = folder.write("new.order.json", orderText(order));
  CHECK_THROWS_AS(loadOrder(file, shippedRules()), InputError);
  CHECK(loadOrderDraft(file, shippedRules()).value == order);

  Order begun = RandomFiles(3).order();
  begun.lines.front().sizes.clear();
  begun.lines.back().placements.clear();
  writeFileAtomically(file, orderText(begun));
  CHECK_THROWS_AS(loadOrder(file, shippedRules()), InputError);
  CHECK(loadOrderDraft(file, shippedRules()).value == begun);
}
