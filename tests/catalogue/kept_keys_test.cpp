// SPDX-License-Identifier: MIT
// Keys that the program does not know outlive saving, at every level, and move with their objects;
// saving of orders with the files that they refer to.
#include <catch2/catch.hpp>
#include <random>

#include "catalogue/catalogue_data.h"
#include "catalogue/json_writer.h"
#include "creaseline/base/file.h"
#include "creaseline/catalogue/save.h"

using namespace creaseline;
using namespace creaseline::testing;

namespace {

// Puts a key of its own into every object with fixed keys; those whose keys are data have none.
void addUnknownKeys(JsonNode& node, const std::string& key, int& count) {
  if (auto* list = std::get_if<JsonNode::Array>(&node.content)) {
    for (JsonNode& item : *list) {
      addUnknownKeys(item, key, count);
    }
  }
  auto* object = std::get_if<JsonNode::Object>(&node.content);
  if (object == nullptr) {
    return;
  }
  const bool keysAreData = key == "fibres" || key == "measures" || key == "sizes";
  for (JsonMember& member : *object) {
    addUnknownKeys(member.value, member.key, count);
  }
  if (!keysAreData) {
    const std::string number = std::to_string(++count);
    object->insert(object->begin() + 1,
                   {"x-" + number, JsonNode{JsonNumber{1.0, number + ".0e0"}}});
  }
}

struct Marked {
  std::string text;
  int count = 0;
};
Marked marked(const std::filesystem::path& file) {
  JsonNode node = parseJson(contentOf(file), file.string());
  Marked result;
  addUnknownKeys(node, "", result.count);
  result.text = jsonText(node);
  return result;
}

// The good files, where a test may change them.
struct GoodFiles : TemporaryFolder {
  GoodFiles() {
    for (const auto& entry : std::filesystem::directory_iterator(goodFile(""))) {
      std::filesystem::copy(entry.path(), path() / entry.path().filename());
    }
  }
  [[nodiscard]] std::filesystem::path operator/(const std::string& name) const {
    return path() / name;
  }
  [[nodiscard]] Loaded<Order> order() const {
    return loadOrder(*this / "test.order.json", shippedRules());
  }
};

}  // namespace

TEST_CASE("unknown keys of every object are kept as they were written", "[catalogue][save]") {
  const TemporaryFolder folder;
  const Marked shop = marked(goodFile("test.shop.json"));
  REQUIRE(shop.count > 15);
  const auto shopFile = folder.write("x.shop.json", shop.text);
  const Loaded<Shop> shopRead = loadShop(shopFile, shippedRules());
  CHECK(shopText(shopRead.value, shopRead.original) == shop.text);

  const GoodFiles files;
  for (const char* name : {"letters.design.json", "star.design.json"}) {
    const Marked design = marked(files / name);
    writeFileAtomically(files / name, design.text);
    const Loaded<Design> read = loadDesign(files / name);
    CHECK(designText(read.value, read.original) == design.text);
  }
  for (const char* name : {"tee.blank.json", "hoodie.blank.json"}) {
    const Marked blank = marked(files / name);
    writeFileAtomically(files / name, blank.text);
    const Loaded<Blank> read = loadBlank(files / name, shippedRules());
    CHECK(blankText(read.value, read.original) == blank.text);
  }
  const Marked order = marked(files / "test.order.json");
  writeFileAtomically(files / "test.order.json", order.text);
  const Loaded<Order> read = files.order();
  CHECK(orderText(read.value, read.original) == order.text);
}

TEST_CASE("unknown keys of blanks and designs inside an order are kept", "[catalogue][save]") {
  const GoodFiles files;
  JsonNode order = parseJson(contentOf(files / "test.order.json"), "order");
  for (JsonMember& member : std::get<JsonNode::Object>(order.content)) {
    if (member.key == "blanks" || member.key == "designs") {
      for (JsonNode& item : std::get<JsonNode::Array>(member.value.content)) {
        item = parseJson(contentOf(files / std::get<std::string>(item.content)), "part");
      }
    }
  }
  int count = 0;
  addUnknownKeys(order, "", count);
  REQUIRE(count > 20);
  writeFileAtomically(files / "test.order.json", jsonText(order));
  const Loaded<Order> read = files.order();
  CHECK(orderText(read.value, read.original) == jsonText(order));
  CHECK(read.original.blanks.empty());
}

