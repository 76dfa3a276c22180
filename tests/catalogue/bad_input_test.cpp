// SPDX-License-Identifier: MIT
// Broken files: each gives one InputError that names file, place, what was found and what is
// expected; no input ever crashes a reader or is written to.
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <nlohmann/json.hpp>
#include <random>

#include "catalogue/catalogue_data.h"

using namespace creaseline;
using namespace creaseline::testing;

namespace {

const std::filesystem::path kBad = std::filesystem::path(TEST_DATA) / "bad";

void load(const std::string& what, const std::filesystem::path& file) {
  if (what == "order") {
    static_cast<void>(loadOrder(file, shippedRules()));
  } else if (what == "shop") {
    static_cast<void>(loadShop(file, shippedRules()));
  } else if (what == "blank") {
    static_cast<void>(loadBlank(file, shippedRules()));
  } else if (what == "design") {
    static_cast<void>(loadDesign(file));
  } else {
    static_cast<void>(parseSizeChartCsv(contentOf(file), file.string()));
  }
}

std::map<std::string, std::string> contentsOf(const std::filesystem::path& folder) {
  std::map<std::string, std::string> contents;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
    if (entry.is_regular_file()) {
      contents[entry.path().string()] = contentOf(entry.path());
    }
  }
  return contents;
}

nlohmann::json manifest() {
  return nlohmann::json::parse(contentOf(kBad / "cases.json"));
}

// What a file that ends before it should costs: nothing but an InputError. Any other exception is
// passed on and fails the test.
bool accepted(const std::string& what, const std::filesystem::path& file) {
  try {
    load(what, file);
    return true;
  } catch (const InputError& error) {
    CHECK_FALSE(std::string_view(error.what()).empty());
    CHECK_FALSE(error.details().expected.empty());
    return false;
  }
}

std::string mutated(std::string text, std::mt19937& random) {
  const auto pick = [&](std::size_t count) {
    return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
  };
  const std::string_view tokens[] = {"null", "-1",   "1e308",   "\"\"", "[]", "{}", "\"0 mm\"",
                                     "0",    "true", "\\u0000", "\xff", ",",  "\"", "1e-320"};
  for (std::size_t edits = 1 + pick(3); edits > 0 && !text.empty(); --edits) {
    const std::size_t at = pick(text.size());
    switch (pick(5)) {
      case 0:
        text[at] = static_cast<char>(pick(256));
        break;
      case 1:
        text.erase(at, 1 + pick(20));
        break;
      case 2:
        text.insert(at, std::string(tokens[pick(std::size(tokens))]));
        break;
      case 3:
        text.insert(at, text.substr(pick(text.size()), pick(60)));
        break;
      default: {
        // Replace the value behind a colon, which keeps the syntax and breaks the meaning.
        const std::size_t colon = text.find(": ", at);
        if (colon != std::string::npos) {
          const std::size_t end = text.find_first_of(",\n", colon);
          text.replace(colon + 2, end == std::string::npos ? 1 : end - colon - 2,
                       std::string(tokens[pick(std::size(tokens))]));
        }
      }
    }
  }
  return text;
}

}  // namespace

TEST_CASE("every broken file of the collection gives one error that says what to do",
          "[catalogue][bad-input]") {
  const auto before = contentsOf(kBad);
  const nlohmann::json cases = manifest();
  REQUIRE(cases.size() >= 100);
  for (const nlohmann::json& row : cases) {
    const auto name = row.at("name").get<std::string>();
    const std::filesystem::path file = kBad / row.at("file").get<std::string>();
    const auto what = row.at("what").get<std::string>();
    REQUIRE(std::filesystem::exists(file));
    const std::string message = inputErrorOf([&] { load(what, file); });
    CAPTURE(name, message);
    CHECK_FALSE(message.empty());
    CHECK(message.find('\n') == std::string::npos);
    CHECK_FALSE(row.at("expect").empty());
    for (const auto& fragment : row.at("expect")) {
      CAPTURE(fragment.get<std::string>());
      CHECK(message.find(fragment.get<std::string>()) != std::string::npos);
    }
  }
  CHECK(contentsOf(kBad) == before);
}

TEST_CASE("every folder of the collection has its row", "[catalogue][bad-input]") {
  std::vector<std::string> listed, present;
  for (const nlohmann::json& row : manifest()) {
    listed.push_back(row.at("name").get<std::string>());
  }
  for (const auto& entry : std::filesystem::directory_iterator(kBad)) {
    if (entry.is_directory()) {
      present.push_back(entry.path().filename().string());
    }
  }
  std::sort(listed.begin(), listed.end());
  std::sort(present.begin(), present.end());
  CHECK(listed == present);
}

TEST_CASE("a hundred megabytes of nonsense are refused before they are read",
          "[catalogue][bad-input]") {
  const TemporaryFolder folder;
  std::string block;
  std::mt19937 random(20261204);
  for (int i = 0; i < 1 << 20; ++i) {
    block += static_cast<char>(random() & 0xFFU);
  }
  const std::filesystem::path file = folder.path() / "large.order.json";
  {
    std::ofstream stream(file, std::ios::binary);
    for (int i = 0; i < 100; ++i) {
      stream << block;
    }
  }
  REQUIRE(std::filesystem::file_size(file) == std::size_t{100} << 20U);
  for (const char* what : {"order", "shop", "blank", "design"}) {
    CHECK_THAT(inputErrorOf([&] { load(what, file); }),
               Catch::Contains("104857600 bytes") && Catch::Contains("at most"));
  }
}

