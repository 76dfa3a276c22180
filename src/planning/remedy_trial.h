// SPDX-License-Identifier: MIT
// Trying a change by planning with it.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "creaseline/planning/finding.h"
#include "planning/observation.h"

namespace creaseline {

// The sizes of one line and location to which a finding applies, worst first, and what else the
// line has.
struct Case {
  Severity severity{};
  FindingCode code{};
  std::string subject;
  std::vector<PlacementRequest> requests;
  bool allSizes = true;                  // of the line
  std::vector<Observation> before = {};  // all that is observed of these sizes as asked
};

// Plans the requests of a case, changed, and sees whether what was observed is gone. Keeps pointers
// to its arguments.
class RemedyTrial {
 public:
  using Edit = std::function<void(PlacementRequest&)>;

  RemedyTrial(const Case& problem, const Workshop& workshop)
      : problem_(problem), workshop_(workshop) {}

  // True if every size of the case is then without its observation and without any stop; of another
  // location, also that the design is of a usual size there.
  [[nodiscard]] bool works(const Change& change) const;
  [[nodiscard]] bool works(const Edit& edit, const Workshop& workshop) const;

  // The remedy, if it works: with what the new plan says, every watch that it brings, and how far
  // it moves stitches.
  [[nodiscard]] std::optional<Remedy> remedy(Change change, std::string text) const;
  [[nodiscard]] std::optional<Remedy> remedy(Change change, std::string text, const Edit& edit,
                                             const Workshop& workshop) const;

  // The largest whole percentage below 100 at which the case works; 0 if none down to 30 % does.
  [[nodiscard]] int workingPercent() const;

 private:
  // All that is observed of the changed sizes; nothing if that does not solve the case.
  [[nodiscard]] std::optional<std::vector<Observation>> solvedBy(const Edit& edit,
                                                                 const Workshop& workshop) const;
  [[nodiscard]] std::optional<Length> furthestMove(const Edit& edit,
                                                   const Workshop& workshop) const;

  const Case& problem_;
  const Workshop& workshop_;
};

// "long frame holds it; room to the nearest side: 6 mm"
std::string resultText(const Answer& answer, const Workshop& workshop);

// The name that the shop has given to the frame.
std::string nameOfFrame(const FrameChoice& choice, const Workshop& workshop);

}  // namespace creaseline
