// SPDX-License-Identifier: MIT
// Length, Area and ArealWeight as value types.
#include "creaseline/base/length.h"

#include <catch2/catch.hpp>
#include <concepts>
#include <limits>
#include <random>
#include <type_traits>

#include "creaseline/base/areal_weight.h"

namespace creaseline {
namespace {

using namespace literals;

// A bare number never becomes a quantity, nor a quantity a number, without its unit being named.
template <class Quantity>
constexpr bool keepsApartFromDouble =
    !std::is_convertible_v<double, Quantity> && !std::is_constructible_v<Quantity, double> &&
    !std::is_convertible_v<int, Quantity> && !std::is_constructible_v<Quantity, int> &&
    !std::is_convertible_v<Quantity, double> && !std::is_constructible_v<double, Quantity> &&
    !std::is_assignable_v<Quantity&, double> && !std::equality_comparable_with<Quantity, double>;
static_assert(keepsApartFromDouble<Length>);
static_assert(keepsApartFromDouble<Area>);
static_assert(keepsApartFromDouble<ArealWeight>);
static_assert(!keepsApartFromDouble<double>, "the check itself can fail");

template <class A, class B>
concept Comparable = requires(A a, B b) {
  a < b;
};
template <class A, class B>
concept Addable = requires(A a, B b) {
  a + b;
};
static_assert(Comparable<Length, Length> && Addable<Length, Length>);
static_assert(!Comparable<Length, double> && !Comparable<double, Length>);
static_assert(!Addable<Length, double> && !Addable<Length, Area> && !Addable<Length, ArealWeight>);
static_assert(std::is_same_v<decltype(1_mm * 1_mm), Area>);
static_assert(std::is_same_v<decltype(1_mm / 1_mm), double>);

}  // namespace

TEST_CASE("an inch is 25.4 mm exactly", "[base][length]") {
  // International Yard and Pound Agreement, 1959; NIST SP 811, appendix B.
  STATIC_REQUIRE(1_in == 25.4_mm);
  STATIC_REQUIRE((1_in).nanometres() == 25'400'000);
  CHECK(Length::fromInches(1.0 / 64.0).nanometres() == 396'875);
  CHECK((36_in).mm() == 914.4);
}

TEST_CASE("lengths add, scale and compare exactly", "[base][length]") {
  CHECK(0.1_mm + 0.2_mm == 0.3_mm);  // which bare doubles do not
  CHECK(3_in - 1_in == 50.8_mm);
  CHECK(-(3_mm) == 0_mm - 3_mm);
  CHECK(abs(-(3_mm)) == 3_mm);
  CHECK(abs(3_mm) == 3_mm);
  CHECK(10_mm * 0.5 == 5_mm);
  CHECK(0.5 * 10_mm == 5_mm);
  CHECK(10_mm / 4.0 == 2.5_mm);
  CHECK(10_mm / 4_mm == 2.5);
  CHECK(1_mm < 1_in);
  CHECK_FALSE(1_in < 25.4_mm);
  Length sum;
  sum += 2_mm;
  sum -= 0.5_mm;
  CHECK(sum == 1.5_mm);
  CHECK((1_mm / 3.0).nanometres() == 333'333);
  CHECK((-(2_mm) / 3.0).nanometres() == -666'667);
}

TEST_CASE("a length times a length is an area", "[base][length]") {
  CHECK((20_mm * 50_mm).squareMm() == Approx(1000.0));
  CHECK((20_mm * 50_mm).squareCm() == Approx(10.0));
  CHECK((Area::fromSquareMm(1.5) + Area::fromSquareMm(2.0)).squareMm() == 3.5);
}

TEST_CASE("a length that is not finite or beyond the limit is refused", "[base][length]") {
  CHECK_THROWS_AS(Length::fromMm(std::numeric_limits<double>::quiet_NaN()), std::range_error);
  CHECK_THROWS_AS(Length::fromMm(std::numeric_limits<double>::infinity()), std::range_error);
  CHECK_THROWS_AS(Length::fromMm(1.000001e6), std::range_error);
  CHECK_THROWS_AS(Length::fromMm(-1.000001e6), std::range_error);
  CHECK_THROWS_AS(1_mm / 0.0, std::range_error);
  CHECK(Length::fromMm(1.0e6).mm() == 1.0e6);
}

TEST_CASE("sums of lengths do not depend on their order", "[base][length]") {
  const unsigned seed = 20261;
  CAPTURE(seed);
  std::mt19937_64 random(seed);
  std::uniform_real_distribution<double> mm(-1000.0, 1000.0);
  for (int i = 0; i < 1000; ++i) {
    const Length a = Length::fromMm(mm(random));
    const Length b = Length::fromMm(mm(random));
    const Length c = Length::fromMm(mm(random));
    CHECK((a + b) + c == c + (b + a));
    CHECK(a + b - b == a);
    CHECK(Length::fromMm(a.mm()) == a);
  }
}

TEST_CASE("ounces per square yard become grams per square metre", "[base][weight]") {
  // 28.349523125 g and 0.9144 m are exact (NIST SP 811, appendix B; from memory); the table is
  // their quotient times the weight, rounded to 0.1.
  const auto [ounces, grams] = GENERATE(table<double, double>({{1, 33.9},
                                                               {1.5, 50.9},
                                                               {2, 67.8},
                                                               {2.5, 84.8},
                                                               {3, 101.7},
                                                               {4, 135.6},
                                                               {5.3, 179.7},
                                                               {6, 203.4},
                                                               {8, 271.2},
                                                               {12, 406.9},
                                                               {14, 474.7}}));
  CAPTURE(ounces);
  const ArealWeight weight = ArealWeight::fromOuncesPerSquareYard(ounces);
  CHECK(weight.gramsPerSquareMetre() == Approx(grams).margin(0.0501).epsilon(0.0));
  CHECK(weight.ouncesPerSquareYard() == Approx(ounces).margin(2e-5).epsilon(0.0));
}

TEST_CASE("one ounce per square yard is 33.9057474748823 g/m2", "[base][weight]") {
  CHECK(ArealWeight::kGramsPerSquareMetrePerOunce == Approx(33.9057474748823).epsilon(1e-14));
}

TEST_CASE("an areal weight is never negative, endless or absurd", "[base][weight]") {
  CHECK_THROWS_AS(ArealWeight::fromGramsPerSquareMetre(-0.1), std::range_error);
  CHECK_THROWS_AS(ArealWeight::fromGramsPerSquareMetre(1.1e5), std::range_error);
  CHECK_THROWS_AS(ArealWeight::fromGramsPerSquareMetre(std::numeric_limits<double>::quiet_NaN()),
                  std::range_error);
  CHECK(ArealWeight::fromGramsPerSquareMetre(180) < ArealWeight::fromGramsPerSquareMetre(280));
}

}  // namespace creaseline
