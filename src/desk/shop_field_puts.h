// SPDX-License-Identifier: MIT
// What the forms of the shop's entries have in common: reading and writing one member of one entry.
#pragma once

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "creaseline/catalogue/field_check.h"
#include "desk/form_parts.h"
#include "desk/shop_form.h"

namespace creaseline::desk {

// Every enumerator as a choice; `words` turns its file name into what people read.
template <class E, class Words>
[[nodiscard]] auto choicesOf(Words words) {
  std::vector<TickMenu::Choice> choices;
  for (const auto& [value, name] : EnumNames<E>::names) {
    choices.push_back({words(value), toQString(name)});
  }
  return choices;
}

template <class E>
[[nodiscard]] E enumOf(const QString& key) {
  return enumFromName<E>(toUtf8(key)).value_or(E{});
}

// A name on one line that is not empty.
template <class Entry, class EntryOf>
[[nodiscard]] auto namePut(EntryOf entryOf, std::string Entry::*member) {
  return [=](Shop& shop, const QString& text) -> std::optional<QString> {
    const Result<std::string> label = checkLabel(toUtf8(text), false);
    if (label) {
      entryOf(shop).*member = *label;
    }
    return problemOf(label);
  };
}

// A whole number; the range is the reader's.
template <class Entry, class EntryOf>
[[nodiscard]] auto numberPut(EntryOf entryOf, int Entry::*member, const QString& refusal) {
  return [=](Shop& shop, const QString& text) -> std::optional<QString> {
    bool isNumber = false;
    const int number = text.toInt(&isNumber);
    if (!isNumber) {
      return refusal;
    }
    entryOf(shop).*member = number;
    return std::nullopt;
  };
}

// An id on one line; that it is there once is the reader's to say.
template <class EntryOf>
[[nodiscard]] auto idPut(EntryOf entryOf) {
  return [=](Shop& shop, const QString& text) -> std::optional<QString> {
    const Result<std::string> label = checkLabel(toUtf8(text), false);
    if (label) {
      auto& id = entryOf(shop).id;
      id = std::decay_t<decltype(id)>(*label);
    }
    return problemOf(label);
  };
}

}  // namespace creaseline::desk
