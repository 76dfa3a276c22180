// SPDX-License-Identifier: MIT
// The whole set of the demo order in Spanish as shipped: what must hold on each page.
#include <catch2/catch.hpp>

#include "creaseline/catalogue/load.h"
#include "creaseline/catalogue/load_phrasebook.h"
#include "sheets/clear_text.h"
#include "sheets/pdf_probe.h"
#include "sheets/sheet_samples.h"
#include "support/spoken.h"

using namespace creaseline;

TEST_CASE("the demo's whole set in Spanish is said in it, clear of edges and of each other",
          "[sheets][set][language]") {
  const std::filesystem::path resources = findResources({});
  static const Phrasebook book = loadPhrasebook(resources, "es");
  const Speaking speaking(book);
  const Rules rules = loadRules(resources);
  const Order order = loadOrder(SOURCE_DIR "/demo/regatta.order.json", rules).value;
  const Shop shop = loadShop(SOURCE_DIR "/demo/workshop.shop.json", rules).value;
  const Plan plan = planOrder(order, shop, rules);
  const Paper paper = GENERATE(Paper::A4, Paper::Letter);
  SheetChoice choice;
  choice.paper = paper;
  for (const SheetKind& kind : sheetKinds()) {
    choice.kinds.push_back(kind.id);
  }
  const QTemporaryDir folder;
  const QString pdf = folder.filePath(QStringLiteral("set.pdf"));
  const SheetContext context{plan, order, shop, rules, shop.units};
  const int pages = writeSheets(sheetSet(context, choice), pdf.toStdString()).pages;
  probe::requireClearText(pdf);
  const std::vector<probe::PageWords> words = probe::words(pdf);
  REQUIRE(static_cast<int>(words.size()) == pages);
  for (std::size_t page = 0; page < words.size(); ++page) {
    QStringList all;
    for (const probe::Word& word : words[page].words) {
      all << word.text;
    }
    const QString text = all.join(u' ');
    CAPTURE(page + 1);
    CHECK(text.contains(QStringLiteral("página %1 de %2").arg(page + 1).arg(pages)));
    CHECK(text.contains(QStringLiteral("Pedido 2026-118")));
    CHECK(text.contains(QStringLiteral("barra de control, 100 mm")));
    CHECK_FALSE(text.contains(QStringLiteral(" the ")));  // of the program's own sentences
  }
}
