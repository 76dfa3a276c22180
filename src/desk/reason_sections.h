// SPDX-License-Identifier: MIT
// What the reasons panel says about one placement and size, as data: headings, answers and the
// chain of reasons behind each. Knows no widget.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "desk/planned_order.h"

namespace creaseline::desk {

struct ReasonLine {
  QString text;
  QString source;        // rule and basis, or empty
  bool assumed = false;  // rests on a measure that nobody took
  std::optional<Severity> state;
};

struct ReasonSection {
  QString heading;
  std::vector<QString> answers;  // the numbers, said large
  std::vector<ReasonLine> lines;
};

struct PlacementReasons {
  QString title;     // "Centre chest, size M"
  QString subtitle;  // garment, design, quantity
  Severity state = Severity::Note;
  std::vector<ReasonSection> sections;  // never one without answers and lines
};

// "rule seam-clearance: common practice · would change with: …"
[[nodiscard]] QString sourceOf(const Reason& reason);

// `plan` belongs to `planned`, which has order, shop and plan.
[[nodiscard]] PlacementReasons reasonsFor(const PlannedOrder& planned, const PlacementPlan& plan);

}  // namespace creaseline::desk
