// SPDX-License-Identifier: MIT
// Shops as JSON: machines, frames with their windows, stock, house rules.
#include <fmt/format.h>

#include "catalogue/shop_reader.h"
#include "catalogue/unit_names.h"
#include "catalogue/window_reader.h"
#include "catalogue/writers.h"

namespace creaseline {

namespace {

EntryNames idBefore(const JsonNode& entry) {
  return {textOf(&entry, "id")};
}

// A list whose entries are told apart by their ids.
template <class Entry, class Write>
JsonNode entriesNode(const JsonNode* before, const std::vector<Entry>& entries, Write write) {
  return listNode(
      before, entries, [](const Entry& entry) { return EntryNames{entry.id.text()}; }, idBefore,
      [&](const Entry& entry, const JsonNode* old) {
        JsonObjectWriter object(old);
        write(object, entry);
        return object.take();
      });
}

JsonNode unitsNode(const JsonNode* before, const UnitChoice& units) {
  JsonObjectWriter object(before);
  object.enumerator("length", units.length);
  object.enumerator("mark", units.mark);
  object.enumerator("weight", units.weight);
  return object.take();
}

JsonNode pairNode(Length width, Length height, LengthUnit unit) {
  JsonNode::Array pair;
  pair.push_back(lengthNode(nullptr, width, unit));
  pair.push_back(lengthNode(nullptr, height, unit));
  return JsonNode{std::move(pair)};
}

JsonNode newWindowNode(const JsonNode* before, const Window& window, LengthUnit unit) {
  JsonObjectWriter object(before);
  if (const auto* rectangle = std::get_if<Window::Rectangle>(&window.form())) {
    object.put("rectangle", pairNode(rectangle->width, rectangle->height, unit));
    object.putUnless(rectangle->cornerRadius == Length(), "corner-radius",
                     lengthNode(object.before("corner-radius"), rectangle->cornerRadius, unit));
  } else if (const auto* ellipse = std::get_if<Window::Ellipse>(&window.form())) {
    object.put("ellipse", pairNode(ellipse->width, ellipse->height, unit));
  } else if (const auto* rounded = std::get_if<Window::Rounded>(&window.form())) {
    object.put("rounded", pairNode(rounded->width, rounded->height, unit));
    object.put("fullness", numberNode(rounded->fullness));
  } else {
    object.text("unit", "mm");
    object.put("polygon", ringNode(std::get<Window::Polygon>(window.form()).points));
  }
  for (const char* key :
       {"rectangle", "corner-radius", "ellipse", "rounded", "fullness", "unit", "polygon"}) {
    object.leaveOut(key);
  }
  return object.take();
}

JsonNode turnsNode(const JsonNode* before, const std::vector<Angle>& turns) {
  const JsonNode::Array* old = arrayOf(before);
  JsonNode::Array list;
  for (std::size_t i = 0; i < turns.size(); ++i) {
    list.push_back(angleNode(old != nullptr && i < old->size() ? &(*old)[i] : nullptr, turns[i]));
  }
  return JsonNode{std::move(list)};
}

void putIfAny(JsonObjectWriter& object, std::string_view key, const std::optional<Length>& length,
              LengthUnit unit) {
  if (length) {
    object.put(key, lengthNode(object.before(key), *length, unit));
  } else {
    object.leaveOut(key);
  }
}

void putFrame(JsonObjectWriter& object, const Frame& frame, LengthUnit unit) {
  object.text("id", frame.id.text());
  object.text("name", frame.name);
  object.enumerator("kind", frame.kind);
  object.put("window", windowNode(object.before("window"), frame.window, unit));
  object.put("body", windowNode(object.before("body"), frame.body, unit));
  if (frame.sewingField) {
    object.put("sewing-field", windowNode(object.before("sewing-field"), *frame.sewingField, unit));
  } else {
    object.leaveOut("sewing-field");
  }
  if (frame.clearance) {
    object.put("clearance", lengthNode(object.before("clearance"), *frame.clearance, unit));
  } else {
    object.leaveOut("clearance");
  }
  if (frame.clothMargin) {
    object.put("cloth-margin", lengthNode(object.before("cloth-margin"), *frame.clothMargin, unit));
  } else {
    object.leaveOut("cloth-margin");
  }
  object.enumerator("bracket", frame.bracket);
  object.putUnless(frame.turns == std::vector{Angle()}, "turns",
                   turnsNode(object.before("turns"), frame.turns));
  object.enumerators("panels", frame.panels);
  object.putUnless(frame.quantity == 1, "quantity",
                   amountNode(object.before("quantity"), frame.quantity));
}

void putMachine(JsonObjectWriter& object, const Machine& machine, LengthUnit unit) {
  object.text("id", machine.id.text());
  object.text("name", machine.name);
  object.put("needles", amountNode(object.before("needles"), machine.needles));
  object.put("sewing-field", windowNode(object.before("sewing-field"), machine.sewingField, unit));
  object.put("stitches-per-minute",
             amountNode(object.before("stitches-per-minute"), machine.stitchesPerMinute));
}

void putBacking(JsonObjectWriter& object, const BackingStock& stock, const Shop& shop,
                LengthUnit unit) {
  object.text("id", stock.id.text());
  object.text("name", stock.name);
  object.enumerator("kind", stock.kind);
  object.put("weight", weightNode(object.before("weight"), stock.weight));
  object.enumerator("form", stock.form);
  object.put("width", lengthNode(object.before("width"), stock.width, unit));
  const JsonNode* length = object.before("length");
  if (stock.form == BackingForm::Roll) {
    object.put("length", keptOr(length, stock.length, readRollLength,
                                [&] { return textNode(rollLengthText(stock.length, unit)); }));
    object.leaveOut("sheets");
  } else {
    object.put("length", lengthNode(length, stock.length, unit));
    object.put("sheets", amountNode(object.before("sheets"), stock.sheets));
  }
  if (stock.price && shop.rates) {
    object.put("price", backingPriceNode(object.before("price"), *stock.price, stock.form,
                                         shop.rates->currency, unit));
  } else {
    object.leaveOut("price");
  }
}

JsonNode needlesNode(const JsonNode* before, const std::vector<NeedleStock>& needles) {
  return listNode(
      before, needles,
      [](const NeedleStock& needle) {
        return EntryNames{fmt::format("{} {}", needle.size, nameOf(needle.point))};
      },
      [](const JsonNode& old) {
        const JsonNode* size = memberOf(&old, "size");
        const auto* number = size == nullptr ? nullptr : std::get_if<JsonNumber>(&size->content);
        return EntryNames{
            fmt::format("{} {}", number == nullptr ? 0.0 : number->value, textOf(&old, "point"))};
      },
      [](const NeedleStock& needle, const JsonNode* old) {
        JsonObjectWriter object(old);
        object.put("size", amountNode(object.before("size"), needle.size));
        object.enumerator("point", needle.point);
        return object.take();
      });
}

JsonNode hoopingErrorNode(const JsonNode* before, const HoopingError& error, LengthUnit unit) {
  JsonObjectWriter object(before);
  object.put("sideways", lengthNode(object.before("sideways"), error.sideways, unit));
  object.put("along", lengthNode(object.before("along"), error.along, unit));
  object.put("turn", angleNode(object.before("turn"), error.turn));
  object.text("basis", error.basis);
  return object.take();
}

JsonNode measuredNode(const JsonNode* before, const std::vector<MeasuredHooping>& hoopings,
                      LengthUnit unit) {
  return listNode(
      before, hoopings,
      [](const MeasuredHooping& hooping) {
        return EntryNames{exactText(hooping.sideways) + exactText(hooping.along) + hooping.note};
      },
      [](const JsonNode& old) {
        return EntryNames{textOf(&old, "sideways") + textOf(&old, "along") + textOf(&old, "note")};
      },
      [unit](const MeasuredHooping& hooping, const JsonNode* old) {
        JsonObjectWriter object(old);
        object.put("sideways", lengthNode(object.before("sideways"), hooping.sideways, unit));
        object.put("along", lengthNode(object.before("along"), hooping.along, unit));
        object.put("turn", angleNode(object.before("turn"), hooping.turn));
        object.textIfAny("note", hooping.note);
        return object.take();
      });
}

}  // namespace

JsonNode ringNode(const Ring& ring) {
  JsonNode::Array points;
  for (const Point& point : ring) {
    JsonNode::Array pair;
    pair.push_back(numberNode(point.x));
    pair.push_back(numberNode(point.y));
    points.push_back(JsonNode{std::move(pair)});
  }
  return JsonNode{std::move(points)};
}

JsonNode windowNode(const JsonNode* before, const Window& window, LengthUnit unit) {
  return keptOr(before, window, readWindow, [&] { return newWindowNode(before, window, unit); });
}

JsonNode placementRuleNode(const JsonNode* before, const PlacementRule& rule, LengthUnit unit) {
  JsonObjectWriter object(before);
  const auto putLength = [&](std::string_view key, Length length) {
    object.put(key, lengthNode(object.before(key), length, unit));
  };
  object.text("id", rule.id.text());
  object.text("location", rule.location.text());
  object.identifiers("kinds", rule.kinds);
  object.enumerators("bands", rule.bands);
  object.identifiers("sizes", rule.sizes);
  object.identifiers("blanks", rule.blanks);
  object.enumerator("from", rule.from);
  object.enumerator("anchor", rule.anchor);
  putLength("distance", rule.distance);
  putLength("least", rule.least);
  putLength("most", rule.most);
  object.enumerator("sideways", rule.sideways);
  const bool needsDistance =
      rule.sideways == Sideways::FromCentreLine || rule.sideways == Sideways::FromSide;
  object.putUnless(!needsDistance && rule.sidewaysDistance == Length(), "sideways-distance",
                   lengthNode(object.before("sideways-distance"), rule.sidewaysDistance, unit));
  object.putUnless(rule.turn == Angle(), "turn", angleNode(object.before("turn"), rule.turn));
  object.textIfAny("turn-reason", rule.turnReason);
  putIfAny(object, "least-width", rule.leastWidth, unit);
  putIfAny(object, "most-width", rule.mostWidth, unit);
  putIfAny(object, "least-height", rule.leastHeight, unit);
  putIfAny(object, "most-height", rule.mostHeight, unit);
  object.text("basis", rule.basis);
  object.textIfAny("note", rule.note);
  return object.take();
}

JsonNode shopNode(const Shop& shop, const JsonNode* before, const Writing& writing) {
  const LengthUnit unit = writing.lengths;
  JsonObjectWriter object(before);
  putHead(object, FileKind::Shop, true);
  object.text("name", shop.name);
  object.put("units", unitsNode(object.before("units"), shop.units));
  object.put("machines", entriesNode(object.before("machines"), shop.machines,
                                     [unit](JsonObjectWriter& entry, const Machine& machine) {
                                       putMachine(entry, machine, unit);
                                     }));
  object.put("frames", entriesNode(object.before("frames"), shop.frames,
                                   [unit](JsonObjectWriter& entry, const Frame& frame) {
                                     putFrame(entry, frame, unit);
                                   }));
  object.putUnless(shop.backings.empty(), "backings",
                   entriesNode(object.before("backings"), shop.backings,
                               [&](JsonObjectWriter& entry, const BackingStock& stock) {
                                 putBacking(entry, stock, shop, unit);
                               }));
  object.putUnless(!shop.toppingFilm, "topping-film", JsonNode{shop.toppingFilm});
  object.putUnless(shop.needles.empty(), "needles",
                   needlesNode(object.before("needles"), shop.needles));
  if (shop.hoopingError) {
    object.put("hooping-error",
               hoopingErrorNode(object.before("hooping-error"), *shop.hoopingError, unit));
  } else {
    object.leaveOut("hooping-error");
  }
  object.putUnless(shop.measuredHoopings.empty(), "measured-hoopings",
                   measuredNode(object.before("measured-hoopings"), shop.measuredHoopings, unit));
  putIfAny(object, "crease-error", shop.creaseError, unit);
  putIfAny(object, "ruler-error", shop.rulerError, unit);
  putIfAny(object, "cloth-give", shop.clothGive, unit);
  object.putUnless(
      shop.houseRules.empty(), "house-rules",
      listNode(
          object.before("house-rules"), shop.houseRules,
          [](const PlacementRule& rule) { return EntryNames{rule.id.text()}; }, idBefore,
          [unit](const PlacementRule& rule, const JsonNode* old) {
            return placementRuleNode(old, rule, unit);
          }));
  if (shop.rates) {
    object.put("rates", ratesNode(object.before("rates"), *shop.rates, unit));
  } else {
    object.leaveOut("rates");
  }
  return object.take();
}

}  // namespace creaseline
