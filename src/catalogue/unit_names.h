// SPDX-License-Identifier: MIT
// Names of units as they stand in files.
#pragma once

#include "creaseline/base/named_enum.h"
#include "creaseline/base/units.h"

namespace creaseline {

template <>
struct EnumNames<LengthUnit> {
  static constexpr std::pair<LengthUnit, std::string_view> names[] = {
      {LengthUnit::Inch, "in"}, {LengthUnit::Centimetre, "cm"}, {LengthUnit::Millimetre, "mm"}};
};
template <>
struct EnumNames<RulerMark> {
  static constexpr std::pair<RulerMark, std::string_view> names[] = {
      {RulerMark::Eighth, "1/8"}, {RulerMark::Sixteenth, "1/16"}};
};
template <>
struct EnumNames<WeightUnit> {
  static constexpr std::pair<WeightUnit, std::string_view> names[] = {
      {WeightUnit::GramsPerSquareMetre, "g/m2"}, {WeightUnit::OuncesPerSquareYard, "oz/yd2"}};
};

}  // namespace creaseline
