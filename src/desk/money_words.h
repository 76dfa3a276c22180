// SPDX-License-Identifier: MIT
// Amounts as people read them where they live.
#pragma once

#include <QString>
#include <string>

#include "creaseline/base/money.h"

namespace creaseline::desk {

// "1.234,50 EUR" where that is how it is written.
[[nodiscard]] QString moneyWords(Money amount, const Currency& currency);
// The core's text of an amount or price, with the decimal mark of the place: "18,50 EUR / 50 m".
[[nodiscard]] QString priceWords(const std::string& text);

}  // namespace creaseline::desk
