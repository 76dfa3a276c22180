// SPDX-License-Identifier: MIT
// What there is to say about one placement in one size, before sizes are gathered and remedies
// sought.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/planning/finding.h"
#include "planning/parts.h"
#include "planning/request.h"

namespace creaseline {

struct Observation {
  Severity severity{};
  FindingCode code{};
  std::string subject;  // what it is about ("pocket edge"); sizes are gathered by code and subject
  std::string text;
  Length amount;  // the larger, the worse
  std::vector<Number> numbers;
  std::optional<Reason> reason;  // of the limit that is not kept
};

// In a fixed order: placement, cloth, size, frame, backing, measures. Of a design that is sewn in
// several hoopings, place and size are judged by the whole, frames and backing by each part.
std::vector<Observation> observe(const PlacementRequest& request, const Answer& answer,
                                 const Workshop& workshop);

Severity worstOf(const std::vector<Observation>& observations);

}  // namespace creaseline
