// SPDX-License-Identifier: MIT
// Reports and sheets in another language; messages stay English.
#include <catch2/catch.hpp>
#include <cstdlib>
#include <nlohmann/json.hpp>

#include "apps/command_line.h"

using namespace creaseline::support;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;
using nlohmann::json;

namespace {

// A copy of the resources with one more language of few phrases, of which the programs that run
// meanwhile are told.
class InventedLanguage {
 public:
  InventedLanguage() {
    std::filesystem::copy(SOURCE_DIR "/resources", folder_.path(),
                          std::filesystem::copy_options::recursive |
                              std::filesystem::copy_options::overwrite_existing);
    const json phrases = {{{"english", "Centre chest"}, {"said", "Brusto meze"}},
                          {{"english", "Order %1"}, {"said", "Mendo %1"}},
                          {{"english", "page %1 of %2"}, {"said", "folio %1 el %2"}}};
    const json book = {{"format", "creaseline-phrases"},
                       {"version", 1},
                       {"language", "eo"},
                       {"decimal-separator", ","},
                       {"joints", json::array()},
                       {"phrases", phrases}};
    writeContent(folder_ / "translations" / "eo.phrases.json", book.dump());
    ::setenv(kVariable, folder_.path().c_str(), 1);
  }
  ~InventedLanguage() { ::unsetenv(kVariable); }
  InventedLanguage(const InventedLanguage&) = delete;
  InventedLanguage& operator=(const InventedLanguage&) = delete;

 private:
  static constexpr const char* kVariable = "CREASELINE_RESOURCES";
  TemporaryFolder folder_;
};

}  // namespace

TEST_CASE("a report is written in the language asked for", "[apps][language]") {
  const InventedLanguage invented;
  const TeamCopy team;
  const ProgramResult english = team.runOrder("plan", {"--language", "en"});
  CHECK(english.out == team.runOrder("plan").out);
  CHECK_THAT(english.out, Contains("Centre chest"));
  const ProgramResult said = team.runOrder("plan", {"--language", "eo"});
  CHECK(said.exitCode == english.exitCode);
  CHECK(said.err.empty());
  CHECK_THAT(said.out, Contains("Brusto meze"));
  CHECK_THAT(said.out, !Contains("Centre chest"));
}

TEST_CASE("keys and ids of the JSON plan are the same in every language", "[apps][language]") {
  const InventedLanguage invented;
  const TeamCopy team;
  const json english = json::parse(team.runOrder("plan", {"--json"}).out);
  const json said = json::parse(team.runOrder("plan", {"--json", "--language", "eo"}).out);
  CHECK(said["counts"] == english["counts"]);
  REQUIRE(said["placements"].size() == english["placements"].size());
  for (std::size_t i = 0; i < said["placements"].size(); ++i) {
    CHECK(said["placements"][i]["location"] == english["placements"][i]["location"]);
    CHECK(said["placements"][i]["placed"] == english["placements"][i]["placed"]);
  }
}

TEST_CASE("sheets are drawn in the language asked for", "[apps][language]") {
  const InventedLanguage invented;
  const TeamCopy team;
  const ProgramResult result =
      team.runOrder("sheets", {"--language", "eo", "--only", "placement", "--output", "said.pdf"});
  CHECK(result.exitCode == 1);
  CHECK_THAT(result.err, StartsWith("creaseline: wrote said.pdf: "));
  const ProgramResult text =
      runProgram({"/usr/bin/pdftotext", {(team / "said.pdf").string(), "-"}, {}});
  CHECK_THAT(text.out, Contains("folio 1 el "));
  CHECK_THAT(text.out, Contains("Mendo T-1"));
  CHECK_THAT(text.out, !Contains("page 1 of"));
}

TEST_CASE("a language that there is not is refused by those that there are", "[apps][language]") {
  const TeamCopy team;
  const std::string verb = GENERATE("plan", "sheets");
  const std::string wanted = GENERATE("xx", "", "../es", "ES");
  const ProgramResult refused =
      team.runOrder(verb, {"--language", wanted, "--output", "refused.out"});
  CAPTURE(verb, wanted);
  CHECK(refused.exitCode == 2);
  CHECK(isOneError(refused.err));
  CHECK_THAT(refused.err, Contains("--language"));
  CHECK_FALSE(std::filesystem::exists(team / "refused.out"));
  const InventedLanguage invented;
  const ProgramResult offered = team.runOrder("plan", {"--language", "xx"});
  CHECK_THAT(offered.err, Contains("found 'xx'; expected en, eo, es (see creaseline plan --help)"));
}

TEST_CASE("messages and help are English in every language", "[apps][language]") {
  const InventedLanguage invented;
  const TeamCopy team;
  const ProgramResult missing =
      team.run({"plan", "missing.order.json", "--shop", "team.shop.json", "--language", "eo"});
  CHECK(missing.exitCode == 2);
  CHECK(missing.err == team.run({"plan", "missing.order.json", "--shop", "team.shop.json"}).err);
  CHECK(runCreaseline({"sheets", "--language", "eo", "--help"}).out ==
        runCreaseline({"sheets", "--help"}).out);
  CHECK(runCreaseline({"rules", "--language", "eo"}).exitCode == 2);
}
