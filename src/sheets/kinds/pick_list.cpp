// SPDX-License-Identifier: MIT
// The pick list: everything to be brought before the order is sewn, each with a box to tick.
#include "creaseline/planning/pick_list.h"

#include "creaseline/planning/wording.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/list_texts.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
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
  list.heading(QStringLiteral("Blanks: %1").arg(countText(pick.garments, "garment", "garments")));
  list.table({{QStringLiteral("Garment and colour"), 0.0, 1.0},
              {QStringLiteral("Sizes"), 0.0, 1.9},
              {QStringLiteral("In all"), kCountColumn, 1.0, true}});
  for (const BlankPick& blank : pick.blanks) {
    std::vector<TableChip> chips;
    QStringList waiting;
    for (const SizePick& size : blank.sizes) {
      chips.push_back({toQString(size.size.text()), QStringLiteral("× %1").arg(size.count)});
      if (size.held > 0) {
        waiting << QStringLiteral("%1 of %2").arg(size.held).arg(toQString(size.size.text()));
      }
    }
    const QString name =
        oneLine(blank.blank) +
        (blank.colour.empty() ? QString() : QStringLiteral(", ") + oneLine(blank.colour));
    TableCell garment = blank.cloth ? swatchCell(name, inkOf(*blank.cloth)) : plain(name);
    garment.style = typography::kStrong;
    list.row({garment, chipsCell(std::move(chips)), headingCell(countText(blank.garments))},
             !waiting.isEmpty());
    if (!waiting.isEmpty()) {
      TableCell cell = plain(QStringLiteral("Of these wait, because a place on them must not be "
                                            "sewn as ordered: ") +
                             waiting.join(QStringLiteral(", ")));
      cell.span = 3;
      list.row({cell});
    }
  }
}

void addFrames(SheetList& list, const PickList& pick) {
  if (pick.frames.empty()) {
    return;
  }
  list.heading(QStringLiteral("Frames"));
  list.table({{QString(), kTickColumn},
              {QStringLiteral("Frame"), 0.0, 1.0},
              {QStringLiteral("On hand"), kCountColumn, 1.0, true},
              {QStringLiteral("Hoopings"), kCountColumn, 1.0, true}});
  for (const FramePick& frame : pick.frames) {
    list.row({tickCell(), strongCell(oneLine(frame.frame)), headingCell(countText(frame.onHand)),
              plain(countText(frame.hoopings))});
  }
}

void addBacking(SheetList& list, const PickList& pick, const UnitChoice& units) {
  if (pick.backing.empty()) {
    return;
  }
  list.heading(QStringLiteral("Backing"));
  list.table({{QString(), kTickColumn},
              {QStringLiteral("From stock"), 0.0, 1.0},
              {QStringLiteral("Kind"), 0.0, 1.0},
              {QStringLiteral("Cut to"), 56.0},
              {QStringLiteral("Pieces"), kCountColumn, 1.0, true}});
  for (const BackingPick& backing : pick.backing) {
    list.row({tickCell(),
              strongCell(backing.stock.empty() ? QStringLiteral("nothing in stock serves")
                                               : oneLine(backing.stock)),
              plain(toQString(backing.kind)),
              headingCell(toQString(sizePhrase(backing.width, backing.height, units))),
              headingCell(countText(backing.pieces))});
  }
  if (pick.backingTotals.empty()) {
    return;
  }
  list.gap(3.0);
  list.table({{QStringLiteral("Backing in all"), 0.0, 1.2},
              {QStringLiteral("Pieces"), kCountColumn, 1.0, true},
              {QStringLiteral("Takes at most"), 0.0, 0.6},
              {QStringLiteral("On hand"), 0.0, 0.5},
              {QStringLiteral("Enough"), 24.0}});
  for (const BackingTotal& total : pick.backingTotals) {
    list.row({strongCell(oneLine(total.stock)), plain(countText(total.pieces)),
              plain(toQString(total.need)), plain(toQString(total.onHand)),
              strongCell(total.enough ? QStringLiteral("yes") : QStringLiteral("may be short"))});
  }
  list.text(
      QStringLiteral("“At most” holds when each cut size is cut for itself in straight rows."));
}

