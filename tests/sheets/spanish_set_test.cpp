// SPDX-License-Identifier: MIT
// The whole set of the demo order in Spanish as shipped: what must hold on each page.
#include <catch2/catch.hpp>

#include "creaseline/catalogue/load_phrasebook.h"
#include "sheets/clear_text.h"
#include "sheets/demo_set.h"
#include "support/spoken.h"

using namespace creaseline;

TEST_CASE("the demo's whole set in Spanish is said in it, clear of edges and of each other",
          "[sheets][set][language]") {
  const std::filesystem::path resources = findResources({});
  static const Phrasebook book = loadPhrasebook(resources, "es");
  const Speaking speaking(book);
  const Rules rules = loadRules(resources);
  const DemoSet set(GENERATE(Paper::A4, Paper::Letter), rules);
  probe::requireClearText(set.pdf);
  const std::vector<probe::PageWords> words = probe::words(set.pdf);
  REQUIRE(static_cast<int>(words.size()) == set.pages);
  for (std::size_t page = 0; page < words.size(); ++page) {
    const QString text = textOf(words[page]);
    CAPTURE(page + 1);
    CHECK(text.contains(QStringLiteral("página %1 de %2").arg(page + 1).arg(set.pages)));
    CHECK(text.contains(QStringLiteral("Pedido 2026-118")));
    CHECK(text.contains(QStringLiteral("barra de control, 100 mm")));
    CHECK_FALSE(text.contains(QStringLiteral(" the ")));  // of the program's own sentences
  }
}
