// SPDX-License-Identifier: MIT
// Shops, with the checks that a frame is one that can exist.
#include "catalogue/shop_reader.h"

#include <algorithm>
#include <limits>

#include "base/worded.h"
#include "catalogue/rates_reader.h"
#include "catalogue/rules_reader.h"
#include "catalogue/unit_names.h"
#include "catalogue/window_reader.h"
#include "creaseline/base/spoken_units.h"
#include "creaseline/base/units.h"
#include "creaseline/shape/outline.h"

namespace creaseline {

namespace {

constexpr std::size_t kMostShopEntries = 1'000;  // machines, frames, stock
constexpr int kMostPiecesKept = 100'000;
constexpr Length kDrawingTolerance = Length::fromNanometres(10'000);

UnitChoice readUnits(const JsonCursor& at) {
  JsonObject object = at.object();
  UnitChoice units;
  if (const auto length = object.find("length")) {
    units.length = length->enumerator<LengthUnit>();
  }
  if (const auto mark = object.find("mark")) {
    units.mark = mark->enumerator<RulerMark>();
  }
  if (const auto weight = object.find("weight")) {
    units.weight = weight->enumerator<WeightUnit>();
  }
  object.finish();
  return units;
}

Machine readMachine(JsonObject& object) {
  const Window field = readWindow(object.at("sewing-field"));
  Machine machine{object.at("id").identifier<MachineId>(), object.at("name").label(),
                  object.at("needles").integer(1, 100), field,
                  object.at("stitches-per-minute").integer(10, 10'000)};
  return machine;
}

std::string sizeText(const Window& window, const std::optional<UnitChoice>& units) {
  if (!units) {
    return worded("{:.6g} x {:.6g} mm", window.width().mm(), window.height().mm());
  }
  const std::string width = formatLength(window.width(), *units);
  return fmt::format("{} × {}", width.substr(0, width.rfind(' ')),
                     formatLength(window.height(), *units));
}

// How window and body are told, so that what is smaller reads smaller.
std::optional<UnitChoice> unitsOfRim(const Window& window, const Window& body) {
  std::optional<UnitChoice> units = spokenUnits();
  if (units) {
    units->finer = std::max(unitsTellingApart(window.width(), {body.width()}, *units).finer,
                            unitsTellingApart(window.height(), {body.height()}, *units).finer);
  }
  return units;
}

// Every point of the window's edge must lie inside the body's edge. How far the worst one is out
// goes into the message.
void requireRim(const JsonCursor& at, const Window& window, const Window& body) {
  const Ring outer = body.boundary(kDrawingTolerance);
  double least = std::numeric_limits<double>::infinity();
  for (const Point point : window.boundary(kDrawingTolerance)) {
    const double distance = nearestSide(outer, point).distance;
    least = std::min(least, contains(outer, point) ? distance : -distance);
  }
  if (least <= kDrawingTolerance.mm()) {
    const std::optional<UnitChoice> units = unitsOfRim(window, body);
    const std::string size = sizeText(window, units);
    const std::string bodySize = sizeText(body, units);
    // A tenth of a millimetre is enough in a file.
    const std::string beyond = spokenLength(Length::fromMm(std::round(-least * 10.0) / 10.0));
    at.fail(least < -kDrawingTolerance.mm()
                ? worded("a window of {} that reaches the edge of the body of {}, {} beyond it",
                         size, bodySize, beyond)
                : worded("a window of {} that reaches the edge of the body of {}", size, bodySize),
            worded("a body that is larger than the window on every side"));
  }
}

std::vector<Angle> readTurns(const std::optional<JsonCursor>& at) {
  if (!at) {
    return {Angle()};
  }
  std::vector<Angle> turns;
  for (const JsonCursor& item : at->items(1, 360, toBeWorded("turns"))) {
    const Angle turn = item.angle();
    if (std::find(turns.begin(), turns.end(), turn) != turns.end()) {
      item.fail(worded("the turn {} a second time", item.shown()), worded("every turn once"));
    }
    turns.push_back(turn);
  }
  return turns;
}

Frame readFrame(JsonObject& object) {
  const JsonCursor windowAt = object.at("window");
  const Window window = readWindow(windowAt);
  const Window body = readWindow(object.at("body"));
  requireRim(windowAt, window, body);
  Frame frame{object.at("id").identifier<FrameId>(),
              object.at("name").label(),
              object.at("kind").enumerator<FrameKind>(),
              window,
              body,
              {},
              {},
              object.at("bracket").enumerator<BracketSide>(),
              readTurns(object.find("turns")),
              {},
              1,
              {}};
  if (const auto field = object.find("sewing-field")) {
    frame.sewingField = readWindow(*field);
  }
  if (const auto clearance = object.find("clearance")) {
    frame.clearance = clearance->length({}, kLargestPart);
    if (*frame.clearance * 2.0 >= std::min(window.width(), window.height())) {
      clearance->failLength(*frame.clearance,
                            worded("a clearance that leaves something of the window of {}",
                                   sizeText(window, spokenUnits())));
    }
  }
  if (const auto margin = object.find("cloth-margin")) {
    frame.clothMargin = margin->length({}, kLargestPart);
  }
  if (const auto panels = object.find("panels")) {
    frame.panels = panels->enumerators<PanelName>();
  }
  if (const auto quantity = object.find("quantity")) {
    frame.quantity = quantity->integer(1, kMostPiecesKept);
  }
  return frame;
}

BackingStock readBacking(JsonObject& object, const std::optional<Rates>& rates) {
  BackingStock stock;
  stock.id = object.at("id").identifier<StockId>();
  stock.name = object.at("name").label();
  stock.kind = object.at("kind").enumerator<BackingKind>();
  stock.weight = object.at("weight").weight();
  stock.form = object.at("form").enumerator<BackingForm>();
  stock.width = object.at("width").positiveLength();
  // An empty roll and no sheets are what a shop has to say when the stock is used up.
  stock.length = stock.form == BackingForm::Roll ? readRollLength(object.at("length"))
                                                 : object.at("length").positiveLength();
  if (stock.form == BackingForm::Sheets) {
    stock.sheets = object.at("sheets").integer(0, kMostPiecesKept);
  }
  if (const auto price = object.find("price")) {
    if (!rates) {
      price->fail(worded("a price"), worded("the shop's currency first, in \"rates\""));
    }
    stock.price = readBackingPrice(*price, stock.form, rates->currency);
  }
  return stock;
}

NeedleStock readNeedle(const JsonCursor& at) {
  JsonObject object = at.object();
  const NeedleStock needle{object.at("size").integer(40, 200),
                           object.at("point").enumerator<NeedlePoint>()};
  object.finish();
  return needle;
}

HoopingError readHoopingError(const JsonCursor& at) {
  JsonObject object = at.object();
  HoopingError error;
  error.sideways = object.at("sideways").length({}, kLargestPart);
  error.along = object.at("along").length({}, kLargestPart);
  const JsonCursor turn = object.at("turn");
  error.turn = turn.angle();
  if (error.turn < Angle()) {
    turn.failShown(worded("an angle of 0 or more"));
  }
  error.basis = object.at("basis").label();
  object.finish();
  return error;
}

MeasuredHooping readMeasuredHooping(const JsonCursor& at) {
  JsonObject object = at.object();
  MeasuredHooping hooping;
  hooping.sideways = object.at("sideways").length(-kLargestPart, kLargestPart);
  hooping.along = object.at("along").length(-kLargestPart, kLargestPart);
  hooping.turn = object.at("turn").angle();
  hooping.note = object.labelOrEmpty("note");
  object.finish();
  return hooping;
}

// A list of objects with distinct ids, each checked for unknown keys.
template <class Entry, class Read>
std::vector<Entry> readEntries(const JsonCursor& at, std::size_t least, std::string_view ofWhat,
                               std::string_view idName, Read read) {
  std::vector<Entry> entries;
  std::vector<std::string> ids;
  for (const JsonCursor& item : at.items(least, kMostShopEntries, ofWhat)) {
    JsonObject object = item.object();
    entries.push_back(read(object));
    object.finish();
    requireDistinct(ids, entries.back().id.text(), item, idName);
    ids.push_back(entries.back().id.text());
  }
  return entries;
}

}  // namespace

Length readRollLength(const JsonCursor& at) {
  const Result<Length> length = parseRollLength(at.label());
  return length ? *length : at.length({}, kLongestRoll);
}

Shop readShop(JsonObject& top, const Rules& rules) {
  Shop shop;
  shop.name = top.at("name").label();
  if (const auto units = top.find("units")) {
    shop.units = readUnits(*units);
  }
  shop.machines = readEntries<Machine>(top.at("machines"), 1, toBeWorded("machines"),
                                       toBeWorded("machine id"), readMachine);
  shop.frames = readEntries<Frame>(top.at("frames"), 1, toBeWorded("frames"),
                                   toBeWorded("frame id"), readFrame);
  if (const auto rates = top.find("rates")) {
    shop.rates = readRates(*rates, rules);
  }
  if (const auto backings = top.find("backings")) {
    shop.backings = readEntries<BackingStock>(
        *backings, 0, toBeWorded("backings"), toBeWorded("backing id"),
        [&shop](JsonObject& object) { return readBacking(object, shop.rates); });
  }
  if (const auto film = top.find("topping-film")) {
    shop.toppingFilm = film->boolean();
  }
  if (const auto needles = top.find("needles")) {
    for (const JsonCursor& item : needles->items(0, kMostShopEntries, toBeWorded("needles"))) {
      shop.needles.push_back(readNeedle(item));
    }
  }
  if (const auto error = top.find("hooping-error")) {
    shop.hoopingError = readHoopingError(*error);
  }
  if (const auto measured = top.find("measured-hoopings")) {
    for (const JsonCursor& item :
         measured->items(0, kMostShopEntries, toBeWorded("measured hoopings"))) {
      shop.measuredHoopings.push_back(readMeasuredHooping(item));
    }
  }
  const auto readError = [&top](std::string_view key) {
    const auto at = top.find(key);
    return at ? std::optional(at->length({}, kLargestPart)) : std::nullopt;
  };
  shop.creaseError = readError("crease-error");
  shop.rulerError = readError("ruler-error");
  shop.clothGive = readError("cloth-give");
  if (const auto houseRules = top.find("house-rules")) {
    shop.houseRules = readPlacementRules(*houseRules, rules, true);
  }
  return shop;
}

}  // namespace creaseline
