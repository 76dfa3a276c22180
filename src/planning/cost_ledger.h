// SPDX-License-Identifier: MIT
// Where the exact cost of an order is gathered: cells, items with their reasons, what is missing.
#pragma once

#include <string>

#include "planning/cost_reckoning.h"

namespace creaseline {

class CostLedger {
 public:
  // All must outlive the ledger; the shop has rates.
  CostLedger(const Plan& plan, const RunPlan& runs, const ReportContext& context,
             const UnitChoice& units)
      : plan_(plan), runs_(runs), context_(context), units_(units) {}

  [[nodiscard]] const Plan& plan() const { return plan_; }
  [[nodiscard]] const RunPlan& runs() const { return runs_; }
  [[nodiscard]] const ReportContext& context() const { return context_; }
  [[nodiscard]] const UnitChoice& units() const { return units_; }
  [[nodiscard]] const Rates& rates() const { return *context_.shop.rates; }
  [[nodiscard]] const std::vector<CostCell>& cells() const { return cost_.cells; }

  [[nodiscard]] std::string money(Money amount) const;
  [[nodiscard]] static ExactMoney exact(Money amount) { return {amount.minorUnits()}; }

  void addCell(CostCell cell) { cost_.cells.push_back(std::move(cell)); }
  // A run's share of a cost falls on its lines by their garments.
  void addRun(CostKind kind, std::size_t run, const ExactMoney& amount);
  void addItem(CostItem item) { cost_.items.push_back(std::move(item)); }
  // Valid until the next item is added.
  CostItem& item(CostKind kind, std::string measure);
  static void reason(CostItem& item, std::string text, std::string changedBy);
  void missing(CostField field, std::string entry, std::string text, std::string remedy);

  [[nodiscard]] ExactCost takeCost() { return std::move(cost_); }

 private:
  const Plan& plan_;
  const RunPlan& runs_;
  const ReportContext& context_;
  UnitChoice units_;
  ExactCost cost_;
};

// Adds backing, topping and appliqué fabric.
void reckonMaterials(CostLedger& ledger);

}  // namespace creaseline
