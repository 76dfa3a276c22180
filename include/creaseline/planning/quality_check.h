// SPDX-License-Identifier: MIT
// The quality check: what a sewn garment must measure from the marks that can be felt on it.
#pragma once

#include <string>
#include <vector>

#include "creaseline/base/units.h"
#include "creaseline/planning/plan.h"
#include "creaseline/planning/report.h"

namespace creaseline {

// Lengths stand on marks of the ruler in use.
struct QualityRow {
  SizeName size;
  int garments = 0;
  Length drop, dropLeast, dropMost;
  std::string dropFrom;         // "below the collar seam, to the top of the design"
  std::string dropAllowed;      // "2 3/4 to 3 1/4 in"
  Length sideways;              // from the centre line; never negative
  std::string sidewaysFrom;     // "on the centre crease", "to the wearer's left of ..."
  std::string sidewaysAllowed;  // "within 1/4 in", "3 1/4 to 3 3/4 in"
};

// One line and location.
struct QualityPart {
  std::string lineId, blank, colour, location;
  std::vector<QualityRow> rows;  // by size, as ordered
};

struct QualityCheck {
  Length tolerance;  // on a mark of the ruler, rounded down
  std::string toleranceBasis;
  std::vector<QualityPart> parts;
};

// Of all that may be sewn. The drop may differ by the tolerance, but never beyond the least and
// most of its placement rule; where the order itself lies beyond, not further. Throws InputError if
// the default tolerance does not read.
[[nodiscard]] QualityCheck qualityCheck(const Plan& plan, const ReportContext& context,
                                        const UnitChoice& units);

}  // namespace creaseline
