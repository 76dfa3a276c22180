// SPDX-License-Identifier: MIT
// The words of a cost, used alike by report and sheets.
#include "creaseline/planning/cost.h"

namespace creaseline {

std::string costPhrase(CostKind kind) {
  switch (kind) {
    case CostKind::Labour:
      return "Work";
    case CostKind::Machine:
      return "Machine";
    case CostKind::Backing:
      return "Backing";
    case CostKind::Topping:
      return "Topping film";
    case CostKind::Applique:
      return "Appliqué fabric";
    case CostKind::Thread:
      return "Thread";
    case CostKind::Blanks:
      return "Blanks";
    case CostKind::SetUp:
      return "Set-up of designs";
    case CostKind::Markup:
      return "Markup";
  }
  return {};
}

std::string totalPhrase(const OrderCost& cost) {
  return cost.complete() ? "Total" : "Total, incomplete";
}

std::string leftOutOfCost() {
  return "Never counted here: tax, delivery, pressing and packing, needles, fusible web and "
         "adhesive, garments spoilt";
}

}  // namespace creaseline
