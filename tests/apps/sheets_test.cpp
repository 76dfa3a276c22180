// SPDX-License-Identifier: MIT
// creaseline sheets on a small order, looked at with poppler's tools.
#include <catch2/catch.hpp>

#include "apps/command_line.h"

using namespace creaseline::support;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;

namespace {

std::string poppler(const std::string& tool, const std::vector<std::string>& arguments) {
  const ProgramResult result = runProgram({"/usr/bin/" + tool, arguments, {}});
  INFO(tool << ": " << result.err);
  REQUIRE(result.exitCode == 0);
  return result.out;
}

}  // namespace

TEST_CASE("sheets are written as a PDF on the paper asked for", "[apps][sheets]") {
  const TeamCopy team;
  // A4 and Letter in whole points, as PDF page boxes have it: ISO 216 (210 by 297 mm), 8.5 by 11
  // in.
  struct Case {
    std::string paper, points;
  };
  for (const Case& entry : {Case{"a4", "595 x 842 pts"}, Case{"letter", "612 x 792 pts"}}) {
    CAPTURE(entry.paper);
    const std::string file = entry.paper + ".pdf";
    const ProgramResult result =
        team.runOrder("sheets", {"--output", file, "--paper", entry.paper});
    INFO(result.err);
    CHECK(result.exitCode == 1);  // the order has a stop
    CHECK(result.out.empty());
    CHECK_THAT(result.err, Contains("creaseline: wrote " + file + ": "));
    CHECK_THAT(poppler("pdfinfo", {(team / file).string()}), Contains(entry.points));
    CHECK_THAT(poppler("pdftotext", {(team / file).string(), "-"}), Contains("Team kit"));
  }
}

TEST_CASE("sheets go to standard output with -, and nothing else does", "[apps][sheets]") {
  const TeamCopy team;
  const auto before = snapshot(team.path());
  const ProgramResult result = team.runOrder("sheets", {"--output", "-", "--quiet"});
  CHECK(result.exitCode == 1);
  CHECK(result.err.empty());
  CHECK_THAT(result.out, StartsWith("%PDF-"));
  CHECK(snapshot(team.path()) == before);
}

TEST_CASE("sheets are not written over a file without --force", "[apps][sheets]") {
  const TeamCopy team;
  writeContent(team / "kit.pdf", "kept");
  const ProgramResult result = team.runOrder("sheets", {"--output", "kit.pdf"});
  CHECK(result.exitCode == 2);
  CHECK(isOneError(result.err));
  CHECK(contentOf(team / "kit.pdf") == "kept");
}
