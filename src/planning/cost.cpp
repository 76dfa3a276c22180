// SPDX-License-Identifier: MIT
// Rounds the cost once and sets it out by kind, line and run.
#include "creaseline/planning/cost.h"

#include "base/worded.h"
#include "planning/cost_reckoning.h"
#include "planning/list_names.h"

namespace creaseline {
namespace {

// Cells under one heading, with their sum.
template <class Key>
struct Heap {
  Key key;
  std::vector<const CostCell*> cells;
  ExactMoney sum = 0;
};

// By ascending key.
template <class Key, class KeyOf>
std::vector<Heap<Key>> heaps(const std::vector<const CostCell*>& cells, KeyOf keyOf) {
  std::map<Key, Heap<Key>> byKey;
  for (const CostCell* cell : cells) {
    Heap<Key>& heap = byKey[keyOf(*cell)];
    heap.cells.push_back(cell);
    heap.sum += cell->amount;
  }
  std::vector<Heap<Key>> list;
  for (auto& [key, heap] : byKey) {
    heap.key = key;
    list.push_back(std::move(heap));
  }
  return list;
}

template <class Key>
std::vector<Money> apportionedAmong(Money total, const std::vector<Heap<Key>>& list) {
  std::vector<ExactMoney> sums;
  for (const Heap<Key>& heap : list) {
    sums.push_back(heap.sum);
  }
  return apportioned(total, sums);
}

ExactMoney sumOf(const std::vector<CostCell>& cells) {
  ExactMoney sum = 0;
  for (const CostCell& cell : cells) {
    sum += cell.amount;
  }
  return sum;
}

class Setting {
 public:
  Setting(OrderCost& cost, const std::vector<CostCell>& cells) : cost_(cost), cells_(cells) {}

  void write() {
    cost_.total = roundedMoney(sumOf(cells_));
    std::vector<const CostCell*> all;
    for (const CostCell& cell : cells_) {
      all.push_back(&cell);
    }
    const auto kinds = heaps<CostKind>(all, [](const CostCell& cell) { return cell.kind; });
    const std::vector<Money> amounts = apportionedAmong(cost_.total, kinds);
    for (std::size_t i = 0; i < kinds.size(); ++i) {
      for (CostItem& item : cost_.items) {
        if (item.kind == kinds[i].key) {
          item.amount = amounts[i];
        }
      }
      amongLines(kinds[i], amounts[i]);
    }
    for (CostLine& line : cost_.lines) {
      line.total = creaseline::sumOf(line.amounts);
      line.perGarment = each(exactOf([&](const CostCell& cell) { return cell.line == line.line; }),
                             line.garments);
    }
    for (std::size_t run = 0; run < cost_.runs.size(); ++run) {
      CostRun& shown = cost_.runs[run];
      shown.total = creaseline::sumOf(shown.amounts);
      shown.perGarment =
          each(exactOf([&](const CostCell& cell) { return cell.run == run; }), shown.garments);
    }
    cost_.perGarment = each(sumOf(cells_), cost_.garments);
  }

 private:
  void amongLines(const Heap<CostKind>& kind, Money total) {
    const auto lines =
        heaps<std::size_t>(kind.cells, [](const CostCell& cell) { return cell.line; });
    const std::vector<Money> amounts = apportionedAmong(total, lines);
    for (std::size_t i = 0; i < lines.size(); ++i) {
      cost_.lines[lines[i].key].amounts[kind.key] = amounts[i];
      amongRuns(kind.key, lines[i], amounts[i]);
    }
  }

  void amongRuns(CostKind kind, const Heap<std::size_t>& line, Money total) {
    const auto runs = heaps<std::optional<std::size_t>>(
        line.cells, [](const CostCell& cell) { return cell.run; });
    const std::vector<Money> amounts = apportionedAmong(total, runs);
    for (std::size_t i = 0; i < runs.size(); ++i) {
      if (runs[i].key) {
        cost_.runs[*runs[i].key].amounts[kind] += amounts[i];
      }
    }
  }

  template <class Belongs>
  [[nodiscard]] ExactMoney exactOf(Belongs belongs) const {
    ExactMoney sum = 0;
    for (const CostCell& cell : cells_) {
      if (belongs(cell)) {
        sum += cell.amount;
      }
    }
    return sum;
  }

  static Money each(const ExactMoney& amount, int garments) {
    return garments > 0 ? roundedMoney(amount / garments) : Money();
  }

  OrderCost& cost_;
  const std::vector<CostCell>& cells_;
};

}  // namespace

Money sumOf(const CostAmounts& amounts) {
  Money sum;
  for (const auto& [kind, amount] : amounts) {
    sum += amount;
  }
  return sum;
}

std::optional<OrderCost> orderCost(const Plan& plan, const RunPlan& runs,
                                   const ReportContext& context, const UnitChoice& units) {
  if (!context.shop.rates) {
    return std::nullopt;
  }
  ExactCost exact = reckonCost(plan, runs, context, units);
  if (sumOf(exact.cells) > kMostExactMinorUnits) {
    exact = {{},
             {},
             {{CostField::Beyond,
               {},
               worded("The whole order, which costs more than can be "
                      "reckoned with"),
               worded("look for a price or a quantity that is too large")}}};
  }
  OrderCost cost;
  cost.currency = context.shop.rates->currency;
  cost.garments = context.order.garments();
  cost.items = std::move(exact.items);
  cost.notCounted = std::move(exact.notCounted);
  for (std::size_t line = 0; line < context.order.lines.size(); ++line) {
    const OrderLine& ordered = context.order.lines[line];
    cost.lines.push_back({line,
                          ordered.id,
                          blankName(context, ordered),
                          ordered.colour,
                          ordered.garments(),
                          {},
                          {},
                          {}});
  }
  for (const RunCard& card : runs.cards) {
    cost.runs.push_back(
        {card.number, card.location + ", " + card.design, card.garments, {}, {}, {}});
  }
  Setting(cost, exact.cells).write();
  return cost;
}

}  // namespace creaseline
