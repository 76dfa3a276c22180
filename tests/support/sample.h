// SPDX-License-Identifier: MIT
// Small invented shops and orders for tests, made in code so that a test shows its own numbers.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/plan.h"

namespace creaseline::sample {

// The rules as shipped.
const Rules& shippedRules();

// A blank of that kind in sizes YM, M, XL and 2XL with every measure that matters given, in
// cotton and polyester fleece of 280 g/m² or jersey of 180 g/m².
Blank blank(const std::string& kind);

// A plain rectangle of one colour with an ordinary fill (0.6 stitches per mm²).
Design design(const std::string& id, Length width, Length height);

// A screw frame with square corners; the body is `rim` wider on each side.
Frame frame(const std::string& id, Length width, Length height, Length rim = Length::fromMm(15.0));

// One machine that reaches everything, the frames given, backing of each kind.
Shop shop(std::vector<Frame> frames);

// One line of that blank in these sizes (one each) with one placement.
Order order(const Blank& blank, const Design& design, const std::string& location,
            const std::vector<std::string>& sizes);

// The answer for a size of the first line, and a finding; std::runtime_error if there is none.
const PlacementPlan& planFor(const Plan& plan, const std::string& size);
bool hasFinding(const Plan& plan, FindingCode code);
const Finding& findingOf(const Plan& plan, FindingCode code);

}  // namespace creaseline::sample
