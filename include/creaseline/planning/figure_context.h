// SPDX-License-Identifier: MIT
// What figures in true scale are laid out from.
#pragma once

#include "creaseline/base/units.h"
#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

// The parts must belong together and outlive this.
struct FigureContext {
  const Plan& plan;
  const Order& order;
  const Shop& shop;
  const Rules& rules;
  UnitChoice units;
};

}  // namespace creaseline
