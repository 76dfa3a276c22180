// SPDX-License-Identifier: MIT
#include "planning/remedies.h"

#include <algorithm>
#include <set>
#include <utility>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/frame_search.h"
#include "planning/placement.h"
#include "planning/shop_remedies.h"

namespace creaseline {
namespace {

constexpr std::size_t kMostRemedies = 5;

// "sew it at 92 % (7 3/8 in wide)"
std::string sizeText(const PlacementRequest& request, int percent, const UnitChoice& units) {
  return worded(
      "at {} % ({} wide)", percent,
      formatLength(request.design->width * (request.placement.scale * (percent / 100.0)), units));
}

class Finder {
 public:
  Finder(const Case& problem, const Workshop& workshop)
      : problem_(problem),
        workshop_(workshop),
        units_(workshop.shop->units),
        trial_(problem, workshop) {}

  std::vector<Remedy> all() {
    switch (problem_.code) {
      case FindingCode::BackingNotInStock:
      case FindingCode::NeedleNotInStock:
      case FindingCode::ToppingNotInStock:
        offer(stockUp(problem_, workshop_));
        break;
      case FindingCode::MeasureAssumed:
        offer(measureGarments(problem_, workshop_));
        break;
      case FindingCode::TooDense:
        offer(fewerStitches(problem_, workshop_));
        break;
      case FindingCode::OverlapsOtherPlace:      // which of the two is meant, only a person knows
      case FindingCode::MonogramDrawnOtherwise:  // somebody has to ask the customer
      case FindingCode::LayerBehindPanel:        // it says itself what to do
        break;
      case FindingCode::NoRule:
        elsewhere();
        break;
      case FindingCode::BelowLeastDrop:
      case FindingCode::BeyondMostDrop:
        move();
        smaller();
        break;
      default:
        // A note is for information: the plan has found its own way round it.
        if (problem_.severity != Severity::Note) {
          reworked();
        }
        if (remedies_.empty()) {
          offer(leaveAsPlanned(problem_, workshop_));
        }
        break;
    }
    rankRemedies(remedies_, workshop_.figures.remedies);
    if (remedies_.size() > kMostRemedies) {
      remedies_.resize(kMostRemedies);
    }
    return std::move(remedies_);
  }

 private:
  void offer(std::optional<Remedy> remedy) {
    if (remedy) {
      remedies_.push_back(std::move(*remedy));
    }
  }

  [[nodiscard]] const PlacementRequest& first() const { return problem_.requests.front(); }

  // Whether moving the design can change the finding at all.
  [[nodiscard]] bool dependsOnPlace() const {
    return problem_.code == FindingCode::FrameMeetsGarment ||
           problem_.code == FindingCode::MeetsKeepOut ||
           problem_.code == FindingCode::OutsidePanel || problem_.code == FindingCode::NearSeam ||
           problem_.code == FindingCode::LittleRoom;
  }

  // No frame serves.
  [[nodiscard]] bool frameless() const {
    return problem_.code == FindingCode::TooLargeForEveryFrame ||
           problem_.code == FindingCode::FrameMeetsGarment ||
           problem_.code == FindingCode::NoFrameSuits;
  }

  void reworked() {
    if (dependsOnPlace()) {
      move();
    }
    smaller();
    if (frameless()) {
      otherFrames();
    }
    if (frameless()) {
      frameTurn();
    }
    if (problem_.code == FindingCode::TooLargeForEveryFrame ||
        problem_.code == FindingCode::FrameMeetsGarment) {
      split();
    }
    if (problem_.code != FindingCode::LittleRoom) {
      turn();
    }
    // What is merely close or unusual is not put somewhere else.
    if (problem_.severity == Severity::Stop) {
      elsewhere();
    }
    if (problem_.code == FindingCode::TooLargeForEveryFrame ||
        problem_.code == FindingCode::NoFrameSuits) {
      offer(buyFrame(problem_, workshop_));
    } else if (frameless()) {
      offer(buyNarrowerFrame(problem_, workshop_));
    }
  }

  // The smallest move within the rule's tolerance, to a ruler mark, that works.
  void move() {
    const PlacementRule* rule = findPlacementRule(first(), workshop_);
    if (rule == nullptr) {
      return;
    }
    for (const Length by : movesWithin(*rule)) {
      auto remedy = trial_.remedy(
          MoveChange{by},
          by > Length() ? worded("move it {} further from the mark", formatLength(by, units_))
                        : worded("move it {} nearer to the mark", formatLength(abs(by), units_)));
      if (remedy) {
        offer(std::move(remedy));
        return;
      }
    }
  }

  // To the ends of the tolerance and by ruler marks, shortest first.
  [[nodiscard]] std::vector<Length> movesWithin(const PlacementRule& rule) const {
    const Length step = units_.length == LengthUnit::Inch
                            ? Length::fromInches(1.0 / static_cast<double>(units_.mark))
                            : Length::fromMm(1.0);
    const Length now = rule.distance + first().placement.moveDown;
    std::vector<Length> moves{rule.least - now, rule.most - now};
    for (const int marks : {1, 2, 3, 4, 6, 8, 12, 16}) {
      moves.push_back(step * marks);
      moves.push_back(step * -marks);
    }
    std::erase_if(moves, [&](Length by) {
      return by == Length() || now + by < rule.least || now + by > rule.most;
    });
    std::stable_sort(moves.begin(), moves.end(),
                     [](Length a, Length b) { return abs(a) < abs(b); });
    return moves;
  }

