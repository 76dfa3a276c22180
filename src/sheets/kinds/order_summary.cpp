// SPDX-License-Identifier: MIT
// The order on one sheet: what is asked for, how much work it is, what stands in its way.
#include "creaseline/planning/order_summary.h"

#include "base/worded.h"
#include "creaseline/planning/cost.h"
#include "creaseline/planning/wording.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/list_texts.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
using sheets::printed;
using sheets::toQString;

namespace {

QString hoopingsText(int number) {
  return countText(number, toBeWorded("hooping"), toBeWorded("hoopings"));
}

void addNumbers(SheetList& list, const OrderSummary& summary) {
  std::vector<LabelledNumber> numbers;
  if (!summary.due.empty()) {
    numbers.push_back({printed("Due"), toQString(summary.due)});
  }
  numbers.push_back({printed("Garments"), countText(summary.counts.garments)});
  numbers.push_back({printed("Runs"), countText(static_cast<std::int64_t>(summary.runs.size()))});
  numbers.push_back({printed("Time"), toQString(formatDuration(summary.time))});
  list.numbers(numbers);
  list.text(
      printed(
          "%1 in %2, hooping and sewing, estimated for one head", hoopingsText(summary.hoopings),
          countText(static_cast<int>(summary.runs.size()), toBeWorded("run"), toBeWorded("runs"))),
      typography::kHeading);
  const int held = summary.counts.placements - summary.hoopings;
  if (held > 0) {
    list.marked(
        Severity::Stop,
        printed("%1 of %2 must not be sewn as ordered; they are not counted in runs and time.",
                countText(held), hoopingsText(summary.counts.placements)),
        typography::kStrong);
  }
  if (!summary.note.empty()) {
    list.text(printed("Note: %1", oneLine(summary.note)));
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
  const QString text =
      colouredName(line.blank, line.colour) + QStringLiteral(". ") + sizesText(line);
  return line.note.empty() ? text : printed("%1. Note: %2", text, oneLine(line.note));
}

QString designText(const SummaryPlace& place, const UnitChoice& units) {
  const QString text = oneLine(place.design) + QStringLiteral(", ") +
                       toQString(sizePhrase(place.width, place.height, units)) +
                       QStringLiteral(", ") +
                       countText(place.stitches, toBeWorded("stitch"), toBeWorded("stitches"));
  return place.hoopings > 1 ? printed("%1, in %2 hoopings", text, place.hoopings) : text;
}

void addLines(SheetList& list, const OrderSummary& summary, const UnitChoice& units) {
  list.heading(printed("What is ordered"));
  list.table({{printed("Line"), 13.0},
              {printed("Garments"), 0.0, 1.3},
              {printed("Pieces"), 20.0, 1.0, true},
              {printed("Place"), 27.0},
              {printed("Design"), 0.0, 1.0},
              {printed("May sew"), 20.0, 1.0, true}});
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
      cells[4].text = designText(place, units);
      cells[5] = strongCell(place.held == 0
                                ? printed("all")
                                : printed("%1 of %2", place.garments - place.held, place.garments));
      list.row(std::move(cells));
      first = false;
    }
  }
}

void addRuns(SheetList& list, const OrderSummary& summary) {
  list.heading(printed("Runs, one card each"));
  list.table({{printed("Sewn"), 12.0},
              {printed("Run"), 14.0},
              {printed("What"), 0.0, 1.0},
              {printed("Machine and frame"), 0.0, 1.5},
              {printed("Pieces"), 20.0, 1.0, true},
              {printed("Time"), 24.0, 1.0, true}});
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
    list.text(printed("Nothing of this order may be sewn as it stands."));
  }
}

