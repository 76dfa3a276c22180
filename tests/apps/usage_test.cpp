// SPDX-License-Identifier: MIT
// Help, version and wrong usage.
#include <catch2/catch.hpp>
#include <sstream>

#include "apps/command_line.h"

using namespace creaseline::support;
using Catch::Matchers::Contains;
using Catch::Matchers::Equals;
using Catch::Matchers::StartsWith;

TEST_CASE("help is short and shows verbs, examples and exit codes", "[apps]") {
  const ProgramResult help = runCreaseline({"--help"});
  CHECK(help.exitCode == 0);
  CHECK(help.err.empty());
  for (const char* part : {"plan ORDER --shop SHOP", "sheets ORDER", "check FILES", "rules",
                           "Examples:", "Exit codes:", "130"}) {
    CHECK_THAT(help.out, Contains(part));
  }
  CHECK(linesIn(help.out) <= 30);
}

TEST_CASE("each verb has a help of its own with its options", "[apps]") {
  const std::vector<std::pair<std::string, std::vector<std::string>>> verbs = {
      {"plan",
       {"ORDER", "--shop", "--json", "--output", "--language", "--units", "--mark", "--force",
        "--quiet"}},
      {"sheets", {"ORDER", "--shop", "--output", "--paper", "--language", "--units", "--force"}},
      {"check", {"FILES", "--quiet"}},
      {"rules", {"--output", "--force"}}};
  for (const auto& [verb, options] : verbs) {
    const ProgramResult help = runCreaseline({verb, "--help"});
    CAPTURE(verb);
    CHECK(help.exitCode == 0);
    CHECK(help.err.empty());
    for (const std::string& option : options) {
      CHECK_THAT(help.out, Contains(option));
    }
    CHECK_THAT(help.out, Contains("Example"));
    CHECK(linesIn(help.out) <= 60);
  }
}

TEST_CASE("no line of any help is longer than 100 columns", "[apps]") {
  for (const std::vector<std::string>& call :
       std::vector<std::vector<std::string>>{{"--help"},
                                             {"plan", "--help"},
                                             {"sheets", "--help"},
                                             {"check", "--help"},
                                             {"rules", "--help"}}) {
    std::istringstream help(runCreaseline(call).out);
    for (std::string line; std::getline(help, line);) {
      INFO(line);
      CHECK(line.size() <= 100);
    }
  }
}

TEST_CASE("the version is one line", "[apps]") {
  const ProgramResult version = runCreaseline({"--version"});
  CHECK(version.exitCode == 0);
  CHECK_THAT(version.out, StartsWith("creaseline "));
  CHECK(linesIn(version.out) == 1);
  CHECK(version.err.empty());
}

TEST_CASE("wrong usage is one clear line and exit code 2", "[apps]") {
  struct Case {
    std::vector<std::string> arguments;
    std::string says;
  };
  const std::vector<Case> cases = {
      {{}, "expected plan, sheets, check or rules"},
      {{""}, "found the verb ''"},
      {{"sew"}, "found the verb 'sew'; expected plan, sheets, check, rules"},
      {{"--colour"}, "--colour"},
      {{"plan"}, "ORDER is required"},
      {{"plan", "a.order.json"}, "--shop is required"},
      {{"plan", "a.order.json", "--shop"}, "--shop"},
      {{"plan", "a.order.json", "--shop", "b", "--colour"}, "--colour"},
      {{"plan", "a.order.json", "b.order.json", "--shop", "c"}, "b.order.json"},
      {{"plan", "a.order.json", "--shop", "b", "--units", "ell"}, "ell"},
      {{"plan", "a.order.json", "--shop", "b", "--mark", "12"}, "12"},
      {{"plan", "a.order.json", "--shop", "b", "--threads", "0"}, "--threads"},
      {{"plan", "a.order.json", "--shop", "b", "--threads", "many"}, "--threads"},
      {{"plan", "a.order.json", "--shop", "b", "-o", "x", "-o", "x"}, "--output"},
      {{"sheets", "a.order.json", "--shop", "b"}, "--output is required"},
      {{"sheets", "a.order.json", "--shop", "b", "-o", "x", "--paper", "a9"}, "a9"},
      {{"sheets", "a.order.json", "--shop", "b", "-o", "x", "--only", "hats"}, "hats"},
      {{"sheets", "a.order.json", "--shop", "b", "-o", "x", "--pages", "x"}, "found 'x'"},
      {{"sheets", "a.order.json", "--shop", "b", "-o", "x", "--pages", "0"}, "found '0'"},
      {{"sheets", "a.order.json", "--shop", "b", "-o", "x", "--pages", "7-3"}, "before the first"},
      {{"sheets", "a.order.json", "--shop", "b", "-o", "-", "--svg"}, "name a folder"},
      {{"sheets", "a.order.json", "--shop", "b", "-o", "x", "--template-variants", "up"}, "up"},
      {{"check"}, "FILES is required"},
      {{"rules", "more"}, "more"}};
  for (const Case& entry : cases) {
    CAPTURE(entry.arguments);
    const ProgramResult result = runCreaseline(entry.arguments);
    CHECK(result.exitCode == 2);
    CHECK(result.out.empty());
    CHECK(isOneError(result.err));
    CHECK_THAT(result.err, Contains(entry.says));
    CHECK_THAT(result.err, Contains("--help"));
  }
}
