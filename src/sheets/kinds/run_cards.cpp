// SPDX-License-Identifier: MIT
// Run cards: one for each set-up of the machine, with every garment to be ticked off.
#include <memory>

#include "base/worded.h"
#include "creaseline/planning/run_card.h"
#include "creaseline/planning/wording.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/list_texts.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
using sheets::printed;
using sheets::toQString;

namespace {

TableCell plainCell(const QString& text) {
  TableCell cell;
  cell.text = text;
  return cell;
}

QString cardTitle(const RunCard& card) {
  return printed("Run %1: %2", card.number, oneLine(card.location));
}

void addFacts(SheetList& list, const RunCard& card, const UnitChoice& units) {
  const BackingChoice& backing = card.backing;
  const std::string size = sizePhrase(backing.cutWidth, backing.cutHeight, units);
  const QString cut = backing.stock.empty()
                          ? printed("%1; nothing in stock serves", size)
                          : printed("%1; from %2", size, oneLine(backing.stockName));
  list.facts(
      {{printed("Frame"), oneLine(card.frame)},
       {printed("Machine"), oneLine(card.machine + "; " + card.machineReason)},
       {printed("Bracket"), printed("%1 of the frame, seen at the machine; on the garment %2",
                                    card.bracketAtMachine, card.bracketOnGarment)},
       {printed("Speed"), printed("%1 stitches a minute", card.stitchesPerMinute)},
       {printed("Load"), capitalised(toQString(card.loading))},
       {printed("Turn of design"), capitalised(toQString(card.turn))},
       {printed("Backing"), toQString(backingPhrase(backing, units))},
       {printed("Cut to"), cut},
       {printed("Topping"),
        backing.topping ? printed("film on top of the cloth") : printed("none")},
       {printed("Needle"), toQString(needlePhrase(backing))},
       {printed("Design"), oneLine(card.design)},
       {printed("Its size"),
        toQString(sizePhrase(card.width, card.height, units)) + QStringLiteral(", ") +
            countText(card.stitches, toBeWorded("stitch"), toBeWorded("stitches"))}});
  if (backing.skinCover) {
    list.facts({{printed("Cover"), printed("soft cover over the back, which lies against skin")}});
  }
}

void addRemarks(SheetList& list, const RunCard& card) {
  for (const std::string& watch : card.watches) {
    list.marked(Severity::Watch, capitalised(oneLine(watch)));
  }
  for (const std::string& note : card.notes) {
    list.marked(Severity::Note, oneLine(note));
  }
}

TableCell loadCell(const RunThread& thread) {
  if (thread.putOn) {
    return tickCell(thread.replaced.empty()
                        ? printed("put on")
                        : printed("put on in place of %1", oneLine(thread.replaced)));
  }
  return plainCell(thread.shared ? printed("by hand, when the steps say so") : printed("is on it"));
}

void addThreads(SheetList& list, const RunCard& card) {
  if (card.threads.empty()) {
    return;
  }
  list.heading(printed("Threads by needle"));
  list.table({{printed("Needle"), 17.0},
              {printed("Thread"), 0.0, 1.0},
              {printed("Before the run"), 0.0, 0.8},
              {printed("Stitches"), 22.0, 1.0, true}});
  for (const RunThread& thread : card.threads) {
    TableCell colour = swatchCell(oneLine(thread.name), inkOf(thread.colour));
    colour.style = typography::kStrong;
    list.row({headingCell(QString::number(thread.needle)), colour, loadCell(thread),
              plainCell(countText(thread.stitches))});
  }
}

void addSteps(SheetList& list, const RunCard& card) {
  list.heading(printed("Each garment, in this order"));
  list.table({{printed("Block"), 15.0},
              {printed("Needle"), 17.0},
              {printed("Thread"), 0.0, 1.0},
              {printed("What"), 0.0, 1.0},
              {printed("Stitches"), 22.0, 1.0, true}});
  for (const RunStep& step : card.steps) {
    if (step.byHand) {
      TableCell text = strongCell(oneLine(step.text));
      text.span = 4;
      list.row({strongCell(printed("hands")), text});
      continue;
    }
    list.row({plainCell(QString::number(step.block)),
              step.needle > 0 ? headingCell(QString::number(step.needle)) : TableCell{},
              plainCell(oneLine(step.thread)), plainCell(oneLine(step.text)),
              plainCell(countText(step.stitches))});
  }
}

void addTime(SheetList& list, const RunCard& card) {
  list.heading(printed("Time, estimated"));
  list.text(printed("%1 for each garment, %2 in all with one head. Tracing, finishing and "
                    "packing are not counted.",
                    formatDuration(card.time.perGarment), formatDuration(card.time.total)),
            typography::kStrong);
  for (const TimeShare& share : card.time.once) {
    list.text(
        printed("Once %1: %2 (%3)", formatDuration(share.time), share.text, oneLine(share.basis)));
  }
  for (const TimeShare& share : card.time.each) {
    list.text(printed("Each garment %1: %2 (%3)", formatDuration(share.time), share.text,
                      oneLine(share.basis)));
  }
}

void addCautions(SheetList& list, const RunCard& card) {
  if (card.cautions.empty()) {
    return;
  }
  list.heading(printed("Cautions"));
  for (const Caution* caution : card.cautions) {
    list.text(oneLine(caution->text));
  }
}

void addGarments(SheetList& list, const RunCard& card) {
  list.heading(printed("Garments: %1", countText(card.garments)));
  list.table({{printed("Sewn"), 12.0},
              {printed("Line"), 15.0},
              {printed("Size"), 0.0, 0.55},
              {printed("Piece"), 21.0},
              {printed("Garment"), 0.0, 1.1},
              {printed("Name"), 0.0, 1.0}});
  for (const RunGarment& garment : card.toSew) {
    const QString name = colouredName(garment.blank, garment.colour);
    list.row({tickCell(), plainCell(toQString(garment.lineId)),
              headingCell(toQString(garment.size.text())),
              plainCell(printed("%1 of %2", garment.number, garment.of)), plainCell(name),
              writeCell()});
  }
}

std::vector<SheetPage> cardPages(const SheetContext& context, const SheetHead& head,
                                 const RunCard& card) {
  SheetPage page;
  page.title = cardTitle(card);
  page.detail = oneLine(card.design) + QStringLiteral(" · ") + oneLine(card.frame);
  page.about = QStringLiteral("run %1").arg(card.number);
  SheetList list(head, page);
  list.numbers({{printed("Garments"), countText(card.garments)},
                {printed("Needle"), toQString(needlePhrase(card.backing))},
                {printed("Time"), toQString(formatDuration(card.time.total))}});
  list.text(printed("Check the trace before sewing."), typography::kHeading);
  list.text(printed("Start: the design's centre %1, seen at the machine.", card.start),
            typography::kHeading);
  addFacts(list, card, context.units);
  addRemarks(list, card);
  addThreads(list, card);
  addSteps(list, card);
  addCautions(list, card);
  addGarments(list, card);
  addTime(list, card);
  return list.pages();
}

std::vector<SheetSection> runCardsSections(const SheetContext& context, const SheetHead& head,
                                           const TemplateVariants& /*variants*/) {
  std::vector<SheetSection> made;
  const auto runs = std::make_shared<const RunPlan>(runsOf(context));
  for (std::size_t index = 0; index < runs->cards.size(); ++index) {
    SheetSection section;
    section.title =
        cardTitle(runs->cards[index]) + QStringLiteral(", ") + oneLine(runs->cards[index].design);
    section.pages = [context, head, runs, index] {
      return cardPages(context, head, runs->cards[index]);
    };
    made.push_back(std::move(section));
  }
  return made;
}

}  // namespace

SheetKind runCardsKind() {
  return {60,
          "run-cards",
          printed("Run cards"),
          printed("For the machine: set-up, threads, steps and each garment to tick."),
          true,
          runCardsSections};
}

}  // namespace creaseline
