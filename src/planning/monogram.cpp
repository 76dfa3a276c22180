// SPDX-License-Identifier: MIT
#include "planning/monogram.h"

#include <algorithm>
#include <array>

#include "base/worded.h"

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

std::string namePartPhrase(NamePart part) {
  switch (part) {
    case NamePart::First:
      return worded("first name");
    case NamePart::Middle:
      return worded("middle name");
    case NamePart::Surname:
      break;
  }
  return worded("surname");
}

}  // namespace

std::string stylePhrase(MonogramStyle style) {
  return style == MonogramStyle::LargerCentre ? worded("a larger centre letter")
                                              : worded("equal letters");
}

MonogramLetters monogramLetters(const Monogram& monogram, const Rules& rules) {
  if (!monogram.wish.empty()) {
    return {monogram.wish,
            {worded("letters as the customer wishes them"),
             {},
             worded("order"),
             false,
             {},
             worded("the design's names")}};
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
      order += (order.empty() ? "" : ", ") + namePartPhrase(part);
    }
  }
  made.reason = {worded("with {}, from the left as read: {}", stylePhrase(rule.style), order),
                 rule.id,
                 rule.basis,
                 false,
                 {},
                 worded("the customer's wish, said in the design")};
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
