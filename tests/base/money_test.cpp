// SPDX-License-Identifier: MIT
#include "creaseline/base/money.h"

#include <catch2/catch.hpp>

using namespace creaseline;
using Catch::Contains;

namespace {

const Currency kEuro{"EUR", 2};
const Currency kYen{"JPY", 0};
const Currency kDinar{"KWD", 3};

}  // namespace

TEST_CASE("amounts are read exactly, with the decimals of their currency", "[money]") {
  struct Row {
    const char* text;
    const Currency& currency;
    std::int64_t minor;
  };
  const Row rows[] = {{"18.50 EUR", kEuro, 1850},
                      {"18,5 EUR", kEuro, 1850},
                      {"18.50", kEuro, 1850},
                      {" 18EUR ", kEuro, 1800},
                      {"0", kEuro, 0},
                      {"0.01 EUR", kEuro, 1},
                      {"0.07", kEuro, 7},  // 0.07 * 100 is not 7 in binary
                      {"10000000000 EUR", kEuro, Money::kMostMinorUnits},
                      {"1234 JPY", kYen, 1234},
                      {"1.234 KWD", kDinar, 1234}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const Result<Money> money = parseMoney(row.text, row.currency);
    REQUIRE(money);
    CHECK(money->minorUnits() == row.minor);
  }
}

TEST_CASE("what is no amount of the currency is refused", "[money]") {
  for (const char* text :
       {"", "EUR", "-1 EUR", "1.234 EUR", "1,234.50", "1 234", "18.5 USD", "18 eur", "18.", ".5",
        "1e3", "1/2", "10000000000.01", "99999999999999999999999", "18 XEUR", "18 EUR EUR"}) {
    CAPTURE(text);
    CHECK_FALSE(parseMoney(text, kEuro));
  }
  CHECK_FALSE(parseMoney("1.5 JPY", kYen));
  CHECK_THAT(parseMoney("5 USD", kEuro).message(), Contains("not in EUR") && Contains("18.00 EUR"));
  CHECK_THAT(parseMoney("1.5", kYen).message(), Contains("0 decimals") && Contains("18 JPY"));
}

TEST_CASE("an amount comes back from its text", "[money]") {
  CHECK(moneyText(Money::fromMinorUnits(1850), kEuro) == "18.50 EUR");
  CHECK(moneyText(Money::fromMinorUnits(5), kEuro) == "0.05 EUR");
  CHECK(moneyText(Money::fromMinorUnits(1234), kYen) == "1234 JPY");
  CHECK(moneyText(Money::fromMinorUnits(1002), kDinar) == "1.002 KWD");
  CHECK(amountText(Money::fromMinorUnits(-105), kEuro) == "-1.05");
  for (const Currency& currency : {kEuro, kYen, kDinar}) {
    for (std::int64_t minor = 0; minor < 3'000; minor += 7) {
      CHECK(parseMoney(moneyText(Money::fromMinorUnits(minor), currency), currency)->minorUnits() ==
            minor);
    }
  }
}

TEST_CASE("the currency of an amount is its last three capitals", "[money]") {
  CHECK(currencyCodeOf("12.40 EUR") == "EUR");
  CHECK(currencyCodeOf("12.40EUR ") == "EUR");
  CHECK(currencyCodeOf("12.40").empty());
  CHECK(currencyCodeOf("12.40 EURO").empty());
  CHECK(currencyCodeOf("12.40 eur").empty());
  CHECK(currencyCodeOf("EU").empty());
}

TEST_CASE("shares are read and shown to a hundredth of a percent", "[money]") {
  const Percent whole = Percent::fromHundredths(Percent::kHundredthsPerWhole);
  CHECK(parsePercent("30 %", whole)->hundredths() == 3'000);
  CHECK(parsePercent("12,5%", whole)->hundredths() == 1'250);
  CHECK(parsePercent("100", whole)->hundredths() == 10'000);
  for (const char* wrong : {"", "%", "100.01 %", "-1 %", "1.234 %", "a third"}) {
    CAPTURE(wrong);
    CHECK_FALSE(parsePercent(wrong, whole));
  }
  for (const char* text : {"0 %", "30 %", "12.5 %", "12.05 %", "0.01 %"}) {
    CHECK(percentText(*parsePercent(text, whole)) == text);
  }
}
