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

TEST_CASE("sheets are the same bytes on every run", "[apps][sheets]") {
  const TeamCopy team;
  const std::string first = team.runOrder("sheets", {"--output", "-", "--quiet"}).out;
  CHECK_THAT(first, StartsWith("%PDF-"));
  // Without a fixed order of fonts some runs differ.
  for (int run = 0; run < 5; ++run) {
    CHECK((team.runOrder("sheets", {"--output", "-", "--quiet"}).out == first));
  }
}

TEST_CASE("sheets are not written over a file without --force", "[apps][sheets]") {
  const TeamCopy team;
  writeContent(team / "kit.pdf", "kept");
  const ProgramResult result = team.runOrder("sheets", {"--output", "kit.pdf"});
  CHECK(result.exitCode == 2);
  CHECK(isOneError(result.err));
  CHECK(contentOf(team / "kit.pdf") == "kept");
}

TEST_CASE("only the kinds asked for are drawn, and only the pages asked for", "[apps][sheets]") {
  const TeamCopy team;
  CHECK(team.runOrder("sheets", {"-o", "all.pdf", "--only", "placement", "--quiet"}).exitCode == 1);
  const ProgramResult result =
      team.runOrder("sheets", {"-o", "one.pdf", "--only", "placement", "--pages", "2-2"});
  CHECK(result.exitCode == 1);
  CHECK_THAT(result.err, Contains("one.pdf: 1 page;"));
  const auto textOf = [&](const std::string& file, const std::vector<std::string>& pages) {
    std::vector<std::string> arguments = pages;
    arguments.insert(arguments.end(), {(team / file).string(), "-"});
    return poppler("pdftotext", arguments);
  };
  CHECK(textOf("one.pdf", {}) == textOf("all.pdf", {"-f", "2", "-l", "2"}));
}

TEST_CASE("pages that are not there are an error that tells how many there are", "[apps][sheets]") {
  const TeamCopy team;
  const ProgramResult result = team.runOrder(
      "sheets", {"-o", "one.pdf", "--only", "placement", "--pages", "900-", "--quiet"});
  CHECK(result.exitCode == 2);
  CHECK(isOneError(result.err));
  CHECK_THAT(result.err, Contains("the sheets have"));
  CHECK_FALSE(std::filesystem::exists(team / "one.pdf"));
}

TEST_CASE("pictures go to a folder that is new or empty, else only with --force",
          "[apps][sheets]") {
  const TeamCopy team;
  const std::vector<std::string> pictures = {"-o",        "kit",     "--svg", "--only",
                                             "placement", "--pages", "1-2",   "--quiet"};
  CHECK(team.runOrder("sheets", pictures).exitCode == 1);
  CHECK_THAT(contentOf(team / "kit/page-001.svg"), Contains("width=\"210mm\""));
  CHECK(std::filesystem::exists(team / "kit/page-002.svg"));
  writeContent(team / "kit/notes.txt", "kept");
  const ProgramResult again = team.runOrder("sheets", pictures);
  CHECK(again.exitCode == 2);
  CHECK(isOneError(again.err));
  std::vector<std::string> forced = pictures;
  forced.push_back("--force");
  CHECK(team.runOrder("sheets", forced).exitCode == 1);
  CHECK(contentOf(team / "kit/notes.txt") == "kept");
}
