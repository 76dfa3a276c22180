// SPDX-License-Identifier: MIT
// Parts of template_figure: the shapes of a template about its centre, before any words.
#pragma once

#include "creaseline/planning/figure_context.h"
#include "creaseline/planning/template_figure.h"
#include "creaseline/shape/outline.h"

namespace creaseline::templates {

// Least paper to each side of the centre, so that its words can be read, and what is left round
// window and outline.
inline constexpr double kLeastHalfWidth = 55.0;
inline constexpr double kRim = 8.0;

// From a vector of panel coordinates, the design's centre being zero, to the figure.
[[nodiscard]] Point toFigure(Point fromCentre, PanelName panel, TemplateView view);
// The design about its centre.
[[nodiscard]] Outline outlineShown(const PlacementPlan& plan, TemplateView view);
// Window of the frame about the design's centre; empty without a frame.
[[nodiscard]] Ring windowShown(const FigureContext& context, const PlacementPlan& plan,
                               TemplateView view);
// A register mark about the design's centre: its middle and the ends of its two arms.
struct MarkShown {
  std::string name;
  Point at;
  Polyline upright, level;
};
// None where one hooping sews the whole design.
[[nodiscard]] std::vector<MarkShown> marksShown(const PlacementPlan& plan, TemplateView view);
// The paper that takes outline, window and register marks, without the bands for words.
[[nodiscard]] Box paperBox(const FigureContext& context, const PlacementPlan& plan,
                           TemplateView view);

}  // namespace creaseline::templates
