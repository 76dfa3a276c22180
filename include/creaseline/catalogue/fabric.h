// SPDX-License-Identifier: MIT
// What a blank is made of, as far as needle, backing and frame care.
#pragma once

#include <string>
#include <vector>

#include "creaseline/base/areal_weight.h"
#include "creaseline/base/colour.h"
#include "creaseline/base/named_enum.h"

namespace creaseline {

enum class Construction { Woven, Knit, Nonwoven };
enum class Pile { None, BrushedInside, Textured, Loop, High };
enum class Stretch { None, Some, High };

struct FibreShare {
  std::string fibre;     // "cotton", "polyester"
  double percent = 0.0;  // shares of a fabric add up to 100
  bool operator==(const FibreShare&) const = default;
};

struct Fabric {
  std::string name;  // "three-end fleece"
  Construction construction = Construction::Knit;
  std::vector<FibreShare> fibres;
  ArealWeight weight;
  Pile pile = Pile::None;
  Stretch stretch = Stretch::None;
  bool sheer = false;
  bool proposed = false;  // as usual for the kind: nobody said what it is, so it counts as assumed
  bool operator==(const Fabric&) const = default;
};

// A colour that a blank is sold in.
struct ClothColour {
  std::string name;
  Colour colour;
  bool operator==(const ClothColour&) const = default;
};

template <>
struct EnumNames<Construction> {
  static constexpr std::pair<Construction, std::string_view> names[] = {
      {Construction::Woven, "woven"},
      {Construction::Knit, "knit"},
      {Construction::Nonwoven, "nonwoven"}};
};
template <>
struct EnumNames<Pile> {
  static constexpr std::pair<Pile, std::string_view> names[] = {
      {Pile::None, "none"},
      {Pile::BrushedInside, "brushed-inside"},
      {Pile::Textured, "textured"},
      {Pile::Loop, "loop"},
      {Pile::High, "high"}};
};
template <>
struct EnumNames<Stretch> {
  static constexpr std::pair<Stretch, std::string_view> names[] = {
      {Stretch::None, "none"}, {Stretch::Some, "some"}, {Stretch::High, "high"}};
};

}  // namespace creaseline