TEST_CASE("nesting, values and members are bounded", "[catalogue][bad-input]") {
  const TemporaryFolder folder;
  const std::string head = R"({"format":"creaseline-design","version":1,"id":"a","name":)";
  const auto message = [&](const std::string& text) {
    return inputErrorOf([&] { static_cast<void>(loadDesign(folder.write("x.json", text))); });
  };
  CHECK_THAT(message(std::string(8'000'000, '[')), Catch::Contains("nesting deeper than 64"));
  std::string objects;
  for (int i = 0; i < 100'000; ++i) {
    objects += "{\"a\":";
  }
  CHECK_THAT(message(objects), Catch::Contains("nesting deeper than 64"));
  std::string values = head + "[0";
  for (int i = 0; i < 2'100'000; ++i) {
    values += ",0";
  }
  CHECK_THAT(message(values + "]}"), Catch::Contains("more than 2000000 values"));
  CHECK_THAT(message(head + '"' + std::string(1'000'000, 'n') + "\"}"),
             Catch::Contains("1000000 characters") && Catch::Contains("at most 500"));
  std::string keys = "{";
  for (int i = 0; i < 200'000; ++i) {
    keys += "\"k" + std::to_string(i) + "\":0,";
  }
  CHECK_THAT(message(keys + "\"k0\":1}"), Catch::Contains("the key \"k0\" twice"));
}

TEST_CASE("an outline has a bounded number of points", "[catalogue][bad-input]") {
  // Four combs of 15 000 points each; the last one is beyond the bound of 50 000.
  std::string rings;
  for (int piece = 0; piece < 4; ++piece) {
    rings += piece == 0 ? "" : ",";
    rings += "{\"outer\":[[0,10],[" + std::to_string(14'997 * 0.01) + ",10]";
    for (int i = 14'997; i >= 0; --i) {
      rings += ",[" + std::to_string(i * 0.01) + (i % 2 == 0 ? ",0]" : ",5]");
    }
    rings += "]}";
  }
  const TemporaryFolder folder;
  const auto file = folder.write("x.design.json",
                                 R"({"format":"creaseline-design","version":1,"id":"a","name":"a",)"
                                 R"("stitches":9,"outline":{"unit":"mm","pieces":[)" +
                                     rings + "]}}");
  CHECK_THAT(inputErrorOf([&] { return loadDesign(file); }),
             Catch::Contains("/outline/pieces/3/outer") && Catch::Contains("at most 5000 points"));
}

TEST_CASE("a file cut off anywhere gives an error", "[catalogue][bad-input]") {
  const TemporaryFolder folder;
  const std::string text = contentOf(goodFile("star.design.json"));
  const std::size_t whole = text.find_last_of('}');
  for (std::size_t length = 0; length <= whole; length += 7) {
    CAPTURE(length);
    CHECK_FALSE(accepted("design", folder.write("x.design.json", text.substr(0, length))));
  }
  CHECK(accepted("design", folder.write("x.design.json", text)));
}

TEST_CASE("random damage never gives anything but a value or an InputError",
          "[catalogue][bad-input]") {
  const unsigned seed = 118;
  CAPTURE(seed);
  std::mt19937 random(seed);
  const TemporaryFolder folder;
  for (const char* name : {"tee.blank.json", "hoodie.blank.json", "hoodie.csv", "star.design.json",
                           "letters.design.json"}) {
    static_cast<void>(folder.write(name, contentOf(goodFile(name))));
  }
  const std::pair<const char*, const char*> goods[] = {
      {"order", "test.order.json"},      {"shop", "test.shop.json"},
      {"blank", "tee.blank.json"},       {"design", "star.design.json"},
      {"design", "letters.design.json"}, {"chart", "hoodie.csv"}};
  for (const auto& [what, name] : goods) {
    const std::string good = contentOf(goodFile(name));
    std::size_t refused = 0;
    for (int i = 0; i < 500; ++i) {
      const std::string bad = mutated(good, random);
      CAPTURE(what, name, i, bad);
      bool kept = true;
      REQUIRE_NOTHROW(kept = accepted(what, folder.write("damaged", bad)));
      refused += kept ? 0 : 1;
    }
    CAPTURE(name, refused);
    CHECK(refused > 100);
  }
}

TEST_CASE("a reader of one kind refuses the good files of all others", "[catalogue][bad-input]") {
  const std::map<std::string, std::string> goods = {{"order", "test.order.json"},
                                                    {"shop", "test.shop.json"},
                                                    {"blank", "tee.blank.json"},
                                                    {"design", "star.design.json"}};
  for (const auto& good : goods) {
    for (const auto& reader : goods) {
      const std::string message = inputErrorOf([&] { load(reader.first, goodFile(good.second)); });
      CAPTURE(good.second, reader.first, message);
      CHECK(message.empty() == (reader.first == good.first));
      CHECK((message.empty() || message.find("a file of another kind") != std::string::npos));
    }
  }
}

TEST_CASE("a pipe, a folder and a missing file are refused", "[catalogue][bad-input]") {
  const TemporaryFolder folder;
  CHECK_THAT(inputErrorOf([&] { load("order", folder.path()); }), Catch::Contains("a folder"));
  CHECK_THAT(inputErrorOf([&] { load("order", folder.path() / "none"); }),
             Catch::Contains("no such file"));
  CHECK_THAT(inputErrorOf([] { load("shop", "/dev/null"); }), Catch::Contains("device"));
}
