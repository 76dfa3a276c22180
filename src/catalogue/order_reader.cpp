// SPDX-License-Identifier: MIT
// Orders: every line's references are followed and checked.
#include "catalogue/order_reader.h"

#include <algorithm>
#include <set>

#include "base/worded.h"
#include "catalogue/blank_reader.h"
#include "catalogue/design_reader.h"
#include "catalogue/file_kind.h"
#include "catalogue/rules_reader.h"
#include "catalogue/said_name.h"
#include "creaseline/base/units.h"

namespace creaseline {

namespace {

constexpr std::size_t kMostLines = 100'000;
constexpr std::size_t kMostEntries = 2'000;  // blanks, designs
constexpr std::size_t kMostPlacements = 50;

// Blanks and designs: each entry is a file's name or an object in place.
template <class Entry, class Read>
std::vector<Entry> readReferred(const JsonCursor& at, FileKind kind, std::string_view ofWhat,
                                std::string_view idName, Read read) {
  std::vector<Entry> entries;
  std::vector<std::string> ids;
  for (const JsonCursor& item : at.items(at.reading().least(), kMostEntries, ofWhat)) {
    if (item.isText()) {
      const JsonDocument document(referredFile(item), item.reading());
      JsonObject top = document.root().object();
      requireHead(top, kind);
      entries.push_back(read(top));
      top.finish();
    } else if (item.isObject()) {
      JsonObject top = item.object();
      checkHead(top, kind);
      entries.push_back(read(top));
      top.finish();
    } else {
      item.failShown(worded("a file's path, or an object in braces"));
    }
    requireDistinct(ids, entries.back().id.text(), item, idName);
    ids.push_back(entries.back().id.text());
  }
  return entries;
}

std::string readColour(const std::optional<JsonCursor>& at, const Blank& blank) {
  if (!at) {
    return {};
  }
  const std::string name = at->label();
  std::vector<std::string> names;
  for (const ClothColour& colour : blank.colours) {
    names.push_back(colour.name);
  }
  if (std::find(names.begin(), names.end(), name) == names.end()) {
    at->fail(worded("the colour {}, in which {} is not sold", inQuotes(name), blank.name),
             offer(name, names));
  }
  return name;
}

std::vector<SizeQuantity> readSizes(const JsonCursor& at, const Blank& blank) {
  std::vector<SizeQuantity> sizes;
  for (const auto& [name, quantity] :
       at.members(1'000, toBeWorded("sizes"), at.reading().least())) {
    const SizeName size(name);
    if (blank.chart.find(size) == nullptr) {
      std::vector<std::string> known;
      for (const ChartSize& each : blank.chart.sizes) {
        known.push_back(each.name.text());
      }
      quantity.fail(worded("the size {}, which {} is not made in", inQuotes(name), blank.name),
                    offer(name, known));
    }
    sizes.push_back({size, quantity.integer(1, kMostGarments)});
  }
  return sizes;
}

double readScale(const JsonCursor& at, const Design& design) {
  const double scale = at.number(0.0, kLargestScale);
  if (std::min(design.width, design.height) * scale < kSmallestScaledDesign) {
    at.failShown(worded("a scale that leaves the design at least {} wide and high",
                        exactText(kSmallestScaledDesign)));
  }
  return scale;
}

LocationId readLocation(const JsonCursor& at, const Blank& blank, const Rules& rules) {
  const Location& location = knownLocation(at, rules);
  const GarmentKind& kind = *rules.kind(blank.kind);
  if (!kind.has(location.panel)) {
    at.fail(worded("the location {} on a garment of kind {}, which has no {}", at.shown(),
                   kind.id.text(), saidName(location.panel)),
            worded("a location on a panel that the garment has"));
  }
  return location.id;
}

OrderPlacement readPlacement(const JsonCursor& at, const Blank& blank, const Order& order,
                             const Rules& rules) {
  JsonObject object = at.object();
  OrderPlacement placement;
  placement.location = readLocation(object.at("location"), blank, rules);
  const JsonCursor designAt = object.at("design");
  placement.design = designAt.identifier<DesignId>();
  const Design* design = order.design(placement.design);
  if (design == nullptr) {
    designAt.fail(worded("the unknown design {}", designAt.shown()),
                  offer(placement.design.text(), idsOf(order.designs)));
  }
  if (const auto scale = object.find("scale")) {
    placement.scale = readScale(*scale, *design);
  }
  if (const auto moveDown = object.find("move-down")) {
    placement.moveDown = moveDown->length(-kLargestPart, kLargestPart);
  }
  if (const auto moveRight = object.find("move-right")) {
    placement.moveRight = moveRight->length(-kLargestPart, kLargestPart);
  }
  if (const auto turn = object.find("turn")) {
    placement.turn = turn->angle();
  }
  if (const auto frameTurn = object.find("frame-turn")) {
    placement.frameTurn = frameTurn->angle();
  }
  if (const auto split = object.find("split")) {
    placement.split = split->boolean();
  }
  placement.note = object.proseOrEmpty("note");
  object.finish();
  return placement;
}

OrderLine readLine(const JsonCursor& at, const Order& order, const Rules& rules) {
  JsonObject object = at.object();
  OrderLine line;
  line.id = object.at("id").label();
  const JsonCursor blankAt = object.at("blank");
  line.blank = blankAt.identifier<BlankId>();
  const Blank* blank = order.blank(line.blank);
  if (blank == nullptr) {
    blankAt.fail(worded("the unknown blank {}", blankAt.shown()),
                 offer(line.blank.text(), idsOf(order.blanks)));
  }
  line.colour = readColour(object.find("colour"), *blank);
  line.sizes = readSizes(object.at("sizes"), *blank);
  for (const JsonCursor& item :
       object.at("placements")
           .items(at.reading().least(), kMostPlacements, toBeWorded("placements"))) {
    line.placements.push_back(readPlacement(item, *blank, order, rules));
  }
  line.note = object.proseOrEmpty("note");
  if (const auto supplied = object.find("supplied")) {
    line.supplied = supplied->boolean();
  }
  object.finish();
  return line;
}

std::string readDate(const JsonCursor& at) {
  const std::string text = at.label();
  if (!isCalendarDate(text)) {
    at.failShown(worded("a date such as \"2026-12-04\""));
  }
  return text;
}

}  // namespace

bool isCalendarDate(const std::string& text) {
  constexpr std::string_view kForm = "dddd-dd-dd";
  bool good = text.size() == kForm.size();
  for (std::size_t i = 0; good && i < kForm.size(); ++i) {
    good = kForm[i] == 'd' ? text[i] >= '0' && text[i] <= '9' : text[i] == kForm[i];
  }
  if (!good) {
    return false;
  }
  const int year = std::stoi(text.substr(0, 4));
  const int month = std::stoi(text.substr(5, 2));
  const int day = std::stoi(text.substr(8, 2));
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  const int days[] = {31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return month >= 1 && month <= 12 && day >= 1 && day <= days[month - 1];
}

Order readOrder(JsonObject& top, const Rules& rules) {
  Order order;
  order.id = top.at("id").label();
  order.title = top.labelOrEmpty("title");
  order.customer = top.labelOrEmpty("customer");
  if (const auto due = top.find("due"); due && !due->isEmptyText()) {
    order.due = readDate(*due);
  }
  order.note = top.proseOrEmpty("note");
  if (const auto frames = top.find("frames")) {
    order.frames = frames->identifiers<FrameId>();
  }
  order.blanks = readReferred<Blank>(top.at("blanks"), FileKind::Blank, toBeWorded("blanks"),
                                     toBeWorded("blank id"),
                                     [&](JsonObject& object) { return readBlank(object, rules); });
  order.designs = readReferred<Design>(top.at("designs"), FileKind::Design, toBeWorded("designs"),
                                       toBeWorded("design id"), readDesign);
  std::set<std::string> ids;
  for (const JsonCursor& item : top.at("lines").items(top.cursor().reading().least(), kMostLines,
                                                      toBeWorded("order lines"))) {
    order.lines.push_back(readLine(item, order, rules));
    const std::string& id = order.lines.back().id;
    if (!ids.insert(id).second) {
      item.fail(worded("the line id {} a second time", inQuotes(id)), worded("every line id once"));
    }
  }
  return order;
}

}  // namespace creaseline
