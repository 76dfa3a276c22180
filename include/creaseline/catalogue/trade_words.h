// SPDX-License-Identifier: MIT
// Words of the trade, explained for who meets them first (resources/help/trade-words.json).
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace creaseline {

struct TradeWord {
  std::string word;
  std::vector<std::string> also;  // other forms and names of the same
  std::string meaning;
  std::string basis;
  bool operator==(const TradeWord&) const = default;
};

// By word, each word and other name once. Throws InputError like loadRules().
[[nodiscard]] std::vector<TradeWord> loadTradeWords(const std::filesystem::path& resources);

// Where a word stands in a text: as a whole word, in lower or upper case. The longest wins where
// one lies in another ("hooping error" over "hooping"); by place, none overlaps another.
struct FoundWord {
  std::size_t from = 0, length = 0;  // bytes
  std::size_t word = 0;              // index into the words
  bool operator==(const FoundWord&) const = default;
};
[[nodiscard]] std::vector<FoundWord> wordsIn(const std::string& text,
                                             const std::vector<TradeWord>& words);

}  // namespace creaseline
