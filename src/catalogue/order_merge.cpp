// SPDX-License-Identifier: MIT
// The three-way merge of orders.
#include "base/worded.h"
#include "creaseline/catalogue/merge.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "creaseline/base/units.h"

namespace creaseline {

namespace {

std::string shown(const std::string& value) {
  return value.empty() ? worded("nothing") : value;
}
std::string shown(int value) {
  return fmt::format("{}", value);
}
std::string shown(double value) {
  return fmt::format("{}", value);
}
std::string shown(bool value) {
  return value ? "yes" : "no";
}
std::string shown(Length value) {
  return exactText(value);
}
std::string shown(Angle value) {
  return exactText(value);
}
template <class Tag>
std::string shown(const Identifier<Tag>& value) {
  return value.text();
}
std::string shown(const std::vector<FrameId>& frames) {
  std::string all;
  for (const FrameId& frame : frames) {
    all += (all.empty() ? "" : ", ") + frame.text();
  }
  return frames.empty() ? worded("any") : all;
}

std::string shownChange(bool isThere) {
  return isThere ? worded("changed") : worded("taken out");
}

template <class Entry>
struct KeyedEntry {
  std::string key;
  const Entry* entry;
};
template <class Entry>
using KeyedList = std::vector<KeyedEntry<Entry>>;

// Names that occur again are numbered.
template <class Entry, class Name>
KeyedList<Entry> keyed(const std::vector<Entry>& entries, Name name) {
  KeyedList<Entry> list;
  std::map<std::string, int> times;
  for (const Entry& entry : entries) {
    const std::string key = name(entry);
    const int time = ++times[key];
    list.push_back({time == 1 ? key : worded("{}, number {}", key, time), &entry});
  }
  return list;
}

template <class Entry>
bool sameKeys(const KeyedList<Entry>& a, const KeyedList<Entry>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](const auto& one, const auto& two) { return one.key == two.key; });
}

// All keys of both in the order of `lead`; what only `other` has follows what it follows there.
template <class Entry>
std::vector<std::string> allKeys(const KeyedList<Entry>& lead, const KeyedList<Entry>& other) {
  std::set<std::string> known;
  for (const auto& each : lead) {
    known.insert(each.key);
  }
  std::map<std::string, std::vector<std::string>> behind;  // "": in front of all
  std::string last;
  for (const auto& each : other) {
    if (known.count(each.key) > 0) {
      last = each.key;
    } else {
      behind[last].push_back(each.key);
    }
  }
  std::vector<std::string> keys = behind[""];
  for (const auto& each : lead) {
    keys.push_back(each.key);
    const std::vector<std::string>& more = behind[each.key];
    keys.insert(keys.end(), more.begin(), more.end());
  }
  return keys;
}

class Merger {
 public:
  explicit Merger(const std::map<std::string, MergeSide>& choices) : choices_(choices) {}

  Order merged(const Order& base, const Order& mine, const Order& theirs) {
    Order order;
    order.id = field(&base, mine, theirs, &Order::id, worded("the order's number"));
    order.title = field(&base, mine, theirs, &Order::title, worded("the title"));
    order.customer = field(&base, mine, theirs, &Order::customer, worded("the customer"));
    order.due = field(&base, mine, theirs, &Order::due, worded("the due date"));
    order.note = field(&base, mine, theirs, &Order::note, worded("the order's note"));
    order.frames = field(&base, mine, theirs, &Order::frames, worded("the order's frames"));
    order.blanks = wholes(base.blanks, mine.blanks, theirs.blanks,
                          [](const Blank& blank) { return worded("blank {}", blank.id.text()); });
    order.designs = wholes(base.designs, mine.designs, theirs.designs, [](const Design& design) {
      return worded("design {}", design.id.text());
    });
    order.lines = list<OrderLine>(
        base.lines, mine.lines, theirs.lines,
        [](const OrderLine& line) { return worded("line {}", line.id); }, "",
        [this](const OrderLine* b, const OrderLine& m, const OrderLine& t,
               const std::string& place) { return line(b, m, t, place); });
    return order;
  }

  std::vector<MergeConflict> takeConflicts() { return std::move(conflicts_); }

