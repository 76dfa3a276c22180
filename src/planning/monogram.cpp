// SPDX-License-Identifier: MIT
#include "planning/monogram.h"

#include <fmt/format.h>
#include <algorithm>
#include <array>

namespace creaseline {
namespace {

const std::string& nameFor(NamePart part, const Monogram& monogram) {
  switch (part) {
    case NamePart::First:
      return monogram.first;
    case NamePart::Middle:
      return monogram.middle;
    case NamePart::Surname:
      break;
  }
  return monogram.surname;
}

// The first character of UTF-8 text, with the marks that are combined with it.
std::string firstLetter(const std::string& name) {
  const auto continues = [&name](std::size_t at) {
    const auto byte = static_cast<unsigned char>(name[at]);
    const bool inside = (byte & 0xC0U) == 0x80U;
    const bool combining = byte == 0xCC || byte == 0xCD;  // U+0300 to U+036F
    return inside || combining;
  };
  std::size_t end = std::min<std::size_t>(1, name.size());
  while (end < name.size() && continues(end)) {
    ++end;
  }
  return name.substr(0, end);
}

std::string partPhrase(NamePart part) {
  return part == NamePart::Surname ? "surname" : std::string(nameOf(part)) + " name";
}

}  // namespace

std::string stylePhrase(MonogramStyle style) {
  return style == MonogramStyle::LargerCentre ? "a larger centre letter" : "equal letters";
}

MonogramLetters monogramLetters(const Monogram& monogram, const Rules& rules) {
  if (!monogram.wish.empty()) {
    return {monogram.wish,
            {"letters as the customer wishes them", {}, "order", false, {}, "the design's names"}};
  }
  const MonogramRule& rule =
      *std::find_if(rules.monograms.begin(), rules.monograms.end(),
                    [&](const MonogramRule& each) { return each.style == monogram.style; });
  MonogramLetters made;
  std::string order;
  for (const NamePart part : rule.letters) {
    const std::string letter = firstLetter(nameFor(part, monogram));
    if (!letter.empty()) {
      made.letters += (made.letters.empty() ? "" : " ") + letter;
      order += (order.empty() ? "" : ", ") + partPhrase(part);
    }
  }
  made.reason = {fmt::format("with {}, from the left as read: {}", stylePhrase(rule.style), order),
                 rule.id,
                 rule.basis,
                 false,
                 {},
                 "the customer's wish, said in the design"};
  return made;
}

std::optional<MonogramStyle> drawnStyle(const Outline& outline, double larger) {
  std::vector<Box> boxes;
  for (const Piece& piece : outline.pieces) {
    boxes.push_back(ringBounds(piece.outer));
  }
  if (boxes.size() != std::size(EnumNames<NamePart>::names)) {
    return std::nullopt;
  }
  std::sort(boxes.begin(), boxes.end(),
            [](const Box& a, const Box& b) { return a.centre().x < b.centre().x; });
  const double others = std::max(boxes[0].height(), boxes[2].height());
  return boxes[1].height() > others * (1.0 + larger) ? MonogramStyle::LargerCentre
                                                     : MonogramStyle::EqualLetters;
}

}  // namespace creaseline
