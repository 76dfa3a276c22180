// SPDX-License-Identifier: MIT
// Planned sample orders and the sheets written from them.
#pragma once

#include <QString>
#include <QTemporaryDir>
#include <memory>
#include <string>
#include <vector>

#include "creaseline/planning/planner.h"
#include "creaseline/sheets/sheet_kind.h"
#include "creaseline/sheets/sheet_set.h"
#include "support/sample.h"

namespace creaseline::sample {

inline constexpr UnitChoice kInches{LengthUnit::Inch, RulerMark::Eighth,
                                    WeightUnit::GramsPerSquareMetre};

// A plan with what it was made from, and its PDF in a folder that lives as long as this.
struct Sheets {
  Order order;
  Shop shop;
  Plan plan;
  QTemporaryDir folder;
  QString pdf;
  WrittenSheets written;
};
std::unique_ptr<Sheets> written(Order order, Shop shop, Paper paper = Paper::A4,
                                const std::string& kind = "placement");

// Hoodies with a crest on the centre chest that a frame holds.
Order chestOrder();
Shop chestShop();
// The same with names of 60 characters, 30 thread blocks and 12 sizes that share their numbers.
Order longOrder();

}  // namespace creaseline::sample