 private:
  MergeSide conflict(const std::string& place, std::string mine, std::string theirs) {
    conflicts_.push_back({place, std::move(mine), std::move(theirs)});
    const auto choice = choices_.find(place);
    return choice == choices_.end() ? MergeSide::Mine : choice->second;
  }

  template <class Owner, class Value>
  Value field(const Owner* base, const Owner& mine, const Owner& theirs, Value Owner::*member,
              const std::string& place) {
    if (mine.*member == theirs.*member || (base != nullptr && theirs.*member == base->*member)) {
      return mine.*member;
    }
    if (base != nullptr && mine.*member == base->*member) {
      return theirs.*member;
    }
    return conflict(place, shown(mine.*member), shown(theirs.*member)) == MergeSide::Mine
               ? mine.*member
               : theirs.*member;
  }

  // One of the two has no such entry any more, or not yet.
  template <class Entry>
  const Entry* oneSided(const Entry* base, const Entry* mine, const Entry* theirs,
                        const std::string& place) {
    const Entry* there = mine != nullptr ? mine : theirs;
    if (base == nullptr) {
      return there;
    }
    if (*there == *base) {
      return nullptr;
    }
    const MergeSide side =
        conflict(place, shownChange(mine != nullptr), shownChange(theirs != nullptr));
    return side == MergeSide::Mine ? mine : theirs;
  }

  template <class Entry, class Name, class MergeEntry>
  std::vector<Entry> list(const std::vector<Entry>& base, const std::vector<Entry>& mine,
                          const std::vector<Entry>& theirs, Name name, const std::string& within,
                          MergeEntry mergeEntry) {
    const KeyedList<Entry> b = keyed(base, name);
    const KeyedList<Entry> m = keyed(mine, name);
    const KeyedList<Entry> t = keyed(theirs, name);
    const auto map = [](const KeyedList<Entry>& entries) {
      std::map<std::string, const Entry*> byKey;
      for (const auto& each : entries) {
        byKey[each.key] = each.entry;
      }
      return byKey;
    };
    auto inBase = map(b);
    auto inMine = map(m);
    auto inTheirs = map(t);
    std::vector<Entry> result;
    for (const std::string& key : sameKeys(m, b) ? allKeys(t, m) : allKeys(m, t)) {
      const std::string place = within.empty() ? key : within + ", " + key;
      if (inMine[key] != nullptr && inTheirs[key] != nullptr) {
        result.push_back(mergeEntry(inBase[key], *inMine[key], *inTheirs[key], place));
      } else if (const Entry* kept = oneSided(inBase[key], inMine[key], inTheirs[key], place)) {
        result.push_back(*kept);
      }
    }
    return result;
  }

  // Blanks and designs: too much hangs together in them for a merge of parts.
  template <class Entry, class Name>
  std::vector<Entry> wholes(const std::vector<Entry>& base, const std::vector<Entry>& mine,
                            const std::vector<Entry>& theirs, Name name) {
    return list<Entry>(
        base, mine, theirs, name, "",
        [this](const Entry* b, const Entry& m, const Entry& t, const std::string& place) {
          if (m == t || (b != nullptr && t == *b)) {
            return m;
          }
          if (b != nullptr && m == *b) {
            return t;
          }
          return conflict(place, shownChange(true), shownChange(true)) == MergeSide::Mine ? m : t;
        });
  }

  OrderLine line(const OrderLine* b, const OrderLine& m, const OrderLine& t,
                 const std::string& place) {
    static const OrderLine kNone;
    const OrderLine& base = b == nullptr ? kNone : *b;
    OrderLine line;
    line.id = m.id;
    line.blank = field(b, m, t, &OrderLine::blank, worded("{}, blank", place));
    line.colour = field(b, m, t, &OrderLine::colour, worded("{}, colour", place));
    line.note = field(b, m, t, &OrderLine::note, worded("{}, note", place));
    line.supplied =
        field(b, m, t, &OrderLine::supplied, worded("{}, garments from the customer", place));
    line.sizes = list<SizeQuantity>(
        base.sizes, m.sizes, t.sizes,
        [](const SizeQuantity& size) { return worded("size {}", size.size.text()); }, place,
        [this](const SizeQuantity* sb, const SizeQuantity& sm, const SizeQuantity& st,
               const std::string& at) {
          return SizeQuantity{sm.size, field(sb, sm, st, &SizeQuantity::quantity, at)};
        });
    line.placements = list<OrderPlacement>(
        base.placements, m.placements, t.placements,
        [](const OrderPlacement& placement) { return placement.location.text(); }, place,
        [this](const OrderPlacement* pb, const OrderPlacement& pm, const OrderPlacement& pt,
               const std::string& at) { return placement(pb, pm, pt, at); });
    return line;
  }

