// SPDX-License-Identifier: MIT
// The cost of an order in the reports: for the owner, so not on what lies at the machine.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "creaseline/planning/cost.h"
#include "planning/text_layout.h"

namespace creaseline {

// Total, what is not counted, then by kind with reasons, by line, by run.
void writeCost(TextLayout& out, const OrderCost& cost);

// Amounts as exact texts with their currency.
[[nodiscard]] nlohmann::ordered_json costJson(const OrderCost& cost);
[[nodiscard]] nlohmann::ordered_json reasonsJson(const Reasons& reasons);

}  // namespace creaseline