void addTopping(SheetList& list, const PickList& pick, const UnitChoice& units) {
  if (pick.topping.empty()) {
    return;
  }
  list.heading(QStringLiteral("Topping film"));
  list.table({{QString(), kTickColumn},
              {QStringLiteral("Covers a window of"), 0.0, 1.0},
              {QStringLiteral("Pieces"), kCountColumn, 1.0, true}});
  for (const ToppingPick& topping : pick.topping) {
    list.row({tickCell(), strongCell(toQString(sizePhrase(topping.width, topping.height, units))),
              headingCell(countText(topping.pieces))});
  }
}

void addThreads(SheetList& list, const PickList& pick) {
  if (pick.threads.empty()) {
    return;
  }
  list.heading(QStringLiteral("Thread"));
  list.table({{QString(), kTickColumn},
              {QStringLiteral("Colour"), 0.0, 1.0},
              {QStringLiteral("Machine: needle"), 0.0, 0.9},
              {QStringLiteral("Stitches"), 28.0, 1.0, true}});
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
  list.text(QStringLiteral("And bobbin thread for all of them."));
}

void addFabrics(SheetList& list, const PickList& pick, const UnitChoice& units) {
  if (pick.fabrics.empty()) {
    return;
  }
  list.heading(QStringLiteral("Appliqué fabric, and as many pieces of fusible web"));
  list.table({{QString(), kTickColumn},
              {QStringLiteral("Fabric"), 0.0, 1.0},
              {QStringLiteral("Piece and design"), 0.0, 1.0},
              {QStringLiteral("Size"), 56.0},
              {QStringLiteral("Pieces"), kCountColumn, 1.0, true}});
  for (const FabricPick& fabric : pick.fabrics) {
    list.row({tickCell(), strongCell(oneLine(fabric.fabric)),
              plain(oneLine(fabric.piece + ", " + fabric.design)),
              headingCell(toQString(sizePhrase(fabric.width, fabric.height, units))),
              headingCell(countText(fabric.pieces))});
  }
  list.text(
      QStringLiteral("Size as sewn: cut with room to trim in the frame. Web a little "
                     "smaller than its fabric, so that none meets the press."));
}

void addNeedles(SheetList& list, const PickList& pick) {
  if (pick.needles.empty()) {
    return;
  }
  list.heading(QStringLiteral("Needles"));
  list.table({{QString(), kTickColumn},
              {QStringLiteral("Needle"), 0.0, 1.0},
              {QStringLiteral("Machine"), 0.0, 1.0},
              {QStringLiteral("In use"), kCountColumn, 1.0, true}});
  for (const NeedlePick& needle : pick.needles) {
    list.row({tickCell(), strongCell(toQString(needle.needle)), plain(oneLine(needle.machine)),
              headingCell(countText(needle.count))});
  }
}

std::vector<SheetPage> pickPages(const SheetContext& context, const SheetHead& head) {
  const PickList pick =
      pickList(context.plan, runsOf(context), reportContext(context), context.units);
  SheetPage page;
  page.title = QStringLiteral("Pick list");
  page.about = QStringLiteral("pick list");
  SheetList list(head, page);
  if (!pick.shortages.empty()) {
    list.heading(QStringLiteral("Short"));
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

std::vector<SheetSection> sections(const SheetContext& context, const SheetHead& head,
                                   const TemplateVariants& /*variants*/) {
  SheetSection section;
  section.title = QStringLiteral("Pick list");
  section.pages = [context, head] { return pickPages(context, head); };
  return {section};
}

}  // namespace

SheetKind pickListKind() {
  return {20,
          "pick-list",
          QStringLiteral("Pick list"),
          QStringLiteral("Blanks, frames, backing, thread and needles to bring; what is short."),
          true,
          sections};
}

}  // namespace creaseline
