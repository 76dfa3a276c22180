// SPDX-License-Identifier: MIT
#include "creaseline/catalogue/shop_check.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/worded.h"
#include "catalogue/json_reader.h"
#include "catalogue/shop_reader.h"
#include "catalogue/text_check.h"
#include "catalogue/writers.h"
#include "creaseline/base/error.h"
#include "creaseline/base/spoken_units.h"

namespace creaseline {

namespace {

template <class T>
bool names(const std::vector<T>& list, const T& entry) {
  return std::find(list.begin(), list.end(), entry) != list.end();
}

// The order's blanks on which the rule's place is sewn, of the kinds that the rule is for.
std::vector<const Blank*> blanksAt(const PlacementRule& rule, const Order& order) {
  std::vector<const Blank*> blanks;
  for (const OrderLine& line : order.lines) {
    const bool sewn = std::any_of(
        line.placements.begin(), line.placements.end(),
        [&rule](const OrderPlacement& placement) { return placement.location == rule.location; });
    const Blank* blank = order.blank(line.blank);
    if (sewn && blank != nullptr && (rule.kinds.empty() || names(rule.kinds, blank->kind))) {
      blanks.push_back(blank);
    }
  }
  return blanks;
}

// "\"tee\", \"shirt\""
template <class Id>
std::string quotedList(const std::vector<Id>& ids) {
  std::string list;
  for (const Id& id : ids) {
    list += (list.empty() ? "" : ", ") + inQuotes(id.text());
  }
  return list;
}

}  // namespace

std::vector<IdleHouseRule> idleHouseRules(const Order& order, const Shop& shop) {
  std::vector<IdleHouseRule> idle;
  for (std::size_t i = 0; i < shop.houseRules.size(); ++i) {
    const PlacementRule& rule = shop.houseRules[i];
    std::vector<const Blank*> blanks = blanksAt(rule, order);
    if (blanks.empty()) {
      continue;  // for other orders
    }
    const auto say = [&](std::string text) {
      idle.push_back({i, {{}, worded("house rule {}", inQuotes(rule.id.text())), std::move(text)}});
    };
    if (!rule.blanks.empty()) {
      std::erase_if(blanks, [&rule](const Blank* blank) { return !names(rule.blanks, blank->id); });
      if (blanks.empty()) {
        say(worded("not used: the order sews this place on none of its blanks {}",
                   quotedList(rule.blanks)));
        continue;
      }
    }
    const bool some =
        rule.sizes.empty() || std::any_of(rule.sizes.begin(), rule.sizes.end(), [&](const auto& s) {
          return std::any_of(blanks.begin(), blanks.end(),
                             [&s](const Blank* blank) { return blank->chart.find(s) != nullptr; });
        });
    if (!some) {
      say(worded("not used: no size chart has its sizes {}", quotedList(rule.sizes)));
    }
  }
  return idle;
}

std::optional<std::string> shopProblem(const Shop& shop, const Rules& rules,
                                       const UnitChoice& units) {
  const SpokenUnits spoken(units);
  const JsonNode written = shopNode(shop, nullptr, {});
  Reading reading;
  const JsonCursor::Source source{{}, &reading};
  try {
    JsonObject top = JsonCursor(source, written, {}).object();
    static_cast<void>(readShop(top, rules));
  } catch (const InputError& error) {
    const InputError::Details& details = error.details();
    const std::string place = shopPlaceWords(shop, details.where);
    const std::string what = worded("found {}, expected {}", details.found, details.expected);
    return place.empty() ? what : fmt::format("{}: {}", place, what);
  }
  return std::nullopt;
}

}  // namespace creaseline
