// SPDX-License-Identifier: MIT
// What an order asks of the planner, each question once, and who asks it.
#pragma once

#include <compare>
#include <cstddef>
#include <string>
#include <vector>

#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/planning/finding.h"
#include "creaseline/planning/plan.h"
#include "planning/fewest_sizes.h"
#include "planning/order_index.h"

namespace creaseline {

// Indices of a line and of one of its placements.
struct OrderPlace {
  std::size_t line = 0;
  std::size_t placement = 0;
  auto operator<=>(const OrderPlace&) const = default;
};

// One line and location: the unit of work that threads share out.
struct Task {
  OrderPlace at;
  std::vector<PlacementPlan> plans;
  std::vector<Finding> findings;
  bool sharesDesign = false;       // with another line, at the same width
  std::vector<ServedSize> served;  // if so
};

// A team's order asks the same again and again: each question once, and who asks it.
struct Questions {
  std::vector<Task> asked;
  std::vector<std::size_t> of;                  // by task, index into `asked`
  std::vector<std::vector<OrderPlace>> places;  // by question, who asks it
};
Questions distinctQuestions(const std::vector<Task>& tasks, const Order& order);

// Gives every task the answer to its question; the last that asks it takes it without a copy.
void handOut(Questions& questions, std::vector<Task>& tasks, const Order& order,
             const OrderIndex& index, const Rules& rules);

}  // namespace creaseline
