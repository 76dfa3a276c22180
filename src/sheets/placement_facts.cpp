// SPDX-License-Identifier: MIT
// Gathers a group's facts. Numbers come from the plan and words from planning/wording.h.
#include "sheets/placement_facts.h"

#include <algorithm>

#include "creaseline/planning/counting.h"
#include "creaseline/planning/drawn_words.h"
#include "creaseline/planning/groups.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/wording.h"
#include "sheets/page_code.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
using sheets::printed;
using sheets::toQString;

namespace {

QString loadingText(const PlacementPlan& plan) {
  const std::string phrase = designInFramePhrase(plan);
  return plan.placed.panelTurn == plan.frame->turn ? toQString(phrase)
                                                   : printed("load it %1", phrase);
}

void addNumbers(PlacementFacts& facts, const SheetContext& context, const SizeGroup& group,
                const PlacementPlan& plan) {
  const Placed& placed = plan.placed;
  const UnitChoice& units = context.units;
  facts.numbers.push_back(
      {printed("Drop"), toQString(formatLength(placed.drop, units)),
       printed("%1 to the %2", landmarkPhrase(placed.from), nearSidePhrase(plan)),
       NumberSize::ArmsLength});
  QString centreNote = printed("%1 to the centre", landmarkPhrase(placed.from));
  const bool hasCollar = plan.panel == PanelName::Front || plan.panel == PanelName::Back;
  if (hasCollar && placed.from != Landmark::CollarSeam) {
    centreNote = printed("%1; that is %2 below the collar seam", centreNote,
                         formatLength(placed.centreBelowDatum, units));
  }
  facts.numbers.push_back({printed("Centre"), toQString(formatLength(placed.centreOffset, units)),
                           centreNote, NumberSize::ArmsLength});
  facts.numbers.push_back({printed("Sideways"), capitalised(toQString(lateralPhrase(plan, units))),
                           QString(), NumberSize::Step});
  facts.numbers.push_back(
      {printed("Turn"), capitalised(toQString(turnPhrase(plan))), QString(), NumberSize::Close});
  if (plan.frame) {
    facts.numbers.push_back(
        {printed("Room in the frame"),
         capitalised(toQString(slackPhrase(leastSlackAsDrawn(context.plan, group), units))),
         group.size() > 1 ? printed("as drawn; least of these sizes") : printed("as drawn"),
         NumberSize::Close});
  }
}

void addFrameRows(PlacementFacts& facts, const SheetContext& context, const PlacementPlan& plan) {
  if (!plan.frame) {
    return;
  }
  const UnitChoice& units = context.units;
  const Frame* frame = context.shop.frame(plan.frame->frame);
  if (frame == nullptr) {
    return;
  }
  facts.rows.push_back(
      {printed("Frame"), printed("%1; %2, outside %3", framePhrase(*frame, *plan.frame, units),
                                 inLanguage(nameOf(frame->kind)),
                                 sizePhrase(frame->body.width(), frame->body.height(), units))});
  facts.rows.push_back({printed("Bracket"),
                        printed("%1 of the drawing (black mark)", bracketAsDrawn(*frame, plan))});
  const std::string offset = frameOffsetAsDrawn(plan, units);
  if (!offset.empty()) {
    facts.rows.push_back({printed("Frame centre"), printed("%1, as drawn", offset)});
  }
  facts.rows.push_back({printed("Design in it"), loadingText(plan)});
  if (!plan.frame->bodyNearest.empty()) {
    facts.rows.push_back(
        {printed("Frame to"), toQString(plan.frame->bodyNearest) + QStringLiteral(": ") +
                                  toQString(roomPhrase(plan.frame->bodyRoom, units))});
  }
  if (!plan.alternatives.empty()) {
    const FrameChoice& next = plan.alternatives.front();
    if (const Frame* other = context.shop.frame(next.frame)) {
      facts.rows.push_back({printed("Or frame"), toQString(framePhrase(*other, next, units))});
    }
  }
}

void addBackingRows(PlacementFacts& facts, const SheetContext& context, const PlacementPlan& plan) {
  const BackingChoice& backing = plan.backing;
  const UnitChoice& units = context.units;
  QString text = toQString(backingPhrase(backing, units));
  if (backing.cutWidth > Length()) {
    text = printed("%1; cut to %2", text, sizePhrase(backing.cutWidth, backing.cutHeight, units));
  }
  text = backing.stock.empty() ? printed("%1; nothing in stock serves", text)
                               : printed("%1; from stock: %2", text, backing.stockName);
  facts.rows.push_back({printed("Backing"), text});
  facts.rows.push_back({printed("Topping"),
                        backing.topping ? printed("film on top of the cloth") : printed("none")});
  facts.rows.push_back({printed("Needle"), toQString(needlePhrase(backing))});
  if (backing.skinCover) {
    facts.rows.push_back(
        {printed("Cover"), printed("soft cover over the back, which lies against skin")});
  }
}

QString blockUse(const ThreadBlock& block) {
  QString use;
  switch (block.kind) {
    case BlockKind::PlacementLine:
      use = printed("placement line");
      break;
    case BlockKind::TackDown:
      use = printed("tack-down");
      break;
    case BlockKind::Cover:
      use = printed("cover");
      break;
    case BlockKind::Sew:
      break;
  }
  if (!block.piece.empty()) {
    use += (use.isEmpty() ? QString() : QStringLiteral(" ")) + toQString(block.piece);
  }
  return use;
}

// How a part of a design meets the others.
void addPartRows(PlacementFacts& facts, const SheetContext& context, const PlacementPlan& plan) {
  for (const PartJoin& join : plan.part->joins) {
    facts.rows.push_back(
        {printed("Join"), capitalised(toQString(joinPhrase(plan, join, context.units)))});
  }
  if (const std::string marks = alignedMarksPhrase(*plan.part); !marks.empty()) {
    facts.rows.push_back({printed("Align on"), toQString(marks)});
  }
  if (const std::string marks = sewnMarksPhrase(*plan.part); !marks.empty()) {
    facts.rows.push_back({printed("Sew too"), toQString(marks)});
  }
}

void addDesign(PlacementFacts& facts, const SheetContext& context, const PlacementPlan& plan) {
  const Design& design = plan.design;
  const QString size = toQString(sizePhrase(design.width, design.height, context.units));
  facts.rows.push_back({printed("Design"), toQString(design.name) + QStringLiteral("; ") + size +
                                               QStringLiteral(", ") +
                                               printed("%1 stitches", grouped(design.stitches))});
  if (!plan.letters.empty()) {
    facts.rows.push_back({printed("Letters"), toQString(plan.letters)});
  }
  if (plan.part) {
    addPartRows(facts, context, plan);
  }
  for (const ThreadBlock& block : design.blocks) {
    facts.threads.push_back({toQString(block.thread), blockUse(block),
                             toQString(grouped(block.stitches)),
                             QColor(block.colour.red, block.colour.green, block.colour.blue)});
  }
  for (const AppliquePiece& piece : design.pieces) {
    facts.rows.push_back(
        {printed("Appliqué"), toQString(piece.name) + QStringLiteral(": ") +
                                  toQString(piece.fabric) + QStringLiteral(", ") +
                                  toQString(sizePhrase(piece.width, piece.height, context.units))});
  }
  // A checklist would invite to start what must not be sewn.
  if (plan.frame) {
    for (const Step& step : plan.steps) {
      facts.steps.push_back({toQString(step.text), step.byHand});
    }
  }
}

void addFindings(PlacementFacts& facts, const SheetContext& context, const SizeGroup& group) {
  for (const Finding& finding : context.plan.findings) {
    if (std::none_of(group.begin(), group.end(), [&](std::size_t index) {
          return concerns(finding, context.plan.placements[index]);
        })) {
      continue;
    }
    FindingText text;
    text.severity = finding.severity;
    text.text = capitalised(toQString(finding.text));
    for (const Number& number : finding.numbers) {
      text.numbers << toQString(inLanguage(number.name)) + u' ' +
                          toQString(formatLength(number.value, context.units));
    }
    for (const Remedy& remedy : finding.remedies) {
      text.remedies << capitalised(toQString(remedy.text)) +
                           (remedy.result.empty()
                                ? QString()
                                : QStringLiteral(": ") + toQString(remedy.result));
    }
    (finding.severity == Severity::Stop ? facts.stops : facts.remarks).push_back(text);
  }
}

void addAssumed(PlacementFacts& facts, const SheetContext& context, const SizeGroup& group) {
  for (const std::size_t index : group) {
    const PlacementPlan& plan = context.plan.placements[index];
    for (const Measure measure : plan.assumed) {
      const auto value = plan.garment->measures.find(measure);
      if (value == plan.garment->measures.end()) {
        continue;
      }
      const QString label = toQString(measurePhrase(measure));
      const QString entry = toQString(plan.size.text()) + u' ' +
                            toQString(formatLength(value->second.value, context.units));
      const auto known = std::find_if(facts.assumed.begin(), facts.assumed.end(),
                                      [&](const FactRow& row) { return row.label == label; });
      if (known == facts.assumed.end()) {
        facts.assumed.push_back({label, entry});
      } else {
        known->value += QStringLiteral(", ") + entry;
      }
    }
  }
}

std::string groupSizesPhrase(const SheetContext& context, const SizeGroup& group) {
  std::vector<SizeName> sizes;
  for (const std::size_t index : group) {
    sizes.push_back(context.plan.placements[index].size);
  }
  const Blank* blank =
      context.order.blank(context.order.lines[context.plan.placements[group.front()].line].blank);
  return sizesPhrase(sizes, blank != nullptr ? blank->chart : SizeChart{});
}

void addHeadings(PlacementFacts& facts, const SheetContext& context, const SizeGroup& group,
                 const PlacementPlan& plan) {
  const OrderLine& line = context.order.lines[plan.line];
  const Blank* blank = context.order.blank(line.blank);
  const Location* location = context.rules.location(plan.location);
  facts.title = location != nullptr ? toQString(location->name) : toQString(plan.location.text());
  facts.title += toQString(partSuffix(plan));
  facts.detail =
      printed("Line %1: %2", line.id, blank != nullptr ? blank->name : line.blank.text());
  if (!line.colour.empty()) {
    facts.detail += QStringLiteral(", ") + toQString(line.colour);
  }
  const QString side = location != nullptr ? toQString(sidePhrase(*location)) : QString();
  if (!side.isEmpty() && side.compare(facts.title, Qt::CaseInsensitive) != 0) {
    facts.detail = side + QStringLiteral(" · ") + facts.detail;
  }
  facts.detail = capitalised(facts.detail);
  facts.about = QStringLiteral("line %1 %2%3 %4")
                    .arg(toQString(line.id), toQString(plan.location.text()), pageCodePart(plan),
                         toQString(groupSizesPhrase(context, group)));
  QStringList stopping;
  for (const std::size_t index : group) {
    const PlacementPlan& member = context.plan.placements[index];
    facts.sizes.push_back({toQString(member.size.text()), member.quantity});
    facts.pieces += member.quantity;
    if (member.stops() || !member.frame || !member.hasRule) {
      stopping << toQString(member.size.text());
    }
  }
  facts.stop = !stopping.isEmpty();
  if (static_cast<std::size_t>(stopping.size()) < group.size()) {
    facts.stopSizes = stopping.join(u' ');
  }
  const OrderPlacement& placement = line.placements[plan.placement];
  for (const std::string& note : {line.note, placement.note}) {
    if (!note.empty()) {
      facts.rows.push_back({printed("Note"), toQString(note)});
    }
  }
}

}  // namespace

