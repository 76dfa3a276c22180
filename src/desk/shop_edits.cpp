// SPDX-License-Identifier: MIT
#include "desk/shop_edits.h"

#include <algorithm>
#include <utility>

#include "creaseline/planning/wording.h"
#include "desk/garment_edits.h"
#include "desk/text.h"

namespace creaseline::desk {

const PlacementRule& shippedRuleFor(const LocationId& location, const Rules& rules) {
  const auto find = [&](bool adult) {
    return std::find_if(
        rules.placement.begin(), rules.placement.end(), [&](const PlacementRule& rule) {
          return rule.location == location &&
                 (!adult || std::find(rule.bands.begin(), rule.bands.end(), SizeBand::Adult) !=
                                rule.bands.end());
        });
  };
  const auto adult = find(true);
  const auto any = adult == rules.placement.end() ? find(false) : adult;
  return any == rules.placement.end() ? rules.placement.front() : *any;
}

PlacementRule placedLike(const PlacementRule& rule, PlacementRule like) {
  like.id = rule.id;
  like.kinds = rule.kinds;
  like.bands = rule.bands;
  like.sizes = rule.sizes;
  like.blanks = rule.blanks;
  like.basis = rule.basis;
  like.note = rule.note;
  like.house = rule.house;
  return like;
}

namespace {

using namespace creaseline::literals;

// Calls `run` with the list itself.
template <class AnyShop, class Run>
decltype(auto) onList(AnyShop& shop, ShopList list, Run run) {
  switch (list) {
    case ShopList::Machines:
      return run(shop.machines);
    case ShopList::Frames:
      return run(shop.frames);
    case ShopList::Backings:
      return run(shop.backings);
    case ShopList::Needles:
      return run(shop.needles);
    case ShopList::MeasuredHoopings:
      return run(shop.measuredHoopings);
    case ShopList::HouseRules:
      break;
  }
  return run(shop.houseRules);
}

template <class Entry>
constexpr bool hasId = requires(const Entry& entry) {
  entry.id.text();
};
template <class Entry>
constexpr bool hasName = requires(const Entry& entry) {
  entry.name;
};

template <class Entry>
void makeDistinct(Entry& entry, const std::vector<Entry>& others, const std::string& stem) {
  if constexpr (hasId<Entry>) {
    std::vector<std::string> taken;
    for (const Entry& other : others) {
      taken.push_back(other.id.text());
    }
    entry.id = decltype(entry.id)(freshId(stem, taken));
  }
}

void fill(Machine& machine) {
  machine.name = toUtf8(ShopEdits::tr("New machine"));
  machine.needles = 1;
  machine.stitchesPerMinute = 600;
}
void fill(Frame& frame) {
  frame.name = toUtf8(ShopEdits::tr("New frame"));
}
void fill(BackingStock& stock) {
  stock.name = toUtf8(ShopEdits::tr("New backing"));
  stock.weight = ArealWeight::fromGramsPerSquareMetre(60.0);
}
void fill(NeedleStock& /*needle*/) {
}
void fill(MeasuredHooping& hooping) {
  hooping.note = toUtf8(ShopEdits::tr("new"));
}
void fill(PlacementRule& rule) {
  rule.basis = toUtf8(ShopEdits::tr("the shop's own habit"));
}

// Something near, round in the units of whoever goes on from there.
Length roundIn(const UnitChoice& units, double inches, Length metric) {
  return units.length == LengthUnit::Inch ? Length::fromInches(inches) : metric;
}

Window squareWindow(Length side) {
  return *Window::rectangle(side, side);
}

template <class Entry>
Entry fresh(const UnitChoice& /*units*/, const Rules& /*rules*/) {
  return Entry{};
}
template <>
Machine fresh<Machine>(const UnitChoice& units, const Rules& /*rules*/) {
  return Machine{MachineId(), {}, 1, squareWindow(roundIn(units, 12.0, 300_mm)), 600};
}
template <>
BackingStock fresh<BackingStock>(const UnitChoice& units, const Rules& /*rules*/) {
  BackingStock stock;
  stock.width = roundIn(units, 20.0, 500_mm);
  stock.length = roundIn(units, 900.0, 25000_mm);
  return stock;
}
template <>
Frame fresh<Frame>(const UnitChoice& units, const Rules& /*rules*/) {
  return Frame{FrameId(),
               {},
               FrameKind::Screw,
               squareWindow(roundIn(units, 4.0, 100_mm)),
               squareWindow(roundIn(units, 5.25, 130_mm)),
               std::nullopt,
               {},
               BracketSide::Top,
               {Angle()},
               {},
               1,
               {}};
}
// A house rule starts as the shipped one for grown-ups says, for all garments and sizes.
template <>
PlacementRule fresh<PlacementRule>(const UnitChoice& /*units*/, const Rules& rules) {
  PlacementRule rule = shippedRuleFor(rules.placement.front().location, rules);
  rule.house = true;
  rule.kinds.clear();
  rule.bands.clear();
  rule.note.clear();
  return rule;
}

std::string stemOf(ShopList list) {
  switch (list) {
    case ShopList::Machines:
      return "machine";
    case ShopList::Frames:
      return "frame";
    case ShopList::Backings:
      return "backing";
    default:
      return "house-rule";
  }
}

QString length(Length value, const UnitChoice& units) {
  return toQString(fieldText(value, units.length));
}

struct Namer {
  const Rules& rules;
  const UnitChoice& units;

