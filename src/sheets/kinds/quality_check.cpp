// SPDX-License-Identifier: MIT
// The quality check sheet: what garments must measure, and room for what they do measure.
#include "creaseline/planning/quality_check.h"

#include "creaseline/sheets/sheet_kind.h"
#include "sheets/list_texts.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
using sheets::printed;
using sheets::toQString;

namespace {

TableColumns columns() {
  return {{printed("Size"), 0.0},      {printed("Drop"), 25.0},     {printed("Allowed"), 30.0},
          {printed("Measured"), 21.0}, {printed("Sideways"), 25.0}, {printed("Allowed"), 30.0},
          {printed("Measured"), 21.0}, {printed("Initials"), 17.0}};
}

TableCell allowedCell(const std::string& text) {
  TableCell cell;
  cell.text = toQString(text);
  return cell;
}

QString partTitle(const QualityPart& part) {
  return printed("Line %1, %2: %3", part.lineId, part.location,
                 colouredName(part.blank, part.colour));
}

// One sentence for all neighbouring sizes that measure from the same marks.
QString marksText(const QualityRow& row) {
  return printed("Drop %1. Sideways: %2.", row.dropFrom, row.sidewaysFrom);
}

void addPart(SheetList& list, const QualityPart& part, const UnitChoice& units) {
  list.heading(partTitle(part));
  QString marks;
  for (const QualityRow& row : part.rows) {
    if (marksText(row) != marks) {
      marks = marksText(row);
      list.lead(marks);
      list.table(columns());
    }
    list.row({headingCell(toQString(row.size.text())),
              headingCell(toQString(formatLength(row.drop, units))), allowedCell(row.dropAllowed),
              writeCell(), headingCell(toQString(formatLength(row.sideways, units))),
              allowedCell(row.sidewaysAllowed), writeCell(), writeCell()});
  }
}

std::vector<SheetPage> checkPages(const SheetContext& context, const SheetHead& head) {
  const QualityCheck check = qualityCheck(context.plan, reportContext(context), context.units);
  SheetPage page;
  page.title = printed("Quality check");
  page.detail = printed("Measure the first garment of each size before the rest is sewn.");
  page.about = QStringLiteral("quality check");
  SheetList list(head, page);
  list.text(
      printed("Tolerance %1 (%2), never beyond the least and most of the placement "
              "rule.",
              formatLength(check.tolerance, context.units), check.toleranceBasis));
  for (const QualityPart& part : check.parts) {
    addPart(list, part, context.units);
  }
  if (check.parts.empty()) {
    list.text(printed("Nothing of this order may be sewn as it stands, so there is "
                      "nothing to check."),
              typography::kStrong);
  }
  return list.pages();
}

std::vector<SheetSection> qualityCheckSections(const SheetContext& context, const SheetHead& head,
                                               const TemplateVariants& /*variants*/) {
  SheetSection section;
  section.title = printed("Quality check");
  section.pages = [context, head] { return checkPages(context, head); };
  return {section};
}

}  // namespace

SheetKind qualityCheckKind() {
  return {70,
          "quality-check",
          printed("Quality check"),
          printed("Drop and sideways offset that garments must measure, with room to write."),
          true,
          qualityCheckSections};
}

}  // namespace creaseline
