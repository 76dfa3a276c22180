// SPDX-License-Identifier: MIT
#include "creaseline/catalogue/trade_words.h"

#include <algorithm>
#include <cctype>
#include <string_view>

#include "base/whole_word.h"
#include "base/worded.h"
#include "catalogue/file_kind.h"

namespace creaseline {

namespace {

TradeWord readWord(const JsonCursor& at, std::vector<std::string>& known) {
  JsonObject object = at.object();
  TradeWord word;
  const auto readName = [&known](const JsonCursor& name) {
    std::string said = name.ownLabel();
    requireDistinct(known, said, name, toBeWorded("word"));
    known.push_back(said);
    return said;
  };
  word.word = readName(object.at("word"));
  if (const auto also = object.find("also")) {
    for (const JsonCursor& name : also->items(1, 20, toBeWorded("names"))) {
      word.also.push_back(readName(name));
    }
  }
  word.meaning = object.at("meaning").ownLabel();
  word.basis = object.at("basis").ownLabel();
  object.finish();
  return word;
}

bool sameLetter(char a, char b) {
  return std::tolower(static_cast<unsigned char>(a)) == std::tolower(static_cast<unsigned char>(b));
}

bool standsAt(std::string_view name, std::string_view text, std::size_t at) {
  return isWholeWord(text, at, name.size()) &&
         std::equal(name.begin(), name.end(), text.begin() + static_cast<std::ptrdiff_t>(at),
                    sameLetter);
}

}  // namespace

std::vector<TradeWord> loadTradeWords(const std::filesystem::path& resources) {
  Reading reading;
  reading.strict = true;
  const JsonDocument document(resources / "help" / "trade-words.json", reading);
  JsonObject top = document.root().object();
  requireHead(top, FileKind::TradeWords);
  std::vector<TradeWord> words;
  std::vector<std::string> known;
  for (const JsonCursor& item : top.at("words").items(1, 2'000, toBeWorded("words"))) {
    words.push_back(readWord(item, known));
  }
  top.finish();
  std::sort(words.begin(), words.end(),
            [](const TradeWord& a, const TradeWord& b) { return a.word < b.word; });
  return words;
}

std::vector<FoundWord> wordsIn(const std::string& text, const std::vector<TradeWord>& words) {
  std::vector<FoundWord> found;
  for (std::size_t at = 0; at < text.size();) {
    FoundWord longest;
    for (std::size_t i = 0; i < words.size(); ++i) {
      const auto tryName = [&](const std::string& name) {
        if (name.size() > longest.length && standsAt(name, text, at)) {
          longest = {at, name.size(), i};
        }
      };
      tryName(words[i].word);
      std::for_each(words[i].also.begin(), words[i].also.end(), tryName);
    }
    if (longest.length > 0) {
      found.push_back(longest);
    }
    at += std::max<std::size_t>(longest.length, 1);
  }
  return found;
}

}  // namespace creaseline
