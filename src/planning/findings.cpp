// SPDX-License-Identifier: MIT
#include "planning/findings.h"

#include <algorithm>
#include <tuple>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/placement.h"
#include "planning/remedies.h"

namespace creaseline {
namespace {

struct Gathered {
  Observation worst;
  const PlacementRule* rule = nullptr;  // that the sizes share; null where it does not matter
  std::vector<std::size_t> sizes;       // indices into the sizes of the line
  bool differs = false;                 // amounts differ between sizes
  std::size_t worstSize = 0;
};

// What is judged by the place and mended by moving. Sizes that different rules place have limits
// and moves of their own, and one that has no remedy would hide those of the rest.
bool hangsOnRule(const Observation& observation) {
  switch (observation.code) {
    case FindingCode::FrameMeetsGarment:
    case FindingCode::LittleRoom:
    case FindingCode::BelowLeastDrop:
    case FindingCode::BeyondMostDrop:
    case FindingCode::OutsidePanel:
    case FindingCode::MeetsKeepOut:
    case FindingCode::NearSeam:
    case FindingCode::BeyondUsualSize:
      return observation.severity != Severity::Note;
    default:
      return false;
  }
}

std::vector<Gathered> gather(const std::vector<Observed>& sizes, const Workshop& workshop) {
  std::vector<Gathered> all;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const PlacementRule* placed = findPlacementRule(sizes[i].request, workshop);
    for (const Observation& observation : sizes[i].observations) {
      const PlacementRule* rule = hangsOnRule(observation) ? placed : nullptr;
      const auto known = std::find_if(all.begin(), all.end(), [&](const Gathered& g) {
        return g.worst.code == observation.code && g.worst.subject == observation.subject &&
               g.rule == rule;
      });
      if (known == all.end()) {
        all.push_back({observation, rule, {i}, false, i});
        continue;
      }
      known->sizes.push_back(i);
      known->differs = known->differs || known->worst.text != observation.text;
      if (std::make_pair(observation.severity, -observation.amount) <
          std::make_pair(known->worst.severity, -known->worst.amount)) {
        known->worst = observation;
        known->worstSize = i;
      }
    }
  }
  return all;
}

std::string placeOf(const PlacementRequest& request, const Finding& finding,
                    const Workshop& workshop) {
  return findingPlace(*request.line, *request.blank, request.placement.location, finding.sizes,
                      *workshop.rules);
}

Finding makeFinding(const Gathered& gathered, const std::vector<Observed>& sizes,
                    const Workshop& workshop, bool checkRemedies) {
  const PlacementRequest& first = sizes[gathered.sizes.front()].request;
  Finding finding;
  finding.severity = gathered.worst.severity;
  finding.code = gathered.worst.code;
  finding.line = first.lineIndex;
  finding.placement = first.placementIndex;
  finding.text = gathered.worst.text;
  finding.numbers = gathered.worst.numbers;
  finding.reason = gathered.worst.reason;
  Case problem{gathered.worst.severity,
               gathered.worst.code,
               gathered.worst.subject,
               {},
               gathered.sizes.size() == sizes.size()};
  problem.requests.push_back(sizes[gathered.worstSize].request);
  for (const std::size_t index : gathered.sizes) {
    finding.sizes.push_back(sizes[index].request.size);
    const std::vector<Observation>& observed = sizes[index].observations;
    problem.before.insert(problem.before.end(), observed.begin(), observed.end());
    if (index != gathered.worstSize) {
      problem.requests.push_back(sizes[index].request);
    }
  }
  if (gathered.differs) {
    finding.text = worded("{} (size {}, the worst)", finding.text,
                          sizes[gathered.worstSize].request.size.text());
  }
  finding.place = placeOf(first, finding, workshop);
  if (checkRemedies) {
    finding.remedies = findRemedies(problem, workshop);
  }
  return finding;
}

}  // namespace

std::string findingPlace(const OrderLine& line, const Blank& blank, const LocationId& at,
                         const std::vector<SizeName>& sizes, const Rules& rules) {
  const std::string where = locationPhrase(at, rules);
  const std::string which = sizesPhrase(sizes, blank.chart);
  return sizes.size() == 1 ? worded("line {}, {}, {}, size {}", line.id, blank.name, where, which)
                           : worded("line {}, {}, {}, sizes {}", line.id, blank.name, where, which);
}

std::vector<Finding> gatherFindings(const std::vector<Observed>& sizes, const Workshop& workshop,
                                    bool checkRemedies) {
  std::vector<Finding> findings;
  for (const Gathered& gathered : gather(sizes, workshop)) {
    findings.push_back(makeFinding(gathered, sizes, workshop, checkRemedies));
  }
  return findings;
}

void sortFindings(std::vector<Finding>& findings) {
  std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
    return std::tie(a.severity, a.line, a.placement, a.code) <
           std::tie(b.severity, b.line, b.placement, b.code);
  });
}

}  // namespace creaseline
