// SPDX-License-Identifier: MIT
// Sheets in another language: what is said changes, what is measured and what machines read does
// not. The witnesses are poppler's tools.
#include <catch2/catch.hpp>

#include "creaseline/catalogue/load.h"
#include "sheets/clear_text.h"
#include "sheets/page_code.h"
#include "sheets/pdf_probe.h"
#include "sheets/sheet_samples.h"
#include "sheets/text.h"
#include "support/spoken.h"

using namespace creaseline;
using namespace creaseline::literals;
using sheets::printed;

namespace {

// Longer than the English, as Spanish is, where the layout has least room.
const Phrasebook& spanish() {
  static const Phrasebook kBook = [] {
    Phrasebook::Content content;
    content.language = "es";
    content.decimalSeparator = ',';
    content.joints = {{"de el", "del"}};
    content.phrases = {
        {"100 mm long when printed at 100 %. If it measures otherwise, print again at “actual "
         "size”. The written numbers hold either way.",
         "Esta barra mide exactamente 100 mm si la hoja se imprime al 100 % de su tamaño. Si mide "
         "otra cosa, imprima la hoja de nuevo a «tamaño real». Los números escritos en la hoja "
         "valen en cualquier caso, mida lo que mida la barra."},
        {"%1, in %2 hoopings", "%1, en %2 puestas en bastidor"},
        {"= %1 of garment   scale 1 : %2   drawn: size %3",
         "= %1 de la prenda   escala del dibujo 1 : %2   dibujada aquí: la talla %3"},
        {"Align on", "Estabilizador"},
        {"Backing", "Estabilizador"},
        {"Centre chest", "Centro del pecho"},
        {"Drop", "Distancia"},
        {"Frame centre", "Centro del bastidor"},
        {"Front, seen from outside; collar on top",
         "Delantero de la prenda visto por fuera y extendido sobre la mesa; el cuello queda arriba "
         "y el bajo queda abajo"},
        {"Initials", "Inicialmente"},
        {"Name", "Denominación"},
        {"Order %1", "Pedido %1"},
        {"Placement sheets", "Hojas de colocación"},
        {"Run cards", "Fichas de tanda"},
        {"Thread, in sewing order; stitches",
         "Hilo que se usa, en secuencia de bordado, cada uno con sus puntadas"},
        {"from %1", "de %1"},
        {"page %1 of %2", "página %1 de %2"}};
    return Phrasebook(std::move(content));
  }();
  return kBook;
}

std::unique_ptr<sample::Sheets> written(const std::string& kind, Paper paper = Paper::A4) {
  return sample::written(sample::chestOrder(), sample::chestShop(), paper, kind);
}

QString textOf(const sample::Sheets& sheets) {
  QString text;
  for (int page = 1; page <= sheets.written.pages; ++page) {
    text += probe::pageText(sheets.pdf, page) + u'\n';
  }
  return text;
}

}  // namespace

TEST_CASE("sheets are printed in the language spoken", "[sheets][language]") {
  const auto english = textOf(*written("placement"));
  CHECK(english.contains(QStringLiteral("page 1 of")));
  CHECK(english.contains(QStringLiteral("DROP")));
  const Speaking speaking(spanish());
  const auto said = textOf(*written("placement"));
  for (const char* phrase : {"página 1 de", "Pedido 2026-118", "DISTANCIA", "Estabilizador",
                             "tamaño real", "escala del dibujo 1 : "}) {
    CAPTURE(phrase);
    CHECK(said.contains(QString::fromUtf8(phrase)));
  }
  for (const char* phrase : {"page 1 of", "DROP", "actual size", "Order 2026"}) {
    CAPTURE(phrase);
    CHECK_FALSE(said.contains(QString::fromUtf8(phrase)));
  }
}

TEST_CASE("rules read in a language are printed in it", "[sheets][language]") {
  static_cast<void>(sample::shippedRules());  // those of all other tests are English
  const Speaking speaking(spanish());
  const Rules rules = loadRules(findResources({}));
  const auto sheets = written("placement");
  const SheetContext context{sheets->plan, sheets->order, sheets->shop, rules, sample::kInches};
  const SheetDocument document = sheetSet(context, {{"placement"}, Paper::A4, {}});
  REQUIRE_FALSE(document.sections.empty());
  CHECK(document.sections.front().group == QStringLiteral("Hojas de colocación"));
  CHECK(document.sections.front().pages().front().title == QStringLiteral("Centro del pecho"));
}

