// SPDX-License-Identifier: MIT
#include "planning/own_error.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

TEST_CASE("the tolerance factor is that of the handbook's worked example", "[own-error]") {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3: 43 measurements, 90 % of the
  // population, 99 % confidence, k2 = 2.217 (from memory).
  CHECK(toleranceFactor(43, 0.90, 0.99) == Approx(2.217).epsilon(0.0005));
}

TEST_CASE("simulated shops stay within their bound as often as it promises", "[own-error]") {
  std::mt19937 random(20261127);
  std::normal_distribution<double> unit;
  for (const std::size_t count : {std::size_t{5}, std::size_t{12}, std::size_t{40}}) {
    const double factor = toleranceFactor(count, 0.95, 0.90);
    int held = 0;
    constexpr int kShops = 4000;
    for (int shop = 0; shop < kShops; ++shop) {
      std::vector<double> values(count);
      double mean = 0.0;
      for (double& value : values) {
        value = unit(random);
        mean += value / static_cast<double>(count);
      }
      double squares = 0.0;
      for (const double value : values) {
        squares += (value - mean) * (value - mean);
      }
      const double half = factor * std::sqrt(squares / (static_cast<double>(count) - 1.0));
      // Share of the whole population between the two bounds, by the error function.
      const auto below = [](double x) { return 0.5 * std::erfc(-x / std::sqrt(2.0)); };
      held += below(mean + half) - below(mean - half) >= 0.95;
    }
    CAPTURE(count);
    // Howe's factor is an approximation that is good to a few thousandths.
    CHECK(static_cast<double>(held) / kShops == Approx(0.90).margin(0.015));
  }
}

TEST_CASE("an error follows from measured hoopings, of enough of them", "[own-error]") {
  const std::vector<MeasuredHooping> measured{{1_mm, -1_mm, 0.5_deg, ""},
                                              {3_mm, -1_mm, -0.5_deg, ""},
                                              {1_mm, -1_mm, 0.5_deg, ""},
                                              {3_mm, -1_mm, -0.5_deg, ""},
                                              {2_mm, -1_mm, 0_deg, ""}};
  CHECK_FALSE(measuredHoopingError(measured, 6, 0.95, 0.90).has_value());
  const auto error = measuredHoopingError(measured, 5, 0.95, 0.90);
  REQUIRE(error.has_value());
  // Mean 2 mm, deviations -1 1 -1 1 0: s = 1 mm.
  CHECK(error->sideways.mm() == Approx(2.0 + toleranceFactor(5, 0.95, 0.90)));
  CHECK(error->along == 1_mm);  // always the same way off, with no scatter
  CHECK(error->turn.degrees() == Approx(0.5 * toleranceFactor(5, 0.95, 0.90)).epsilon(0.001));
  CHECK(error->basis.find("5 of the shop's own hoopings") == 0);
}

TEST_CASE("the shop's own error decides between fit and watch and stop", "[own-error]") {
  const Order order = sample::order(sample::blank("t-shirt"), sample::design("d", 100_mm, 60_mm),
                                    "centre-chest", {"M"});
  Shop shop = sample::shop({sample::frame("A", 124_mm, 84_mm)});  // 2 mm of room on each side
  const auto severity = [&]() -> std::optional<Severity> {
    const Plan plan = planOrder(order, shop, sample::shippedRules());
    for (const Finding& finding : plan.findings) {
      if (finding.code == FindingCode::LittleRoom) {
        return finding.severity;
      }
    }
    return std::nullopt;
  };
  CHECK(severity() == Severity::Watch);  // 3 mm and 2 degrees as shipped: half of it is borne
  shop.hoopingError = HoopingError{5_mm, 5_mm, 1_deg, "judged"};
  CHECK(severity() == Severity::Stop);
  shop.hoopingError.reset();
  for (const int off : {-2, 2, -2, 2, -2, 2}) {
    shop.measuredHoopings.push_back({Length::fromMm(off), Length::fromMm(off), 0_deg, ""});
  }
  CHECK(severity() == Severity::Stop);  // more than 4 mm by these
  shop.measuredHoopings.clear();
  for (const int off : {-1, 1, -1, 1, -1, 1}) {
    shop.measuredHoopings.push_back(
        {Length::fromMm(off * 0.25), Length::fromMm(off * 0.25), 0_deg, ""});
  }
  CHECK(severity() == std::nullopt);
}

TEST_CASE("of frames that bear too little one that bears half is taken before one that does not",
          "[own-error]") {
  const Order order = sample::order(sample::blank("t-shirt"), sample::design("d", 100_mm, 60_mm),
                                    "centre-chest", {"M"});
  // 1 mm of room, and 2 mm with a larger body.
  const Shop shop = sample::shop(
      {sample::frame("tight", 122_mm, 82_mm), sample::frame("less tight", 124_mm, 84_mm)});
  const Plan plan = planOrder(order, shop, sample::shippedRules());
  REQUIRE(plan.placements[0].frame.has_value());
  CHECK(plan.placements[0].frame->frame == FrameId("less tight"));
}
