// SPDX-License-Identifier: MIT
// Finding sizes, and telling the band of a size from its name.
#include "creaseline/catalogue/size_chart.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace creaseline {

namespace {

// Upper case, without spaces, dots, underscores and (unless between digits) hyphens.
std::string plainName(const std::string& text) {
  const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
  std::string plain;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    const bool range =
        c == '-' && i > 0 && i + 1 < text.size() && isDigit(text[i - 1]) && isDigit(text[i + 1]);
    if (c == ' ' || c == '.' || c == '_' || (c == '-' && !range)) {
      continue;
    }
    plain += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  }
  return plain;
}

bool dropPrefix(std::string_view& text, std::string_view prefix) {
  if (text.substr(0, prefix.size()) != prefix || text.size() == prefix.size()) {
    return false;
  }
  text.remove_prefix(prefix.size());
  return true;
}

// "10", "6-8": one or two digits, or two such numbers with a hyphen.
bool isNumberOrRange(std::string_view text) {
  const auto isNumber = [](std::string_view part) {
    return (part.size() == 1 || part.size() == 2) &&
           part.find_first_not_of("0123456789") == std::string_view::npos;
  };
  const std::size_t hyphen = text.find('-');
  return hyphen == std::string_view::npos
             ? isNumber(text)
             : isNumber(text.substr(0, hyphen)) && isNumber(text.substr(hyphen + 1));
}

// Adult letter sizes: nothing for a text that is none, true for those above XL.
std::optional<bool> letterAboveXl(std::string_view text) {
  constexpr std::array<std::string_view, 12> kUpToXl = {
      "XXXS", "XXS", "XS", "S", "M", "L", "XL", "SMALL", "MEDIUM", "LARGE", "XSMALL", "XLARGE"};
  if (std::find(kUpToXl.begin(), kUpToXl.end(), text) != kUpToXl.end()) {
    return false;
  }
  if (text.size() >= 2 && text.front() >= '2' && text.front() <= '9') {
    const std::string_view rest = text.substr(1);
    if (rest == "XS") {
      return false;
    }
    if (rest == "X" || rest == "XL" || rest == "XLARGE") {
      return true;
    }
  }
  const std::size_t firstOther = text.find_first_not_of('X');
  if (firstOther != std::string_view::npos && firstOther >= 2 && text.substr(firstOther) == "L") {
    return true;
  }
  return std::nullopt;
}

}  // namespace

const ChartSize* SizeChart::find(const SizeName& name) const {
  const auto found = std::find_if(sizes.begin(), sizes.end(),
                                  [&](const ChartSize& size) { return size.name == name; });
  return found == sizes.end() ? nullptr : &*found;
}

std::optional<SizeBand> bandFromName(const SizeName& name) {
  const std::string plain = plainName(name.text());
  std::string_view text = plain;
  if (text == "NB" || text == "NEWBORN") {
    return SizeBand::Infant;
  }
  for (const std::string_view months : {"MONTHS", "MOS", "MO", "M"}) {
    if (text.size() > months.size() && text.substr(text.size() - months.size()) == months &&
        isNumberOrRange(text.substr(0, text.size() - months.size()))) {
      return SizeBand::Infant;
    }
  }
  if (dropPrefix(text, "YOUTH") || dropPrefix(text, "Y")) {
    return letterAboveXl(text) || isNumberOrRange(text) ? std::optional(SizeBand::Youth)
                                                        : std::nullopt;
  }
  dropPrefix(text, "ADULT");
  if (const std::optional<bool> above = letterAboveXl(text)) {
    return *above ? SizeBand::AdultAboveXl : SizeBand::Adult;
  }
  return std::nullopt;
}

}  // namespace creaseline
