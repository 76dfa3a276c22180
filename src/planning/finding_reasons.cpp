// SPDX-License-Identifier: MIT
#include "planning/finding_reasons.h"

#include <utility>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/frame_search.h"
#include "planning/placement.h"

namespace creaseline {

Reason ruleReason(const PlacementRule& rule, std::string limit) {
  return {std::move(limit), rule.id, rule.basis, false, {}, ruleChanger(rule)};
}

Reason seamReason(const ClothCheck& check, const Workshop& workshop) {
  const DefaultValue& clearance = workshop.rules->defaults.seamClearance;
  return {worded("a design keeps {} from seams and folds",
                 formatLength(check.least, workshop.shop->units)),
          RuleId(clearance.id),
          clearance.basis,
          check.assumed,
          {},
          check.assumed ? worded("measuring the garment, a move or a smaller design")
                        : worded("a move or a smaller design")};
}

Reason outlineReason(bool assumed, const PlacementPlan& plan) {
  const bool one = assumed && plan.assumed.size() == 1;
  return {worded("the garment is drawn from its measures"),
          {},
          assumed ? worded("size chart, with measures by proportion") : worded("size chart"),
          assumed,
          one ? std::optional<Measure>(plan.assumed.front()) : std::nullopt,
          assumed ? worded("measuring the garment") : worded("another measure in the size chart")};
}

Reason windowReason(const std::string& frame) {
  return {worded("the window and the sewing field of {}, less the clearance for the foot", frame),
          {},
          worded("the shop's frames"),
          false,
          {},
          worded("another frame")};
}

Reason errorReason(const HoopingError& error) {
  return {worded("the frame must bear the shop's hooping error"),
          {},
          error.basis,
          false,
          {},
          worded("hoopings that the shop measures or its own judgement of its error")};
}

Reason assumedReason(const PlacementPlan& plan) {
  const Measure first = plan.assumed.front();
  const MeasureValue& value = plan.garment->measures.at(first);
  return {worded("the proportions of such a garment"), value.rule, value.basis, true, first,
          worded("measuring it on the garment")};
}

std::string littleRoomText(const FrameChoice& choice, const std::string& frame,
                           const HoopingError& error, const UnitChoice& units) {
  const std::string room = roomPhrase(choice.slack.least(), units);
  const std::string turn = formatAngle(choice.slack.turn);
  const std::string own = worded("{} sideways, {} along, {}", formatLength(error.sideways, units),
                                 formatLength(error.along, units), formatAngle(error.turn));
  return slackCovers(choice.slack, error)
             ? worded(
                   "{} leaves little room: to the nearest side {}, turned {}, but not both at "
                   "once; the shop's hooping error is {}",
                   frame, room, turn, own)
             : worded(
                   "{} leaves little room: to the nearest side {}, turned {}; the shop's "
                   "hooping error is {}",
                   frame, room, turn, own);
}

}  // namespace creaseline
