// SPDX-License-Identifier: MIT
// Where the limits are from that findings are about: rule, basis, measure, what would change them.
#pragma once

#include <optional>
#include <string>

#include "creaseline/catalogue/rules.h"
#include "creaseline/planning/plan.h"
#include "planning/workshop.h"

namespace creaseline {

// Of a placement rule; `limit` says which of its limits it is, and how much.
Reason ruleReason(const PlacementRule& rule, std::string limit);

// Of how near a seam a design may come, and of the measures that draw that seam.
Reason seamReason(const ClothCheck& check, const Workshop& workshop);

// Of where edges and keep-outs of the panel lie.
Reason outlineReason(bool assumed, const PlacementPlan& plan);

// Of which frames the shop has, and what it says of them.
Reason framesReason(std::string text, std::string changedBy);

// Of what a frame holds.
Reason windowReason(const std::string& frame);

Reason errorReason(const HoopingError& error);

// Of what kept a frame that would hold the design from the garment.
Reason rejectionReason(const FrameRejection& rejection, const PlacementPlan& plan,
                       const Workshop& workshop);

// Of when the middle letter of a monogram counts as the larger one.
Reason largerLetterReason(const Workshop& workshop);

// Of the parts of a design that no frame holds whole.
Reason splitReason(const Workshop& workshop);

// Of the least size in which a design is still worth having.
Reason leastShareReason(const Workshop& workshop);

// Of the measures that the chart lacks or only proposes, and what is said of them; `list` names
// them. Precondition: there are some.
std::string assumedText(const PlacementPlan& plan, const std::string& list);
Reason assumedReason(const PlacementPlan& plan);

// Of the backing rule that fired last and named this part of the answer; nothing if none did.
template <class Value>
std::optional<Reason> backingReason(const PlacementPlan& plan, const Workshop& workshop,
                                    std::optional<Value> BackingRule::*part) {
  std::optional<Reason> last;
  for (const Reason& fired : plan.backing.fired) {
    for (const BackingRule& rule : workshop.rules->backing) {
      if (rule.id == fired.rule && (rule.*part).has_value()) {
        last = fired;
      }
    }
  }
  return last;
}

// "long frame leaves little room: to the nearest side 1 mm, turned 0.5°; the shop's hooping error
// is 3 mm sideways, 3 mm along, 1°"
std::string littleRoomText(const FrameChoice& choice, const std::string& frame,
                           const HoopingError& error, const UnitChoice& units);

}  // namespace creaseline