void addWatches(SheetList& list, const OrderSummary& summary) {
  bool first = true;
  for (const SummaryFinding& finding : summary.findings) {
    if (finding.severity != Severity::Watch) {
      continue;
    }
    if (first) {
      list.heading(printed("To be sewn with care"));
      first = false;
    }
    list.marked(Severity::Watch, capitalised(oneLine(finding.place)), typography::kStrong);
    list.under(capitalised(oneLine(finding.text)));
    if (!finding.remedy.empty()) {
      list.under(printed("Checked remedy: %1", oneLine(finding.remedy)));
    }
  }
}

QString moneyCell(Money amount, const OrderCost& cost) {
  return toQString(amountPhrase(amount, cost.currency));
}

void addCostByKind(SheetList& list, const OrderCost& cost) {
  list.table({{printed("Cost"), 40.0},
              {printed("For"), 0.0, 1.0},
              {printed("In %1", toQString(cost.currency.code)), 30.0, 1.0, true}});
  for (const CostItem& item : cost.items) {
    std::vector<TableCell> cells(3);
    cells[0] = strongCell(toQString(costPhrase(item.kind)));
    cells[1].text = oneLine(item.measure);
    cells[2] = strongCell(moneyCell(item.amount, cost));
    list.row(std::move(cells));
  }
  TableCell total = headingCell(toQString(totalPhrase(cost)));
  total.span = 2;
  list.row({total, headingCell(moneyCell(cost.total, cost))});
}

void addCostByLine(SheetList& list, const OrderCost& cost) {
  list.gap(3.0);
  list.table({{printed("Line"), 13.0},
              {printed("Garments"), 0.0, 1.0},
              {printed("Pieces"), 20.0, 1.0, true},
              {printed("Each, rounded"), 30.0, 1.0, true},
              {printed("In %1", toQString(cost.currency.code)), 30.0, 1.0, true}});
  for (const CostLine& line : cost.lines) {
    std::vector<TableCell> cells(5);
    cells[0] = headingCell(toQString(line.id));
    cells[1].text = colouredName(line.blank, line.colour);
    cells[2] = strongCell(countText(line.garments));
    cells[3].text = moneyCell(line.perGarment, cost);
    cells[4] = strongCell(moneyCell(line.total, cost));
    list.row(std::move(cells));
  }
}

// For the owner: no other sheet shows money.
void addCost(SheetList& list, const OrderCost& cost) {
  list.heading(printed("Cost, for the owner"));
  for (const NotCounted& each : cost.notCounted) {
    list.marked(Severity::Watch, printed("Not counted: %1", oneLine(each.text)),
                typography::kStrong);
    list.under(printed("To count it, %1", oneLine(each.remedy)));
  }
  addCostByKind(list, cost);
  addCostByLine(list, cost);
  list.text(toQString(leftOutOfCost()) + QStringLiteral("."));
}

std::vector<SheetPage> summaryPages(const SheetContext& context, const SheetHead& head) {
  const RunPlan runs = runsOf(context);
  const OrderSummary summary = orderSummary(context.plan, runs, reportContext(context));
  SheetPage page;
  page.title = printed("Order summary");
  page.about = QStringLiteral("summary");
  SheetList list(head, page);
  addNumbers(list, summary);
  addHeld(list, summary.held);
  addLines(list, summary, context.units);
  addRuns(list, summary);
  addWatches(list, summary);
  if (context.prices) {
    if (const auto cost = orderCost(context.plan, runs, reportContext(context), context.units)) {
      addCost(list, *cost);
    }
  }
  return list.pages();
}

std::vector<SheetSection> orderSummarySections(const SheetContext& context, const SheetHead& head,
                                               const TemplateVariants& /*variants*/) {
  SheetSection section;
  section.title = printed("Order summary");
  section.pages = [context, head] { return summaryPages(context, head); };
  return {section};
}

}  // namespace

SheetKind orderSummaryKind() {
  return {10,
          "order-summary",
          printed("Order summary"),
          printed("What is ordered, runs and their time, what must not be sewn, the cost."),
          true,
          orderSummarySections};
}

}  // namespace creaseline
