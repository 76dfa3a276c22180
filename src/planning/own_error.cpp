// SPDX-License-Identifier: MIT
#include "planning/own_error.h"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

#include "base/worded.h"

namespace creaseline {
namespace {

// The least number of measurements that have a scatter.
constexpr std::size_t kLeast = 2;

double bound(const std::vector<double>& values, double factor) {
  const auto count = static_cast<double>(values.size());
  double mean = 0.0;
  for (const double value : values) {
    mean += value / count;
  }
  double squares = 0.0;
  for (const double value : values) {
    squares += (value - mean) * (value - mean);
  }
  return std::abs(mean) + factor * std::sqrt(squares / (count - 1.0));
}

}  // namespace

double toleranceFactor(std::size_t count, double coverage, double confidence) {
  const auto n = static_cast<double>(count);
  const double z = boost::math::quantile(boost::math::normal(), (1.0 + coverage) / 2.0);
  const double chi = boost::math::quantile(boost::math::chi_squared(n - 1.0), 1.0 - confidence);
  return z * std::sqrt((n - 1.0) * (1.0 + 1.0 / n) / chi);
}

std::optional<HoopingError> measuredHoopingError(const std::vector<MeasuredHooping>& measured,
                                                 std::size_t least, double coverage,
                                                 double confidence) {
  if (measured.size() < std::max(least, kLeast)) {
    return std::nullopt;
  }
  const double factor = toleranceFactor(measured.size(), coverage, confidence);
  const auto boundOf = [&](auto value) {
    std::vector<double> values;
    for (const MeasuredHooping& hooping : measured) {
      values.push_back(value(hooping));
    }
    return bound(values, factor);
  };
  HoopingError error;
  error.sideways = Length::fromMm(boundOf([](const auto& each) { return each.sideways.mm(); }));
  error.along = Length::fromMm(boundOf([](const auto& each) { return each.along.mm(); }));
  error.turn = Angle::fromDegrees(
      std::min(180.0, boundOf([](const auto& each) { return each.turn.degrees(); })));
  error.basis = worded(
      "{} of the shop's own hoopings: {:.0f} % of all stay within, with {:.0f} "
      "% confidence (tolerance interval of a normal distribution)",
      measured.size(), coverage * 100.0, confidence * 100.0);
  return error;
}

}  // namespace creaseline
