// SPDX-License-Identifier: MIT
// The JSON reader: places in messages, ranges, and texts that are safe to show.
#include "catalogue/json_reader.h"

#include <catch2/catch.hpp>

#include "catalogue/catalogue_data.h"
#include "support/spoken.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;

namespace {

// A document in memory, with the reading that its notes go to.
struct Text {
  explicit Text(std::string_view json) : root(parseJson(json, "x.json")) {}
  [[nodiscard]] JsonCursor cursor() const { return {source, root, ""}; }
  Reading reading;
  JsonCursor::Source source{"x.json", &reading};
  JsonNode root;
};

}  // namespace

TEST_CASE("a value knows its JSON pointer, with escapes", "[catalogue][json]") {
  const Text text(R"({"a":[{"b/c~d":1},{"e":"x"}]})");
  JsonObject top = text.cursor().object();
  const std::vector<JsonCursor> items = top.at("a").items(1, 9, "things");
  CHECK(items[1].object().at("e").where() == "/a/1/e");
  CHECK(items[0].object().at("b/c~d").where() == "/a/0/b~1c~0d");  // RFC 6901, section 3
  CHECK_THAT(inputErrorOf([&] { static_cast<void>(items[1].object().at("e").boolean()); }),
             Catch::Equals("x.json: /a/1/e: found \"x\", expected true or false"));
}

TEST_CASE("a syntax error is found by line and column", "[catalogue][json]") {
  const std::string message =
      inputErrorOf([] { static_cast<void>(parseJson("{\n  \"a\": 1,\n  \"b\" 2\n}", "x.json")); });
  CHECK_THAT(message, Catch::StartsWith("x.json: line 3, column 7: ") && Catch::Contains("':'"));
}

TEST_CASE("messages about a file are in the language spoken, what it says is not",
          "[catalogue][json]") {
  Phrasebook::Content content;
  content.phrases = {{"names", "nombres"},
                     {"name", "nombre"},
                     {"one or more {}", "una lista no vacía de {}"},
                     {"an empty list", "una lista vacía"},
                     {"the {} {} a second time", "{} {} por segunda vez"},
                     {"every {} once", "cada {} una sola vez"},
                     {"found {}, expected {}", "encontrado: {}; esperado: {}"},
                     {"top level", "nivel superior"},
                     {"true or false", "sí o no"},
                     {"an object with {} keys", "un objeto con {} claves"},
                     {"line {}, column {}", "línea {}, columna {}"},
                     {"unexpected {}", "{}, inesperado"},
                     {"number literal", "un número"},
                     {"{} here", "aquí, {}"}};
  const Phrasebook book(content);
  const Speaking speaking(book);
  const Text text(R"({"none": [], "twice": ["name", "name"]})");
  JsonObject top = text.cursor().object();
  const auto names = [&](std::string_view key) {
    return inputErrorOf([&] { static_cast<void>(top.at(key).identifiers<StockId>()); });
  };
  CHECK(names("none") ==
        "x.json: /none: encontrado: una lista vacía; esperado: una lista no vacía de nombres");
  CHECK(names("twice") ==
        "x.json: /twice/1: encontrado: nombre \"name\" por segunda vez; esperado: cada nombre una "
        "sola vez");
  CHECK(inputErrorOf([&] { static_cast<void>(text.cursor().boolean()); }) ==
        "x.json: nivel superior: encontrado: un objeto con 2 claves; esperado: sí o no");
  CHECK(inputErrorOf([] { static_cast<void>(parseJson("{\"a\" 2}", "x.json")); }) ==
        "x.json: línea 1, columna 6: encontrado: un número, inesperado; esperado: aquí, ':'");
}

TEST_CASE("numbers keep to their range and stay whole where they must", "[catalogue][json]") {
  const Text text(R"([3, 3.5, 1e308, -0.0, 4.0, "3", null])");
  const std::vector<JsonCursor> items = text.cursor().items(7, 7, "values");
  CHECK(items[0].integer(1, 3) == 3);
  CHECK(items[4].integer(1, 4) == 4);
  CHECK(items[1].number(3.5, 3.5) == 3.5);
  CHECK(items[3].number(0.0, 1.0) == 0.0);
  CHECK_THROWS_AS(items[0].integer(4, 9), InputError);
  CHECK_THROWS_AS(items[1].integer(1, 9), InputError);
  CHECK_THROWS_AS(items[2].integer(1, 9), InputError);
  CHECK_THROWS_AS(items[2].number(0.0, 1e9), InputError);
  CHECK_THROWS_AS(items[5].integer(1, 9), InputError);
  CHECK_THROWS_AS(items[6].number(0.0, 9.0), InputError);
}

