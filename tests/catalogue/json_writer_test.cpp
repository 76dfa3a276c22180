// SPDX-License-Identifier: MIT
// JSON as written, and which old object an entry is taken for.
#include "catalogue/json_writer.h"

#include <catch2/catch.hpp>

#include "catalogue/catalogue_data.h"

using namespace creaseline;
using namespace creaseline::testing;

namespace {

JsonNode parsed(const std::string& text) {
  return parseJson(text, "x.json");
}

}  // namespace

TEST_CASE("the shipped files are in the form that the writer gives", "[catalogue][json]") {
  for (const char* folder : {"demo", "demo/blanks", "demo/designs"}) {
    for (const auto& entry :
         std::filesystem::directory_iterator(std::filesystem::path(SOURCE_DIR) / folder)) {
      if (entry.path().extension() == ".json") {
        CAPTURE(entry.path());
        const std::string text = contentOf(entry.path());
        CHECK(jsonText(parsed(text)) == text);
      }
    }
  }
}

TEST_CASE("numbers keep their digits, texts their characters", "[catalogue][json]") {
  const std::string text =
      "{\n  \"a\": 123456789012345678901234567890,\n  \"b\": 1.50e+3,\n  \"c\": [true, false, "
      "null],"
      "\n  \"d\": \"\\\"\\\\ \\n \\t \\u0001 é / 日本\",\n  \"e\": {},\n  \"f\": [],\n  \"g\": "
      "-7\n}\n";
  CHECK(jsonText(parsed(text)) == text);
  CHECK(jsonText(parsed("[]")) == "[]\n");
  CHECK(jsonText(numberNode(0.1)) == "0.1\n");
  CHECK(jsonText(numberNode(1e300)) == "1e+300\n");
}

TEST_CASE("a list that does not fit on a line has a line for each entry", "[catalogue][json]") {
  const std::string item(40, 'x');
  CHECK(jsonText(parsed("{\"a\": [\"" + item + "\", \"" + item + "\"]}")) ==
        "{\n  \"a\": [\"" + item + "\", \"" + item + "\"]\n}\n");
  CHECK(jsonText(parsed("{\"a\": [\"" + item + "\", \"" + item + "\", 123456]}")) ==
        "{\n  \"a\": [\n    \"" + item + "\",\n    \"" + item + "\",\n    123456\n  ]\n}\n");
}

TEST_CASE("unknown keys stay behind the key that they stood behind", "[catalogue][json]") {
  const JsonNode old = parsed(R"({"x": 0, "a": 1, "y": 2, "z": {"deep": [1]}, "b": 3, "w": 4})");
  JsonObjectWriter object(&old);
  object.put("b", numberNode(30));
  object.put("a", numberNode(10));
  object.put("c", numberNode(40));
  CHECK(jsonText(object.take()) ==
        jsonText(
            parsed(R"({"x": 0, "b": 30, "w": 4, "a": 10, "y": 2, "z": {"deep": [1]}, "c": 40})")));
  JsonObjectWriter without(&old);
  without.leaveOut("a");
  without.put("b", numberNode(3));
  CHECK(jsonText(without.take()) ==
        jsonText(parsed(R"({"x": 0, "y": 2, "z": {"deep": [1]}, "b": 3, "w": 4})")));
}

TEST_CASE("an entry is the one of its name, else the one in its place", "[catalogue][json]") {
  const JsonNode list = parsed(R"([{"n": "a"}, {"n": "b"}, {"n": "c"}, {"n": "b"}])");
  const auto& old = *arrayOf(&list);
  const auto names = [](const JsonNode& node) { return EntryNames{textOf(&node, "n")}; };
  using Found = std::vector<const JsonNode*>;
  CHECK(entriesBefore(&list, {{"c"}, {"b"}, {"b"}, {"b"}, {"new"}}, names) ==
        Found{&old[2], &old[1], &old[3], nullptr, nullptr});
  // As long as before: what has a new name is the one in its place, if that is not taken.
  CHECK(entriesBefore(&list, {{"a"}, {"b"}, {"c"}, {"new"}}, names)[3] == &old[3]);
  CHECK(entriesBefore(&list, {{"a"}, {"new"}, {"c"}, {"b"}}, names)[1] == nullptr);
  CHECK(entriesBefore(&list, {{"new"}, {"a"}, {"c"}, {"b"}}, names)[0] == nullptr);
  CHECK(entriesBefore(nullptr, {{"a"}}, names) == Found{nullptr});
}
