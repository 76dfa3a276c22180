// SPDX-License-Identifier: MIT
// The pick list: everything to be brought before the order is sewn, each with a box to tick.
#include "creaseline/planning/pick_list.h"

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/list_texts.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::printed;
using sheets::toQString;

namespace {

constexpr double kTickColumn = 9.0;
constexpr double kCountColumn = 20.0;

TableCell plain(const QString& text) {
  TableCell cell;
  cell.text = text;
  return cell;
}

void addBlanks(SheetList& list, const PickList& pick) {
  list.heading(printed("Blanks: %1",
                       countText(pick.garments, toBeWorded("garment"), toBeWorded("garments"))));
  list.table({{printed("Garment and colour"), 0.0, 1.0},
              {printed("Sizes"), 0.0, 1.9},
              {printed("In all"), kCountColumn, 1.0, true}});
  for (const BlankPick& blank : pick.blanks) {
    std::vector<TableChip> chips;
    QStringList waiting;
    for (const SizePick& size : blank.sizes) {
      chips.push_back({toQString(size.size.text()), QStringLiteral("× %1").arg(size.count)});
      if (size.held > 0) {
        waiting << printed("%1 of %2", size.held, size.size.text());
      }
    }
    const QString name = colouredName(blank.blank, blank.colour);
    TableCell garment = blank.cloth ? swatchCell(name, inkOf(*blank.cloth)) : plain(name);
    garment.style = typography::kStrong;
    list.row({garment, chipsCell(std::move(chips)), headingCell(countText(blank.garments))},
             !waiting.isEmpty());
    if (!waiting.isEmpty()) {
      TableCell cell =
          plain(printed("Of these wait, because a place on them must not be sewn as "
                        "ordered: %1",
                        waiting.join(QStringLiteral(", "))));
      cell.span = 3;
      list.row({cell});
    }
  }
}

void addFrames(SheetList& list, const PickList& pick) {
  if (pick.frames.empty()) {
    return;
  }
  list.heading(printed("Frames"));
  list.table({{QString(), kTickColumn},
              {printed("Frame"), 0.0, 1.0},
              {printed("On hand"), kCountColumn, 1.0, true},
              {printed("Hoopings"), kCountColumn, 1.0, true}});
  for (const FramePick& frame : pick.frames) {
    list.row({tickCell(), strongCell(oneLine(frame.frame)), headingCell(countText(frame.onHand)),
              plain(countText(frame.hoopings))});
  }
}

void addBacking(SheetList& list, const PickList& pick, const UnitChoice& units) {
  if (pick.backing.empty()) {
    return;
  }
  list.heading(printed("Backing"));
  list.table({{QString(), kTickColumn},
              {printed("From stock"), 0.0, 1.0},
              {printed("Kind"), 0.0, 1.0},
              {printed("Cut to"), 56.0},
              {printed("Pieces"), kCountColumn, 1.0, true}});
  for (const BackingPick& backing : pick.backing) {
    list.row({tickCell(),
              strongCell(backing.stock.empty() ? printed("nothing in stock serves")
                                               : oneLine(backing.stock)),
              plain(toQString(backing.kind)),
              headingCell(toQString(sizePhrase(backing.width, backing.height, units))),
              headingCell(countText(backing.pieces))});
  }
  if (pick.backingTotals.empty()) {
    return;
  }
  list.gap(3.0);
  list.table({{printed("Backing in all"), 0.0, 1.2},
              {printed("Pieces"), kCountColumn, 1.0, true},
              {printed("Takes at most"), 0.0, 0.6},
              {printed("On hand"), 0.0, 0.5},
              {printed("Enough"), 24.0}});
  for (const BackingTotal& total : pick.backingTotals) {
    list.row({strongCell(oneLine(total.stock)), plain(countText(total.pieces)),
              plain(toQString(total.need)), plain(toQString(total.onHand)),
              strongCell(total.enough ? printed("yes") : printed("may be short"))});
  }
  list.text(printed("“At most” holds when each cut size is cut for itself in straight rows."));
}

void addTopping(SheetList& list, const PickList& pick, const UnitChoice& units) {
  if (pick.topping.empty()) {
    return;
  }
  list.heading(printed("Topping film"));
  list.table({{QString(), kTickColumn},
              {printed("Covers a window of"), 0.0, 1.0},
              {printed("Pieces"), kCountColumn, 1.0, true}});
  for (const ToppingPick& topping : pick.topping) {
    list.row({tickCell(),
              strongCell(toQString(sizePhrase(roundDownToMark(topping.width, units),
                                              roundDownToMark(topping.height, units), units))),
              headingCell(countText(topping.pieces))});
  }
}

void addThreads(SheetList& list, const PickList& pick) {
  if (pick.threads.empty()) {
    return;
  }
  list.heading(printed("Thread"));
  list.table({{QString(), kTickColumn},
              {printed("Colour"), 0.0, 1.0},
              {printed("Machine: needle"), 0.0, 0.9},
              {printed("Stitches"), 28.0, 1.0, true}});
  for (const ThreadPick& thread : pick.threads) {
    QStringList needles;
    for (const std::string& needle : thread.needles) {
      needles << oneLine(needle);
    }
    TableCell colour = swatchCell(oneLine(thread.thread), inkOf(thread.colour));
    colour.style = typography::kStrong;
    list.row({tickCell(), colour, plain(needles.join(QStringLiteral(", "))),
              plain(countText(thread.stitches))});
  }
  list.text(printed("And bobbin thread for all of them."));
}

void addFabrics(SheetList& list, const PickList& pick, const UnitChoice& units) {
  if (pick.fabrics.empty()) {
    return;
  }
  list.heading(printed("Appliqué fabric, and as many pieces of fusible web"));
  list.table({{QString(), kTickColumn},
              {printed("Fabric"), 0.0, 1.0},
              {printed("Piece and design"), 0.0, 1.0},
              {printed("Size"), 56.0},
              {printed("Pieces"), kCountColumn, 1.0, true}});
  for (const FabricPick& fabric : pick.fabrics) {
    list.row({tickCell(), strongCell(oneLine(fabric.fabric)),
              plain(oneLine(fabric.piece + ", " + fabric.design)),
              headingCell(toQString(sizePhrase(fabric.width, fabric.height, units))),
              headingCell(countText(fabric.pieces))});
  }
  list.text(
      printed("Size as sewn: cut with room to trim in the frame. Web a little "
              "smaller than its fabric, so that none meets the press."));
}

void addNeedles(SheetList& list, const PickList& pick) {
  if (pick.needles.empty()) {
    return;
  }
  list.heading(printed("Needles"));
  list.table({{QString(), kTickColumn},
              {printed("Needle"), 0.0, 1.0},
              {printed("Machine"), 0.0, 1.0},
              {printed("In use"), kCountColumn, 1.0, true}});
  for (const NeedlePick& needle : pick.needles) {
    list.row({tickCell(), strongCell(toQString(needle.needle)), plain(oneLine(needle.machine)),
              headingCell(countText(needle.count))});
  }
}

std::vector<SheetPage> pickPages(const SheetContext& context, const SheetHead& head) {
  const PickList pick =
      pickList(context.plan, runsOf(context), reportContext(context), context.units);
  SheetPage page;
  page.title = printed("Pick list");
  page.about = QStringLiteral("pick list");
  SheetList list(head, page);
  if (!pick.shortages.empty()) {
    list.heading(printed("Short"));
    for (const std::string& shortage : pick.shortages) {
      list.marked(Severity::Stop, oneLine(shortage), typography::kStrong);
    }
  }
  addBlanks(list, pick);
  addFrames(list, pick);
  addBacking(list, pick, context.units);
  addTopping(list, pick, context.units);
  addThreads(list, pick);
  addFabrics(list, pick, context.units);
  addNeedles(list, pick);
  return list.pages();
}

std::vector<SheetSection> pickListSections(const SheetContext& context, const SheetHead& head,
                                           const TemplateVariants& /*variants*/) {
  SheetSection section;
  section.title = printed("Pick list");
  section.pages = [context, head] { return pickPages(context, head); };
  return {section};
}

}  // namespace

SheetKind pickListKind() {
  return {20,
          "pick-list",
          printed("Pick list"),
          printed("Blanks, frames, backing, thread and needles to bring; what is short."),
          true,
          pickListSections};
}

}  // namespace creaseline
