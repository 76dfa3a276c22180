// SPDX-License-Identifier: MIT
// Angle: normalised thousandths of a degree.
#include "creaseline/base/angle.h"

#include <catch2/catch.hpp>
#include <concepts>
#include <limits>
#include <numbers>
#include <random>
#include <type_traits>

#include "creaseline/base/length.h"

namespace creaseline {
namespace {

using namespace literals;

static_assert(!std::is_convertible_v<double, Angle> && !std::is_constructible_v<Angle, double>);
static_assert(!std::is_convertible_v<Angle, double> && !std::is_constructible_v<double, Angle>);
static_assert(!std::equality_comparable_with<Angle, double>);
static_assert(!std::equality_comparable_with<Angle, Length>);

}  // namespace

TEST_CASE("an angle is normalised to more than -180 and at most 180 degrees", "[base][angle]") {
  const auto [given, kept] = GENERATE(table<double, double>({{0, 0},
                                                             {90, 90},
                                                             {180, 180},
                                                             {-180, 180},
                                                             {180.001, -179.999},
                                                             {-179.999, -179.999},
                                                             {270, -90},
                                                             {-270, 90},
                                                             {360, 0},
                                                             {-360, 0},
                                                             {540, 180},
                                                             {-540, 180},
                                                             {725, 5},
                                                             {1.0e6, -80},
                                                             {-0.0004, 0}}));
  CAPTURE(given);
  CHECK(Angle::fromDegrees(given).degrees() == Approx(kept).margin(1e-9));
}

TEST_CASE("angles add and turn back within the range", "[base][angle]") {
  CHECK(170_deg + 20_deg == -(170_deg));
  CHECK(-(170_deg) - 20_deg == 170_deg);
  CHECK(-(180_deg) == 180_deg);
  CHECK(180_deg + 180_deg == 0_deg);
  CHECK((90_deg).radians() == Approx(std::numbers::pi / 2.0));
  CHECK((1.5_deg).millidegrees() == 1500);
}

TEST_CASE("an angle that is not finite or beyond a million degrees is refused", "[base][angle]") {
  CHECK_THROWS_AS(Angle::fromDegrees(std::numeric_limits<double>::quiet_NaN()), std::range_error);
  CHECK_THROWS_AS(Angle::fromDegrees(std::numeric_limits<double>::infinity()), std::range_error);
  CHECK_THROWS_AS(Angle::fromDegrees(1.1e6), std::range_error);
}

TEST_CASE("adding whole turns changes no angle", "[base][angle]") {
  const unsigned seed = 20262;
  CAPTURE(seed);
  std::mt19937 random(seed);
  std::uniform_int_distribution<int> millidegrees(-179'999, 180'000);
  std::uniform_int_distribution<int> turns(-1000, 1000);
  for (int i = 0; i < 1000; ++i) {
    const int value = millidegrees(random);
    const Angle angle = Angle::fromMillidegrees(value);
    CHECK(angle.millidegrees() == value);
    CHECK(Angle::fromMillidegrees(value + 360'000LL * turns(random)) == angle);
    CHECK(angle + -angle == 0_deg);
    CHECK(Angle::fromDegrees(angle.degrees()) == angle);
  }
}

}  // namespace creaseline
