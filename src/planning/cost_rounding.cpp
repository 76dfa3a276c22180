// SPDX-License-Identifier: MIT
#include "planning/cost_rounding.h"

#include <algorithm>
#include <numeric>

namespace creaseline {
namespace {

std::int64_t roundedDown(const ExactMoney& amount) {
  const boost::multiprecision::cpp_int whole = numerator(amount) / denominator(amount);
  return whole.convert_to<std::int64_t>();
}

}  // namespace

Money roundedMoney(const ExactMoney& amount) {
  return Money::fromMinorUnits(roundedDown(amount + ExactMoney(1, 2)));
}

std::vector<Money> apportioned(Money total, const std::vector<ExactMoney>& shares) {
  std::vector<std::int64_t> whole;
  std::vector<ExactMoney> remainders;
  for (const ExactMoney& share : shares) {
    whole.push_back(roundedDown(share));
    remainders.push_back(share - whole.back());
  }
  std::vector<std::size_t> order(shares.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return remainders[a] > remainders[b]; });
  std::int64_t left =
      total.minorUnits() - std::accumulate(whole.begin(), whole.end(), std::int64_t{0});
  for (auto next = order.begin(); left > 0 && next != order.end(); ++next, --left) {
    ++whole[*next];
  }
  std::vector<Money> amounts;
  for (const std::int64_t units : whole) {
    amounts.push_back(Money::fromMinorUnits(units));
  }
  return amounts;
}

}  // namespace creaseline
