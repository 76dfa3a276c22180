// SPDX-License-Identifier: MIT
// Templates in true scale: a piece of paper as large as what is sewn and the frame round it, to be
// laid on cloth.
#pragma once

#include <string>
#include <vector>

#include "creaseline/planning/figure.h"
#include "creaseline/planning/figure_context.h"
#include "creaseline/planning/groups.h"

namespace creaseline {

enum class TemplateView {
  Usual,     // the panel as the garment's drawing shows it
  Mirrored,  // as seen from the back of the cloth
  Turned     // by 180 degrees
};

// Indices into Plan::placements that one template serves, in the plan's order: the same design at
// the same location and turn, with the same frame at the same place (to the ruler mark), and a
// centre crease that lies alike or is out of the template's reach. They may be of several lines.
// Placements that stop are left out, since they must not be sewn as they are.
[[nodiscard]] std::vector<SizeGroup> templateGroups(const FigureContext& context);

// The lines and sizes that it serves: "line 1, Harbour hoodie, navy: S to XL".
[[nodiscard]] std::vector<std::string> templateServes(const FigureContext& context,
                                                      const SizeGroup& group);
// "mirrored: as seen from the back of the cloth"; empty for the usual view.
[[nodiscard]] std::string templateViewPhrase(TemplateView view);

// The origin is the design's centre. At both ends of both of its axes the paper's edge has a mark
// and one more at either side of it, equally far: where the paper is folded so that these two meet,
// the fold runs through the centre, wherever on the paper that is. `group` is one of
// templateGroups(); its first placement is drawn.
[[nodiscard]] Figure templateFigure(const FigureContext& context, const SizeGroup& group,
                                    TemplateView view);

}  // namespace creaseline
