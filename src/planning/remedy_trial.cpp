// SPDX-License-Identifier: MIT
#include "planning/remedy_trial.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "base/worded.h"
#include "creaseline/planning/change.h"
#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

constexpr int kLeastPercent = 30;  // below a third it is another design

// "part 1 in the long frame, part 2 in the square frame; room to the nearest side: 6 mm"
std::string partsText(const std::vector<PlacementPlan>& parts, const Workshop& workshop) {
  std::vector<std::string> each;
  Length least = parts.front().frame->slack.least();
  for (const PlacementPlan& part : parts) {
    least = std::min(least, part.frame->slack.least());
    each.push_back(worded("part {} in {}", part.part->number, nameOfFrame(*part.frame, workshop)));
  }
  return worded("{}; room to the nearest side: {}", fmt::join(each, ", "),
                roomPhrase(least, workshop.shop->units));
}

bool solved(const Case& problem, const std::vector<Observation>& observations) {
  return std::none_of(observations.begin(), observations.end(), [&problem](const Observation& o) {
    const bool same =
        o.code == problem.code && (o.subject == problem.subject || o.severity <= problem.severity);
    return o.severity == Severity::Stop || same;
  });
}

// Room and turning depend on which frame is best; for all else any frame will do.
Effort effortFor(FindingCode code) {
  return code == FindingCode::LittleRoom || code == FindingCode::FitsOnlyTurned ? Effort::BestFrame
                                                                                : Effort::AnyRoomy;
}

// Those of the outer rings, in an order that placing does not change.
std::vector<Point> vertices(const Outline& outline) {
  std::vector<Point> points;
  for (const Piece& piece : outline.pieces) {
    points.insert(points.end(), piece.outer.begin(), piece.outer.end());
  }
  return points;
}

RemedyTrial::Edit editOf(const Change& change) {
  return
      [change](PlacementRequest& request) { applyChange(change, request.size, request.placement); };
}

Workshop workshopFor(const Change& change, const Workshop& workshop) {
  if (const auto* turn = std::get_if<FrameTurnChange>(&change)) {
    return withFrameTurn(workshop, turn->turn);
  }
  if (const auto* frames = std::get_if<FramesChange>(&change)) {
    return withFrames(workshop, frames->frames);
  }
  return workshop;
}

// As it was asked for, at least as bad.
bool knownBefore(const Observation& observation, const Case& problem) {
  return std::any_of(problem.before.begin(), problem.before.end(), [&](const Observation& before) {
    return before.code == observation.code && before.subject == observation.subject &&
           before.severity <= observation.severity &&
           (observation.code != FindingCode::BeyondUsualSize ||
            before.amount >= observation.amount);
  });
}

// A design may be put elsewhere only where its size is usual, or no further from that than it was.
bool keepsSizeUsual(const Change& change, const std::vector<Observation>& seen,
                    const Case& problem) {
  return !std::holds_alternative<LocationChange>(change) ||
         std::none_of(seen.begin(), seen.end(), [&problem](const Observation& o) {
           return o.code == FindingCode::BeyondUsualSize && !knownBefore(o, problem);
         });
}

// What the change itself says already.
bool saidBy(const Change& change, FindingCode code) {
  return (code == FindingCode::SewnInParts && std::holds_alternative<SplitChange>(change)) ||
         (code == FindingCode::FitsOnlyTurned && std::holds_alternative<FrameTurnChange>(change));
}

// Each once, with the worst of the sizes.
std::vector<std::string> watchesBrought(const Change& change, const std::vector<Observation>& seen,
                                        const Case& problem) {
  std::vector<const Observation*> brought;
  for (const Observation& watch : seen) {
    if (watch.severity != Severity::Watch || saidBy(change, watch.code) ||
        knownBefore(watch, problem)) {
      continue;
    }
    const auto same =
        std::find_if(brought.begin(), brought.end(), [&watch](const Observation* other) {
          return other->code == watch.code && other->subject == watch.subject;
        });
    if (same == brought.end()) {
      brought.push_back(&watch);
    } else if (watch.amount > (*same)->amount) {
      *same = &watch;
    }
  }
  std::vector<std::string> texts;
  for (const Observation* watch : brought) {
    texts.push_back(watch->text);
  }
  return texts;
}

}  // namespace

