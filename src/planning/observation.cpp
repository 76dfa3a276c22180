// SPDX-License-Identifier: MIT
#include "planning/observation.h"

#include <algorithm>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/wording.h"
#include "planning/cloth.h"
#include "planning/finding_reasons.h"
#include "planning/hooping_observer.h"
#include "planning/monogram.h"
#include "planning/observer.h"
#include "planning/parts.h"
#include "planning/placement.h"

namespace creaseline {
namespace {

// Of the design as a whole, but for what holds it.
class PlaceObserver : Observer {
 public:
  PlaceObserver(const PlacementRequest& request, const PlacementPlan& plan,
                const Workshop& workshop)
      : Observer(request, plan, workshop), rule_(findPlacementRule(request, workshop)) {}

  std::vector<Observation> place() {
    if (!plan_.hasRule) {
      missingRule();
      return take();
    }
    drop();
    cloth();
    usualSize();
    monogram();
    layers();
    return take();
  }

  std::vector<Observation> rest() {
    density();
    measures();
    return take();
  }

  std::vector<Observation> inParts(const std::vector<PlacementPlan>& parts) {
    std::vector<std::string> joins;
    Length crossed;
    bool touch = false;
    for (const PlacementPlan& plan : parts) {
      for (const PartJoin& join : plan.part->joins) {
        if (join.neighbour > plan.part->number) {
          crossed += join.crossed;
          touch = touch || join.overlap > Length();
        }
      }
      if (plan.part->number > 1) {
        joins.push_back(worded("part {} on {}", plan.part->number, alignedMarksPhrase(*plan.part)));
      }
    }
    say(Severity::Watch, FindingCode::SewnInParts, {},
        inPartsText(
            counted(static_cast<int>(parts.size()), toBeWorded("hooping"), toBeWorded("hoopings")),
            crossed, touch, fmt::format("{}", fmt::join(joins, ", "))),
        toBeWorded("sewing crossed"), crossed);
    because(splitReason(workshop_));
    return take();
  }

 private:
  // `touch`: pieces of the sewing touch at a cut.
  [[nodiscard]] std::string inPartsText(const std::string& hoopings, Length crossed, bool touch,
                                        const std::string& joins) const {
    if (crossed > Length()) {
      return worded(
          "no frame holds the whole design: it is sewn in {} that meet across {} of sewing; align "
          "{}",
          hoopings, difference(crossed), joins);
    }
    return touch ? worded(
                       "no frame holds the whole design: it is sewn in {} that meet between pieces "
                       "of it that touch; align {}",
                       hoopings, joins)
                 : worded(
                       "no frame holds the whole design: it is sewn in {} that meet where there "
                       "is no sewing; align {}",
                       hoopings, joins);
  }

  void missingRule() {
    const Location* location = workshop_.rules->location(request_.placement.location);
    const bool lacksPanel =
        location != nullptr && request_.garment->panel(location->panel) == nullptr;
    say(Severity::Stop, FindingCode::NoRule, {},
        lacksPanel ? worded("this garment has no {}", panelPhrase(location->panel))
                   : worded("no rule places a design at {} on this garment in this size",
                            request_.placement.location.text()));
    because(lacksPanel ? Reason{worded("such a garment is drawn without one"),
                                {},
                                worded("the kind of garment"),
                                false,
                                {},
                                worded("another location")}
                       : Reason{worded("a rule names the kinds, locations and sizes it is for"),
                                {},
                                worded("the rules for placement"),
                                false,
                                {},
                                worded("a house rule or another location")});
  }

  void drop() {
    Length distance = rule_->distance + request_.placement.moveDown;
    if (rule_->from == Landmark::PieceMiddle || rule_->from == Landmark::BorderMiddle) {
      distance = abs(distance);  // a middle is left upwards as well as downwards
    }
    const std::string what =
        rule_->anchor == Anchor::NearEdge ? worded("the design") : worded("the design's centre");
    if (distance < rule_->least) {
      const UnitChoice told = unitsTellingApart(distance, {rule_->least}, units_);
      say(Severity::Stop, FindingCode::BelowLeastDrop, {},
          worded("{} is {} {}, {} less than the least {}", what, formatLength(distance, told),
                 landmarkPhrase(rule_->from), differencePhrase(rule_->least - distance, told),
                 formatLength(rule_->least, told)),
          toBeWorded("too near by"), rule_->least - distance);
      because(ruleReason(*rule_, worded("the rule's least is {}", text(rule_->least))));
    } else if (distance > rule_->most) {
      const UnitChoice told = unitsTellingApart(distance, {rule_->most}, units_);
      say(Severity::Watch, FindingCode::BeyondMostDrop, {},
          worded("{} is {} {}, {} more than the usual most of {}", what,
                 formatLength(distance, told), landmarkPhrase(rule_->from),
                 differencePhrase(distance - rule_->most, told), formatLength(rule_->most, told)),
          toBeWorded("too far by"), distance - rule_->most);
      because(ruleReason(*rule_, worded("the rule's most is {}", text(rule_->most))));
    }
  }

