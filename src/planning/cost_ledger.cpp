// SPDX-License-Identifier: MIT
#include "planning/cost_ledger.h"

#include <map>

#include "base/worded.h"
#include "creaseline/planning/wording.h"

namespace creaseline {

std::string CostLedger::money(Money amount) const {
  return moneyPhrase(amount, rates().currency);
}

void CostLedger::addRun(CostKind kind, std::size_t run, const ExactMoney& amount) {
  const RunCard& card = runs_.cards[run];
  std::map<std::size_t, int> garments;
  for (const RunGarment& garment : card.toSew) {
    ++garments[plan_.placements[garment.placement].line];
  }
  for (const auto& [line, count] : garments) {
    addCell({kind, line, run, amount * count / card.garments});
  }
}

CostItem& CostLedger::item(CostKind kind, std::string measure) {
  cost_.items.push_back({kind, std::move(measure), {}, {}});
  return cost_.items.back();
}

void CostLedger::reason(CostItem& item, std::string text, std::string changedBy) {
  item.reasons.push_back({std::move(text), RuleId("rates/" + std::string(nameOf(item.kind))),
                          worded("the shop's rates"), false, std::nullopt, std::move(changedBy)});
}

void CostLedger::missing(CostField field, std::string entry, std::string text, std::string remedy) {
  cost_.notCounted.push_back({field, std::move(entry), std::move(text), std::move(remedy)});
}

}  // namespace creaseline