TEST_CASE("lengths include both ends of their range", "[catalogue][json]") {
  const Text text(R"(["0 mm", "10 mm", "10.000001 mm", "-1 mm", "2 in", 10, "1/0 in"])");
  const std::vector<JsonCursor> items = text.cursor().items(7, 7, "values");
  CHECK(items[0].length({}, 10_mm) == Length());
  CHECK(items[1].length({}, 10_mm) == 10_mm);
  CHECK_THROWS_AS(items[0].positiveLength(), InputError);
  CHECK_THROWS_AS(items[2].length({}, 10_mm), InputError);
  CHECK_THROWS_AS(items[3].length({}, 10_mm), InputError);
  CHECK(items[4].positiveLength() == 50.8_mm);
  CHECK_THAT(inputErrorOf([&] { static_cast<void>(items[5].positiveLength()); }),
             Catch::Contains("as text with its unit"));
  CHECK_THROWS_AS(items[6].positiveLength(), InputError);
}

TEST_CASE("where reading is strict an unknown key is an error", "[catalogue][json]") {
  Text text(R"({"known":1,"knwon":2})");
  JsonObject object = text.cursor().object();
  static_cast<void>(object.at("known"));
  object.finish();
  CHECK(text.reading.notes.size() == 1);
  text.reading.strict = true;
  CHECK_THAT(inputErrorOf([&] { object.finish(); }), Catch::Contains("the unknown key \"knwon\""));
}

TEST_CASE("malformed UTF-8 is told from well-formed", "[catalogue][json]") {
  // RFC 3629, section 3: overlong forms, surrogates and values above U+10FFFF are not UTF-8.
  for (const char* good : {"", "plain", "Caf\xC3\xA9", "\xE2\x80\xB3", "\xF0\x9F\xA7\xB5",
                           "\xEF\xBF\xBF", "\xF4\x8F\xBF\xBF"}) {
    CAPTURE(good);
    CHECK(isUtf8(good));
  }
  for (const char* bad :
       {"\x80", "\xC3", "\xC0\xAF", "\xC1\x81", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF0\x80\x80\xAF",
        "\xF4\x90\x80\x80", "\xF8\x88\x80\x80\x80", "\xE2\x80", "a\xFFz"}) {
    CAPTURE(bad);
    CHECK_FALSE(isUtf8(bad));
  }
}

TEST_CASE("what a message repeats cannot harm a terminal", "[catalogue][json]") {
  CHECK(printable("a\x1b[31mb\n\x7f") == "a\\x1b[31mb\\x0a\\x7f");
  CHECK(printable("Caf\xC3\xA9 \xFF") == "Caf\xC3\xA9 \\xff");
  CHECK(printable(std::string(61, 'x')) == std::string(60, 'x') + "...");
  CHECK(printable("\xC3\xA9\xC3\xA9\xC3\xA9", 2) == "\xC3\xA9\xC3\xA9...");
  CHECK(inQuotes("tee") == "\"tee\"");
}

TEST_CASE("the nearest name is offered, and none that is far", "[catalogue][json]") {
  const std::vector<std::string> names = {"centre-chest", "left-chest", "right-chest", "S", "M"};
  CHECK(nearestName("left-chset", names) == "left-chest");
  CHECK(nearestName("Left-Chest", names) == "left-chest");
  CHECK(nearestName("center-chest", names) == "centre-chest");
  CHECK(nearestName("elbow", names).empty());
  CHECK(nearestName("X", names).empty());
  CHECK(nearestName("m", names) == "M");
  CHECK(nearestName("", names).empty());
  CHECK(nearestName(std::string(1000, 'a'), names).empty());
  CHECK(offer("left", {"left-chest"}) == "left-chest");
  CHECK(offer("x", {}) == "one that exists, but there is none");
  CHECK(offer("b", {"aa", "bb"}) == "one of aa, bb; did you mean \"bb\"?");
}
