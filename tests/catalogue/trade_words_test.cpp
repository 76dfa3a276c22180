// SPDX-License-Identifier: MIT
#include "creaseline/catalogue/trade_words.h"

#include <catch2/catch.hpp>
#include <filesystem>

namespace creaseline {
namespace {

const std::vector<TradeWord>& shipped() {
  static const std::vector<TradeWord> words =
      loadTradeWords(std::filesystem::path(SOURCE_DIR) / "resources");
  return words;
}

std::vector<std::string> found(const std::string& text) {
  std::vector<std::string> names;
  for (const FoundWord& each : wordsIn(text, shipped())) {
    names.push_back(shipped()[each.word].word);
  }
  return names;
}

}  // namespace

TEST_CASE("the shipped words are explained, each with its basis", "[trade-words]") {
  REQUIRE(shipped().size() >= 30);
  for (const TradeWord& word : shipped()) {
    CAPTURE(word.word);
    CHECK(word.meaning.size() > 15);
    CHECK(word.meaning.back() == '.');
    CHECK_FALSE(word.basis.empty());
    // Where strong magnets are spoken of, so is what they can do.
    if (word.meaning.find("magnets") != std::string::npos && word.word != "frame") {
      CHECK(word.meaning.find("maker's instructions") != std::string::npos);
    }
  }
}

TEST_CASE("words are found whole, the longest first, in any case", "[trade-words]") {
  CHECK(found("Hooping error 6 mm") == std::vector<std::string>{"hooping error"});
  CHECK(found("Two hoopings in a FRAME") == std::vector<std::string>{"hooping", "frame"});
  CHECK(found("framework, unframed, reframe").empty());
  CHECK(found("below the collar seam, on the crease") ==
        std::vector<std::string>{"collar seam", "crease"});
  CHECK(found("cut-away, floated") == std::vector<std::string>{"cut-away", "float"});
  CHECK(found("Appliqué piece") == std::vector<std::string>{"appliqué"});
  CHECK(found("").empty());
  const auto words = wordsIn("a frame, a run", shipped());
  REQUIRE(words.size() == 2);
  CHECK(words[0].from == 2);
  CHECK(words[0].length == 5);
  CHECK(words[1].from == 11);
}

}  // namespace creaseline
