// SPDX-License-Identifier: MIT
// The shop's own hooping error, from hoopings that it measured.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "creaseline/catalogue/shop.h"

namespace creaseline {

// How many standard deviations to either side of the mean of `count` measurements (2 or more) hold
// that share of all to come, with that confidence, if they are normally distributed. Two-sided
// tolerance factor after W. G. Howe, Journal of the American Statistical Association 64 (1969), as
// given in the NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3.
[[nodiscard]] double toleranceFactor(std::size_t count, double coverage, double confidence);

// The error that holds that share of the shop's hoopings in each direction by itself: the mean's
// size and the factor times the standard deviation. Nothing with fewer than `least` measurements.
[[nodiscard]] std::optional<HoopingError> measuredHoopingError(
    const std::vector<MeasuredHooping>& measured, std::size_t least, double coverage,
    double confidence);

}  // namespace creaseline
