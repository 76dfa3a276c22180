// SPDX-License-Identifier: MIT
// Run cards: one for each set-up of the machine, with every garment to be ticked off.
#include <memory>

#include "creaseline/planning/run_card.h"
#include "creaseline/planning/wording.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/list_texts.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
using sheets::toQString;

namespace {

TableCell plain(const QString& text) {
  TableCell cell;
  cell.text = text;
  return cell;
}

QString cardTitle(const RunCard& card) {
  return QStringLiteral("Run %1: %2").arg(QString::number(card.number), oneLine(card.location));
}

void addFacts(SheetList& list, const RunCard& card, const UnitChoice& units) {
  const BackingChoice& backing = card.backing;
  QString cut = toQString(sizePhrase(backing.cutWidth, backing.cutHeight, units));
  cut += backing.stock.empty() ? QStringLiteral("; nothing in stock serves")
                               : QStringLiteral("; from ") + oneLine(backing.stockName);
  list.facts(
      {{QStringLiteral("Frame"), oneLine(card.frame)},
       {QStringLiteral("Machine"), oneLine(card.machine + "; " + card.machineReason)},
       {QStringLiteral("Bracket"),
        QStringLiteral("%1 of the frame, seen at the machine; on the garment %2")
            .arg(toQString(card.bracketAtMachine), toQString(card.bracketOnGarment))},
       {QStringLiteral("Speed"),
        QStringLiteral("%1 stitches a minute").arg(card.stitchesPerMinute)},
       {QStringLiteral("Load"), capitalised(toQString(card.loading))},
       {QStringLiteral("Turn of design"), capitalised(toQString(card.turn))},
       {QStringLiteral("Backing"), toQString(backingPhrase(backing, units))},
       {QStringLiteral("Cut to"), cut},
       {QStringLiteral("Topping"),
        backing.topping ? QStringLiteral("film on top of the cloth") : QStringLiteral("none")},
       {QStringLiteral("Needle"), toQString(needlePhrase(backing))},
       {QStringLiteral("Design"), oneLine(card.design)},
       {QStringLiteral("Its size"), toQString(sizePhrase(card.width, card.height, units)) +
                                        QStringLiteral(", ") +
                                        countText(card.stitches, "stitch", "stitches")}});
  if (backing.skinCover) {
    list.facts({{QStringLiteral("Cover"),
                 QStringLiteral("soft cover over the back, which lies against skin")}});
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
                        ? QStringLiteral("put on")
                        : QStringLiteral("put on in place of ") + oneLine(thread.replaced));
  }
  return plain(thread.shared ? QStringLiteral("by hand, when the steps say so")
                             : QStringLiteral("is on it"));
}

void addThreads(SheetList& list, const RunCard& card) {
  if (card.threads.empty()) {
    return;
  }
  list.heading(QStringLiteral("Threads by needle"));
  list.table({{QStringLiteral("Needle"), 17.0},
              {QStringLiteral("Thread"), 0.0, 1.0},
              {QStringLiteral("Before the run"), 0.0, 0.8},
              {QStringLiteral("Stitches"), 22.0, 1.0, true}});
  for (const RunThread& thread : card.threads) {
    TableCell colour = swatchCell(oneLine(thread.name), inkOf(thread.colour));
    colour.style = typography::kStrong;
    list.row({headingCell(QString::number(thread.needle)), colour, loadCell(thread),
              plain(countText(thread.stitches))});
  }
}

void addSteps(SheetList& list, const RunCard& card) {
  list.heading(QStringLiteral("Each garment, in this order"));
  list.table({{QStringLiteral("Block"), 15.0},
              {QStringLiteral("Needle"), 17.0},
              {QStringLiteral("Thread"), 0.0, 1.0},
              {QStringLiteral("What"), 0.0, 1.0},
              {QStringLiteral("Stitches"), 22.0, 1.0, true}});
  for (const RunStep& step : card.steps) {
    if (step.byHand) {
      TableCell text = strongCell(oneLine(step.text));
      text.span = 4;
      list.row({strongCell(QStringLiteral("hands")), text});
      continue;
    }
    list.row({plain(QString::number(step.block)),
              step.needle > 0 ? headingCell(QString::number(step.needle)) : TableCell{},
              plain(oneLine(step.thread)), plain(oneLine(step.text)),
              plain(countText(step.stitches))});
  }
}

void addTime(SheetList& list, const RunCard& card) {
  list.heading(QStringLiteral("Time, estimated"));
  list.text(QStringLiteral("%1 for each garment, %2 in all with one head. Tracing, finishing and "
                           "packing are not counted.")
                .arg(toQString(formatDuration(card.time.perGarment)),
                     toQString(formatDuration(card.time.total))),
            typography::kStrong);
  const auto add = [&](const QString& when, const TimeShare& share) {
    list.text(QStringLiteral("%1 %2: %3 (%4)")
                  .arg(when, toQString(formatDuration(share.time)), toQString(share.text),
                       oneLine(share.basis)));
  };
  for (const TimeShare& share : card.time.once) {
    add(QStringLiteral("Once"), share);
  }
  for (const TimeShare& share : card.time.each) {
    add(QStringLiteral("Each garment"), share);
  }
}

void addCautions(SheetList& list, const RunCard& card) {
  if (card.cautions.empty()) {
    return;
  }
  list.heading(QStringLiteral("Cautions"));
  for (const Caution* caution : card.cautions) {
    list.text(oneLine(caution->text));
  }
}

void addGarments(SheetList& list, const RunCard& card) {
  list.heading(QStringLiteral("Garments: %1").arg(countText(card.garments)));
  list.table({{QStringLiteral("Sewn"), 12.0},
              {QStringLiteral("Line"), 15.0},
              {QStringLiteral("Size"), 0.0, 0.55},
              {QStringLiteral("Piece"), 21.0},
              {QStringLiteral("Garment"), 0.0, 1.1},
              {QStringLiteral("Name"), 0.0, 1.0}});
  for (const RunGarment& garment : card.toSew) {
    const QString name =
        oneLine(garment.blank) +
        (garment.colour.empty() ? QString() : QStringLiteral(", ") + oneLine(garment.colour));
    list.row({tickCell(), plain(toQString(garment.lineId)),
              headingCell(toQString(garment.size.text())),
              plain(QStringLiteral("%1 of %2").arg(garment.number).arg(garment.of)), plain(name),
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
  list.numbers({{QStringLiteral("Garments"), countText(card.garments)},
                {QStringLiteral("Needle"), toQString(needlePhrase(card.backing))},
                {QStringLiteral("Time"), toQString(formatDuration(card.time.total))}});
  list.text(QStringLiteral("Check the trace before sewing."), typography::kHeading);
  list.text(QStringLiteral("Start: the design's centre ") + toQString(card.start) +
                QStringLiteral(", seen at the machine."),
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

std::vector<SheetSection> sections(const SheetContext& context, const SheetHead& head,
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
          QStringLiteral("Run cards"),
          QStringLiteral("For the machine: set-up, threads, steps and each garment to tick."),
          true,
          sections};
}

}  // namespace creaseline
