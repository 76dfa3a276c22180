// SPDX-License-Identifier: MIT
// Placement and backing rules.
#include "catalogue/rules_reader.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/worded.h"
#include "catalogue/said_name.h"
#include "catalogue/text_check.h"
#include "creaseline/base/spoken_units.h"
#include "creaseline/base/units.h"

namespace creaseline {

namespace {

constexpr std::size_t kMostRules = 5'000;
constexpr double kMostStitchesPerSquareMm = 100.0;

std::vector<KindId> readKinds(const JsonCursor& at, const Rules& rules) {
  const std::vector<KindId> kinds = at.identifiers<KindId>();
  for (const JsonCursor& item : at.items(1, kMostRules, toBeWorded("kinds"))) {
    static_cast<void>(knownKind(item, rules));
  }
  return kinds;
}

// What the rule applies to.
void readScope(JsonObject& object, const Rules& rules, PlacementRule& rule) {
  rule.location = knownLocation(object.at("location"), rules).id;
  if (const auto kinds = object.find("kinds")) {
    rule.kinds = readKinds(*kinds, rules);
  }
  if (const auto bands = object.find("bands")) {
    rule.bands = bands->enumerators<SizeBand>();
  }
  if (const auto sizes = object.find("sizes")) {
    rule.sizes = sizes->identifiers<SizeName>();
  }
  if (const auto blanks = object.find("blanks")) {
    rule.blanks = blanks->identifiers<BlankId>();
  }
}

// The marks that a panel can have, as one reads them in a message.
std::string marksOf(PanelName panel) {
  std::string list;
  for (const auto& [landmark, name] : EnumNames<Landmark>::names) {
    if (liesOn(landmark, panel)) {
      list += fmt::format("{}{}", list.empty() ? "" : ", ", name);
    }
  }
  return list;
}

void readDistances(JsonObject& object, const Rules& rules, PlacementRule& rule) {
  const JsonCursor from = object.at("from");
  rule.from = from.enumerator<Landmark>();
  const PanelName panel = rules.location(rule.location)->panel;
  if (!liesOn(rule.from, panel)) {
    from.failShown(worded("a mark of the {}: {}", saidName(panel), marksOf(panel)));
  }
  rule.anchor = object.at("anchor").enumerator<Anchor>();
  const JsonCursor distance = object.at("distance");
  rule.distance = distance.length({}, kLargestPart);
  rule.least = object.at("least").length({}, kLargestPart);
  rule.most = object.at("most").length({}, kLargestPart);
  if (rule.distance < rule.least || rule.distance > rule.most) {
    const std::string least = spokenLength(rule.least);
    const std::string most = spokenLength(rule.most);
    distance.failLength(
        rule.distance,
        spokenUnits() ? worded("a distance from the least of {} to the most of {}", least, most)
                      : worded("a distance from \"least\" {} to \"most\" {}", least, most));
  }
  rule.sideways = object.at("sideways").enumerator<Sideways>();
  const auto sidewaysDistance = object.find("sideways-distance");
  if (sidewaysDistance) {
    rule.sidewaysDistance = sidewaysDistance->length({}, kLargestPart);
  } else if (rule.sideways == Sideways::FromCentreLine || rule.sideways == Sideways::FromSide) {
    static_cast<void>(object.at("sideways-distance"));
  }
}

void readTurnAndLimits(JsonObject& object, PlacementRule& rule) {
  if (const auto turn = object.find("turn")) {
    rule.turn = turn->angle();
  }
  if (const auto reason = object.find("turn-reason")) {
    rule.turnReason = reason->reading().strict ? reason->ownLabel() : reason->prose();
  }
  if (rule.turn != Angle() && rule.turnReason.empty()) {
    object.cursor().fail(worded("a turn without \"turn-reason\""),
                         worded("why the design is turned"));
  }
  const auto range = [&object](const char* least, std::optional<Length>& from, const char* most,
                               std::optional<Length>& to) {
    if (const auto length = object.find(least)) {
      from = length->positiveLength();
    }
    if (const auto length = object.find(most)) {
      to = length->positiveLength();
      if (from && *from > *to) {
        length->failShown(worded("no less than \"{}\"", least));
      }
    }
  };
  range("least-width", rule.leastWidth, "most-width", rule.mostWidth);
  range("least-height", rule.leastHeight, "most-height", rule.mostHeight);
}

// Reasons name rules by id: one of the shop must not be taken for the shipped one it wins over.
void requireOwnId(const JsonCursor& at, const RuleId& id, const Rules& rules) {
  const bool shipped = std::any_of(rules.placement.begin(), rules.placement.end(),
                                   [&id](const PlacementRule& rule) { return rule.id == id; });
  if (shipped) {
    at.fail(worded("the id {} of a shipped rule", inQuotes(id.text())),
            worded("an id of the shop's own, such as {}", inQuotes("shop-" + id.text())));
  }
}

PlacementRule readPlacementRule(const JsonCursor& at, const Rules& rules, bool house) {
  JsonObject object = at.object();
  PlacementRule rule;
  rule.house = house;
  rule.id = object.at("id").identifier<RuleId>();
  readScope(object, rules, rule);
  readDistances(object, rules, rule);
  readTurnAndLimits(object, rule);
  rule.basis = object.at("basis").ownLabel();
  rule.note = house ? object.proseOrEmpty("note") : object.at("note").ownLabel();
  object.finish();
  return rule;
}

template <class T, class Read>
void readIfGiven(JsonObject& object, std::string_view key, std::optional<T>& target, Read read) {
  if (const auto value = object.find(key)) {
    target = read(*value);
  }
}

BackingConditions readConditions(const JsonCursor& at) {
  JsonObject object = at.object();
  BackingConditions when;
  if (const auto names = object.find("construction")) {
    when.construction = names->enumerators<Construction>();
  }
  if (const auto names = object.find("stretch")) {
    when.stretch = names->enumerators<Stretch>();
  }
  if (const auto names = object.find("pile")) {
    when.pile = names->enumerators<Pile>();
  }
  if (const auto names = object.find("panels")) {
    when.panels = names->enumerators<PanelName>();
  }
  if (const auto names = object.find("bands")) {
    when.bands = names->enumerators<SizeBand>();
  }
  const auto boolean = [](const JsonCursor& value) { return value.boolean(); };
  const auto weight = [](const JsonCursor& value) { return value.weight(); };
  const auto density = [](const JsonCursor& value) {
    return value.number(0.0, kMostStitchesPerSquareMm);
  };
  readIfGiven(object, "inside-seen", when.insideSeen, boolean);
  readIfGiven(object, "sheer", when.sheer, boolean);
  readIfGiven(object, "magnetic-frame", when.magneticFrame, boolean);
  readIfGiven(object, "weight-from", when.weightFrom, weight);
  readIfGiven(object, "weight-below", when.weightBelow, weight);
  readIfGiven(object, "density-from", when.densityFrom, density);
  readIfGiven(object, "density-below", when.densityBelow, density);
  object.finish();
  return when;
}

BackingRule readBackingRule(const JsonCursor& at) {
  JsonObject object = at.object();
  BackingRule rule;
  rule.id = object.at("id").identifier<RuleId>();
  rule.when = readConditions(object.at("when"));
  readIfGiven(object, "kind", rule.kind,
              [](const JsonCursor& value) { return value.enumerator<BackingKind>(); });
  readIfGiven(object, "least-weight", rule.leastWeight,
              [](const JsonCursor& value) { return value.weight(); });
  readIfGiven(object, "layers", rule.layers,
              [](const JsonCursor& value) { return value.integer(1, 10); });
  readIfGiven(object, "hold", rule.hold,
              [](const JsonCursor& value) { return value.enumerator<HoldMethod>(); });
  readIfGiven(object, "topping", rule.topping,
              [](const JsonCursor& value) { return value.boolean(); });
  readIfGiven(object, "needle-size", rule.needleSize,
              [](const JsonCursor& value) { return value.integer(40, 200); });
  readIfGiven(object, "needle-point", rule.needlePoint,
              [](const JsonCursor& value) { return value.enumerator<NeedlePoint>(); });
  readIfGiven(object, "skin-cover", rule.skinCover,
              [](const JsonCursor& value) { return value.boolean(); });
  readIfGiven(object, "most-density", rule.mostDensity, [](const JsonCursor& value) {
    return value.number(0.001, kMostStitchesPerSquareMm);
  });
  rule.because = object.at("because").ownLabel();
  rule.basis = object.at("basis").ownLabel();
  object.finish();
  return rule;
}

}  // namespace

const GarmentKind& knownKind(const JsonCursor& at, const Rules& rules) {
  const GarmentKind* kind = rules.kind(at.identifier<KindId>());
  if (kind == nullptr) {
    at.fail(worded("the unknown garment kind {}", at.shown()),
            offer(at.label(), idsOf(rules.kinds)));
  }
  return *kind;
}

const Location& knownLocation(const JsonCursor& at, const Rules& rules) {
  const Location* location = rules.location(at.identifier<LocationId>());
  if (location == nullptr) {
    at.fail(worded("the unknown location {}", at.shown()),
            offer(at.label(), idsOf(rules.locations)));
  }
  return *location;
}

std::vector<PlacementRule> readPlacementRules(const JsonCursor& at, const Rules& rules,
                                              bool house) {
  std::vector<PlacementRule> result;
  std::vector<std::string> ids;
  for (const JsonCursor& item : at.items(house ? 0 : 1, kMostRules, toBeWorded("rules"))) {
    PlacementRule rule = readPlacementRule(item, rules, house);
    requireDistinct(ids, rule.id.text(), item, toBeWorded("rule id"));
    if (house) {
      requireOwnId(item, rule.id, rules);
    }
    ids.push_back(rule.id.text());
    result.push_back(std::move(rule));
  }
  return result;
}

std::vector<BackingRule> readBackingRules(const JsonCursor& at) {
  std::vector<BackingRule> result;
  std::vector<std::string> ids;
  for (const JsonCursor& item : at.items(1, kMostRules, toBeWorded("rules"))) {
    BackingRule rule = readBackingRule(item);
    requireDistinct(ids, rule.id.text(), item, toBeWorded("rule id"));
    ids.push_back(rule.id.text());
    result.push_back(std::move(rule));
  }
  return result;
}

}  // namespace creaseline
