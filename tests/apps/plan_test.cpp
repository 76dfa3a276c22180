// SPDX-License-Identifier: MIT
// creaseline plan on a small order.
#include <catch2/catch.hpp>
#include <csignal>
#include <nlohmann/json.hpp>
#include <sstream>
#include <thread>

#include "apps/command_line.h"

using namespace creaseline::support;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;
using nlohmann::json;

namespace {

// The small order with its lines over and over: long enough work to be interrupted.
json manyLines(const TeamCopy& team, std::size_t count) {
  json order = json::parse(contentOf(team / "team.order.json"));
  const json lines = order["lines"];
  order["lines"] = json::array();
  for (std::size_t i = 0; i < count; ++i) {
    json line = lines[i % lines.size()];
    line["id"] = std::to_string(i + 1);
    order["lines"].push_back(line);
  }
  return order;
}

}  // namespace

TEST_CASE("an order with stops is planned to text with exit code 1", "[apps][plan]") {
  const TeamCopy team;
  const auto before = snapshot(team.path());
  const ProgramResult result = team.runOrder("plan");
  CHECK(result.exitCode == 1);
  CHECK(result.err.empty());
  CHECK_THAT(result.out, StartsWith("Order T-1: Team kit\n"));
  CHECK_THAT(result.out, Contains("Stops: cannot be sewn as asked"));
  CHECK_THAT(result.out, Contains("below the collar seam to the top of the design"));
  CHECK(snapshot(team.path()) == before);
}

TEST_CASE("an order without stops is planned with exit code 0", "[apps][plan]") {
  const TeamCopy team;
  const ProgramResult result = team.run({"plan", "easy.order.json", "--shop", "team.shop.json"});
  INFO(result.out << result.err);
  CHECK(result.exitCode == 0);
  CHECK_THAT(result.out, Contains("3 garments, 3 hoopings. 0 stops"));
}

TEST_CASE("the cost is shown where the shop has rates, and left out where asked", "[apps][plan]") {
  const TeamCopy team;
  const auto plan = [&](const std::vector<std::string>& more) {
    std::vector<std::string> words = {"plan", "easy.order.json", "--shop", "team.shop.json"};
    words.insert(words.end(), more.begin(), more.end());
    return team.run(words);
  };
  CHECK_THAT(plan({}).out, !Contains("Cost"));
  json shop = json::parse(contentOf(team / "team.shop.json"));
  shop["rates"] = {{"currency", "EUR"}, {"labour", "30 EUR"}};
  writeContent(team / "team.shop.json", shop.dump());
  CHECK_THAT(plan({}).out, Contains("Total, incomplete: ") && Contains("30.00 EUR an hour"));
  CHECK(json::parse(plan({"--json"}).out)["cost"]["currency"] == "EUR");
  CHECK_THAT(plan({"--no-prices"}).out, !Contains("EUR"));
  CHECK_FALSE(json::parse(plan({"--json", "--no-prices"}).out).contains("cost"));
  shop["rates"]["labour"] = "30 USD";
  writeContent(team / "team.shop.json", shop.dump());
  const ProgramResult refused = plan({});
  CHECK(refused.exitCode == 2);
  CHECK_THAT(refused.err, Contains("/rates/labour") && Contains("not in EUR"));
}

TEST_CASE("the JSON plan parses and agrees with the text", "[apps][plan]") {
  const TeamCopy team;
  const ProgramResult result = team.runOrder("plan", {"--json"});
  CHECK(result.exitCode == 1);
  const json plan = json::parse(result.out);
  CHECK(plan["format"] == "creaseline-plan");
  CHECK(plan["counts"]["stops"].get<int>() > 0);
  const std::string summary =
      std::to_string(plan["counts"]["garments"].get<int>()) + " garments, " +
      std::to_string(plan["counts"]["placements"].get<int>()) + " hoopings.";
  CHECK_THAT(team.runOrder("plan").out, Contains(summary));
  // Quantities of the plan add up to the hoopings that it counts.
  int hoopings = 0;
  for (const json& placement : plan["placements"]) {
    hoopings += placement["quantity"].get<int>();
  }
  CHECK(hoopings == plan["counts"]["placements"].get<int>());
}

TEST_CASE("the plan is the same bytes on every run and any number of threads", "[apps][plan]") {
  const TeamCopy team;
  for (const char* form : {"--json", "--units=in"}) {
    CAPTURE(form);
    const std::string first = team.runOrder("plan", {form, "--threads", "1"}).out;
    CHECK_FALSE(first.empty());
    CHECK(team.runOrder("plan", {form, "--threads", "1"}).out == first);
    CHECK(team.runOrder("plan", {form, "--threads", "2"}).out == first);
    CHECK(team.runOrder("plan", {form, "--threads", "7"}).out == first);
    CHECK(team.runOrder("plan", {form}).out == first);
  }
}

