// SPDX-License-Identifier: MIT
#include "planning/figure_parts.h"

#include "base/worded.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

#include "creaseline/planning/wording.h"
#include "planning/text_layout.h"

namespace creaseline::figure {

namespace {

// Room of one character at 9 points, on the wide side of a wide sans serif face.
constexpr double kNarrow = 1.35;
constexpr double kUsual = 2.1;
constexpr double kCapital = 2.55;
constexpr double kWide = 3.2;
constexpr double kStrongFactor = 1.14;
constexpr double kLargeFactor = 13.0 / 9.0 * kStrongFactor;
constexpr double kTextHeight = 3.8;
constexpr double kLargeTextHeight = 5.6;

double characterRoom(char first) {
  constexpr std::string_view kNarrowOnes = " !'(),./:;I[]fijlrt|";
  constexpr std::string_view kWideOnes = "%+<=>@MW^mw~";
  if (kNarrowOnes.find(first) != std::string_view::npos) {
    return kNarrow;
  }
  if (kWideOnes.find(first) != std::string_view::npos) {
    return kWide;
  }
  const bool lowerOrDigit = (first >= 'a' && first <= 'z') || (first >= '0' && first <= '9');
  return lowerOrDigit ? kUsual : kCapital;
}

// Index after the character that starts at `at`.
std::size_t afterCharacter(const std::string& text, std::size_t at) {
  do {
    ++at;
  } while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U);
  return at;
}

// A blank after every `columns` characters of a word, so that no word is longer.
std::string brokenWords(const std::string& text, std::size_t columns) {
  std::string broken;
  std::size_t run = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t next = afterCharacter(text, at);
    run = text[at] == ' ' ? 0 : run + 1;
    if (run > columns) {
      broken += ' ';
      run = 1;
    }
    broken.append(text, at, next - at);
    at = next;
  }
  return broken;
}

}  // namespace

double roomFor(const std::string& text, bool strong, bool large) {
  double room = 0.0;
  for (std::size_t at = 0; at < text.size(); at = afterCharacter(text, at)) {
    room += characterRoom(text[at]);
  }
  if (large) {
    return room * kLargeFactor;
  }
  return strong ? room * kStrongFactor : room;
}

Box textBox(const FigureText& text) {
  const double width = roomFor(text.text, text.strong, text.large);
  const double height = text.large ? kLargeTextHeight : kTextHeight;
  Point corner = text.at - Point{width / 2.0, height / 2.0};
  switch (text.side) {
    case TextSide::Left:
      corner.x = text.at.x - kTextGap - width;
      break;
    case TextSide::Right:
      corner.x = text.at.x + kTextGap;
      break;
    case TextSide::Above:
      corner.y = text.at.y - kTextGap - height;
      break;
    case TextSide::Below:
      corner.y = text.at.y + kTextGap;
      break;
    case TextSide::Centre:
      break;
  }
  return {corner, corner + Point{width, height}};
}

namespace {

std::vector<std::string> linesOf(const std::string& text, std::size_t columns) {
  TextLayout layout(columns);
  layout.paragraph(0, "", brokenWords(text, columns));
  std::vector<std::string> lines;
  const std::string& all = layout.text();
  for (std::size_t from = 0; from < all.size();) {
    const std::size_t end = std::min(all.find('\n', from), all.size());
    lines.push_back(all.substr(from, end - from));
    from = end + 1;
  }
  return lines;
}

}  // namespace

void addParagraph(TextBlock& block, const std::string& text, double width, bool strong,
                  bool large) {
  // As many columns as the widest line bears.
  auto columns = static_cast<std::size_t>(std::max(width / kNarrow, 1.0));
  std::vector<std::string> lines = linesOf(text, columns);
  const auto tooWide = [&](const std::string& line) {
    return roomFor(line, strong, large) > width;
  };
  while (columns > 1 && std::any_of(lines.begin(), lines.end(), tooWide)) {
    lines = linesOf(text, --columns);
  }
  for (std::string& line : lines) {
    block.push_back({std::move(line), strong, large});
  }
}

double heightOf(const TextBlock& block) {
  double height = 0.0;
  for (const TextLine& line : block) {
    height += line.large ? kLargeLineHeight : kLineHeight;
  }
  return height;
}

double addBlock(Figure& figure, Point topLeft, const TextBlock& block) {
  double y = topLeft.y;
  for (const TextLine& line : block) {
    const double height = line.large ? kLargeLineHeight : kLineHeight;
    figure.texts.push_back({{topLeft.x - kTextGap, y + height / 2.0},
                            TextSide::Right,
                            line.text,
                            line.strong,
                            line.large});
    y += height;
  }
  return y;
}

void addStroke(Figure& figure, StrokeKind kind, Polyline line, bool closed) {
  figure.strokes.push_back({kind, std::move(line), closed});
}

void setBounds(Figure& figure) {
  Box box;
  for (const Stroke& stroke : figure.strokes) {
    for (const Point point : stroke.line) {
      box.add(point);
    }
  }
  for (const FigureCross& cross : figure.crosses) {
    box.add(cross.at - Point{kCrossArm, kCrossArm});
    box.add(cross.at + Point{kCrossArm, kCrossArm});
    const Box text = textBox(crossText(cross));
    box.add(text.min);
    box.add(text.max);
  }
  for (const FigureText& text : figure.texts) {
    const Box taken = textBox(text);
    box.add(taken.min);
    box.add(taken.max);
  }
  figure.bounds = box;
}

Point asDrawn(Point panelVector, PanelName panel) {
  return isSleeve(panel) ? -panelVector : panelVector;
}

std::string sizesOf(const FigureContext& context, const std::vector<std::size_t>& placements) {
  std::vector<SizeName> sizes;
  for (const std::size_t index : placements) {
    sizes.push_back(context.plan.placements[index].size);
  }
  const std::size_t line = context.plan.placements[placements.front()].line;
  const Blank* blank = context.order.blank(context.order.lines[line].blank);
  return sizesPhrase(sizes, blank != nullptr ? blank->chart : SizeChart{});
}

std::string locationName(const FigureContext& context, const PlacementPlan& plan) {
  return locationPhrase(plan.location, context.rules);
}

std::string linePhrase(const FigureContext& context, std::size_t line) {
  const OrderLine& ordered = context.order.lines[line];
  const Blank* blank = context.order.blank(ordered.blank);
  std::string text =
      worded("line {}, {}", ordered.id, blank != nullptr ? blank->name : ordered.blank.text());
  if (!ordered.colour.empty()) {
    text += ", " + ordered.colour;
  }
  return text;
}

}  // namespace creaseline::figure