std::string nameOfFrame(const FrameChoice& choice, const Workshop& workshop) {
  const Frame* frame = workshop.shop->frame(choice.frame);
  return frame == nullptr ? choice.frame.text() : frame->name;
}

std::string resultText(const Answer& answer, const Workshop& workshop) {
  if (!answer.parts.empty()) {
    return partsText(answer.parts, workshop);
  }
  const auto& frame = answer.whole.frame;
  return frame ? worded("{} holds it; room to the nearest side: {}", nameOfFrame(*frame, workshop),
                        roomPhrase(frame->slack.least(), workshop.shop->units))
               : worded("planned without a stop");
}

std::optional<std::vector<Observation>> RemedyTrial::solvedBy(const Edit& edit,
                                                              const Workshop& workshop) const {
  std::vector<Observation> all;
  for (PlacementRequest request : problem_.requests) {
    edit(request);
    const Answer answer = answerInParts(request, workshop, effortFor(problem_.code));
    const std::vector<Observation> seen = observe(request, answer, workshop);
    if (!solved(problem_, seen)) {
      return std::nullopt;
    }
    all.insert(all.end(), seen.begin(), seen.end());
  }
  return all;
}

bool RemedyTrial::works(const Edit& edit, const Workshop& workshop) const {
  return solvedBy(edit, workshop).has_value();
}

bool RemedyTrial::works(const Change& change) const {
  const auto seen = solvedBy(editOf(change), workshopFor(change, workshop_));
  return seen && keepsSizeUsual(change, *seen, problem_);
}

std::optional<Remedy> RemedyTrial::remedy(Change change, std::string text) const {
  const Edit edit = editOf(change);
  const Workshop workshop = workshopFor(change, workshop_);
  return remedy(std::move(change), std::move(text), edit, workshop);
}

std::optional<Remedy> RemedyTrial::remedy(Change change, std::string text, const Edit& edit,
                                          const Workshop& workshop) const {
  const auto seen = solvedBy(edit, workshop);
  if (!seen || !keepsSizeUsual(change, *seen, problem_)) {
    return std::nullopt;
  }
  PlacementRequest worst = problem_.requests.front();
  edit(worst);
  std::string result = resultText(answerInParts(worst, workshop, Effort::BestFrame), workshop);
  std::vector<std::string> watches = watchesBrought(change, *seen, problem_);
  // What each is about; why is told by the plan that the change leads to.
  for (std::string& watch : watches) {
    watch = watch.substr(0, watch.find(';'));
  }
  if (!watches.empty()) {
    result = worded("{}; to watch then: {}", result, fmt::format("{}", fmt::join(watches, "; ")));
  }
  return Remedy{std::move(change), std::move(text), std::move(result),
                furthestMove(edit, workshop)};
}

// Placing maps an outline affinely, so no stitch moves further than the furthest vertex.
std::optional<Length> RemedyTrial::furthestMove(const Edit& edit, const Workshop& workshop) const {
  double furthest = 0.0;
  for (const PlacementRequest& asked : problem_.requests) {
    PlacementRequest changed = asked;
    edit(changed);
    const PlacementPlan before = place(asked, workshop_, Effort::AnyFrame);
    const PlacementPlan after = place(changed, workshop, Effort::AnyFrame);
    const std::vector<Point> from = vertices(before.outlineOnPanel);
    const std::vector<Point> to = vertices(after.outlineOnPanel);
    if (before.panel != after.panel || from.size() != to.size()) {
      return std::nullopt;
    }
    for (std::size_t i = 0; i < from.size(); ++i) {
      furthest = std::max(furthest, norm(to[i] - from[i]));
    }
  }
  return Length::fromMm(furthest);
}

int RemedyTrial::workingPercent() const {
  const auto worksAt = [this](int percent) { return works(ScaleChange{percent / 100.0}); };
  // Working is not quite monotone (a smaller design can rest on a smaller frame that meets a
  // pocket), so the bisection only narrows; the answer itself has been tried.
  int low = kLeastPercent;
  int high = 99;
  if (worksAt(high)) {
    return high;
  }
  if (!worksAt(low)) {
    return 0;
  }
  while (high - low > 1) {
    const int middle = (low + high) / 2;
    (worksAt(middle) ? low : high) = middle;
  }
  return low;
}

}  // namespace creaseline
