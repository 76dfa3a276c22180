// SPDX-License-Identifier: MIT
// Summary, pick list, run cards, quality check and approval as a reader sees them: poppler's tools
// are the witnesses.
#include <QRegularExpression>
#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "creaseline/planning/quality_check.h"
#include "creaseline/planning/run_card.h"
#include "sheets/clear_text.h"
#include "sheets/pdf_probe.h"
#include "sheets/sheet_samples.h"

using namespace creaseline;
using namespace creaseline::literals;
using creaseline::probe::requireClearText;
using sample::kInches;

namespace {

const std::vector<std::string> kKinds = {"order-summary", "pick-list", "run-cards", "quality-check",
                                         "approval"};

std::vector<QString> pageTexts(const sample::Sheets& sheets) {
  std::vector<QString> texts;
  for (int page = 1; page <= sheets.written.pages; ++page) {
    texts.push_back(
        probe::run(QStringLiteral("pdftotext"),
                   {QStringLiteral("-layout"), QStringLiteral("-f"), QString::number(page),
                    QStringLiteral("-l"), QString::number(page), sheets.pdf, QStringLiteral("-")}));
  }
  return texts;
}

QString simplified(const std::vector<QString>& texts) {
  QString all;
  for (const QString& text : texts) {
    all += text + u' ';
  }
  // Compatible forms: the font sets some letters as ligatures, and pdftotext says so.
  return all.normalized(QString::NormalizationForm_KC).simplified();
}

// Two lines: one place that is sewn, one that is not; the other sewn on both.
Order mixedOrder() {
  Order order = sample::chestOrder();
  order.lines[0].sizes[1].quantity = 3;
  order.designs.push_back(sample::design("wide", 300_mm, 220_mm));
  order.designs.push_back(sample::design("mark", 80_mm, 60_mm));
  OrderPlacement back;
  back.location = LocationId("full-back");
  back.design = DesignId("wide");
  OrderLine second = order.lines[0];
  second.id = "2";
  order.lines[0].placements.push_back(back);
  back.location = LocationId("left-chest");
  back.design = DesignId("mark");
  second.placements.push_back(back);
  second.sizes = {{SizeName("M"), 12}, {SizeName("XL"), 25}};
  order.lines.push_back(second);
  return order;
}

RunPlan runsOf(const sample::Sheets& sheets) {
  return planRuns(sheets.plan, {sheets.order, sheets.shop, sample::shippedRules()}, kInches);
}

Order namedOrder(const std::string& blank, const std::string& colour, const std::string& thread,
                 const std::string& title) {
  Order order = sample::chestOrder();
  order.title = title;
  order.blanks[0].name = blank;
  order.blanks[0].colours[0].name = colour;
  order.lines[0].colour = colour;
  order.lines[0].note = title;
  order.designs[0].name = title;
  order.designs[0].blocks[0].thread = thread;
  return order;
}

}  // namespace

TEST_CASE("text of each kind keeps off the edge and off other text", "[sheets][pdf][lists]") {
  const std::string kind = GENERATE_COPY(from_range(kKinds));
  const Paper paper = GENERATE(Paper::A4, Paper::Letter);
  CAPTURE(kind);
  SECTION("on an ordinary order") {
    requireClearText(sample::written(mixedOrder(), sample::chestShop(), paper, kind)->pdf);
  }
  SECTION("with names of 60 characters, 30 thread blocks and 12 sizes") {
    requireClearText(sample::written(sample::longOrder(), sample::chestShop(), paper, kind)->pdf);
  }
  SECTION("with long German and Spanish words") {
    const Order german =
        namedOrder("Kapuzensweatshirt für Donaudampfschifffahrtsgesellschaften",
                   "Nachtblaumeliertdunkelgraugestreift", "Regenbogenfarbenübergangsstickgarn",
                   "Freiwillige Feuerwehrhauptverwaltungsangelegenheiten");
    requireClearText(sample::written(german, sample::chestShop(), paper, kind)->pdf);
    const Order spanish = namedOrder("sudadera con capucha afelpada contrarrevolucionariamente",
                                     "azul ultramarino otorrinolaringológico",
                                     "hilo desproporcionadamente anaranjado",
                                     "Asociación Interdepartamental de Electroencefalografistas");
    requireClearText(sample::written(spanish, sample::chestShop(), paper, kind)->pdf);
  }
}

