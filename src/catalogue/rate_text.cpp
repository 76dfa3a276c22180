// SPDX-License-Identifier: MIT
#include "creaseline/catalogue/rate_text.h"

#include <fmt/format.h>

#include <charconv>
#include <optional>

#include "base/number_text.h"
#include "base/worded.h"
#include "catalogue/json_reader.h"

namespace creaseline {

namespace {

struct AmountFor {
  Money amount;
  std::string_view what;
};

Result<AmountFor> splitPrice(std::string_view text, const Currency& currency,
                             std::string_view example) {
  const std::size_t stroke = text.find('/');
  if (stroke == std::string_view::npos) {
    return Refusal{worded("write an amount and what one gets for it, such as {}", example)};
  }
  const Result<Money> amount = parseMoney(text.substr(0, stroke), currency);
  if (!amount) {
    return Refusal{amount.message()};
  }
  return AmountFor{*amount, withoutOuterSpaces(text.substr(stroke + 1))};
}

Result<int> countOf(std::string_view text, int most, std::string_view what) {
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.empty() || error != std::errc() || end != text.data() + text.size() || value < 1 ||
      value > most) {
    return Refusal{worded("behind the stroke stands a whole number of {}, from 1 to {}",
                          inLanguage(what), most)};
  }
  return value;
}

Result<Length> rollSide(std::string_view text) {
  const Result<Length> length = parseRollLength(text);
  if (length && *length <= Length()) {
    return Refusal{worded("a length must be more than 0")};
  }
  return length;
}

constexpr std::string_view kTimesSign = "×";

// Minor units of the other currency for the same digits, or nothing if they are not whole.
std::optional<Money> renamed(Money amount, const Currency& from, const Currency& to) {
  std::int64_t minor = amount.minorUnits();
  for (int digits = from.minorDigits; digits < to.minorDigits; ++digits) {
    minor *= 10;
  }
  for (int digits = from.minorDigits; digits > to.minorDigits; --digits) {
    if (minor % 10 != 0) {
      return std::nullopt;
    }
    minor /= 10;
  }
  return Money::fromMinorUnits(minor);
}

}  // namespace

Result<StitchPrice> parseStitchPrice(std::string_view text, const Currency& currency) {
  const auto split = splitPrice(text, currency, "0.02 / 1000");
  if (!split) {
    return Refusal{split.message()};
  }
  const Result<int> stitches = countOf(split->what, kMostPricedStitches, toBeWorded("stitches"));
  if (!stitches) {
    return Refusal{stitches.message()};
  }
  return StitchPrice{split->amount, *stitches};
}

std::string stitchPriceText(const StitchPrice& price, const Currency& currency) {
  return fmt::format("{} / {}", moneyText(price.amount, currency), price.stitches);
}

Result<RollPrice> parseRollPrice(std::string_view text, const Currency& currency,
                                 LengthUnit bareUnit) {
  constexpr std::string_view kExample = "22 / 20 in x 25 yd";
  const auto split = splitPrice(text, currency, kExample);
  if (!split) {
    return Refusal{split.message()};
  }
  std::size_t cross = split->what.find('x');
  std::size_t size = 1;
  if (cross == std::string_view::npos) {
    cross = split->what.find(kTimesSign);
    size = kTimesSign.size();
  }
  if (cross == std::string_view::npos) {
    return Refusal{worded("write width and length of the roll, such as {}", kExample)};
  }
  const Result<Length> width =
      parseLength(withoutOuterSpaces(split->what.substr(0, cross)), bareUnit);
  if (!width || *width <= Length() || *width > kLargestPart) {
    return Refusal{width ? worded("the roll's width must be more than 0 and at most 5 m")
                         : width.message()};
  }
  const Result<Length> length = rollSide(withoutOuterSpaces(split->what.substr(cross + size)));
  if (!length) {
    return Refusal{length.message()};
  }
  return RollPrice{split->amount, *width, *length};
}

std::string rollPriceText(const RollPrice& price, const Currency& currency, LengthUnit unit) {
  return fmt::format("{} / {} x {}", moneyText(price.amount, currency),
                     exactText(price.width, unit), rollLengthText(price.length, unit));
}

Result<BackingPrice> parseBackingPrice(std::string_view text, const Currency& currency,
                                       BackingForm form) {
  const bool roll = form == BackingForm::Roll;
  const auto split = splitPrice(text, currency, roll ? "38 / 50 m" : "14 / 100");
  if (!split) {
    return Refusal{split.message()};
  }
  if (roll) {
    const Result<Length> length = rollSide(split->what);
    if (!length) {
      return Refusal{length.message()};
    }
    return BackingPrice{split->amount, *length, 0};
  }
  const Result<int> sheets = countOf(split->what, kMostPricedSheets, toBeWorded("sheets"));
  if (!sheets) {
    return Refusal{sheets.message()};
  }
  return BackingPrice{split->amount, {}, *sheets};
}

std::string backingPriceText(const BackingPrice& price, const Currency& currency, BackingForm form,
                             LengthUnit unit) {
  return fmt::format("{} / {}", moneyText(price.amount, currency),
                     form == BackingForm::Roll ? rollLengthText(price.length, unit)
                                               : std::to_string(price.sheets));
}

Result<Price> parsePrice(std::string_view text, const Rules& rules, const Currency* usual) {
  const std::string_view code = currencyCodeOf(text);
  const Currency* currency = code.empty() ? usual : rules.currency(code);
  if (currency == nullptr) {
    return Refusal{code.empty() ? worded("write the currency as well, such as 12.40 EUR")
                                : worded("{} is no currency of ISO 4217", code)};
  }
  const Result<Money> amount = parseMoney(text, *currency);
  if (!amount) {
    return Refusal{amount.message()};
  }
  return Price{*amount, *currency};
}

Result<Shop> withCurrency(const Shop& shop, const Currency& currency) {
  Shop changed = shop;
  if (!changed.rates) {
    changed.rates.emplace();
    changed.rates->currency = currency;
    return changed;
  }
  Rates& rates = *changed.rates;
  const Currency before = rates.currency;
  rates.currency = currency;
  std::vector<Money*> amounts;
  for (std::optional<Money>* amount : {&rates.labour, &rates.machine, &rates.setUp}) {
    if (*amount) {
      amounts.push_back(&**amount);
    }
  }
  if (rates.thread) {
    amounts.push_back(&rates.thread->amount);
  }
  for (std::optional<RollPrice>* price : {&rates.topping, &rates.applique}) {
    if (*price) {
      amounts.push_back(&(*price)->amount);
    }
  }
  for (BackingStock& stock : changed.backings) {
    if (stock.price) {
      amounts.push_back(&stock.price->amount);
    }
  }
  for (Money* amount : amounts) {
    const std::optional<Money> same = renamed(*amount, before, currency);
    if (!same) {
      return Refusal{
          worded("{} has more decimals than {} has", moneyText(*amount, before), currency.code)};
    }
    *amount = *same;
  }
  return changed;
}

}  // namespace creaseline
