// SPDX-License-Identifier: MIT
// In which units the checks of readers say lengths.
#include "creaseline/base/spoken_units.h"

#include <catch2/catch.hpp>
#include <thread>

namespace creaseline {
namespace {

using namespace literals;

constexpr UnitChoice kOwnersUnits{LengthUnit::Inch};

}  // namespace

TEST_CASE("messages say exact millimetres unless a form asks otherwise", "[base][units]") {
  CHECK(spokenLength(82.55_mm) == "82.55 mm");
  {
    const SpokenUnits inches(kOwnersUnits);
    CHECK(spokenLength(82.55_mm) == "3 1/4 in");
    CHECK(spokenLength(5000_mm) == "196 7/8 in");
    CHECK(spokenLength(1_mm) == "3/64 in");  // to the ruler it would be nothing
    {
      const SpokenUnits centimetres({LengthUnit::Centimetre});
      CHECK(spokenLength(82.55_mm) == "8.3 cm");
    }
    CHECK(spokenLength(0_mm) == "0 in");
  }
  CHECK(spokenLength(82.55_mm) == "82.55 mm");
}

TEST_CASE("another thread is not asked for the form's units", "[base][units]") {
  const SpokenUnits inches(kOwnersUnits);
  std::string said;
  std::thread([&said] { said = spokenLength(10_mm); }).join();
  CHECK(said == "10 mm");
  CHECK(spokenLength(3.175_mm) == "1/8 in");
}

}  // namespace creaseline