  void smaller() {
    const int percent = trial_.workingPercent();
    if (percent == 0) {
      return;
    }
    const double factor = percent / 100.0;
    const std::string size = sizeText(first(), percent, units_);
    if (problem_.allSizes) {
      offer(trial_.remedy(ScaleChange{factor}, worded("sew it {}", size)));
      return;
    }
    SizeScale scale{factor, {}};
    for (const PlacementRequest& request : problem_.requests) {
      scale.sizes.push_back(request.size);
    }
    std::string text = worded("sew {} {}, the other sizes as they are",
                              sizesPhrase(scale.sizes, first().blank->chart), size);
    offer(trial_.remedy(DesignSizesChange{{std::move(scale)}}, std::move(text)));
  }

  void split() {
    if (first().placement.split) {
      return;
    }
    auto remedy = trial_.remedy(SplitChange{}, {});
    if (!remedy) {
      return;
    }
    PlacementRequest request = first();
    request.placement.split = true;
    const int parts =
        static_cast<int>(answerInParts(request, workshop_, Effort::BestFrame).hoopings().size());
    remedy->change = SplitChange{parts};
    remedy->text = worded("sew it in {} hoopings, joined on register marks", parts);
    offer(std::move(remedy));
  }

  // Frames that the order leaves out.
  void otherFrames() {
    const bool some = std::any_of(workshop_.frames->begin(), workshop_.frames->end(),
                                  [](const PreparedFrame& frame) { return frame.leftOut; });
    if (some) {
      offer(trial_.remedy(FramesChange{}, worded("sew the order in any frame that the shop has")));
    }
  }

  // Ways to lay a frame that may be an answer: the smallest turns in which the design goes in, or
  // those that bring the bracket to another side.
  [[nodiscard]] std::vector<Angle> turnsToTry() const {
    if (problem_.code == FindingCode::TooLargeForEveryFrame) {
      const PlacementPlan plan = place(first(), workshop_, Effort::BestFrame);
      return turnsThatHold(workshop_, plan.panel, plan.outlineOnPanel, plan.placed.centre);
    }
    if (problem_.code != FindingCode::FrameMeetsGarment) {
      return {};
    }
    return {Angle::fromDegrees(180.0), Angle::fromDegrees(90.0), Angle::fromDegrees(-90.0)};
  }

  // The smallest turn of a frame on the garment in which it holds the design, and can sit there.
  void frameTurn() {
    for (const Angle turn : turnsToTry()) {
      auto remedy = trial_.remedy(
          FrameTurnChange{turn},
          worded("lay the frame turned by {} on the garment; the design reads as before",
                 wayPhrase(turn)));
      if (remedy) {
        offer(std::move(remedy));
        return;
      }
    }
  }

  void turn() {
    if (problem_.code != FindingCode::TooLargeForEveryFrame &&
        problem_.code != FindingCode::FrameMeetsGarment &&
        problem_.code != FindingCode::WiderThanPanel) {
      return;
    }
    offer(trial_.remedy(TurnChange{Angle::fromDegrees(90.0)},
                        worded("turn the design by 90° on the garment")));
  }

  // The first place on the same panel that works, else the first on another.
  void elsewhere() {
    const Location* here = workshop_.rules->location(first().placement.location);
    for (const bool samePanel : {true, false}) {
      for (const Location& location : workshop_.rules->locations) {
        const bool same = here != nullptr && location.panel == here->panel;
        if (same != samePanel || location.id == first().placement.location) {
          continue;
        }
        auto remedy =
            trial_.remedy(LocationChange{location.id}, worded("put it at {}", location.name));
        if (remedy) {
          offer(std::move(remedy));
          return;
        }
      }
    }
  }

  const Case& problem_;
  const Workshop& workshop_;
  const UnitChoice& units_;
  RemedyTrial trial_;
  std::vector<Remedy> remedies_;
};

// What a change asks of the shop besides moving stitches.
struct Asks {
  const RemedyFigures& figures;

  Length operator()(const SplitChange& change) const {
    return figures.furtherHooping * (change.parts - 1);
  }
  Length operator()(const FrameTurnChange& /*change*/) const { return figures.turnedFrame; }
  Length operator()(const DesignSizesChange& change) const {
    return figures.furtherDesign * static_cast<double>(change.scales.size());
  }
  Length operator()(const DesignSizesOfLinesChange& change) const {
    std::set<double> made;
    for (const PlacementScales& placement : change.placements) {
      for (const SizeScale& scale : placement.scales) {
        made.insert(scale.factor);
      }
    }
    return figures.furtherDesign * static_cast<double>(made.size());
  }
  Length operator()(const ShopChange& change) const {
    return change.what == "another-frame" ? figures.boughtFrame : Length();
  }
  template <class Other>
  Length operator()(const Other& /*change*/) const {
    return Length();
  }
};

}  // namespace

void rankRemedies(std::vector<Remedy>& remedies, const RemedyFigures& figures) {
  const auto weight = [&figures](const Remedy& remedy) {
    return remedy.moves ? *remedy.moves + std::visit(Asks{figures}, remedy.change)
                        : Length::fromMm(Length::kLimitMm);
  };
  std::stable_sort(remedies.begin(), remedies.end(),
                   [&weight](const Remedy& a, const Remedy& b) { return weight(a) < weight(b); });
}

std::vector<Remedy> findRemedies(const Case& problem, const Workshop& workshop) {
  return problem.requests.empty() ? std::vector<Remedy>{} : Finder(problem, workshop).all();
}

}  // namespace creaseline
