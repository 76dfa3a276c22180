// SPDX-License-Identifier: MIT
// Prices as one types them into a single field: an amount, a stroke, and what one gets for it.
// Amounts may go without their currency there; decimal commas serve.
#pragma once

#include <string>
#include <string_view>

#include "creaseline/base/result.h"
#include "creaseline/base/units.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline {

// "0.02 EUR / 1000": for so many stitches.
[[nodiscard]] Result<StitchPrice> parseStitchPrice(std::string_view text, const Currency& currency);
[[nodiscard]] std::string stitchPriceText(const StitchPrice& price, const Currency& currency);

// "22 EUR / 20 in x 25 yd": for a roll of that width and length.
[[nodiscard]] Result<RollPrice> parseRollPrice(std::string_view text, const Currency& currency,
                                               LengthUnit bareUnit);
[[nodiscard]] std::string rollPriceText(const RollPrice& price, const Currency& currency,
                                        LengthUnit unit);

// "38 EUR / 50 m" for a roll's length, "14 EUR / 100" for so many sheets.
[[nodiscard]] Result<BackingPrice> parseBackingPrice(std::string_view text,
                                                     const Currency& currency, BackingForm form);
[[nodiscard]] std::string backingPriceText(const BackingPrice& price, const Currency& currency,
                                           BackingForm form, LengthUnit unit);

// "12.40 EUR"; without a currency it is in `usual`, and refused where there is none.
[[nodiscard]] Result<Price> parsePrice(std::string_view text, const Rules& rules,
                                       const Currency* usual);

// The shop with its amounts in another currency, digit for digit: nothing is converted. Refused
// where an amount has more decimals than the other currency.
[[nodiscard]] Result<Shop> withCurrency(const Shop& shop, const Currency& currency);

}  // namespace creaseline
