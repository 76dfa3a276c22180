// SPDX-License-Identifier: MIT
// Gauges: strips with the garment's own edge and a cross at each design's centre.
#include "creaseline/planning/gauge_figure.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/text.h"
#include "sheets/true_scale.h"

namespace creaseline {

using sheets::printed;
using sheets::toQString;

namespace {

FigureContext figureContext(const SheetContext& context) {
  return {context.plan, context.order, context.shop, context.rules, context.units};
}

// The strips of one order line.
SheetSection section(const SheetContext& context, const SheetHead& head,
                     const std::vector<GaugeStrip>& strips) {
  const OrderLine& line = context.order.lines[strips.front().line];
  const Blank* blank = context.order.blank(line.blank);
  SheetPage page;
  page.title = printed("Gauges, line %1", line.id);
  QString garment = toQString(blank != nullptr ? blank->name : line.blank.text());
  if (!line.colour.empty()) {
    garment += QStringLiteral(", ") + toQString(line.colour);
  }
  page.detail = printed("Print on card. %1", garment);
  page.about = QStringLiteral("line %1 gauges").arg(toQString(line.id));
  SheetSection made;
  made.title = page.title;
  made.pages = [context, head, strips, page] {
    std::vector<Figure> figures;
    for (const GaugeStrip& strip : strips) {
      figures.push_back(gaugeFigure(figureContext(context), strip));
    }
    return trueScalePages(head, page, figures);
  };
  return made;
}

std::vector<SheetSection> gaugesSections(const SheetContext& context, const SheetHead& head,
                                         const TemplateVariants& /*variants*/) {
  std::vector<SheetSection> made;
  std::vector<GaugeStrip> ofLine;
  for (const GaugeStrip& strip : gaugeStrips(figureContext(context))) {
    if (!ofLine.empty() && ofLine.front().line != strip.line) {
      made.push_back(section(context, head, ofLine));
      ofLine.clear();
    }
    ofLine.push_back(strip);
  }
  if (!ofLine.empty()) {
    made.push_back(section(context, head, ofLine));
  }
  return made;
}

}  // namespace

SheetKind gaugesKind() {
  return {50,
          "gauges",
          printed("Gauges"),
          printed("Strips of card with the garment's own edge and a cross at each centre."),
          true,
          gaugesSections};
}

}  // namespace creaseline
