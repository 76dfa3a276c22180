// SPDX-License-Identifier: MIT
#include "sheets/list_texts.h"

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
using sheets::printed;
using sheets::toQString;

QString countText(std::int64_t number) {
  return toQString(grouped(number));
}

QString countText(int number, std::string_view one, std::string_view many) {
  return toQString(counted(number, one, many));
}

QString quantityText(const SizeName& size, int quantity) {
  return QStringLiteral("%1\u00A0×\u00A0%2").arg(toQString(size.text())).arg(quantity);
}

QString colouredName(const std::string& name, const std::string& colour) {
  return colour.empty() ? oneLine(name) : oneLine(name) + QStringLiteral(", ") + oneLine(colour);
}

QString oneLine(const std::string& text) {
  return toQString(text).simplified();
}

void addHeld(SheetList& list, const std::vector<HeldGarments>& held) {
  if (held.empty()) {
    return;
  }
  list.heading(printed("Not to be sewn as ordered"));
  for (const HeldGarments& entry : held) {
    list.marked(Severity::Stop,
                printed("Line %1, %2, %3: %4, %5", entry.lineId, oneLine(entry.blank),
                        entry.location, entry.sizes,
                        countText(entry.garments, toBeWorded("garment"), toBeWorded("garments"))),
                typography::kStrong);
    for (const std::string& reason : entry.reasons) {
      list.under(capitalised(toQString(reason)));
    }
    for (const std::string& remedy : entry.remedies) {
      list.under(printed("Checked remedy: %1", remedy));
    }
    if (entry.remedies.empty()) {
      list.under(printed("No remedy was found. Ask before going on."));
    }
  }
}

}  // namespace creaseline
