// SPDX-License-Identifier: MIT
#include "planning/finding_reasons.h"

#include <algorithm>
#include <utility>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/frame_search.h"
#include "planning/placement.h"

namespace creaseline {
namespace {

Reason defaultReason(std::string text, const DefaultValue& value, std::string changedBy) {
  return {std::move(text), RuleId(value.id), value.basis, false, {}, std::move(changedBy)};
}

}  // namespace

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

Reason framesReason(std::string text, std::string changedBy) {
  return {std::move(text), {}, worded("the shop's frames"), false, {}, std::move(changedBy)};
}

Reason windowReason(const std::string& frame) {
  return framesReason(
      worded("the window and the sewing field of {}, less the clearance for the foot", frame),
      worded("another frame"));
}

Reason errorReason(const HoopingError& error) {
  return {worded("the frame must bear the shop's hooping error"),
          {},
          error.basis,
          false,
          {},
          worded("hoopings that the shop measures or its own judgement of its error")};
}

Reason rejectionReason(const FrameRejection& rejection, const PlacementPlan& plan,
                       const Workshop& workshop) {
  switch (rejection.test) {
    case FrameTest::ArmReachesIn:
      return defaultReason(
          worded("the machine's arm goes into the garment from the bracket's side"),
          workshop.rules->defaults.armReach, worded("another frame or another way of lying"));
    case FrameTest::PassesOpening: {
      const PanelShape* panel = plan.garment->hooped(plan.panel, plan.location);
      return {worded("the ring must go in through an opening of the garment"),
              {},
              panel == nullptr || panel->openings.empty() ? worded("the kind of garment")
                                                          : panel->openings.front().basis,
              false,
              {},
              worded("a narrower frame")};
    }
    case FrameTest::HeldByCloth:
      return framesReason(worded("the frame asks for cloth all round to hold the garment by"),
                          worded("another frame or another place"));
    default:
      return outlineReason(!plan.assumed.empty(), plan);
  }
}

Reason largerLetterReason(const Workshop& workshop) {
  const DefaultValue& larger = workshop.rules->defaults.largerLetter;
  return defaultReason(
      worded("a middle letter counts as the larger one if it is higher by more than {}",
             larger.text),
      larger, worded("the customer's wish, said in the design"));
}

Reason splitReason(const Workshop& workshop) {
  const DefaultValue& overlap = workshop.rules->defaults.partOverlap;
  return defaultReason(
      worded("cut where the fewest hoopings and then the least sewing is crossed; parts overlap by "
             "{} where sewing is",
             formatLength(workshop.figures.parts.overlap, fineUnits(workshop.shop->units))),
      overlap, worded("a frame that holds the whole design, or a smaller design"));
}

Reason leastShareReason(const Workshop& workshop) {
  const DefaultValue& share = workshop.rules->defaults.leastDesignShare;
  return defaultReason(
      worded("each size may be sewn between the largest design that plans without a stop and {} of "
             "it",
             share.text),
      share, worded("other frames, or other sizes in the order"));
}

std::string assumedText(const PlacementPlan& plan, const std::string& list) {
  const bool anyProposed = std::any_of(
      plan.assumed.begin(), plan.assumed.end(),
      [&plan](Measure measure) { return plan.garment->measures.at(measure).rule.empty(); });
  return anyProposed
             ? worded("nobody has measured {} yet; assumed: measure before hooping", list)
             : worded("the size chart lacks {}; assumed by proportion: measure before hooping",
                      list);
}

Reason assumedReason(const PlacementPlan& plan) {
  const Measure first = plan.assumed.front();
  const MeasureValue& value = plan.garment->measures.at(first);
  return {value.rule.empty() ? worded("a value that was only proposed")
                             : worded("the proportions of such a garment"),
          value.rule,
          value.basis,
          true,
          first,
          worded("measuring it on the garment")};
}

std::string littleRoomText(const FrameChoice& choice, const std::string& frame,
                           const HoopingError& error, const UnitChoice& shown) {
  const UnitChoice units =
      unitsTellingApart(choice.slack.least(), {error.sideways, error.along}, shown, Compared::Room);
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