TEST_CASE("every garment that may be sewn stands once on the run cards of its place",
          "[sheets][pdf][lists]") {
  const auto sheets = sample::written(mixedOrder(), sample::chestShop(), Paper::A4, "run-cards");
  const RunPlan runs = runsOf(*sheets);
  REQUIRE(runs.cards.size() >= 2);
  REQUIRE_FALSE(runs.held.empty());
  static const QRegularExpression kCard(QStringLiteral("Run (\\d+): "));
  static const QRegularExpression kGarment(
      QStringLiteral("^ *(\\d+) +(YM|M|XL|2XL) +(\\d+) of (\\d+) "),
      QRegularExpression::MultilineOption);
  std::map<int, std::multiset<QString>> printed;  // by card
  for (const QString& text : pageTexts(*sheets)) {
    const int card = kCard.match(text).captured(1).toInt();
    auto garments = kGarment.globalMatch(text);
    if (garments.hasNext()) {  // a table's headings stand on each of its pages
      CHECK(text.contains(QRegularExpression(QStringLiteral("Sewn +Line +Size +Piece"))));
    }
    while (garments.hasNext()) {
      const QRegularExpressionMatch match = garments.next();
      printed[card].insert(match.captured(1) + u' ' + match.captured(2) + u' ' + match.captured(3) +
                           u'/' + match.captured(4));
    }
  }
  int count = 0;
  for (const RunCard& card : runs.cards) {
    CAPTURE(card.number);
    std::multiset<QString> expected;
    for (const RunGarment& garment : card.toSew) {
      expected.insert(QStringLiteral("%1 %2 %3/%4")
                          .arg(QString::fromStdString(garment.lineId),
                               QString::fromStdString(garment.size.text()))
                          .arg(garment.number)
                          .arg(garment.of));
    }
    CHECK(printed[card.number] == expected);
    count += static_cast<int>(printed[card.number].size());
  }
  int held = 0;
  for (const HeldGarments& entry : runs.held) {
    held += entry.garments;
  }
  // Line 1: 6 garments at two places; line 2: 37 at two.
  CHECK(count + held == 2 * 6 + 2 * 37);
  CHECK(printed.size() == runs.cards.size());
}

TEST_CASE("a run card says how to set up and what to do, block by block", "[sheets][pdf][lists]") {
  Order order = sample::chestOrder();
  order.designs[0].pieces = {{"K", "navy twill", 60_mm, 50_mm}};
  order.designs[0].blocks = {{"white", {255, 255, 255}, 101, BlockKind::PlacementLine, "K"},
                             {"white", {255, 255, 255}, 202, BlockKind::TackDown, "K"},
                             {"red", {200, 0, 0}, 3030, BlockKind::Cover, "K"}};
  order.designs[0].stitches = 3333;
  const auto sheets = sample::written(order, sample::chestShop(), Paper::A4, "run-cards");
  const QString text = simplified(pageTexts(*sheets));
  INFO(text.toStdString());
  for (const char* words :
       {"Check the trace before sewing", "Start: the design's centre on the frame's centre",
        "left and right of", "The collar seam at the frame's top", "700 stitches a minute",
        "frame a", "1 1 white Placement line of piece K 101",
        "Stop. Piece K: lay navy twill over the line", "2 1 white Tack down piece K 202",
        "Stop. Piece K: trim in the frame with curved scissors",
        "3 2 red Cover the edge of piece K 3,030", "3,333 stitches at 700 a minute",
        "common practice, no source"}) {
    CAPTURE(words);
    CHECK(text.contains(QString::fromUtf8(words)));
  }
}

TEST_CASE("none of 30 thread blocks is lost on a run card", "[sheets][pdf][lists]") {
  const auto sheets =
      sample::written(sample::longOrder(), sample::chestShop(), Paper::Letter, "run-cards");
  const RunPlan runs = runsOf(*sheets);
  REQUIRE(runs.cards.size() == 1);
  static const QRegularExpression kBlock(QStringLiteral("^ *(\\d+) .* 216 *$"),
                                         QRegularExpression::MultilineOption);
  std::vector<int> blocks;
  for (const QString& text : pageTexts(*sheets)) {
    auto found = kBlock.globalMatch(text);
    while (found.hasNext()) {
      blocks.push_back(found.next().captured(1).toInt());
    }
  }
  REQUIRE(blocks.size() == 30);
  for (int block = 1; block <= 30; ++block) {
    CHECK(blocks[static_cast<std::size_t>(block) - 1] == block);
  }
}

TEST_CASE("the pick list's sums are the order's", "[sheets][pdf][lists]") {
  const auto sheets = sample::written(mixedOrder(), sample::chestShop(), Paper::A4, "pick-list");
  const QString text = simplified(pageTexts(*sheets));
  INFO(text.toStdString());
  CHECK(text.contains(QStringLiteral("Blanks: 43 garments")));
  // Both lines are of one blank and colour: sizes add up.
  static const QRegularExpression kSize(QStringLiteral("(YM|M|XL|2XL) × (\\d+)"));
  std::map<QString, int> sizes;
  auto found = kSize.globalMatch(text);
  while (found.hasNext()) {
    const QRegularExpressionMatch match = found.next();
    CHECK(sizes.emplace(match.captured(1), match.captured(2).toInt()).second);
  }
  CHECK(sizes == std::map<QString, int>{{QStringLiteral("YM"), 1},
                                        {QStringLiteral("M"), 15},
                                        {QStringLiteral("XL"), 26},
                                        {QStringLiteral("2XL"), 1}});
  const RunPlan runs = runsOf(*sheets);
  CHECK(text.contains(QStringLiteral("window) 1 %1").arg(runs.hoopings)));
  CHECK(text.contains(QStringLiteral("Of these wait")));
  CHECK(text.contains(QStringLiteral("white")));
}

