// SPDX-License-Identifier: MIT
// What templates and gauges share: texts whose room is known without a font, the view in which a
// panel is drawn, and words that say whose a piece of paper is.
#pragma once

#include <string>
#include <vector>

#include "creaseline/planning/figure.h"
#include "creaseline/planning/figure_context.h"

namespace creaseline::figure {

// From one line of text to the next, and of large text.
inline constexpr double kLineHeight = 4.2;
inline constexpr double kLargeLineHeight = 6.0;

// Room of a text, on the wide side of what a sans serif face takes at 9 and 13 points; the tests of
// the sheets hold it against the real font.
[[nodiscard]] double roomFor(const std::string& text, bool strong, bool large = false);
// The box that a text takes.
[[nodiscard]] Box textBox(const FigureText& text);

// Lines of at most that width; words are broken only where they alone are wider.
struct TextLine {
  std::string text;
  bool strong = false;
  bool large = false;
};
using TextBlock = std::vector<TextLine>;
void addParagraph(TextBlock& block, const std::string& text, double width, bool strong = false,
                  bool large = false);
[[nodiscard]] double heightOf(const TextBlock& block);
// Puts the block with its top left corner there; returns the y below it.
double addBlock(Figure& figure, Point topLeft, const TextBlock& block);

void addStroke(Figure& figure, StrokeKind kind, Polyline line, bool closed = false);
// Sets the bounds to what the figure holds.
void setBounds(Figure& figure);

// Sleeves are drawn with the cuff at the bottom, all others as in panel coordinates.
[[nodiscard]] Point asDrawn(Point panelVector, PanelName panel);

// Sizes of these placements in the order of the chart of the first one's blank.
[[nodiscard]] std::string sizesOf(const FigureContext& context,
                                  const std::vector<std::size_t>& placements);
// "Centre chest"
[[nodiscard]] std::string locationName(const FigureContext& context, const PlacementPlan& plan);
// "line 1, Harbour hoodie, navy"
[[nodiscard]] std::string linePhrase(const FigureContext& context, std::size_t line);

}  // namespace creaseline::figure