  void cloth() {
    const PanelShape& panel = *plan_.garment->panel(plan_.panel);
    const Length wider = widerThanPanel(panel, plan_.placed.bounds);
    if (wider > Length()) {
      say(Severity::Stop, FindingCode::WiderThanPanel, {},
          worded("the design is {} wider than the {}", difference(wider), panelPhrase(panel.name)),
          toBeWorded("wider by"), wider);
      because(outlineReason(!plan_.assumed.empty(), plan_));
    }
    const bool inside = std::none_of(
        plan_.cloth.begin(), plan_.cloth.end(),
        [](const ClothCheck& check) { return check.outside && check.room < Length(); });
    for (const ClothCheck& check : plan_.cloth) {
      oneCheck(check, inside, wider > Length());
    }
  }

  void oneCheck(const ClothCheck& check, bool inside, bool wider) {
    const bool edge = check.least > Length();
    if (check.outside) {
      if (!wider) {
        say(Severity::Stop, FindingCode::OutsidePanel, {},
            worded("the design is not {}: it reaches {} beyond the edge", check.against,
                   difference(-check.room)),
            toBeWorded("beyond by"), -check.room);
        because(outlineReason(check.assumed, plan_));
      }
    } else if (!edge && check.room < Length()) {
      say(Severity::Stop, FindingCode::MeetsKeepOut, check.against,
          worded("the design lies on the {} by {}", check.against, difference(-check.room)),
          toBeWorded("over by"), -check.room);
      because(outlineReason(check.assumed, plan_));
    } else if (edge && inside && check.room < check.least) {
      const UnitChoice told = unitsTellingApart(check.room, {check.least}, units_, Compared::Room);
      say(Severity::Watch, FindingCode::NearSeam, check.against,
          check.room > Length()
              ? worded("the design is only {} from the {}; {} is wanted",
                       roomPhrase(check.room, told), check.against, formatLength(check.least, told))
              : worded("the design reaches the {}; {} is wanted", check.against, text(check.least)),
          toBeWorded("short by"), check.least - check.room);
      because(seamReason(check, workshop_));
    }
  }

  void usualSize() {
    const Length width = Length::fromMm(plan_.placed.bounds.width());
    const Length height = Length::fromMm(plan_.placed.bounds.height());
    // How much wider or higher, told as finely as the size and its limit need.
    const auto words = [this](Length value, Length limit) {
      const UnitChoice told = unitsTellingApart(value, {limit}, units_);
      return std::pair(formatLength(value, told), differencePhrase(abs(value - limit), told));
    };
    const auto over = [this](Length value, Length limit, std::string subject,
                             std::string sentence) {
      say(Severity::Watch, FindingCode::BeyondUsualSize, std::move(subject), std::move(sentence),
          toBeWorded("over the usual by"), value - limit);
      because(ruleReason(*rule_, worded("the usual most is {}", text(limit))));
    };
    if (rule_->mostWidth && width > *rule_->mostWidth) {
      const auto [wide, by] = words(width, *rule_->mostWidth);
      over(width, *rule_->mostWidth, "wide",
           worded("the design is {} wide, {} more than usual here", wide, by));
    }
    if (rule_->mostHeight && height > *rule_->mostHeight) {
      const auto [high, by] = words(height, *rule_->mostHeight);
      over(height, *rule_->mostHeight, "high",
           worded("the design is {} high, {} more than usual here", high, by));
    }
    const auto under = [this](Length value, Length limit, std::string subject,
                              std::string sentence) {
      say(Severity::Note, FindingCode::BeyondUsualSize, std::move(subject), std::move(sentence),
          toBeWorded("under the usual by"), limit - value);
      because(ruleReason(*rule_, worded("the usual least is {}", text(limit))));
    };
    if (rule_->leastWidth && width < *rule_->leastWidth) {
      const auto [wide, by] = words(width, *rule_->leastWidth);
      under(width, *rule_->leastWidth, "narrow",
            worded("the design is {} wide, {} less than usual here", wide, by));
    }
    if (rule_->leastHeight && height < *rule_->leastHeight) {
      const auto [high, by] = words(height, *rule_->leastHeight);
      under(height, *rule_->leastHeight, "low",
            worded("the design is {} high, {} less than usual here", high, by));
    }
  }

