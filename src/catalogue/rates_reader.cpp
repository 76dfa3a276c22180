// SPDX-License-Identifier: MIT
#include "catalogue/rates_reader.h"

#include <algorithm>

#include "base/worded.h"
#include "catalogue/shop_reader.h"

namespace creaseline {

namespace {

constexpr std::size_t kMostCurrencies = 1'000;
constexpr int kMostMinorDigits = 4;

template <class T>
T require(const JsonCursor& at, const Result<T>& value) {
  if (!value) {
    at.fail(at.shown(), value.message());
  }
  return *value;
}

const Currency& readCode(const JsonCursor& at, std::string_view code, const Rules& rules) {
  const Currency* currency = rules.currency(code);
  if (currency == nullptr) {
    at.failShown(worded("a currency of ISO 4217, such as \"EUR\" or \"USD\""));
  }
  return *currency;
}

Length readRollSide(const JsonCursor& at) {
  const Length length = readRollLength(at);
  if (length <= Length()) {
    at.failShown(worded("a length of more than 0"));
  }
  return length;
}

RollPrice readRollPrice(const JsonCursor& at, const Currency& currency) {
  JsonObject object = at.object();
  const RollPrice price{readMoney(object.at("price"), currency),
                        object.at("width").positiveLength(), readRollSide(object.at("length"))};
  object.finish();
  return price;
}

StitchPrice readStitchPrice(const JsonCursor& at, const Currency& currency) {
  JsonObject object = at.object();
  const StitchPrice price{readMoney(object.at("price"), currency),
                          object.at("stitches").integer(1, kMostPricedStitches)};
  object.finish();
  return price;
}

}  // namespace

Money readMoney(const JsonCursor& at, const Currency& currency) {
  const std::string text = at.label();
  if (currencyCodeOf(text).empty()) {
    at.failShown(worded("an amount with its currency, such as \"18 {}\"", currency.code));
  }
  return require(at, parseMoney(text, currency));
}

Price readPrice(const JsonCursor& at, const Rules& rules) {
  const std::string text = at.label();
  const std::string_view code = currencyCodeOf(text);
  if (code.empty()) {
    at.failShown(worded("an amount with its currency, such as \"12.40 EUR\""));
  }
  const Currency& currency = readCode(at, code, rules);
  return {readMoney(at, currency), currency};
}

Percent readPercent(const JsonCursor& at, Percent most) {
  const std::string text = at.label();
  if (!text.ends_with('%')) {
    at.failShown(worded("a share with its sign, such as \"30 %\""));
  }
  return require(at, parsePercent(text, most));
}

Rates readRates(const JsonCursor& at, const Rules& rules) {
  JsonObject object = at.object();
  Rates rates;
  const JsonCursor code = object.at("currency");
  rates.currency = readCode(code, code.label(), rules);
  const auto money = [&](std::string_view key) {
    const auto found = object.find(key);
    return found ? std::optional(readMoney(*found, rates.currency)) : std::nullopt;
  };
  const auto percent = [&](std::string_view key, Percent most) {
    const auto found = object.find(key);
    return found ? std::optional(readPercent(*found, most)) : std::nullopt;
  };
  const auto roll = [&](std::string_view key) {
    const auto found = object.find(key);
    return found ? std::optional(readRollPrice(*found, rates.currency)) : std::nullopt;
  };
  rates.labour = money("labour");
  rates.machine = money("machine");
  rates.attendance = percent("attendance", kWhole);
  if (const auto thread = object.find("thread")) {
    rates.thread = readStitchPrice(*thread, rates.currency);
  }
  rates.topping = roll("topping");
  rates.applique = roll("applique-fabric");
  rates.setUp = money("set-up");
  rates.markup = percent("markup", kMostMarkup);
  object.finish();
  return rates;
}

BackingPrice readBackingPrice(const JsonCursor& at, BackingForm form, const Currency& currency) {
  JsonObject object = at.object();
  BackingPrice price;
  price.amount = readMoney(object.at("price"), currency);
  if (form == BackingForm::Roll) {
    price.length = readRollSide(object.at("length"));
  } else {
    price.sheets = object.at("sheets").integer(1, kMostPricedSheets);
  }
  object.finish();
  return price;
}

std::vector<Currency> readCurrencies(const JsonCursor& at) {
  std::vector<Currency> currencies;
  std::vector<std::string> codes;
  for (const JsonCursor& item : at.items(1, kMostCurrencies, "currencies")) {
    JsonObject object = item.object();
    const JsonCursor codeAt = object.at("code");
    const std::string code = codeAt.label();
    if (code.size() != 3 || currencyCodeOf(code) != code) {
      codeAt.failShown(worded("three capital letters"));
    }
    requireDistinct(codes, code, codeAt, "currency");
    codes.push_back(code);
    currencies.push_back({code, object.at("minor-digits").integer(0, kMostMinorDigits)});
    object.finish();
  }
  return currencies;
}

}  // namespace creaseline