TEST_CASE("longer texts of another language stay clear of edges and of each other",
          "[sheets][language]") {
  const Paper paper = GENERATE(Paper::A4, Paper::Letter);
  const Speaking speaking(spanish());
  for (const SheetKind& kind : sheetKinds()) {
    CAPTURE(kind.id);
    probe::requireClearText(written(kind.id, paper)->pdf);
  }
}

TEST_CASE("a word of a heading or a label is never split for want of room", "[sheets][language]") {
  const Speaking speaking(spanish());
  CHECK(textOf(*written("quality-check")).contains(QStringLiteral("Inicialmente")));
  CHECK(textOf(*written("run-cards")).contains(QStringLiteral("Estabilizador")));
  CHECK(textOf(*written("approval")).contains(QStringLiteral("Denominación")));
}

TEST_CASE("what is measured is the same in every language", "[sheets][language][scale]") {
  constexpr int kDots = 600;
  const Speaking speaking(spanish());
  const auto sheets = written("placement");
  CHECK(probe::checkBarLength(probe::raster(sheets->pdf, 1, kDots), kDots) ==
        Approx(100.0).margin(0.1));
  const auto templates = written("templates");
  CHECK(probe::checkBarLength(probe::raster(templates->pdf, 1, kDots), kDots) ==
        Approx(101.6).margin(0.1));
}

TEST_CASE("a code says the same in every language", "[sheets][language]") {
  const auto english = written("placement");
  const Speaking speaking(spanish());
  const auto said = written("placement");
  const auto aboutOf = [](const sample::Sheets& sheets) {
    const SheetContext context{sheets.plan, sheets.order, sheets.shop, sample::shippedRules(),
                               sample::kInches};
    return sheetSet(context, {{"placement"}, Paper::A4, {}}).sections.front().pages().front().about;
  };
  CHECK(aboutOf(*said) == aboutOf(*english));
  PlacementPlan plan = said->plan.placements.front();
  CHECK(pageCodePart(plan).isEmpty());
  plan.part.emplace();
  plan.part->number = 3;
  plan.part->of = 4;
  CHECK(pageCodePart(plan) == QStringLiteral(", part 3 of 4"));
  plan.part->cell = GridCell{CutDirection::Upright, 2, 1};
  CHECK(pageCodePart(plan) == QStringLiteral(", part 3 of 4 (column 2, row 1)"));
}

TEST_CASE("the PDF names its language, and kinds are named in it", "[sheets][language]") {
  const auto languageOf = [](const QString& pdf) {
    return probe::run(QStringLiteral("qpdf"),
                      {QStringLiteral("--json=2"), QStringLiteral("--json-key=qpdf"), pdf})
        .contains(QStringLiteral("\"/Lang\": \"u:es\""));
  };
  CHECK_FALSE(languageOf(written("placement")->pdf));
  const Speaking speaking(spanish());
  CHECK(languageOf(written("placement")->pdf));
  const auto& kinds = sheetKinds();
  const auto cards = std::find_if(kinds.begin(), kinds.end(),
                                  [](const SheetKind& kind) { return kind.id == "run-cards"; });
  REQUIRE(cards != kinds.end());
  CHECK(cards->name == QStringLiteral("Fichas de tanda"));
}

TEST_CASE("places are filled all at once, and words that meet grow together",
          "[sheets][language]") {
  const std::string tricky = "%2";
  CHECK(printed("%1, in %2 hoopings", tricky, 3) == QStringLiteral("%2, in 3 hoopings"));
  CHECK(sheets::decimalText(2.5) == QStringLiteral("2.5"));
  const Speaking speaking(spanish());
  CHECK(printed("%1, in %2 hoopings", tricky, 3) == QStringLiteral("%2, en 3 puestas en bastidor"));
  CHECK(printed("from %1", std::string("el bajo")) == QStringLiteral("del bajo"));
  CHECK(sheets::decimalText(2.5) == QStringLiteral("2,5"));
}
