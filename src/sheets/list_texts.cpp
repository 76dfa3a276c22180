// SPDX-License-Identifier: MIT
#include "sheets/list_texts.h"

#include "creaseline/planning/counting.h"
#include "sheets/text.h"

namespace creaseline {

using sheets::capitalised;
using sheets::toQString;

QString countText(std::int64_t number) {
  return toQString(grouped(number));
}

QString countText(int number, const char* one, const char* many) {
  return toQString(counted(number, one, many));
}

QString quantityText(const SizeName& size, int quantity) {
  return QStringLiteral("%1\u00A0×\u00A0%2").arg(toQString(size.text())).arg(quantity);
}

QString oneLine(const std::string& text) {
  return toQString(text).simplified();
}

void addHeld(SheetList& list, const std::vector<HeldGarments>& held) {
  if (held.empty()) {
    return;
  }
  list.heading(QStringLiteral("Not to be sewn as ordered"));
  for (const HeldGarments& entry : held) {
    list.marked(Severity::Stop,
                QStringLiteral("Line %1, %2, %3: %4, %5")
                    .arg(toQString(entry.lineId), oneLine(entry.blank), toQString(entry.location),
                         toQString(entry.sizes), countText(entry.garments, "garment", "garments")),
                typography::kStrong);
    for (const std::string& reason : entry.reasons) {
      list.under(capitalised(toQString(reason)));
    }
    for (const std::string& remedy : entry.remedies) {
      list.under(QStringLiteral("Checked remedy: ") + toQString(remedy));
    }
    if (entry.remedies.empty()) {
      list.under(QStringLiteral("No remedy was found. Ask before going on."));
    }
  }
}

}  // namespace creaseline
