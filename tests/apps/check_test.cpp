// SPDX-License-Identifier: MIT
// creaseline check and creaseline rules.
#include <catch2/catch.hpp>

#include "apps/command_line.h"

using namespace creaseline::support;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;

TEST_CASE("every kind of file is recognised and found fine", "[apps][check]") {
  const DemoCopy demo;
  const auto before = snapshot(demo.path());
  const ProgramResult result = demo.run({"check", "regatta.order.json", "workshop.shop.json",
                                         "blanks/towpath-tee.blank.json",
                                         "designs/crest.design.json", "blanks/harbour-hoodie.csv"});
  INFO(result.err);
  CHECK(result.exitCode == 0);
  CHECK(result.err.empty());
  CHECK(linesIn(result.out) == 5);
  CHECK_THAT(result.out, StartsWith("regatta.order.json: order 2026-118, "));
  CHECK_THAT(result.out, Contains("\nworkshop.shop.json: shop Millrace Stitchroom, "));
  CHECK_THAT(result.out, Contains("\nblanks/towpath-tee.blank.json: blank "));
  CHECK_THAT(result.out, Contains("\ndesigns/crest.design.json: design "));
  CHECK_THAT(result.out, Contains("\nblanks/harbour-hoodie.csv: size chart, "));
  CHECK(demo.run({"check", "--quiet", "regatta.order.json"}).out.empty());
  CHECK(snapshot(demo.path()) == before);
}

TEST_CASE("files are told apart by content, whatever their names", "[apps][check]") {
  const DemoCopy demo;
  std::filesystem::copy_file(demo / "workshop.shop.json", demo / "thing.json");
  CHECK_THAT(demo.run({"check", "thing.json"}).out, Contains("thing.json: shop "));
}

TEST_CASE("one bad file among good ones is named, and the others are still checked",
          "[apps][check]") {
  const DemoCopy demo;
  writeContent(demo / "odd.json", R"({"format": "creaseline-cake", "version": 1})");
  writeContent(demo / "list.json", "[1, 2]");
  const ProgramResult result =
      demo.run({"check", "odd.json", "workshop.shop.json", "missing.order.json", "list.json"});
  CHECK(result.exitCode == 2);
  CHECK_THAT(result.out, Contains("workshop.shop.json: shop "));
  CHECK(linesIn(result.out) == 1);
  CHECK(linesIn(result.err) == 3);
  CHECK_THAT(result.err, Contains("creaseline: error: odd.json: /format: found "
                                  "\"creaseline-cake\"; expected \"creaseline-order\""));
  CHECK_THAT(result.err, Contains("creaseline: error: missing.order.json: "));
  CHECK_THAT(result.err, Contains("creaseline: error: list.json: "));
}

TEST_CASE("an order is checked with all that it refers to", "[apps][check]") {
  const DemoCopy demo;
  writeContent(demo / "designs/crest.svg", "<svg");
  const ProgramResult result = demo.run({"check", "regatta.order.json"});
  CHECK(result.exitCode == 2);
  CHECK(isOneError(result.err));
  CHECK_THAT(result.err, Contains("crest.svg"));
}

TEST_CASE("a name with control characters cannot break the one line of an error", "[apps][check]") {
  const ProgramResult result = runCreaseline({"check", "a\nb\x1b[31m.json"});
  CHECK(result.exitCode == 2);
  CHECK(isOneError(result.err));
  CHECK(result.err.find('\x1b') == std::string::npos);
}

TEST_CASE("the rules are shown with their basis", "[apps][rules]") {
  const ProgramResult rules = runCreaseline({"rules"});
  CHECK(rules.exitCode == 0);
  CHECK(rules.err.empty());
  CHECK_THAT(rules.out, StartsWith("# Rules and their basis\n"));
  for (const char* part :
       {"## Locations", "## Placement", "## Backing and needle", "## Frames across garment edges",
        "## Cautions", "## Defaults", "## Measures that a size chart lacks", "`centre-chest`",
        "3 in (76.2 mm) below the collar seam", "common practice, no source"}) {
    CHECK_THAT(rules.out, Contains(part));
  }
}

TEST_CASE("missing rules are an error that says where they were looked for", "[apps][rules]") {
  const TemporaryFolder empty;
  REQUIRE(::setenv("CREASELINE_RESOURCES", empty.path().c_str(), 1) == 0);
  const ProgramResult result = runCreaseline({"rules"});
  REQUIRE(::unsetenv("CREASELINE_RESOURCES") == 0);
  CHECK(result.exitCode == 2);
  CHECK(isOneError(result.err));
  CHECK_THAT(result.err, Contains(empty.path().string()));
}
