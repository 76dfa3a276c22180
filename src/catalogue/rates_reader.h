// SPDX-License-Identifier: MIT
// Reads prices and rates. Every amount in a file is a text with the code of its currency.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline {

// "18.50 EUR", in that currency and no other.
[[nodiscard]] Money readMoney(const JsonCursor& at, const Currency& currency);
// "12.40 EUR", in any currency of the rules.
[[nodiscard]] Price readPrice(const JsonCursor& at, const Rules& rules);
[[nodiscard]] Percent readPercent(const JsonCursor& at, Percent most);

[[nodiscard]] Rates readRates(const JsonCursor& at, const Rules& rules);
// The price of one stock entry, of the form that it has.
[[nodiscard]] BackingPrice readBackingPrice(const JsonCursor& at, BackingForm form,
                                            const Currency& currency);

// The currencies of resources/rules/currencies.json.
[[nodiscard]] std::vector<Currency> readCurrencies(const JsonCursor& at);

}  // namespace creaseline