QString placementTitle(const SheetContext& context, const SizeGroup& group) {
  const PlacementPlan& plan = context.plan.placements[group.front()];
  const Location* location = context.rules.location(plan.location);
  return printed("Line %1, %2: %3", context.order.lines[plan.line].id,
                 (location != nullptr ? toQString(location->name).toLower()
                                      : toQString(plan.location.text())) +
                     toQString(partSuffix(plan)),
                 groupSizesPhrase(context, group));
}

PlacementFacts placementFacts(const SheetContext& context, const SizeGroup& group) {
  PlacementFacts facts;
  facts.drawn = group[group.size() / 2];
  const PlacementPlan& plan = context.plan.placements[facts.drawn];
  addHeadings(facts, context, group, plan);
  if (plan.hasRule) {
    addNumbers(facts, context, group, plan);
    addFrameRows(facts, context, plan);
    addBackingRows(facts, context, plan);
  }
  addDesign(facts, context, plan);
  addFindings(facts, context, group);
  addAssumed(facts, context, group);
  for (const Caution* caution : plan.cautions) {
    facts.cautions << toQString(caution->text);
  }
  facts.cautions << printed(
      "The instructions of the makers of machine, frame, backing, thread and press, and the rules "
      "that hold at your workplace, come before this sheet.");
  return facts;
}

}  // namespace creaseline
