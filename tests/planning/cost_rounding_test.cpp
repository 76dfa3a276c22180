// SPDX-License-Identifier: MIT
#include "planning/cost_rounding.h"

#include <catch2/catch.hpp>
#include <numeric>
#include <random>

using namespace creaseline;

namespace {

std::vector<std::int64_t> unitsOf(const std::vector<Money>& amounts) {
  std::vector<std::int64_t> units;
  for (const Money amount : amounts) {
    units.push_back(amount.minorUnits());
  }
  return units;
}

std::vector<std::int64_t> shared(std::int64_t total, const std::vector<ExactMoney>& shares) {
  return unitsOf(apportioned(Money::fromMinorUnits(total), shares));
}

}  // namespace

TEST_CASE("amounts are rounded to the nearest unit, halves up", "[cost]") {
  CHECK(roundedMoney(ExactMoney(5, 2)).minorUnits() == 3);
  CHECK(roundedMoney(ExactMoney(49, 20)).minorUnits() == 2);
  CHECK(roundedMoney(ExactMoney(0)).minorUnits() == 0);
  CHECK(roundedMoney(ExactMoney(kMostExactMinorUnits)).minorUnits() == kMostExactMinorUnits);
}

TEST_CASE("units that are left go to the largest remainders", "[cost]") {
  using Units = std::vector<std::int64_t>;
  CHECK(shared(100, {ExactMoney(100, 3), ExactMoney(100, 3), ExactMoney(100, 3)}) ==
        Units{34, 33, 33});
  CHECK(shared(10, {ExactMoney(31, 10), ExactMoney(49, 10), ExactMoney(2)}) == Units{3, 5, 2});
  CHECK(shared(0, {}).empty());
  // Seats of 16 by votes 1500, 1500, 900, 500, 500, 200 of 5100: quotas 4.7, 4.7, 2.8, 1.6, 1.6,
  // 0.6, worked by hand after Hamilton's rule.
  std::vector<ExactMoney> quotas;
  for (const int votes : {1500, 1500, 900, 500, 500, 200}) {
    quotas.emplace_back(votes * 16, 5100);
  }
  CHECK(shared(16, quotas) == Units{5, 5, 3, 1, 1, 1});
}

TEST_CASE("shares are their exact values rounded up or down, also of a rounded total", "[cost]") {
  constexpr unsigned kSeed = 20261128;
  CAPTURE(kSeed);
  std::mt19937 random(kSeed);
  for (int round = 0; round < 400; ++round) {
    std::vector<ExactMoney> shares;
    ExactMoney sum = 0;
    const int count = std::uniform_int_distribution(1, 12)(random);
    for (int i = 0; i < count; ++i) {
      shares.emplace_back(std::uniform_int_distribution(0, 90'000)(random),
                          std::uniform_int_distribution(1, 360)(random));
      sum += shares.back();
    }
    const boost::multiprecision::cpp_int down = numerator(sum) / denominator(sum);
    for (const int up : {0, 1}) {
      if (up == 1 && sum == ExactMoney(down)) {
        continue;
      }
      const auto total = down.convert_to<std::int64_t>() + up;
      const std::vector<std::int64_t> units = shared(total, shares);
      CHECK(std::accumulate(units.begin(), units.end(), std::int64_t{0}) == total);
      for (std::size_t i = 0; i < units.size(); ++i) {
        CHECK(ExactMoney(units[i]) > shares[i] - 1);
        CHECK(ExactMoney(units[i]) < shares[i] + 1);
      }
    }
  }
}
