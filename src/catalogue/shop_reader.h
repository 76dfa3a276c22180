// SPDX-License-Identifier: MIT
// Reads a shop: machines, frames, stock, house rules.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline {

// `top` is the whole of a shop file, its head checked already.
[[nodiscard]] Shop readShop(JsonObject& top, const Rules& rules);

[[nodiscard]] Length readRollLength(const JsonCursor& at);

}  // namespace creaseline
