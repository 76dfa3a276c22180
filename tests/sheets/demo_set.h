// SPDX-License-Identifier: MIT
// The demo order with every kind of sheet, in the language spoken.
#pragma once

#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include "creaseline/catalogue/load.h"
#include "sheets/pdf_probe.h"
#include "sheets/sheet_samples.h"

namespace creaseline {

struct DemoSet {
  const Rules& rules;
  Order order = loadOrder(SOURCE_DIR "/demo/regatta.order.json", rules).value;
  Shop shop = loadShop(SOURCE_DIR "/demo/workshop.shop.json", rules).value;
  Plan plan = planOrder(order, shop, rules);
  QTemporaryDir folder;
  QString pdf = folder.filePath(QStringLiteral("set.pdf"));
  int pages = 0;

  // The rules, read in the language spoken, must outlive it.
  DemoSet(Paper paper, const Rules& read) : rules(read) { pages = write(plan, paper, pdf); }

  [[nodiscard]] int write(const Plan& drawn, Paper paper, const QString& path) const {
    SheetChoice choice;
    choice.paper = paper;
    for (const SheetKind& kind : sheetKinds()) {
      choice.kinds.push_back(kind.id);
    }
    const SheetContext context{drawn, order, shop, rules, shop.units};
    return writeSheets(sheetSet(context, choice), path.toStdString()).pages;
  }
};

inline QString textOf(const probe::PageWords& page) {
  QStringList words;
  for (const probe::Word& word : page.words) {
    words << word.text;
  }
  return words.join(u' ');
}

}  // namespace creaseline