TEST_CASE("units and ruler marks are the user's choice and do not touch the JSON", "[apps][plan]") {
  const TeamCopy team;
  const std::string inches = team.runOrder("plan", {"--units", "in"}).out;
  const std::string millimetres = team.runOrder("plan", {"--units", "mm"}).out;
  const std::string centimetres = team.runOrder("plan", {"--units", "cm"}).out;
  // Centre chest up to adult XL: 3 in below the collar seam (common practice, no source).
  CHECK_THAT(inches, Contains("Drop         3 in below the collar seam"));
  CHECK_THAT(millimetres, Contains("Drop         76 mm below the collar seam"));
  CHECK_THAT(centimetres, Contains("Drop         7.6 cm below the collar seam"));
  // Errors and what is compared with them may be told finer than the ruler, room may not.
  const auto roomOf = [](const std::string& text) {
    std::istringstream lines(text);
    std::string room;
    for (std::string line; std::getline(lines, line);) {
      room += line.find("  Slack  ") == 0 ? line + "\n" : "";
    }
    return room;
  };
  CHECK_THAT(roomOf(team.runOrder("plan", {"--units", "in", "--mark", "16"}).out),
             Contains("/16 in"));
  CHECK_THAT(roomOf(inches), Contains("/8 in") && !Contains("/16 in"));
  CHECK(team.runOrder("plan", {"--json", "--units", "mm"}).out ==
        team.runOrder("plan", {"--json", "--units", "in"}).out);
}

TEST_CASE("a plan goes to a file, with one line about it unless quiet", "[apps][plan]") {
  const TeamCopy team;
  const ProgramResult result = team.runOrder("plan", {"--output", "plan.txt"});
  CHECK(result.exitCode == 1);
  CHECK(result.out.empty());
  CHECK_THAT(result.err, StartsWith("creaseline: wrote plan.txt: "));
  CHECK(linesIn(result.err) == 1);
  CHECK(contentOf(team / "plan.txt") == team.runOrder("plan").out);
  CHECK(team.runOrder("plan", {"--output", "quiet.txt", "--quiet"}).err.empty());
  CHECK(team.runOrder("plan", {"--output", "-"}).out == contentOf(team / "plan.txt"));
}

TEST_CASE("remarks of the readers go to standard error", "[apps][plan]") {
  const TeamCopy team;
  json order = json::parse(contentOf(team / "easy.order.json"));
  order["mood"] = "good";
  writeContent(team / "easy.order.json", order.dump());
  const std::vector<std::string> call = {"plan", "easy.order.json", "--shop", "team.shop.json"};
  const ProgramResult result = team.run(call);
  CHECK(result.exitCode == 0);
  CHECK_THAT(result.err, StartsWith("creaseline: note: easy.order.json: "));
  CHECK_THAT(result.err, Contains("mood"));
  auto quiet = call;
  quiet.emplace_back("--quiet");
  CHECK(team.run(quiet).err.empty());
  CHECK(team.run(quiet).out == result.out);
}

TEST_CASE("a locale with a decimal comma changes nothing", "[apps][plan]") {
  const TeamCopy team;
  const std::string plain = team.runOrder("plan", {"--json"}).out;
  REQUIRE(::setenv("LC_ALL", "de_DE.UTF-8", 1) == 0);
  const std::string german = team.runOrder("plan", {"--json"}).out;
  REQUIRE(::unsetenv("LC_ALL") == 0);
  CHECK(german == plain);
}

TEST_CASE("Ctrl-C ends planning with exit code 130 and leaves no file", "[apps][plan]") {
  const TeamCopy team;
  json order = manyLines(team, 4000);
  order["mood"] = "good";  // its note tells that reading is over and planning begins
  writeContent(team / "many.order.json", order.dump());
  const auto before = snapshot(team.path());
  RunningProgram program(
      {CREASELINE_PROGRAM,
       {"plan", "many.order.json", "--shop", "team.shop.json", "--output", "plan.txt"},
       team.path()});
  while (program.errorSoFar().find("mood") == std::string::npos && !program.ended()) {
    std::this_thread::yield();
  }
  program.sendSignal(SIGINT);
  const ProgramResult result = program.wait();
  CHECK(result.exitCode == 130);
  CHECK(result.signal == 0);
  CHECK_THAT(result.err, Contains("creaseline: cancelled; nothing was written"));
  CHECK(snapshot(team.path()) == before);
}
