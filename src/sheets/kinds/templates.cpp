// SPDX-License-Identifier: MIT
// Templates: designs in true scale with frame window, centre and crease, to be laid on cloth.
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/template_figure.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/page_code.h"
#include "sheets/text.h"
#include "sheets/true_scale.h"

namespace creaseline {

using sheets::capitalised;
using sheets::printed;
using sheets::toQString;

namespace {

FigureContext templateContext(const SheetContext& context) {
  return {context.plan, context.order, context.shop, context.rules, context.units};
}

QString nameOf(const SheetContext& context, const SizeGroup& group, TemplateView view) {
  const PlacementPlan& plan = context.plan.placements[group.front()];
  const Location* location = context.rules.location(plan.location);
  QString name = location != nullptr ? toQString(location->name) : toQString(plan.location.text());
  name = printed("%1, template", name + toQString(partSuffix(plan)));
  if (view != TemplateView::Usual) {
    name += QStringLiteral(", ") + toQString(templateViewPhrase(view));
  }
  return name;
}

SheetSection section(const SheetContext& context, const SheetHead& head, const SizeGroup& group,
                     TemplateView view) {
  SheetPage page;
  page.title = nameOf(context, group, view);
  QStringList serves;
  for (const std::string& text : templateServes(templateContext(context), group)) {
    serves << capitalised(toQString(text));
  }
  page.detail = serves.join(QStringLiteral("; "));
  const PlacementPlan& first = context.plan.placements[group.front()];
  page.about = QStringLiteral("line %1 %2%3 template")
                   .arg(toQString(context.order.lines[first.line].id),
                        toQString(first.location.text()), pageCodePart(first));
  SheetSection made;
  made.title = page.title + QStringLiteral(": ") + page.detail;
  made.pages = [context, head, group, view, page] {
    return trueScalePages(head, page, templateFigure(templateContext(context), group, view));
  };
  return made;
}

std::vector<SheetSection> templatesSections(const SheetContext& context, const SheetHead& head,
                                            const TemplateVariants& variants) {
  std::vector<TemplateView> views = {TemplateView::Usual};
  if (variants.mirrored) {
    views.push_back(TemplateView::Mirrored);
  }
  if (variants.turned) {
    views.push_back(TemplateView::Turned);
  }
  std::vector<SheetSection> made;
  for (const SizeGroup& group : templateGroups(templateContext(context))) {
    for (const TemplateView view : views) {
      made.push_back(section(context, head, group, view));
    }
  }
  return made;
}

}  // namespace

SheetKind templatesKind() {
  return {40,
          "templates",
          printed("Templates"),
          printed("Each design in true scale with centre, crease and frame window."),
          true,
          templatesSections};
}

}  // namespace creaseline
