// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <mutex>
#include <stdexcept>

#include "creaseline/sheets/sheet_kind.h"
#include "sheets/sheet_kind_list.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::printed;
using sheets::toQString;

namespace {

// A page that lies alone on the floor says whose it is.
QString ownerText(const Order& order, const Shop& shop) {
  QStringList parts;
  parts << printed("Order %1", order.id);
  for (const std::string& part : {order.title, order.customer}) {
    if (!part.empty()) {
      parts << toQString(part);
    }
  }
  if (!order.due.empty()) {
    parts << printed("due %1", order.due);
  }
  if (!shop.name.empty()) {
    parts << toQString(shop.name);
  }
  // Where the line wraps, the point stays at its end.
  return parts.join(QStringLiteral("\u00a0· "));
}

bool chosen(const SheetKind& kind, const SheetChoice& choice) {
  if (choice.kinds.empty()) {
    return kind.usual;
  }
  return std::find(choice.kinds.begin(), choice.kinds.end(), kind.id) != choice.kinds.end();
}

void refuseUnknown(const SheetChoice& choice) {
  for (const std::string& id : choice.kinds) {
    const auto& kinds = sheetKinds();
    if (std::none_of(kinds.begin(), kinds.end(),
                     [&](const SheetKind& kind) { return kind.id == id; })) {
      throw std::invalid_argument("no kind of sheet is named '" + id + "'");
    }
  }
}

}  // namespace

const std::vector<SheetKind>& sheetKinds() {
  // Their names are said when they are listed, and stay where they are for all who look at them.
  static std::mutex guard;
  static std::map<std::string, std::vector<SheetKind>> ofLanguage;
  const std::lock_guard lock(guard);
  const auto [entry, isNew] = ofLanguage.try_emplace(spokenLanguage());
  if (isNew) {
    std::vector<SheetKind>& kinds = entry->second;
    kinds = listSheetKinds();
    std::sort(kinds.begin(), kinds.end(),
              [](const SheetKind& a, const SheetKind& b) { return a.position < b.position; });
  }
  return entry->second;
}

SheetDocument sheetSet(const SheetContext& context, const SheetChoice& choice) {
  refuseUnknown(choice);
  SheetDocument document;
  document.head.title = printed("Sheets, order %1", context.order.id);
  document.head.order = ownerText(context.order, context.shop);
  document.head.orderId = toQString(context.order.id);
  document.head.paper = choice.paper;
  SheetContext shown = context;
  shown.prices = context.prices && choice.prices;
  for (const SheetKind& kind : sheetKinds()) {
    if (!chosen(kind, choice)) {
      continue;
    }
    for (SheetSection& section : kind.sections(shown, document.head, choice.variants)) {
      section.group = kind.name;
      document.sections.push_back(std::move(section));
    }
  }
  return document;
}

}  // namespace creaseline
