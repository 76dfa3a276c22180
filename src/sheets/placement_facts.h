// SPDX-License-Identifier: MIT
// Everything that a placement sheet says about one group of sizes, as texts. No layout here.
#pragma once

#include <QColor>
#include <QString>
#include <QStringList>
#include <vector>

#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/groups.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

struct PlacementContext {
  const Plan& plan;
  const Order& order;
  const Shop& shop;
  const Rules& rules;
  UnitChoice units;
};

struct SizeCell {
  QString size;
  int quantity = 0;
};
// One of the numbers to be read at arm's length.
struct BigNumber {
  QString label;  // "Drop"
  QString value;  // "3 in"
  QString note;   // "below the collar seam, to the top of the design"
  bool large = false;
};
struct FactRow {
  QString label, value;
};
struct ThreadText {
  QString name, use, stitches;
  QColor colour;
};
struct FindingText {
  Severity severity{};
  QString text;
  QStringList numbers;
  QStringList remedies;
};
struct StepText {
  QString text;
  bool byHand = false;
};

struct PlacementFacts {
  std::size_t drawn = 0;  // index into Plan::placements of the size that the drawing shows
  QString title, detail;
  std::vector<SizeCell> sizes;
  int pieces = 0;
  bool stop = false;  // nothing of this group, or not all of it, may be sewn
  QString stopSizes;  // the sizes that stop, if not all do
  std::vector<BigNumber> numbers;
  std::vector<FactRow> rows;
  std::vector<ThreadText> threads;
  std::vector<StepText> steps;
  std::vector<FindingText> stops, remarks;  // remarks: watches and notes
  std::vector<FactRow> assumed;             // measures that nobody took, with their value
  QStringList cautions;
};

[[nodiscard]] PlacementFacts placementFacts(const PlacementContext& context,
                                            const SizeGroup& group);

}  // namespace creaseline
