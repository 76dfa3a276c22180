// SPDX-License-Identifier: MIT
#include "creaseline/shape/fitting_angles.h"

#include <cmath>

namespace creaseline {

namespace {

constexpr double kFullTurn = 360.0;
// Degrees: the rounding of a range's end, far below a thousandth.
constexpr double kRoundingDegrees = 1e-9;

// The range moved by whole turns so that it starts at most a turn before the angle.
FittingAngles::Range broughtUnder(FittingAngles::Range range, double degrees) {
  const double turns =
      std::floor((degrees + kRoundingDegrees - range.from) / kFullTurn) * kFullTurn;
  return {range.from + turns, range.to + turns};
}

}  // namespace

double FittingAngles::total() const {
  double sum = 0.0;
  for (const Range& range : ranges_) {
    sum += range.width();
  }
  return sum;
}

bool FittingAngles::contains(double degrees) const {
  for (const Range& range : ranges_) {
    if (degrees <= broughtUnder(range, degrees).to + kRoundingDegrees) {
      return true;
    }
  }
  return false;
}

std::optional<FittingAngles::Range> FittingAngles::around(Angle angle) const {
  for (const Range& range : ranges_) {
    const Range under = broughtUnder(range, angle.degrees());
    if (angle.degrees() <= under.to + kRoundingDegrees) {
      return under;
    }
  }
  return std::nullopt;
}

std::optional<Angle> FittingAngles::nearest(Angle wanted) const {
  const double degrees = wanted.degrees();
  if (contains(degrees)) {
    return wanted;
  }
  std::optional<Angle> best;
  const auto keep = [&](double candidate, const Range& range) {
    if (candidate < range.from - kRoundingDegrees || candidate > range.to + kRoundingDegrees) {
      return;  // no whole thousandth lies in the range
    }
    const Angle angle = Angle::fromDegrees(candidate);
    const auto away = [wanted](Angle other) { return std::abs((other - wanted).millidegrees()); };
    if (!best || away(angle) < away(*best) ||
        (away(angle) == away(*best) && angle - wanted > Angle())) {
      best = angle;
    }
  };
  for (const Range& range : ranges_) {
    keep(std::ceil((range.from - kRoundingDegrees) * 1000.0) / 1000.0, range);
    keep(std::floor((range.to + kRoundingDegrees) * 1000.0) / 1000.0, range);
  }
  return best;
}

}  // namespace creaseline
