// SPDX-License-Identifier: MIT
// Layout of the placement sheet. From the top: sizes, a loud banner if the group must not be sewn,
// the drawing with the big numbers beside it, everything else in two columns, cautions at the
// foot. The drawing takes the room that the rest leaves; what still does not fit goes on.
#include "sheets/placement_page.h"

#include <algorithm>
#include <cmath>
#include <memory>

#include "creaseline/sheets/garment_drawing.h"
#include "sheets/placement_parts.h"
#include "sheets/sheet_flow.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::printed;

namespace {

constexpr double kColumnGap = 6.0;
constexpr double kPartGap = 2.0;
constexpr double kNumbersWidth = 62.0;
constexpr double kLeastDrawing = 80.0;
constexpr double kLeastColumns = 45.0;  // under the drawing of a group with further pages
constexpr int kColumns = 2;

// Everything that the pages of one group share.
struct Layout {
  SheetContext context;
  PlacementFacts facts;
  PartChoice choice;
  FlowRows rows;
  double sizesHeight = 0.0, bannerHeight = 0.0, mainHeight = 0.0, cautionsHeight = 0.0;
};

struct PageRows {
  std::size_t first = 0, last = 0;
};

double leastMainHeight(const Layout& layout) {
  return std::max(kLeastDrawing, numbersHeight(layout.facts, kNumbersWidth));
}

// The drawing grows until it gains nothing or the rest no longer fits on the page.
double chooseMainHeight(const Layout& layout, const QRectF& body) {
  const double taken =
      layout.sizesHeight + layout.bannerHeight + layout.cautionsHeight + 2.0 * kPartGap;
  const double least = std::max(kLeastDrawing, numbersHeight(layout.facts, kNumbersWidth));
  const double useful = std::max(
      least, drawingHeight(layout.context, layout.facts, body.width() - kNumbersWidth - kPartGap));
  const double free = body.height() - taken;
  const double rest = balancedHeight(layout.rows, 0, kColumns, free - least);
  if (std::isinf(rest)) {
    // There will be a further page anyway, so the drawing need not be small.
    return std::clamp(free - kLeastColumns, least, useful);
  }
  return std::clamp(free - rest, least, useful);
}

// Cautions give way first, then the findings of a banner, so that sizes, banner, drawing and
// numbers always stand together on the first page.
void measure(Layout& layout, const QRectF& body) {
  constexpr PartChoice kChoices[] = {{false, false}, {false, true}, {true, true}};
  for (const PartChoice& choice : kChoices) {
    layout.choice = choice;
    layout.sizesHeight = sizesHeight(layout.facts, body.width());
    layout.bannerHeight =
        layout.facts.stop ? bannerHeight(layout.facts, choice, body.width()) : 0.0;
    layout.cautionsHeight = choice.cautionsFlow ? 0.0 : cautionsHeight(layout.facts, body.width());
    layout.rows = factRows(layout.facts, choice, (body.width() - kColumnGap) / kColumns);
    const double least = leastMainHeight(layout) + layout.sizesHeight + layout.bannerHeight +
                         layout.cautionsHeight + 2.0 * kPartGap;
    if (least <= body.height()) {
      break;
    }
  }
  layout.mainHeight = chooseMainHeight(layout, body);
}

void paintFirst(QPainter& painter, const Layout& layout, const PageRows& rows, const QRectF& body) {
  double y = body.top();
  paintSizes(painter, layout.facts, {body.left(), y}, body.width());
  y += layout.sizesHeight;
  if (layout.facts.stop) {
    paintBanner(painter, layout.facts, layout.choice, {body.left(), y}, body.width());
    y += layout.bannerHeight;
  }
  const double drawingWidth = body.width() - kNumbersWidth - kPartGap;
  paintDrawing(painter, layout.context, layout.facts,
               QRectF(body.left(), y, drawingWidth, layout.mainHeight));
  paintNumbers(painter, layout.facts, {body.right() - kNumbersWidth, y}, kNumbersWidth);
  y += layout.mainHeight + kPartGap;
  const double bottom = body.bottom() - layout.cautionsHeight - kPartGap;
  QRectF rest(body.left(), y, body.width(), bottom - y);
  const double balanced = balancedHeight(layout.rows, rows.first, kColumns, rest.height());
  if (!std::isinf(balanced)) {
    rest.setHeight(balanced);
  }
  paintColumns(painter, layout.rows, rows.first, rows.last, kColumns, kColumnGap, rest);
  if (!layout.choice.cautionsFlow) {
    paintCautions(painter, layout.facts, {body.left(), body.bottom() - layout.cautionsHeight},
                  body.width());
  }
}

void paintFurther(QPainter& painter, const Layout& layout, const PageRows& rows, QRectF body) {
  const double balanced = balancedHeight(layout.rows, rows.first, kColumns, body.height());
  if (!std::isinf(balanced) && rows.last == layout.rows.size()) {
    body.setHeight(balanced);
  }
  paintColumns(painter, layout.rows, rows.first, rows.last, kColumns, kColumnGap, body);
}

}  // namespace

std::vector<SheetPage> placementPages(const SheetContext& context, const PlacementFacts& facts,
                                      const SheetHead& head) {
  SheetPage first;
  first.title = facts.title;
  first.detail = facts.detail;
  first.about = facts.about;
  const QRectF body = sheetBody(head, first);
  const auto layout = std::make_shared<Layout>(Layout{context, facts, {}, {}});
  measure(*layout, body);

  const double free = body.height() - layout->sizesHeight - layout->bannerHeight -
                      layout->mainHeight - layout->cautionsHeight - 2.0 * kPartGap;
  PageRows rows{0, fillColumns(layout->rows, 0, kColumns, free)};
  first.body = [layout, rows](QPainter& painter, const QRectF& area) {
    paintFirst(painter, *layout, rows, area);
  };
  std::vector<SheetPage> pages{first};
  while (rows.last < layout->rows.size()) {
    SheetPage page;
    page.title = printed("%1, continued", facts.title);
    page.detail = facts.detail;
    page.about = facts.about;
    rows = {rows.last,
            fillColumns(layout->rows, rows.last, kColumns, sheetBody(head, page).height())};
    page.body = [layout, rows](QPainter& painter, const QRectF& area) {
      paintFurther(painter, *layout, rows, area);
    };
    pages.push_back(page);
  }
  return pages;
}

}  // namespace creaseline
