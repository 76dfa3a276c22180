// SPDX-License-Identifier: MIT
// Where results go, and what is never replaced by accident.
#include <catch2/catch.hpp>

#include "apps/command_line.h"

using namespace creaseline::support;
using Catch::Matchers::Contains;
namespace fs = std::filesystem;

TEST_CASE("an output that is there is kept unless --force is given", "[apps][output]") {
  const TeamCopy team;
  writeContent(team / "plan.txt", "dear to somebody");
  const ProgramResult kept = team.runOrder("plan", {"--output", "plan.txt"});
  CHECK(kept.exitCode == 2);
  CHECK(isOneError(kept.err));
  CHECK_THAT(kept.err, Contains("plan.txt: found a file of that name; expected a new name, or "
                                "--force to replace it"));
  CHECK(contentOf(team / "plan.txt") == "dear to somebody");
  CHECK(team.runOrder("plan", {"--output", "plan.txt", "--force"}).exitCode == 1);
  CHECK_THAT(contentOf(team / "plan.txt"), Contains("Team kit"));
}

TEST_CASE("an input is never replaced, not even with --force or by another name",
          "[apps][output]") {
  const TeamCopy team;
  fs::create_symlink("team.shop.json", team / "link.txt");
  const auto before = snapshot(team.path());
  for (const char* input :
       {"team.order.json", "./team.order.json", "team.shop.json", "tee.blank.json", "link.txt"}) {
    for (const char* verb : {"plan", "sheets"}) {
      CAPTURE(input, verb);
      const ProgramResult result = team.runOrder(verb, {"--output", input, "--force"});
      CHECK(result.exitCode == 2);
      CHECK(isOneError(result.err));
      CHECK_THAT(result.err, Contains("a file that is read for this"));
    }
  }
  CHECK(snapshot(team.path()) == before);
}

TEST_CASE("an output that cannot be written is named with the reason", "[apps][output]") {
  const TeamCopy team;
  fs::create_directory(team / "folder");
  const auto before = snapshot(team.path());
  struct Case {
    std::string output, says;
  };
  for (const Case& entry :
       {Case{"missing/plan.txt", "the folder missing does not exist"},
        Case{"folder", "found a folder"}, Case{"/dev/null", "something that is no ordinary file"},
        Case{"", "an empty name"}}) {
    for (const char* verb : {"plan", "sheets"}) {
      CAPTURE(entry.output, verb);
      const ProgramResult result = team.runOrder(verb, {"--force", "--output=" + entry.output});
      CHECK(result.exitCode == 2);
      CHECK(isOneError(result.err));
      CHECK_THAT(result.err, Contains(entry.says) || Contains("--output"));
    }
  }
  CHECK(snapshot(team.path()) == before);
}

TEST_CASE("a closed standard output is an error, not a silent loss", "[apps][output]") {
  const TeamCopy team;
  ProgramCall call{CREASELINE_PROGRAM, {"rules"}, team.path()};
  call.closeStandardOutput = true;
  const ProgramResult result = runProgram(call);
  CHECK(result.exitCode == 2);
  CHECK(isOneError(result.err));
  CHECK_THAT(result.err, Contains("standard output: cannot be written"));
}

TEST_CASE("a full standard output is an error", "[apps][output]") {
  if (!fs::exists("/dev/full")) {
    WARN("skipped: this system has no /dev/full");
    return;
  }
  const ProgramResult result =
      runProgram({"/bin/sh", {"-c", std::string(CREASELINE_PROGRAM) + " --help >/dev/full"}, {}});
  CHECK(result.exitCode == 2);
  CHECK_THAT(result.err, Contains("standard output: cannot be written"));
}

TEST_CASE("closed standard input and error do not spoil files", "[apps][output]") {
  const TeamCopy team;
  ProgramCall call{CREASELINE_PROGRAM,
                   {"plan", "team.order.json", "--shop", "team.shop.json", "--output", "plan.txt"},
                   team.path()};
  call.closeStandardInput = true;
  CHECK(runProgram(call).exitCode == 1);
  const std::string plan = contentOf(team / "plan.txt");
  call.closeStandardError = true;
  call.closeStandardOutput = true;
  call.arguments.back() = "again.txt";
  CHECK(runProgram(call).exitCode == 1);
  // No message has found its way into the file.
  CHECK(contentOf(team / "again.txt") == plan);
}
