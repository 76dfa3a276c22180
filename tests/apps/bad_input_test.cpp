// SPDX-License-Identifier: MIT
// Every broken file of tests/data/bad through the real program: one error, exit code 2, and no
// file touched.
#include <catch2/catch.hpp>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "apps/command_line.h"

using namespace creaseline::support;
using Catch::Matchers::Contains;
using nlohmann::json;
namespace fs = std::filesystem;

namespace {

// Every case by the verb that a user would meet it with.
std::vector<std::string> callFor(const json& entry, const fs::path& file) {
  const std::string what = entry["what"];
  const fs::path demo = fs::path(SOURCE_DIR) / "demo";
  if (what == "order") {
    return {"plan", file.string(), "--shop", (demo / "workshop.shop.json").string()};
  }
  if (what == "shop") {
    return {"plan", (demo / "regatta.order.json").string(), "--shop", file.string()};
  }
  return {"check", file.string()};
}

void checkRefused(const ProgramResult& result) {
  CHECK(result.exitCode == 2);
  CHECK(result.out.empty());
  INFO(result.err);
  std::size_t errors = 0;
  std::istringstream lines(result.err);
  for (std::string line; std::getline(lines, line);) {
    errors += line.starts_with("creaseline: error: ") ? 1U : 0U;
    // A remark about an unknown key may stand before the error; nothing else may.
    CHECK((line.starts_with("creaseline: error: ") || line.starts_with("creaseline: note: ")));
  }
  CHECK(errors == 1);
  // The error names the file itself or one that it refers to; all of them lie among the test data.
  CHECK_THAT(result.err, Contains("creaseline: error: " TEST_DATA "/"));
}

}  // namespace

TEST_CASE("every broken file gives one error, exit code 2, and stays as it was", "[apps][bad]") {
  const fs::path folder = fs::path(TEST_DATA) / "bad";
  const json cases = json::parse(contentOf(folder / "cases.json"));
  REQUIRE(cases.size() >= 40);
  const auto before = snapshot(folder);
  for (const json& entry : cases) {
    const std::string name = entry["name"];
    CAPTURE(name);
    const fs::path file = folder / entry["file"].get<std::string>();
    const ProgramResult result = runCreaseline(callFor(entry, file));
    checkRefused(result);
    for (const json& fragment : entry["expect"]) {
      // The command line sets "found" and "expected" apart by a semicolon.
      std::string text = result.err;
      for (std::size_t at = text.find("; expected "); at != std::string::npos;
           at = text.find("; expected ", at + 1)) {
        text[at] = ',';
      }
      CHECK_THAT(text, Contains(fragment.get<std::string>()));
    }
  }
  CHECK(snapshot(folder) == before);
}

TEST_CASE("100 MB of nonsense are refused unread", "[apps][bad]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "nonsense.order.json";
  {
    std::ofstream stream(file, std::ios::binary);
    std::string block(1024 * 1024, '\0');
    for (std::size_t i = 0; i < block.size(); ++i) {
      block[i] = static_cast<char>((i * 2654435761U >> 13U) & 0xFFU);
    }
    for (int i = 0; i < 100; ++i) {
      stream << block;
    }
    REQUIRE(stream.flush());
  }
  const std::string shop = std::string(SOURCE_DIR) + "/demo/workshop.shop.json";
  for (const std::vector<std::string>& call : std::vector<std::vector<std::string>>{
           {"check", file.string()},
           {"plan", file.string(), "--shop", shop},
           {"sheets", file.string(), "--shop", shop, "-o", (folder / "x.pdf").string()}}) {
    const ProgramResult result = runCreaseline(call);
    CHECK(result.exitCode == 2);
    CHECK(isOneError(result.err));
    CHECK_THAT(result.err, Contains("nonsense.order.json"));
  }
  CHECK(fs::file_size(file) == 100U * 1024U * 1024U);
  CHECK(std::distance(fs::directory_iterator(folder.path()), {}) == 1);
}

TEST_CASE("files that are none are refused by name", "[apps][bad]") {
  const TemporaryFolder folder;
  for (const char* file : {"missing.order.json", ".", "/dev/zero"}) {
    CAPTURE(file);
    const ProgramResult result = runCreaseline({"plan", file, "--shop", file}, folder.path());
    CHECK(result.exitCode == 2);
    CHECK(isOneError(result.err));
    CHECK_THAT(result.err, Contains(std::string("error: ") + file));
  }
}
