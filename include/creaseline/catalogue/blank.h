// SPDX-License-Identifier: MIT
// A blank: the undecorated garment as bought.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/catalogue/fabric.h"
#include "creaseline/catalogue/identifiers.h"
#include "creaseline/catalogue/rates.h"
#include "creaseline/catalogue/size_chart.h"

namespace creaseline {

struct Blank {
  BlankId id;
  std::string name;
  KindId kind;
  Fabric fabric;
  std::vector<ClothColour> colours;
  SizeChart chart;
  std::optional<Price> price = {};  // of one garment, whatever its size
  bool operator==(const Blank&) const = default;
};

}  // namespace creaseline
