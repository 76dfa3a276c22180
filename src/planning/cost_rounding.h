// SPDX-License-Identifier: MIT
// Exact amounts, and the one rounding of them.
#pragma once

#include <boost/multiprecision/cpp_int.hpp>
#include <vector>

#include "creaseline/base/money.h"

namespace creaseline {

// Minor units as a fraction of any size: an hour's rate times milliseconds has no end in decimals.
using ExactMoney = boost::multiprecision::cpp_rational;

// Amounts up to here are rounded without overflow, and sums of two of them hold.
inline constexpr std::int64_t kMostExactMinorUnits = 1'000'000'000'000'000'000;

// To the nearest minor unit, halves up. Precondition: from 0 to kMostExactMinorUnits.
[[nodiscard]] Money roundedMoney(const ExactMoney& amount);

// `total` among shares: each is rounded down, and the units that are left go to the largest
// remainders (A. Hamilton's method of apportionment), the first of equal ones first. Where `total`
// is the sum of the shares rounded up or down, each share is its exact value rounded up or down,
// and one that is whole stays as it is. Precondition: that, and shares of 0 or more.
[[nodiscard]] std::vector<Money> apportioned(Money total, const std::vector<ExactMoney>& shares);

}  // namespace creaseline
