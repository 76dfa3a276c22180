// SPDX-License-Identifier: MIT
#include "planning/figure_parts.h"

#include <fmt/format.h>

#include "creaseline/planning/wording.h"
#include "planning/text_layout.h"

namespace creaseline::figure {

namespace {

constexpr double kCharacter = 1.95;
constexpr double kStrongCharacter = 2.2;
constexpr double kLargeCharacter = 3.2;
constexpr double kTextHeight = 3.8;
constexpr double kLargeTextHeight = 5.6;

double characterWidth(bool strong, bool large) {
  if (large) {
    return kLargeCharacter;
  }
  return strong ? kStrongCharacter : kCharacter;
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
  return static_cast<double>(columnsOf(text)) * characterWidth(strong, large);
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

void addParagraph(TextBlock& block, const std::string& text, double width, bool strong,
                  bool large) {
  const auto columns =
      static_cast<std::size_t>(std::max(width / characterWidth(strong, large), 4.0));
  TextLayout layout(columns);
  layout.paragraph(0, "", brokenWords(text, columns));
  std::size_t from = 0;
  const std::string& lines = layout.text();
  while (from < lines.size()) {
    const std::size_t end = std::min(lines.find('\n', from), lines.size());
    block.push_back({lines.substr(from, end - from), strong, large});
    from = end + 1;
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

bool isSleeve(PanelName panel) {
  return panel == PanelName::LeftSleeve || panel == PanelName::RightSleeve;
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
  const Location* location = context.rules.location(plan.location);
  return location != nullptr ? location->name : plan.location.text();
}

std::string linePhrase(const FigureContext& context, std::size_t line) {
  const OrderLine& ordered = context.order.lines[line];
  const Blank* blank = context.order.blank(ordered.blank);
  std::string text =
      fmt::format("line {}, {}", ordered.id, blank != nullptr ? blank->name : ordered.blank.text());
  if (!ordered.colour.empty()) {
    text += ", " + ordered.colour;
  }
  return text;
}

}  // namespace creaseline::figure
