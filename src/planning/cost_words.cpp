// SPDX-License-Identifier: MIT
// The words of a cost, used alike by report and sheets.
#include "creaseline/planning/cost.h"

#include "base/worded.h"

namespace creaseline {

std::string costPhrase(CostKind kind) {
  switch (kind) {
    case CostKind::Labour:
      return worded("Work");
    case CostKind::Machine:
      return worded("Machine");
    case CostKind::Backing:
      return worded("Backing");
    case CostKind::Topping:
      return worded("Topping film");
    case CostKind::Applique:
      return worded("Appliqué fabric");
    case CostKind::Thread:
      return worded("Thread");
    case CostKind::Blanks:
      return worded("Blanks");
    case CostKind::SetUp:
      return worded("Set-up of designs");
    case CostKind::Markup:
      return worded("Markup");
  }
  return {};
}

std::string totalPhrase(const OrderCost& cost) {
  return cost.complete() ? worded("Total") : worded("Total, incomplete");
}

std::string leftOutOfCost() {
  return worded(
      "Never counted here: tax, delivery, pressing and packing, needles, fusible web and "
      "adhesive, garments spoilt");
}

}  // namespace creaseline
