// SPDX-License-Identifier: MIT
#include "creaseline/catalogue/rate_text.h"

#include <catch2/catch.hpp>

#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using Catch::Contains;

namespace {

const Currency kEuro{"EUR", 2};

Money euro(std::int64_t cents) {
  return Money::fromMinorUnits(cents);
}

}  // namespace

TEST_CASE("a price is an amount, a stroke and what one gets for it", "[rates]") {
  CHECK(*parseStitchPrice("0.02 EUR / 1000", kEuro) == StitchPrice{euro(2), 1'000});
  CHECK(*parseStitchPrice("6,90/900000", kEuro) == StitchPrice{euro(690), 900'000});
  CHECK(*parseRollPrice("22 EUR / 20 in x 25 yd", kEuro, LengthUnit::Millimetre) ==
        RollPrice{euro(2'200), 20_in, Length::fromMm(22'860.0)});
  CHECK(*parseRollPrice("22 / 500 × 10 m", kEuro, LengthUnit::Millimetre) ==
        RollPrice{euro(2'200), 500_mm, 10'000_mm});
  CHECK(*parseBackingPrice("38 / 50 m", kEuro, BackingForm::Roll) ==
        BackingPrice{euro(3'800), 50'000_mm, 0});
  CHECK(*parseBackingPrice("14 EUR / 100", kEuro, BackingForm::Sheets) ==
        BackingPrice{euro(1'400), {}, 100});
}

TEST_CASE("a price that says too little or too much is refused", "[rates]") {
  for (const char* wrong : {"", "0.02", "0.02 /", "0.02 / 0", "0.02 / 1000 m", "/ 1000",
                            "0.02 USD / 1000", "0.02 / 1 / 2", "0.02 / -5"}) {
    CAPTURE(wrong);
    CHECK_FALSE(parseStitchPrice(wrong, kEuro));
  }
  for (const char* wrong : {"22", "22 / 20 in", "22 / 0 in x 2 m", "22 / 20 in x 0 m",
                            "22 / 20 in x", "22 / 6 m x 2 m", "22 / x"}) {
    CAPTURE(wrong);
    CHECK_FALSE(parseRollPrice(wrong, kEuro, LengthUnit::Millimetre));
  }
  CHECK_FALSE(parseBackingPrice("38 / 100", kEuro, BackingForm::Roll));
  CHECK_FALSE(parseBackingPrice("38 / 0 m", kEuro, BackingForm::Roll));
  CHECK_FALSE(parseBackingPrice("38 / 50 m", kEuro, BackingForm::Sheets));
}

TEST_CASE("a price comes back from its text", "[rates]") {
  const StitchPrice stitches{euro(2), 1'000};
  CHECK(stitchPriceText(stitches, kEuro) == "0.02 EUR / 1000");
  CHECK(*parseStitchPrice(stitchPriceText(stitches, kEuro), kEuro) == stitches);
  for (const LengthUnit unit : {LengthUnit::Inch, LengthUnit::Centimetre, LengthUnit::Millimetre}) {
    const RollPrice roll{euro(2'200), 20_in, Length::fromMm(22'860.0)};
    CHECK(*parseRollPrice(rollPriceText(roll, kEuro, unit), kEuro, unit) == roll);
    const BackingPrice backing{euro(3'800), 50'000_mm, 0};
    CHECK(*parseBackingPrice(backingPriceText(backing, kEuro, BackingForm::Roll, unit), kEuro,
                             BackingForm::Roll) == backing);
  }
  CHECK(backingPriceText({euro(1'400), {}, 100}, kEuro, BackingForm::Sheets,
                         LengthUnit::Millimetre) == "14.00 EUR / 100");
}

TEST_CASE("a price without a currency is in the usual one, if there is one", "[rates]") {
  const Rules& rules = sample::shippedRules();
  CHECK(*parsePrice("1200 JPY", rules, &kEuro) == Price{euro(1'200), {"JPY", 0}});
  CHECK(*parsePrice("12,40", rules, &kEuro) == Price{euro(1'240), kEuro});
  CHECK_FALSE(parsePrice("12.40", rules, nullptr));
  CHECK_FALSE(parsePrice("12.40 XAU", rules, &kEuro));
  CHECK_FALSE(parsePrice("twelve", rules, &kEuro));
}

TEST_CASE("another currency keeps the digits of every amount, or is refused", "[rates]") {
  Shop shop = sample::shop({sample::frame("A", 100_mm, 80_mm)});
  const Shop first = *withCurrency(shop, kEuro);
  REQUIRE(first.rates);
  CHECK(first.rates->currency == kEuro);

  shop = first;
  BackingStock stock;
  stock.price = BackingPrice{euro(3'800), 50'000_mm, 0};
  shop.backings = {stock};
  shop.rates->labour = euro(1'800);
  shop.rates->thread = StitchPrice{euro(100), 1'000};
  const Shop yen = *withCurrency(shop, {"JPY", 0});
  CHECK(yen.rates->labour == Money::fromMinorUnits(18));
  CHECK(yen.rates->thread->amount == Money::fromMinorUnits(1));
  CHECK(yen.backings[0].price->amount == Money::fromMinorUnits(38));
  CHECK(*withCurrency(yen, kEuro) == shop);
  CHECK(withCurrency(shop, {"KWD", 3})->rates->labour == Money::fromMinorUnits(18'000));

  shop.backings[0].price->amount = euro(3'850);
  CHECK_THAT(withCurrency(shop, {"JPY", 0}).message(), Contains("38.50 EUR"));
}
