// SPDX-License-Identifier: MIT
// Money on paper: on the owner's summary and nowhere else.
#include <catch2/catch.hpp>

#include "creaseline/planning/cost.h"
#include "sheets/clear_text.h"
#include "sheets/pdf_probe.h"
#include "sheets/sheet_samples.h"

using namespace creaseline;
using namespace creaseline::literals;
using sample::kInches;

namespace {

Money minor(std::int64_t units) {
  return Money::fromMinorUnits(units);
}

// All that a chest order needs has a rate, in a currency whose code no other word holds.
Shop ratedShop() {
  Shop shop = sample::chestShop();
  Rates rates;
  rates.currency = {"CHF", 2};
  rates.labour = minor(3'000);
  rates.machine = minor(1'100);
  rates.setUp = minor(2'500);
  rates.markup = Percent::fromHundredths(1'250);
  shop.rates = rates;
  return shop;
}

Order pricedOrder() {
  Order order = sample::chestOrder();
  order.blanks[0].price = Price{minor(1'795), {"CHF", 2}};
  return order;
}

QString textOf(const QString& pdf) {
  return probe::run(QStringLiteral("pdftotext"),
                    {QStringLiteral("-layout"), pdf, QStringLiteral("-")})
      .normalized(QString::NormalizationForm_KC)
      .simplified();
}

bool showsMoney(const QString& text) {
  return text.contains(QStringLiteral("CHF")) ||
         text.contains(QStringLiteral("cost"), Qt::CaseInsensitive) ||
         text.contains(QStringLiteral("17.95"));
}

}  // namespace

TEST_CASE("the summary shows the cost as it is reckoned, and what is not counted",
          "[sheets][pdf][cost]") {
  const auto sheets = sample::written(pricedOrder(), ratedShop(), Paper::A4, "order-summary");
  const QString text = textOf(sheets->pdf);
  const ReportContext context{sheets->order, sheets->shop, sample::shippedRules()};
  const RunPlan runs = planRuns(sheets->plan, context, kInches);
  const auto cost = orderCost(sheets->plan, runs, context, kInches);
  REQUIRE(cost);
  CHECK(text.contains(QStringLiteral("Cost, for the owner")));
  CHECK(text.contains(QStringLiteral("In CHF")));
  const auto shows = [&](Money amount) {
    return text.contains(QString::fromStdString(amountText(amount, cost->currency)));
  };
  CHECK(shows(cost->total));
  REQUIRE(cost->items.size() == 5);
  for (const CostItem& item : cost->items) {
    CAPTURE(nameOf(item.kind));
    CHECK(shows(item.amount));
    CHECK(text.contains(QString::fromStdString(costPhrase(item.kind))));
  }
  CHECK(shows(cost->lines[0].perGarment));
  REQUIRE_FALSE(cost->complete());  // thread has no price
  CHECK(text.contains(QStringLiteral("Total, incomplete")));
  CHECK(text.count(QStringLiteral("Not counted:")) ==
        static_cast<qsizetype>(cost->notCounted.size()));
  probe::requireClearText(sheets->pdf);
}

TEST_CASE("no sheet but the summary shows money", "[sheets][pdf][cost]") {
  for (const SheetKind& kind : sheetKinds()) {
    CAPTURE(kind.id);
    const auto sheets = sample::written(pricedOrder(), ratedShop(), Paper::A4, kind.id);
    CHECK(showsMoney(textOf(sheets->pdf)) == (kind.id == "order-summary"));
  }
}

TEST_CASE("the summary shows no money without rates, or where it is to be left off",
          "[sheets][pdf][cost]") {
  const auto without =
      sample::written(pricedOrder(), sample::chestShop(), Paper::A4, "order-summary");
  CHECK_FALSE(showsMoney(textOf(without->pdf)));
  const auto sheets = sample::written(pricedOrder(), ratedShop(), Paper::A4, "order-summary");
  SheetChoice choice;
  choice.kinds = {"order-summary"};
  choice.prices = false;
  const SheetContext context{sheets->plan, sheets->order, sheets->shop, sample::shippedRules(),
                             kInches};
  const QString pdf = sheets->folder.filePath(QStringLiteral("left-off.pdf"));
  writeSheets(sheetSet(context, choice), pdf.toStdString());
  CHECK_FALSE(showsMoney(textOf(pdf)));
}

TEST_CASE("a long cost keeps off the edge and off other text", "[sheets][pdf][cost]") {
  Order order = sample::longOrder();
  order.blanks[0].price = Price{minor(Money::kMostMinorUnits), {"CHF", 2}};
  const Paper paper = GENERATE(Paper::A4, Paper::Letter);
  probe::requireClearText(sample::written(order, ratedShop(), paper, "order-summary")->pdf);
}
