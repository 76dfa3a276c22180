// SPDX-License-Identifier: MIT
// Pages that show a figure in true scale: on one page where it fits, turned by 90 degrees if that
// saves pages, else on tiles that are cut along dotted lines and laid on each other so that marks
// of the same name meet. A map shows where in the whole each tile belongs.
#pragma once

#include <QString>
#include <vector>

#include "creaseline/planning/figure.h"
#include "creaseline/sheets/sheet.h"

namespace creaseline {

// Radius of the discs that mark a join; half of each lies on either tile.
inline constexpr double kJoinMarkRadius = 2.0;

// `page` gives title, detail and the code's words; each page gets both, in true scale.
[[nodiscard]] std::vector<SheetPage> trueScalePages(const SheetHead& head, SheetPage page,
                                                    const Figure& figure);

// Several small figures, one below the other as far as they fit on a page, in their order; a
// figure that does not fit beside another has a page of its own or tiles.
[[nodiscard]] std::vector<SheetPage> trueScalePages(const SheetHead& head, const SheetPage& page,
                                                    const std::vector<Figure>& figures);

}  // namespace creaseline