  void layers() {
    const GarmentKind* kind = workshop_.rules->kind(request_.blank->kind);
    for (const LayerBehind* layer : kind->layersBehind(plan_.panel, plan_.location)) {
      if (layer->watch) {
        say(Severity::Watch, FindingCode::LayerBehindPanel, layer->name,
            worded("behind the {} lies {}, and must not be sewn in: {}", panelPhrase(plan_.panel),
                   layer->name, layer->step));
        because(Reason{worded("such a garment has it there"),
                       {},
                       layer->basis,
                       false,
                       {},
                       worded("another location")});
      }
    }
  }

  // The letters' order hangs on the style: a wrong one spoils every garment of the person.
  void monogram() {
    const std::optional<Monogram>& said = request_.design->monogram;
    if (!said || !said->wish.empty()) {
      return;
    }
    const auto drawn = drawnStyle(request_.design->outline, workshop_.figures.largerLetter);
    if (drawn && *drawn != said->style) {
      Monogram other = *said;
      other.style = *drawn;
      say(Severity::Watch, FindingCode::MonogramDrawnOtherwise, {},
          worded("said to be of {}, but drawn with {}: the letters would be {} then, not {}",
                 stylePhrase(said->style), stylePhrase(*drawn),
                 monogramLetters(other, *workshop_.rules).letters,
                 monogramLetters(*said, *workshop_.rules).letters));
      because(largerLetterReason(workshop_));
    }
  }

  void density() {
    const double density = plan_.design.stitchesPerSquareMm();
    if (plan_.backing.mostDensity && density > *plan_.backing.mostDensity) {
      say(Severity::Watch, FindingCode::TooDense, {},
          worded("{:.2f} stitches per mm², this cloth bears {:.2f}: it may pucker or be cut",
                 density, *plan_.backing.mostDensity));
      because(backingReason(plan_, workshop_, &BackingRule::mostDensity));
    }
  }

  // A check that rests on an assumed measure and is near its limit makes the assumption matter.
  [[nodiscard]] bool assumptionMatters() const {
    return std::any_of(plan_.cloth.begin(), plan_.cloth.end(), [this](const ClothCheck& check) {
      return check.assumed && check.room < workshop_.figures.seamClearance * 2.0;
    });
  }

  void measures() {
    if (plan_.assumed.empty()) {
      return;
    }
    std::string list;
    for (const Measure measure : plan_.assumed) {
      list += (list.empty() ? "" : ", ") + measurePhrase(measure);
    }
    say(assumptionMatters() ? Severity::Watch : Severity::Note, FindingCode::MeasureAssumed, list,
        assumedText(plan_, list));
    because(assumedReason(plan_));
  }

  const PlacementRule* rule_;  // null only where the plan has none
};

}  // namespace

std::vector<Observation> observe(const PlacementRequest& request, const Answer& answer,
                                 const Workshop& workshop) {
  PlaceObserver whole(request, answer.whole, workshop);
  std::vector<Observation> all = whole.place();
  if (!answer.whole.hasRule) {
    return all;
  }
  const auto add = [&all](const std::vector<Observation>& more) {
    for (const Observation& observation : more) {
      // Parts share frames and backing: each is said once.
      const bool known = std::any_of(all.begin(), all.end(), [&](const Observation& other) {
        return other.code == observation.code && other.subject == observation.subject;
      });
      if (!known) {
        all.push_back(observation);
      }
    }
  };
  if (!answer.parts.empty()) {
    add(whole.inParts(answer.parts));
  }
  for (const PlacementPlan& plan : answer.hoopings()) {
    add(observeHooping(request, plan, answer.notSplit, workshop));
  }
  add(whole.rest());
  return all;
}

Severity worstOf(const std::vector<Observation>& observations) {
  Severity worst = Severity::Note;
  for (const Observation& observation : observations) {
    worst = std::min(worst, observation.severity);
  }
  return worst;
}

}  // namespace creaseline
