// SPDX-License-Identifier: MIT
// Everything that a placement sheet says about one group of sizes, as texts. No layout here.
#pragma once

#include <QColor>
#include <QString>
#include <QStringList>
#include <vector>

#include "creaseline/planning/groups.h"
#include "creaseline/sheets/sheet_kind.h"

namespace creaseline {

struct SizeCell {
  QString size;
  int quantity = 0;
};
// How far from the eye a number is read.
enum class NumberSize { ArmsLength, Step, Close };
struct BigNumber {
  QString label;  // "Drop"
  QString value;  // "3 in"
  QString note;   // "below the collar seam, to the top of the design"
  NumberSize size = NumberSize::Close;
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
  QString about;  // for the page's code: "line 1 centre-chest S M L"
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

// "Line 1, centre chest: S M L", for a bookmark.
[[nodiscard]] QString placementTitle(const SheetContext& context, const SizeGroup& group);
[[nodiscard]] PlacementFacts placementFacts(const SheetContext& context, const SizeGroup& group);

}  // namespace creaseline
