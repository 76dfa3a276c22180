// SPDX-License-Identifier: MIT
// The cost in text and JSON, and a plan with a cost read back.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <sstream>

#include "creaseline/planning/cost.h"
#include "creaseline/planning/plan_reader.h"
#include "creaseline/planning/planner.h"
#include "creaseline/planning/report.h"
#include "plan_samples.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using Catch::Matchers::Contains;
using nlohmann::json;

namespace {

Money minor(std::int64_t units) {
  return Money::fromMinorUnits(units);
}

struct Rated {
  Order order = sample::order(sample::blank("t-shirt"), sample::design("crest", 120_mm, 90_mm),
                              "centre-chest", {"YM", "M", "XL"});
  Shop shop = sample::shop({sample::frame("a", 160_mm, 130_mm)});
  Plan plan;

  Rated() {
    Rates rates;
    rates.currency = {"EUR", 2};
    rates.labour = minor(1'937);
    rates.setUp = minor(2'500);
    rates.markup = Percent::fromHundredths(1'250);
    shop.rates = rates;
    order.blanks[0].price = Price{minor(419), {"EUR", 2}};
    plan = planOrder(order, shop, sample::shippedRules());
  }
  [[nodiscard]] ReportContext context() const { return {order, shop, sample::shippedRules()}; }
  [[nodiscard]] OrderCost cost() const {
    return *orderCost(plan, planRuns(plan, context(), samples::kInches), context(),
                      samples::kInches);
  }
  [[nodiscard]] std::string text() const {
    std::istringstream stream(textReport(plan, context(), samples::kInches));
    std::string all;
    for (std::string word; stream >> word;) {
      all += word + ' ';
    }
    return all;
  }
};

}  // namespace

TEST_CASE("the text says the total, what is not counted and why each amount", "[report][cost]") {
  const Rated rated;
  const OrderCost cost = rated.cost();
  const std::string text = rated.text();
  REQUIRE_FALSE(cost.notCounted.empty());
  CHECK_THAT(text, Contains("Total, incomplete: " + moneyText(cost.total, cost.currency)));
  for (const NotCounted& each : cost.notCounted) {
    CHECK_THAT(text, Contains("NOT COUNTED: " + each.text + "; to count it, " + each.remedy));
  }
  REQUIRE(cost.items.size() == 4);
  for (const CostItem& item : cost.items) {
    CHECK_THAT(text, Contains(costPhrase(item.kind) + " " + moneyText(item.amount, cost.currency)));
    CHECK_THAT(text, Contains(item.reasons[0].text));
    CHECK_THAT(text, Contains("would change with: " + item.reasons[0].changedBy));
  }
  CHECK_THAT(text, Contains("Run 1 " + moneyText(cost.runs[0].total, cost.currency)));
  CHECK_THAT(text, Contains(leftOutOfCost()));
}

TEST_CASE("without rates no report speaks of money", "[report][cost]") {
  Rated rated;
  rated.shop.rates.reset();
  CHECK_THAT(rated.text(), !Contains("Cost"));
  CHECK_THAT(rated.text(), !Contains("EUR"));
  CHECK_FALSE(json::parse(jsonReport(rated.plan, rated.context())).contains("cost"));
}

TEST_CASE("the JSON holds the cost in exact amounts", "[report][cost]") {
  const Rated rated;
  const OrderCost cost = rated.cost();
  const json written = json::parse(jsonReport(rated.plan, rated.context()))["cost"];
  CHECK(written["currency"] == "EUR");
  CHECK(written["complete"] == false);
  CHECK(written["total"] == moneyText(cost.total, cost.currency));
  REQUIRE(written["items"].size() == cost.items.size());
  for (std::size_t i = 0; i < cost.items.size(); ++i) {
    CHECK(written["items"][i]["kind"] == std::string(nameOf(cost.items[i].kind)));
    CHECK(written["items"][i]["amount"] == moneyText(cost.items[i].amount, cost.currency));
    CHECK(written["items"][i]["reasons"].size() == cost.items[i].reasons.size());
  }
  REQUIRE(written["lines"].size() == 1);
  CHECK(written["lines"][0]["line"] == rated.order.lines[0].id);
  CHECK(written["lines"][0]["per-garment"] == moneyText(cost.lines[0].perGarment, cost.currency));
  CHECK(written["runs"].size() == cost.runs.size());
  CHECK(written["not-counted"].size() == cost.notCounted.size());
}

TEST_CASE("a plan that is read back costs the same", "[report][cost]") {
  const Rated rated;
  const std::string written = jsonReport(rated.plan, rated.context());
  const Plan read = readPlan(written, "plan.json", rated.order, rated.shop, sample::shippedRules());
  CHECK(jsonReport(read, rated.context()) == written);
}
