// SPDX-License-Identifier: MIT
// The order on one sheet: what is asked for, how much work it is, what stands in its way.
#include "creaseline/planning/order_summary.h"

#include "creaseline/planning/wording.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/list_texts.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
using sheets::toQString;

namespace {

void addNumbers(SheetList& list, const OrderSummary& summary) {
  std::vector<LabelledNumber> numbers;
  if (!summary.due.empty()) {
    numbers.push_back({QStringLiteral("Due"), toQString(summary.due)});
  }
  numbers.push_back({QStringLiteral("Garments"), countText(summary.counts.garments)});
  numbers.push_back(
      {QStringLiteral("Runs"), countText(static_cast<std::int64_t>(summary.runs.size()))});
  numbers.push_back({QStringLiteral("Time"), toQString(formatDuration(summary.time))});
  list.numbers(numbers);
  list.text(QStringLiteral("%1 in %2, hooping and sewing, estimated for one head")
                .arg(countText(summary.hoopings, "hooping", "hoopings"),
                     countText(static_cast<int>(summary.runs.size()), "run", "runs")),
            typography::kHeading);
  const int held = summary.counts.placements - summary.hoopings;
  if (held > 0) {
    list.marked(
        Severity::Stop,
        QStringLiteral("%1 of %2 must not be sewn as ordered; they are not counted in "
                       "runs and time.")
            .arg(countText(held), countText(summary.counts.placements, "hooping", "hoopings")),
        typography::kStrong);
  }
  if (!summary.note.empty()) {
    list.text(QStringLiteral("Note: ") + oneLine(summary.note));
  }
}

QString sizesText(const SummaryLine& line) {
  QStringList sizes;
  for (const SizeQuantity& size : line.sizes) {
    sizes << quantityText(size.size, size.quantity);
  }
  return sizes.join(QStringLiteral(", "));
}

QString garmentText(const SummaryLine& line) {
  QString text = oneLine(line.blank);
  if (!line.colour.empty()) {
    text += QStringLiteral(", ") + oneLine(line.colour);
  }
  text += QStringLiteral(". ") + sizesText(line);
  return line.note.empty() ? text : text + QStringLiteral(". Note: ") + oneLine(line.note);
}

void addLines(SheetList& list, const OrderSummary& summary, const UnitChoice& units) {
  list.heading(QStringLiteral("What is ordered"));
  list.table({{QStringLiteral("Line"), 13.0},
              {QStringLiteral("Garments"), 0.0, 1.3},
              {QStringLiteral("Pieces"), 20.0, 1.0, true},
              {QStringLiteral("Place"), 27.0},
              {QStringLiteral("Design"), 0.0, 1.0},
              {QStringLiteral("May sew"), 20.0, 1.0, true}});
  for (const SummaryLine& line : summary.lines) {
    bool first = true;
    for (const SummaryPlace& place : line.places) {
      std::vector<TableCell> cells(6);
      // Also where a page begins amid a line, each row says whose it is.
      cells[0] = strongCell(toQString(line.id));
      if (first) {
        cells[0] = headingCell(toQString(line.id));
        cells[1].text = garmentText(line);
        cells[2] = headingCell(countText(line.garments));
      }
      cells[3] = strongCell(toQString(place.location));
      cells[4].text =
          oneLine(place.design) + QStringLiteral(", ") +
          toQString(sizePhrase(place.width, place.height, units)) + QStringLiteral(", ") +
          countText(place.stitches, "stitch", "stitches") +
          (place.hoopings > 1 ? QStringLiteral(", in %1 hoopings").arg(place.hoopings) : QString());
      cells[5] = strongCell(
          place.held == 0
              ? QStringLiteral("all")
              : QStringLiteral("%1 of %2").arg(place.garments - place.held).arg(place.garments));
      list.row(std::move(cells));
      first = false;
    }
  }
}

void addRuns(SheetList& list, const OrderSummary& summary) {
  list.heading(QStringLiteral("Runs, one card each"));
  list.table({{QStringLiteral("Sewn"), 12.0},
              {QStringLiteral("Run"), 14.0},
              {QStringLiteral("What"), 0.0, 1.0},
              {QStringLiteral("Machine and frame"), 0.0, 1.5},
              {QStringLiteral("Pieces"), 20.0, 1.0, true},
              {QStringLiteral("Time"), 24.0, 1.0, true}});
  for (const SummaryRun& run : summary.runs) {
    std::vector<TableCell> cells{tickCell(), headingCell(QString::number(run.number)), {}, {}, {},
                                 {}};
    cells[2].text = oneLine(run.title);
    cells[3].text = oneLine(run.machine + "; " + run.frame);
    cells[4] = headingCell(countText(run.garments));
    cells[5].text = toQString(formatDuration(run.time));
    list.row(std::move(cells));
  }
  if (summary.runs.empty()) {
    list.text(QStringLiteral("Nothing of this order may be sewn as it stands."));
  }
}

void addWatches(SheetList& list, const OrderSummary& summary) {
  bool first = true;
  for (const SummaryFinding& finding : summary.findings) {
    if (finding.severity != Severity::Watch) {
      continue;
    }
    if (first) {
      list.heading(QStringLiteral("To be sewn with care"));
      first = false;
    }
    list.marked(Severity::Watch, capitalised(oneLine(finding.place)), typography::kStrong);
    list.under(capitalised(oneLine(finding.text)));
    if (!finding.remedy.empty()) {
      list.under(QStringLiteral("Checked remedy: ") + oneLine(finding.remedy));
    }
  }
}

std::vector<SheetPage> summaryPages(const SheetContext& context, const SheetHead& head) {
  const OrderSummary summary = orderSummary(context.plan, runsOf(context), reportContext(context));
  SheetPage page;
  page.title = QStringLiteral("Order summary");
  page.about = QStringLiteral("summary");
  SheetList list(head, page);
  addNumbers(list, summary);
  addHeld(list, summary.held);
  addLines(list, summary, context.units);
  addRuns(list, summary);
  addWatches(list, summary);
  return list.pages();
}

std::vector<SheetSection> sections(const SheetContext& context, const SheetHead& head,
                                   const TemplateVariants& /*variants*/) {
  SheetSection section;
  section.title = QStringLiteral("Order summary");
  section.pages = [context, head] { return summaryPages(context, head); };
  return {section};
}

}  // namespace

SheetKind orderSummaryKind() {
  return {10,
          "order-summary",
          QStringLiteral("Order summary"),
          QStringLiteral("What is ordered, the runs with their time, what must not be sewn."),
          true,
          sections};
}

}  // namespace creaseline
