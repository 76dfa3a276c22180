// SPDX-License-Identifier: MIT
// A placement whose design is larger than every frame, planned as several hoopings.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "creaseline/planning/plan.h"
#include "planning/request.h"
#include "planning/split_search.h"

namespace creaseline {

// The answer to one question, in one hooping or in several.
struct Answer {
  PlacementPlan whole;               // as if it were sewn at once
  std::vector<PlacementPlan> parts;  // in the order of sewing; empty where one hooping is planned
  std::string notSplit;              // why not, where the order allows it and it is needed

  // What is sewn.
  [[nodiscard]] std::span<const PlacementPlan> hoopings() const {
    return parts.empty() ? std::span(&whole, 1) : std::span(parts);
  }
  [[nodiscard]] std::vector<PlacementPlan> takeHoopings() && {
    if (parts.empty()) {
      parts.push_back(std::move(whole));
    }
    return std::move(parts);
  }
};

// answer(), and where no frame holds the whole and the order allows it, its parts: the fewest
// hoopings in which each part has room for the shop's hooping error, and but for the first two
// register marks that a neighbour sews before it and both reach.
Answer answerInParts(const PlacementRequest& request, const Workshop& workshop,
                     Effort effort = Effort::Full);

// What one part sews of a design, as a design of its own: its outline, and its share of stitches by
// area (an estimate: which stitches lie where is not known). `section` is in the whole design's
// coordinates, and must hold some of it.
Design partOf(const Design& whole, const Box& section, int number, int of);

// What a frame must hold: the design and, for a part, its register marks as they are sewn.
// Panel coordinates.
Outline framedOutline(const PlacementPlan& plan);

// Whether both sew the whole, or the same part with its marks at the same places about it.
bool sameDesignPart(const PlacementPlan& a, const PlacementPlan& b);

}  // namespace creaseline