TEST_CASE("the summary says how much work it is and what must not be sewn",
          "[sheets][pdf][lists]") {
  const auto sheets =
      sample::written(mixedOrder(), sample::chestShop(), Paper::A4, "order-summary");
  const RunPlan runs = runsOf(*sheets);
  const QString text = simplified(pageTexts(*sheets));
  INFO(text.toStdString());
  CHECK(text.contains(QStringLiteral("2026-12-04")));
  CHECK(text.contains(QString::fromStdString(formatDuration(runs.total))));
  CHECK(text.contains(
      QStringLiteral("%1 hoopings in %2 runs").arg(runs.hoopings).arg(runs.cards.size())));
  CHECK(text.contains(QStringLiteral("Not to be sewn as ordered")));
  CHECK(text.contains(QStringLiteral("Line 1, sample pullover-hoodie, Full back")));
  CHECK(text.contains(QStringLiteral("0 of 6")));

  const auto fine =
      sample::written(sample::chestOrder(), sample::chestShop(), Paper::A4, "order-summary");
  CHECK_FALSE(simplified(pageTexts(*fine)).contains(QStringLiteral("Not to be sewn")));
}

TEST_CASE("the quality check states drop and what is allowed for each size",
          "[sheets][pdf][lists]") {
  const auto sheets =
      sample::written(mixedOrder(), sample::chestShop(), Paper::A4, "quality-check");
  const QualityCheck check =
      qualityCheck(sheets->plan, {sheets->order, sheets->shop, sample::shippedRules()}, kInches);
  const QString text = simplified(pageTexts(*sheets));
  INFO(text.toStdString());
  CHECK(text.contains(QStringLiteral("Tolerance 1/4 in (common practice, no source)")));
  REQUIRE(check.parts.size() >= 2);
  for (const QualityPart& part : check.parts) {
    for (const QualityRow& row : part.rows) {
      const QString line = QStringLiteral("%1 %2 %3")
                               .arg(QString::fromStdString(row.size.text()),
                                    QString::fromStdString(formatLength(row.drop, kInches)),
                                    QString::fromStdString(row.dropAllowed));
      CAPTURE(line.toStdString());
      CHECK(text.contains(line));
    }
  }
}

TEST_CASE("the customer approves one page a line, with nothing of the frame on it",
          "[sheets][pdf][lists]") {
  const auto sheets = sample::written(mixedOrder(), sample::chestShop(), Paper::Letter, "approval");
  const std::vector<QString> pages = pageTexts(*sheets);
  REQUIRE(pages.size() == 2);
  for (const QString& page : pages) {
    const QString text = simplified({page});
    INFO(text.toStdString());
    for (const char* words : {"Centre chest", "sample pullover-hoodie", "navy", "white",
                              "4 3/4 in wide", "Colours on paper and screen differ from thread",
                              "approved", "change:", "Name", "Date", "Signature"}) {
      CAPTURE(words);
      CHECK(text.contains(QString::fromUtf8(words)));
    }
    CHECK_FALSE(text.contains(QStringLiteral("bracket")));
    CHECK_FALSE(text.contains(QStringLiteral("frame a")));
  }
  CHECK(pages[0].contains(QStringLiteral("Full back")));
  CHECK(pages[0].contains(QStringLiteral("Still to be settled")));
  CHECK(simplified({pages[1]}).contains(QStringLiteral("XL × 25")));
}

TEST_CASE("a swatch always stands beside its name", "[sheets][pdf][lists]") {
  Order order = sample::chestOrder();
  order.designs[0].blocks[0].thread = "vermilion";
  order.designs[0].blocks[0].colour = {255, 0, 0};
  const auto sheets = sample::written(order, sample::chestShop(), Paper::A4, "pick-list");
  constexpr int kDots = 150;
  const std::vector<probe::PageWords> pages = probe::words(sheets->pdf);
  bool seen = false;
  for (std::size_t page = 0; page < pages.size(); ++page) {
    for (const probe::Word& word : pages[page].words) {
      if (word.text != QStringLiteral("vermilion")) {
        continue;
      }
      seen = true;
      const QImage gray = probe::raster(sheets->pdf, static_cast<int>(page) + 1, kDots);
      const double perMm = kDots / 25.4;
      const int y = static_cast<int>(word.box.center().y() * perMm);
      const int x = static_cast<int>((word.box.left() - 4.0) * perMm);
      const int tone = gray.constScanLine(y)[x];
      CAPTURE(tone);
      CHECK(tone > 30);  // red in grey: neither the paper nor the swatch's black border
      CHECK(tone < 150);
    }
  }
  CHECK(seen);
}