TEST_CASE("unknown keys move with their lines and placements", "[catalogue][save]") {
  const GoodFiles files;
  std::string text = contentOf(files / "test.order.json");
  text = replaced(text, R"("id": "1",)", R"("id": "1", "bin": "of one",)");
  text = replaced(text, R"("id": "2",)", R"("id": "2", "bin": "of two",)");
  text =
      replaced(text, R"("location": "centre-chest",)", R"("location": "centre-chest", "x": "c",)");
  text = replaced(text, R"("location": "hood-back",)", R"("location": "hood-back", "x": "h",)");
  writeFileAtomically(files / "test.order.json", text);
  Loaded<Order> order = files.order();
  std::swap(order.value.lines[0], order.value.lines[1]);
  std::swap(order.value.lines[0].placements[0], order.value.lines[0].placements[1]);
  order.value.lines[0].placements.push_back(order.value.lines[0].placements[1]);
  order.value.lines[0].placements[2].location = LocationId("full-back");

  const JsonNode saved = parseJson(orderText(order.value, order.original), "saved");
  const auto& lines = *arrayOf(memberOf(&saved, "lines"));
  CHECK(textOf(&lines[0], "bin") == "of two");
  CHECK(textOf(&lines[1], "bin") == "of one");
  const auto& placements = *arrayOf(memberOf(&lines[0], "placements"));
  REQUIRE(placements.size() == 3);
  CHECK(textOf(&placements[0], "x") == "h");
  CHECK(textOf(&placements[1], "x") == "c");
  CHECK(memberOf(&placements[2], "x") == nullptr);

  order.value.lines.erase(order.value.lines.begin());
  CHECK_THAT(orderText(order.value, order.original), !Catch::Contains("of two"));
}

TEST_CASE("a changed blank or design goes to its own file, and only that is written",
          "[catalogue][save]") {
  const GoodFiles files;
  const std::string designBefore = contentOf(files / "star.design.json");
  writeFileAtomically(files / "tee.blank.json",
                      replaced(contentOf(files / "tee.blank.json"), "{", R"({"supplier": 7,)"));
  Loaded<Order> order = files.order();
  order.value.blanks[0].name = "Tee of another name";
  const Saved<Order> saved = saveOrder(files / "test.order.json", order.value, order.original);
  const Loaded<Order> again = files.order();
  CHECK(again.value == order.value);
  CHECK_THAT(contentOf(files / "tee.blank.json"), Catch::Contains("\"supplier\": 7"));
  CHECK_THAT(contentOf(files / "test.order.json"), Catch::Contains("\"tee.blank.json\""));
  CHECK(contentOf(files / "star.design.json") == designBefore);
  CHECK(saved.value == order.value);

  // Nothing changed since: nothing is written, and nothing counts as changed from outside.
  CHECK(changedOutside(saved.original).empty());
  CHECK(saveOrder(files / "test.order.json", saved.value, saved.original).written.empty());
}

TEST_CASE("a new id does not part a blank from its file", "[catalogue][save]") {
  const GoodFiles files;
  Loaded<Order> order = files.order();
  order.value.blanks[0].id = BlankId("tee-2");
  order.value.lines[0].blank = BlankId("tee-2");
  static_cast<void>(saveOrder(files / "test.order.json", order.value, order.original));
  CHECK(files.order().value == order.value);
  CHECK_THAT(contentOf(files / "tee.blank.json"), Catch::Contains("tee-2"));
}

TEST_CASE("nothing is written if a file was changed outside", "[catalogue][save]") {
  const GoodFiles files;
  Loaded<Order> order = files.order();
  order.value.title = "mine";
  order.value.blanks[0].name = "mine";
  const std::string orderBefore = contentOf(files / "test.order.json");
  const std::string theirs = contentOf(files / "tee.blank.json") + "\n";
  writeFileAtomically(files / "tee.blank.json", theirs);
  CHECK(changedOutside(order.original) ==
        std::vector<std::filesystem::path>{files / "tee.blank.json"});
  try {
    static_cast<void>(saveOrder(files / "test.order.json", order.value, order.original));
    FAIL("saved over another's change");
  } catch (const ChangedOutside& error) {
    CHECK(error.file() == (files / "tee.blank.json").string());
  }
  CHECK(contentOf(files / "test.order.json") == orderBefore);
  CHECK(contentOf(files / "tee.blank.json") == theirs);

  // A file that would not be written does not stand in the way.
  order.value.blanks[0] = order.original.value->blanks[0];
  CHECK_NOTHROW(saveOrder(files / "test.order.json", order.value, order.original));
}

