// SPDX-License-Identifier: MIT
// The whole set of the demo order, of every kind: what must hold on each page whatever it shows.
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "creaseline/planning/plan_reader.h"
#include "creaseline/planning/report.h"
#include "sheets/clear_text.h"
#include "sheets/demo_set.h"

using namespace creaseline;

namespace {

QByteArray bytesOf(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

// Text sizes as poppler finds them, in thirds of a point.
std::set<int> textSizes(const QString& pdf) {
  const QString text =
      probe::run(QStringLiteral("pdftohtml"),
                 {QStringLiteral("-xml"), QStringLiteral("-i"), QStringLiteral("-stdout"),
                  QStringLiteral("-zoom"), QStringLiteral("3"), pdf});
  static const QRegularExpression kSize(QStringLiteral("<fontspec[^>]*size=\"([0-9]+)\""));
  std::set<int> sizes;
  auto found = kSize.globalMatch(text);
  while (found.hasNext()) {
    sizes.insert(found.next().captured(1).toInt());
  }
  return sizes;
}

}  // namespace

TEST_CASE("the set has every kind, in three sizes of text, clear of edges and of each other",
          "[sheets][set]") {
  const Paper paper = GENERATE(Paper::A4, Paper::Letter);
  const DemoSet set(paper, sample::shippedRules());
  const std::set<int> sizes = textSizes(set.pdf);
  CHECK(sizes == std::set<int>{3 * 9, 3 * 13, 3 * 26});
  CHECK(*sizes.rbegin() >= 3 * 24);  // read at arm's length
  probe::requireClearText(set.pdf);
  CHECK(QFileInfo(set.pdf).size() <= qint64{30'000} * set.pages);
  probe::run(QStringLiteral("qpdf"), {QStringLiteral("--check"), set.pdf});
}

TEST_CASE("every page says whose it is and which of how many", "[sheets][set]") {
  const DemoSet set(Paper::A4, sample::shippedRules());
  REQUIRE(set.pages > 100);
  const std::vector<probe::PageWords> pages = probe::words(set.pdf);
  REQUIRE(static_cast<int>(pages.size()) == set.pages);
  for (std::size_t page = 0; page < pages.size(); ++page) {
    const QString text = textOf(pages[page]);
    CAPTURE(page + 1);
    CHECK(text.contains(QStringLiteral("page %1 of %2").arg(page + 1).arg(set.pages)));
    CHECK(text.contains(QStringLiteral("Order 2026-118")));
    CHECK(text.contains(QStringLiteral("Ostermere Rowing Club")));
    CHECK(text.contains(QStringLiteral("Millrace Stitchroom")));
    CHECK(text.contains(QStringLiteral("100 mm")));
  }
}

TEST_CASE("a plan read from its file gives the same pages, byte for byte", "[sheets][set]") {
  const DemoSet set(Paper::A4, sample::shippedRules());
  const std::string text = jsonReport(set.plan, {set.order, set.shop, sample::shippedRules()});
  const Plan read = readPlan(text, "plan.json", set.order, set.shop, sample::shippedRules());
  const QString again = set.folder.filePath(QStringLiteral("again.pdf"));
  CHECK(set.write(read, Paper::A4, again) == set.pages);
  CHECK(bytesOf(again) == bytesOf(set.pdf));
}

TEST_CASE("sizes of a design for several lines come back from a plan's file to the same pages",
          "[sheets][set]") {
  const Rules& rules = sample::shippedRules();
  Order order = loadOrder(SOURCE_DIR "/demo/regatta.order.json", rules).value;
  order.lines.resize(2);
  for (OrderLine& line : order.lines) {  // the juniors' monogram as wide as the rowers'
    line.placements[0].scale = 1.0;
  }
  const Shop shop = loadShop(SOURCE_DIR "/demo/workshop.shop.json", rules).value;
  const Plan made = planOrder(order, shop, rules);
  REQUIRE(std::any_of(made.findings.begin(), made.findings.end(), [](const Finding& finding) {
    return finding.code == FindingCode::OneSizeDoesNotServeAll && finding.wholeOrder;
  }));
  const Plan read =
      readPlan(jsonReport(made, {order, shop, rules}), "plan.json", order, shop, rules);
  const QTemporaryDir folder;
  SheetChoice choice;
  for (const SheetKind& kind : sheetKinds()) {
    choice.kinds.push_back(kind.id);
  }
  const auto written = [&](const Plan& plan, const QString& name) {
    const QString path = folder.filePath(name);
    writeSheets(sheetSet({plan, order, shop, rules, shop.units}, choice), path.toStdString());
    return path;
  };
  const QString pdf = written(made, QStringLiteral("made.pdf"));
  CHECK(bytesOf(written(read, QStringLiteral("read.pdf"))) == bytesOf(pdf));
  QString words;
  for (const probe::PageWords& page : probe::words(pdf)) {
    words += textOf(page) + u' ';
  }
  CHECK(words.contains(QStringLiteral("line by line they need 2 sizes of it, together 1")));
}
