// SPDX-License-Identifier: MIT
// In which units the checks of readers say lengths. A file is answered in exact millimetres; who
// types into a form is answered in the units that the form shows.
#pragma once

#include <optional>
#include <string>

#include "creaseline/base/units.h"

namespace creaseline {

// While one lives, the checks that run on its thread say lengths in these units. They nest.
class SpokenUnits {
 public:
  explicit SpokenUnits(const UnitChoice& units);
  ~SpokenUnits();
  SpokenUnits(const SpokenUnits&) = delete;
  SpokenUnits& operator=(const SpokenUnits&) = delete;

 private:
  std::optional<UnitChoice> before_;
};

// Nothing: exact millimetres.
[[nodiscard]] const std::optional<UnitChoice>& spokenUnits();

// A length in a message: as spokenUnits() say, finer where the ruler's mark would make it nothing.
[[nodiscard]] std::string spokenLength(Length length);

}  // namespace creaseline
