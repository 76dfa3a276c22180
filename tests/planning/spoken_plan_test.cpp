// SPDX-License-Identifier: MIT
// A plan made in another language holds no English of the program's own.
#include <catch2/catch.hpp>
#include <cctype>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <set>

#include "creaseline/base/file.h"
#include "creaseline/catalogue/load.h"
#include "creaseline/catalogue/load_phrasebook.h"
#include "creaseline/planning/pick_list.h"
#include "creaseline/planning/planner.h"
#include "creaseline/planning/quality_check.h"
#include "creaseline/planning/report.h"
#include "creaseline/planning/run_card.h"
#include "support/sample.h"
#include "support/spoken.h"

namespace creaseline {
namespace {

const std::filesystem::path kSource = SOURCE_DIR;

// Letters of no language, so that whatever is still read as a word was never looked up. Places to
// fill stay.
std::string unreadable(const std::string& said) {
  std::string text;
  int depth = 0;
  for (const char each : said) {
    depth += each == '{' ? 1 : each == '}' ? -1 : 0;
    text += depth == 0 && std::isalpha(static_cast<unsigned char>(each)) != 0
                ? "ж"
                : std::string(1, each);
  }
  return text;
}

Phrasebook unreadableBook() {
  Phrasebook::Content content;
  content.language = "xx";
  const Phrasebook spanish = loadPhrasebook(kSource / "resources", "es");
  for (const auto& [english, said] : spanish.phrases()) {
    content.phrases.emplace(english, unreadable(english));
  }
  return Phrasebook(content);
}

// Runs of three letters and more; shorter ones are units and sizes.
std::set<std::string> wordsOf(const std::string& text) {
  std::set<std::string> words;
  std::string word;
  for (const char each : text + " ") {
    if (std::isalpha(static_cast<unsigned char>(each)) != 0) {
      word += each;
    } else {
      if (word.size() >= 3) {
        words.insert(word);
      }
      word.clear();
    }
  }
  return words;
}

void addValues(const nlohmann::json& node, std::set<std::string>& words) {
  if (node.is_string()) {
    words.merge(wordsOf(node.get<std::string>()));
  }
  if (node.is_object() || node.is_array()) {
    for (const nlohmann::json& value : node) {
      addValues(value, words);
    }
  }
}

// What the shop wrote itself, and identifiers of rules, which stay in every language.
std::set<std::string> ownWords() {
  std::set<std::string> words{"min"};  // a unit
  for (const auto& folder : {kSource / "demo", kSource / "resources" / "rules"}) {
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
      if (entry.path().extension() != ".json") {
        continue;
      }
      const auto document = nlohmann::json::parse(readFile(entry.path()));
      if (folder.filename() == "demo") {
        addValues(document, words);
      }
      for (const char* list : {"rules", "cautions", "values"}) {
        for (const nlohmann::json& rule : document.value(list, nlohmann::json::array())) {
          words.merge(wordsOf(rule.at("id")));
        }
      }
    }
  }
  return words;
}

// Without codes of findings and frame tests: "[too-large-for-every-frame]".
std::string withoutCodes(const std::string& text) {
  std::string rest;
  bool inside = false;
  for (const char each : text) {
    inside = each == '[' || (inside && each != ']' && each != ',' && each != ';');
    if (!inside) {
      rest += each;
    }
  }
  return rest;
}

struct Spoken {
  Rules rules;
  Order order;
  Shop shop;
  Plan plan;
};

Spoken planSpoken() {
  Spoken made;
  made.rules = loadRules(kSource / "resources");
  made.order = loadOrder(kSource / "demo" / "regatta.order.json", made.rules).value;
  made.shop = loadShop(kSource / "demo" / "workshop.shop.json", made.rules).value;
  made.order.lines.resize(5);
  made.plan = planOrder(made.order, made.shop, made.rules);
  return made;
}

}  // namespace

TEST_CASE("a plan in another language holds no English of the program's own", "[spoken]") {
  const Phrasebook book = unreadableBook();
  const Speaking speaking(book);
  const Spoken made = planSpoken();
  const ReportContext context{made.order, made.shop, made.rules};
  const UnitChoice units = made.shop.units;
  std::string all = textReport(made.plan, context, units);
  const RunPlan runs = planRuns(made.plan, context, units);
  for (const RunCard& card : runs.cards) {
    for (const std::string& text : {card.machineReason, card.frame, card.loading, card.turn,
                                    card.start, card.bracketOnGarment, card.bracketAtMachine}) {
      all += text + "\n";
    }
    for (const RunStep& step : card.steps) {
      all += step.text + "\n";
    }
    for (const TimeShare& share : card.time.each) {
      all += share.text + "\n" + share.basis + "\n";
    }
  }
  for (const std::string& shortage : pickList(made.plan, runs, context, units).shortages) {
    all += shortage + "\n";
  }
  for (const QualityPart& part : qualityCheck(made.plan, context, units).parts) {
    for (const QualityRow& row : part.rows) {
      all += row.dropFrom + "\n" + row.sidewaysFrom + "\n" + row.sidewaysAllowed + "\n";
    }
  }
  REQUIRE(all.find("ж") != std::string::npos);
  const std::set<std::string> own = ownWords();
  std::set<std::string> english;
  for (const std::string& word : wordsOf(withoutCodes(all))) {
    if (own.count(word) == 0) {
      english.insert(word);
    }
  }
  CHECK(english == std::set<std::string>{});
}

TEST_CASE("a Spanish plan decides what an English one does", "[spoken]") {
  const Spoken english = planSpoken();
  const Phrasebook book = loadPhrasebook(kSource / "resources", "es");
  const Speaking speaking(book);
  const Spoken spanish = planSpoken();
  REQUIRE(spanish.plan.placements.size() == english.plan.placements.size());
  for (std::size_t i = 0; i < spanish.plan.placements.size(); ++i) {
    CAPTURE(i);
    CHECK(spanish.plan.placements[i].placed.centre.x == english.plan.placements[i].placed.centre.x);
    CHECK(spanish.plan.placements[i].placed.centre.y == english.plan.placements[i].placed.centre.y);
    REQUIRE(spanish.plan.placements[i].frame.has_value() ==
            english.plan.placements[i].frame.has_value());
    if (english.plan.placements[i].frame) {
      CHECK(spanish.plan.placements[i].frame->frame == english.plan.placements[i].frame->frame);
    }
    CHECK(spanish.plan.placements[i].steps.size() == english.plan.placements[i].steps.size());
  }
  REQUIRE(spanish.plan.findings.size() == english.plan.findings.size());
  for (std::size_t i = 0; i < spanish.plan.findings.size(); ++i) {
    CHECK(spanish.plan.findings[i].code == english.plan.findings[i].code);
    CHECK(spanish.plan.findings[i].remedies.size() == english.plan.findings[i].remedies.size());
    CHECK(spanish.plan.findings[i].text != english.plan.findings[i].text);
  }
}

}  // namespace creaseline
