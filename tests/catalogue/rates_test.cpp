// SPDX-License-Identifier: MIT
// Rates and prices: read, refused, written back.
#include "creaseline/catalogue/rates.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "catalogue/catalogue_data.h"
#include "creaseline/base/error.h"
#include "creaseline/catalogue/merge.h"
#include "creaseline/catalogue/save.h"
#include "creaseline/catalogue/shop_check.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;
using Catch::Contains;
using nlohmann::ordered_json;

namespace {

const char* const kRates = R"({
  "currency": "EUR",
  "labour": "18,50 EUR",
  "machine": "6 EUR",
  "attendance": "50 %",
  "thread": {"price": "0.02 EUR", "stitches": 1000},
  "topping": {"price": "22.00 EUR", "width": "20 in", "length": "25 yd"},
  "applique-fabric": {"price": "9.90 EUR", "width": "1400 mm", "length": "1 m"},
  "set-up": "25 EUR",
  "markup": "12.5 %"
})";

class ShopFile : TemporaryFolder {
 public:
  ordered_json json = ordered_json::parse(contentOf(goodFile("test.shop.json")));

  ShopFile() { json["rates"] = ordered_json::parse(kRates); }
  [[nodiscard]] Loaded<Shop> load() const {
    return loadShop(write("test.shop.json", json.dump(2)), shippedRules());
  }
  [[nodiscard]] std::string refusal() const {
    return inputErrorOf([this] { return load(); });
  }
};

Money minor(std::int64_t units) {
  return Money::fromMinorUnits(units);
}

}  // namespace