  OrderPlacement placement(const OrderPlacement* b, const OrderPlacement& m,
                           const OrderPlacement& t, const std::string& place) {
    OrderPlacement placement = m;
    placement.design = field(b, m, t, &OrderPlacement::design, worded("{}, design", place));
    placement.scale = field(b, m, t, &OrderPlacement::scale, worded("{}, scale", place));
    placement.moveDown = field(b, m, t, &OrderPlacement::moveDown, worded("{}, move down", place));
    placement.moveRight =
        field(b, m, t, &OrderPlacement::moveRight, worded("{}, move right", place));
    placement.turn = field(b, m, t, &OrderPlacement::turn, worded("{}, turn", place));
    placement.frameTurn =
        field(b, m, t, &OrderPlacement::frameTurn, worded("{}, turn of the frame", place));
    placement.split = field(b, m, t, &OrderPlacement::split, worded("{}, several hoopings", place));
    placement.note = field(b, m, t, &OrderPlacement::note, worded("{}, note", place));
    return placement;
  }

  const std::map<std::string, MergeSide>& choices_;
  std::vector<MergeConflict> conflicts_;
};

// Puts back what lines need and one side took out.
void restoreNeeded(Order& order, const Order& mine, const Order& theirs) {
  const auto blankOf = [&](const BlankId& id) {
    return mine.blank(id) != nullptr ? mine.blank(id) : theirs.blank(id);
  };
  const auto designOf = [&](const DesignId& id) {
    return mine.design(id) != nullptr ? mine.design(id) : theirs.design(id);
  };
  for (const OrderLine& line : order.lines) {
    if (order.blank(line.blank) == nullptr && blankOf(line.blank) != nullptr) {
      order.blanks.push_back(*blankOf(line.blank));
    }
    for (const OrderPlacement& placement : line.placements) {
      if (order.design(placement.design) == nullptr && designOf(placement.design) != nullptr) {
        order.designs.push_back(*designOf(placement.design));
      }
    }
  }
}

std::vector<std::string> partsThatDoNotFit(const Order& order) {
  std::vector<std::string> sentences;
  for (const OrderLine& line : order.lines) {
    const Blank* blank = order.blank(line.blank);
    if (blank == nullptr) {
      continue;  // it was broken on both sides
    }
    for (const SizeQuantity& size : line.sizes) {
      if (blank->chart.find(size.size) == nullptr) {
        sentences.push_back(worded("Line {} asks for size {}, which {} does not have", line.id,
                                   size.size.text(), blank->name));
      }
    }
    const bool sold =
        std::any_of(blank->colours.begin(), blank->colours.end(),
                    [&](const ClothColour& colour) { return colour.name == line.colour; });
    if (!line.colour.empty() && !sold) {
      sentences.push_back(worded("Line {} asks for {}, in which {} is not sold", line.id,
                                 line.colour, blank->name));
    }
    if (line.sizes.empty()) {
      sentences.push_back(worded("Line {} has no sizes left", line.id));
    }
    if (line.placements.empty()) {
      sentences.push_back(worded("Line {} has no placements left", line.id));
    }
  }
  return sentences;
}

}  // namespace

OrderMerge mergeOrders(const Order& base, const Order& mine, const Order& theirs,
                       const std::map<std::string, MergeSide>& choices) {
  Merger merger(choices);
  OrderMerge result;
  result.order = merger.merged(base, mine, theirs);
  restoreNeeded(result.order, mine, theirs);
  result.conflicts = merger.takeConflicts();
  result.toMend = partsThatDoNotFit(result.order);
  return result;
}

}  // namespace creaseline