  template <class Entry>
  requires hasName<Entry> QString operator()(const Entry& entry) const {
    return toQString(entry.name);
  }
  QString operator()(const NeedleStock& needle) const {
    return QStringLiteral("%1 %2").arg(needle.size).arg(toQString(nameOf(needle.point)));
  }
  QString operator()(const MeasuredHooping& hooping) const {
    const QString off = QStringLiteral("%1, %2, %3")
                            .arg(length(hooping.sideways, units), length(hooping.along, units),
                                 toQString(formatAngle(hooping.turn)));
    return hooping.note.empty() ? off : QStringLiteral("%1: %2").arg(toQString(hooping.note), off);
  }
  QString operator()(const PlacementRule& rule) const {
    const Location* location = rules.location(rule.location);
    const QString place = toQString(location == nullptr ? rule.location.text() : location->name);
    return QStringLiteral("%1: %2 %3")
        .arg(place, toQString(formatLength(rule.distance, units)),
             toQString(landmarkPhrase(rule.from)));
  }
};

}  // namespace

QStringList ShopEdits::names(ShopList list) const {
  const Namer name{rules_, units_};
  return onList(shop_, list, [&](const auto& entries) {
    QStringList names;
    for (const auto& entry : entries) {
      names.append(name(entry));
    }
    return names;
  });
}

QString ShopEdits::nameOf(ShopList list, std::size_t index) const {
  const QString name = names(list).value(static_cast<qsizetype>(index));
  switch (list) {
    case ShopList::Machines:
      return tr("Machine %1").arg(name);
    case ShopList::Frames:
      return tr("Frame %1").arg(name);
    case ShopList::Backings:
      return tr("Backing %1").arg(name);
    case ShopList::Needles:
      return tr("Needle %1").arg(name);
    case ShopList::MeasuredHoopings:
      return tr("Measured hooping %1", "its number in the list").arg(index + 1);
    case ShopList::HouseRules:
      return tr("House rule %1").arg(name);
  }
  return name;
}

ShopEdit ShopEdits::add(ShopList list) const {
  ShopEdit edit{{}, {}, shop_};
  onList(edit.shop, list, [&](auto& entries) {
    using Entry = typename std::decay_t<decltype(entries)>::value_type;
    Entry entry = fresh<Entry>(units_, rules_);
    fill(entry);
    makeDistinct(entry, entries, stemOf(list));
    entries.push_back(std::move(entry));
    edit.name = tr("Add: %1", "entry of the shop")
                    .arg(ShopEdits(edit.shop, rules_, units_).nameOf(list, entries.size() - 1));
  });
  return edit;
}

ShopEdit ShopEdits::duplicate(ShopList list, std::size_t index) const {
  ShopEdit edit{tr("Duplicate: %1", "entry of the shop").arg(nameOf(list, index)), {}, shop_};
  onList(edit.shop, list, [&](auto& entries) {
    auto copy = entries.at(index);
    makeDistinct(copy, entries, stemOf(list));
    if constexpr (hasName<decltype(copy)>) {
      copy.name = toUtf8(tr("%1, copy", "name").arg(toQString(copy.name)));
    }
    entries.insert(entries.begin() + static_cast<std::ptrdiff_t>(index) + 1, std::move(copy));
  });
  return edit;
}

bool ShopEdits::mayRemove(ShopList list) const {
  const bool needed = list == ShopList::Machines || list == ShopList::Frames;
  return onList(shop_, list,
                [&](const auto& entries) { return entries.size() > (needed ? 1U : 0U); });
}

ShopEdit ShopEdits::remove(ShopList list, std::size_t index) const {
  ShopEdit edit{tr("Remove: %1", "entry of the shop").arg(nameOf(list, index)), {}, shop_};
  onList(edit.shop, list, [&](auto& entries) {
    entries.erase(entries.begin() + static_cast<std::ptrdiff_t>(index));
  });
  return edit;
}

Shop ShopEdits::firstShop(const UnitChoice& units) {
  Shop shop;
  shop.units = units;
  shop.name = toUtf8(tr("My shop"));
  Rules none;
  Machine machine = fresh<Machine>(units, none);
  fill(machine);
  makeDistinct(machine, shop.machines, stemOf(ShopList::Machines));
  Frame frame = fresh<Frame>(units, none);
  fill(frame);
  makeDistinct(frame, shop.frames, stemOf(ShopList::Frames));
  shop.machines = {std::move(machine)};
  shop.frames = {std::move(frame)};
  return shop;
}

}  // namespace creaseline::desk