TEST_CASE("rates are read exactly", "[rates]") {
  ShopFile file;
  file.json["backings"][0]["price"] = {{"price", "38 EUR"}, {"length", "50 m"}};
  const Shop shop = file.load().value;
  REQUIRE(shop.rates);
  const Rates& rates = *shop.rates;
  CHECK(rates.currency == Currency{"EUR", 2});
  CHECK(rates.labour == minor(1'850));
  CHECK(rates.machine == minor(600));
  CHECK(rates.attendance == Percent::fromHundredths(5'000));
  CHECK(rates.thread == StitchPrice{minor(2), 1'000});
  CHECK(rates.topping == RollPrice{minor(2'200), 20_in, Length::fromMm(22'860.0)});
  CHECK(rates.applique == RollPrice{minor(990), 1400_mm, 1000_mm});
  CHECK(rates.setUp == minor(2'500));
  CHECK(rates.markup == Percent::fromHundredths(1'250));
  CHECK(shop.backings[0].price == BackingPrice{minor(3'800), 50'000_mm, 0});
}

TEST_CASE("a shop without rates has none", "[rates]") {
  ShopFile file;
  file.json.erase("rates");
  CHECK_FALSE(file.load().value.rates);
  file.json["rates"] = {{"currency", "JPY"}};
  const Shop shop = file.load().value;
  REQUIRE(shop.rates);
  CHECK(shop.rates->currency.minorDigits == 0);
  CHECK_FALSE(shop.rates->labour);
}

TEST_CASE("rates that cannot be are refused with their place", "[rates]") {
  struct Row {
    const char* pointer;
    ordered_json value;
    const char* said;
  };
  const Row rows[] = {{"/rates/currency", "EURO", "/rates/currency"},
                      {"/rates/currency", "XAU", "ISO 4217"},
                      {"/rates/currency", "USD", "not in USD"},
                      {"/rates/labour", 18.5, "/rates/labour"},
                      {"/rates/labour", "18.50", "with its currency"},
                      {"/rates/labour", "18.505 EUR", "at most 2 decimals"},
                      {"/rates/labour", "-1 EUR", "0 or more"},
                      {"/rates/attendance", "101 %", "from 0 to 100 %"},
                      {"/rates/attendance", "50", "with its sign"},
                      {"/rates/markup", "-5 %", "/rates/markup"},
                      {"/rates/thread/stitches", 0, "/rates/thread/stitches"},
                      {"/rates/topping/length", "0 m", "more than 0"},
                      {"/rates/topping/width", "0 mm", "/rates/topping/width"}};
  for (const Row& row : rows) {
    CAPTURE(row.pointer, row.value.dump());
    ShopFile file;
    file.json[ordered_json::json_pointer(row.pointer)] = row.value;
    CHECK_THAT(file.refusal(), Contains(row.said));
  }
  ShopFile file;
  file.json["backings"][0]["price"] = {{"price", "38 EUR"}, {"sheets", 4}};
  CHECK_THAT(file.refusal(), Contains("/backings/0/price"));
  file.json.erase("rates");
  CHECK_THAT(file.refusal(), Contains("\"rates\""));
}

TEST_CASE("rates are written as they stood, and read back the same", "[rates][save]") {
  ShopFile file;
  file.json["rates"]["kept"] = "a key of somebody else";
  file.json["backings"][0]["price"] = {{"price", "38 EUR"}, {"length", "50 m"}};
  const Loaded<Shop> shop = file.load();
  CHECK(ordered_json::parse(shopText(shop.value, shop.original)) == file.json);

  Shop changed = shop.value;
  changed.rates->labour = minor(2'000);
  changed.rates->markup.reset();
  changed.rates->topping->length = Length::fromMm(5'000.0);
  const auto written = ordered_json::parse(shopText(changed, shop.original));
  CHECK(written["rates"]["labour"] == "20.00 EUR");
  CHECK(written["rates"]["machine"] == "6 EUR");
  CHECK(written["rates"]["topping"]["length"] == "5 m");
  CHECK(written["rates"]["kept"] == "a key of somebody else");
  CHECK_FALSE(written["rates"].contains("markup"));
  ShopFile again;
  again.json = written;
  CHECK(again.load().value == changed);
}

TEST_CASE("a form with rates that could not be saved is told so", "[rates]") {
  const ShopFile file;
  Shop shop = file.load().value;
  CHECK_FALSE(shopProblem(shop, shippedRules(), {}));
  shop.rates->attendance = Percent::fromHundredths(20'000);
  CHECK_THAT(shopProblem(shop, shippedRules(), {}).value_or(""),
             Contains("rates, share of standing by: found"));
  shop = file.load().value;
  shop.rates->thread->stitches = 0;
  CHECK_THAT(shopProblem(shop, shippedRules(), {}).value_or(""), Contains("rates, thread: found"));
}

TEST_CASE("a blank's price says its currency and is kept", "[rates][save]") {
  const TemporaryFolder folder;
  auto json = ordered_json::parse(contentOf(goodFile("tee.blank.json")));
  const auto load = [&] {
    return loadBlank(folder.write("tee.blank.json", json.dump(2)), shippedRules());
  };
  CHECK_FALSE(load().value.price);
  json["price"] = "1200 JPY";
  const Loaded<Blank> blank = load();
  CHECK(blank.value.price == Price{minor(1'200), {"JPY", 0}});
  CHECK(ordered_json::parse(blankText(blank.value, blank.original)) == json);
  for (const char* wrong : {"12", "12 XXX", "12.5 JPY", "12 Euro"}) {
    CAPTURE(wrong);
    json["price"] = wrong;
    CHECK_THROWS_AS(load(), InputError);
  }
}

TEST_CASE("who brings the garments is read, written and merged", "[rates][save]") {
  const Loaded<Order> order = loadOrder(goodFile("test.order.json"), shippedRules());
  CHECK_FALSE(order.value.lines[0].supplied);
  Order mine = order.value;
  mine.lines[0].supplied = true;
  CHECK(ordered_json::parse(orderText(mine, order.original))["lines"][0]["supplied"] == true);
  CHECK(mergeOrders(order.value, order.value, mine, {}).order.lines[0].supplied);
  CHECK(mergeOrders(order.value, mine, order.value, {}).conflicts.empty());
}