TEST_CASE("an order saved elsewhere leads to the same files", "[catalogue][save]") {
  const GoodFiles files;
  const Loaded<Order> order = files.order();
  std::filesystem::create_directory(files / "later");
  const auto target = files / "later/copy.order.json";
  const Saved<Order> saved = saveOrder(target, order.value, order.original);
  CHECK(loadOrder(target, shippedRules()).value == order.value);
  CHECK_THAT(contentOf(target), Catch::Contains("\"../tee.blank.json\""));
  CHECK(saved.written == std::vector<std::filesystem::path>{target});
  // Once more it would replace what is there, which must be said.
  CHECK_THROWS_AS(saveOrder(target, order.value, order.original), ChangedOutside);
  CHECK_NOTHROW(saveOrder(target, order.value, order.original, {}, stampOf(target)));
}

TEST_CASE("a drawing of a design inside an order is found from another folder too",
          "[catalogue][save]") {
  const GoodFiles files;
  const Design drawn =
      loadDesign(std::filesystem::path(SOURCE_DIR) / "demo/designs/star.design.json").value;
  std::filesystem::copy(std::filesystem::path(SOURCE_DIR) / "demo/designs/star.svg",
                        files / "star.svg");
  Loaded<Order> order = files.order();
  order.value.designs.push_back(drawn);
  order.value.designs.back().id = DesignId("drawn");
  order.value.designs.back().outlineFile = "star.svg";
  const Saved<Order> here = saveOrder(files / "test.order.json", order.value, order.original);
  std::filesystem::create_directory(files / "later");
  const auto target = files / "later/copy.order.json";
  const Saved<Order> there = saveOrder(target, here.value, here.original);
  CHECK(there.value.designs.back().outlineFile == "../star.svg");
  CHECK(loadOrder(target, shippedRules()).value == there.value);
}

TEST_CASE("a recovery text holds every change and changes no file", "[catalogue][save]") {
  const GoodFiles files;
  Loaded<Order> order = files.order();
  order.value.blanks[1].name = "not saved yet";
  order.value.lines[1].sizes.clear();
  std::filesystem::create_directory(files / "recovery");
  writeFileAtomically(files / "recovery/1.json",
                      recoveryText(order.value, order.original, {{}, files / "recovery"}));
  const Loaded<Order> recovered = loadOrderDraft(files / "recovery/1.json", shippedRules());
  CHECK(recovered.value == order.value);
  CHECK(recovered.original.blanks.size() == 1);
  CHECK_THAT(contentOf(files / "recovery/1.json"), Catch::Contains("\"../hoodie.csv\""));
}

TEST_CASE("a chart from CSV stays there until it is changed", "[catalogue][save]") {
  const GoodFiles files;
  Loaded<Blank> blank = loadBlank(files / "hoodie.blank.json", shippedRules());
  blank.value.name = "another name";
  CHECK_THAT(blankText(blank.value, blank.original), Catch::Contains("hoodie.csv"));
  blank.value.chart.sizes[0].measures[Measure::RibHeight] = Length::fromMm(61.0);
  const Saved<Blank> saved = saveBlank(files / "hoodie.blank.json", blank.value, blank.original);
  CHECK_THAT(contentOf(files / "hoodie.blank.json"), !Catch::Contains("hoodie.csv"));
  CHECK(std::filesystem::exists(files / "hoodie.csv"));
  CHECK(loadBlank(files / "hoodie.blank.json", shippedRules()).value.chart.sizes[0].measures ==
        blank.value.chart.sizes[0].measures);
}

TEST_CASE("damaged files are refused or saved again, and never crash", "[catalogue][save]") {
  const GoodFiles files;
  const std::string good = contentOf(files / "test.order.json");
  std::mt19937 random(20261125);
  int refused = 0;
  for (int i = 0; i < 200; ++i) {
    CAPTURE(i);
    std::string text = good;
    for (auto hits = 1 + random() % 3; hits > 0; --hits) {
      const std::size_t at = random() % text.size();
      switch (random() % 3) {
        case 0:
          text[at] = static_cast<char>(random() % 256);
          break;
        case 1:
          text.erase(at, random() % 20);
          break;
        default:
          text.insert(at, text.substr(random() % text.size(), random() % 20));
      }
    }
    writeFileAtomically(files / "test.order.json", text);
    try {
      const Loaded<Order> read = loadOrderDraft(files / "test.order.json", shippedRules());
      const std::string saved = orderText(read.value, read.original);
      writeFileAtomically(files / "test.order.json", saved);
      const Loaded<Order> again = loadOrderDraft(files / "test.order.json", shippedRules());
      REQUIRE(again.value == read.value);
      REQUIRE(orderText(again.value, again.original) == saved);
    } catch (const InputError&) {
      ++refused;
    }
  }
  CHECK(refused > 50);
  CHECK(refused < 200);
}
