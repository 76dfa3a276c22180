// SPDX-License-Identifier: MIT
// Reads an order with the blanks and designs that it refers to.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"

namespace creaseline {

// `top` is the whole of an order file, its head checked already.
[[nodiscard]] Order readOrder(JsonObject& top, const Rules& rules);

}  // namespace creaseline
