// SPDX-License-Identifier: MIT
#include "creaseline/base/spoken_units.h"

namespace creaseline {

namespace {

std::optional<UnitChoice>& unitsOfThread() {
  thread_local std::optional<UnitChoice> units;
  return units;
}

}  // namespace

SpokenUnits::SpokenUnits(const UnitChoice& units) : before_(unitsOfThread()) {
  unitsOfThread() = units;
}

SpokenUnits::~SpokenUnits() {
  unitsOfThread() = before_;
}

const std::optional<UnitChoice>& spokenUnits() {
  return unitsOfThread();
}

std::string spokenLength(Length length) {
  const std::optional<UnitChoice>& units = spokenUnits();
  if (!units) {
    return exactText(length);
  }
  const bool vanishes = length != Length() && roundToMark(length, *units) == Length();
  return formatLength(length, vanishes ? fineUnits(*units) : *units);
}

}  // namespace creaseline
