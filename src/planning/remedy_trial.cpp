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

bool RemedyTrial::works(const Edit& edit, const Workshop& workshop) const {
  return std::all_of(
      problem_.requests.begin(), problem_.requests.end(), [&](PlacementRequest request) {
        edit(request);
        const Answer answer = answerInParts(request, workshop, effortFor(problem_.code));
        return solved(problem_, observe(request, answer, workshop));
      });
}

bool RemedyTrial::works(const Change& change) const {
  return works(editOf(change), workshopFor(change, workshop_));
}

std::optional<Remedy> RemedyTrial::remedy(Change change, std::string text) const {
  const Edit edit = editOf(change);
  const Workshop workshop = workshopFor(change, workshop_);
  return remedy(std::move(change), std::move(text), edit, workshop);
}

std::optional<Remedy> RemedyTrial::remedy(Change change, std::string text, const Edit& edit,
                                          const Workshop& workshop) const {
  if (!works(edit, workshop)) {
    return std::nullopt;
  }
  PlacementRequest worst = problem_.requests.front();
  edit(worst);
  return Remedy{std::move(change), std::move(text),
                resultText(answerInParts(worst, workshop, Effort::BestFrame), workshop),
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
