// SPDX-License-Identifier: MIT
#include "planning/findings.h"

#include <algorithm>
#include <tuple>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/remedies.h"

namespace creaseline {
namespace {

struct Gathered {
  Observation worst;
  std::vector<std::size_t> sizes;  // indices into the sizes of the line
  bool differs = false;            // amounts differ between sizes
  std::size_t worstSize = 0;
};

std::vector<Gathered> gather(const std::vector<Observed>& sizes) {
  std::vector<Gathered> all;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    for (const Observation& observation : sizes[i].observations) {
      const auto known = std::find_if(all.begin(), all.end(), [&observation](const Gathered& g) {
        return g.worst.code == observation.code && g.worst.subject == observation.subject;
      });
      if (known == all.end()) {
        all.push_back({observation, {i}, false, i});
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
  Case problem{gathered.worst.severity,
               gathered.worst.code,
               gathered.worst.subject,
               {},
               gathered.sizes.size() == sizes.size()};
  problem.requests.push_back(sizes[gathered.worstSize].request);
  for (const std::size_t index : gathered.sizes) {
    finding.sizes.push_back(sizes[index].request.size);
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
  const Location* location = rules.location(at);
  const std::string& where = location == nullptr ? at.text() : location->name;
  const std::string which = sizesPhrase(sizes, blank.chart);
  return sizes.size() == 1 ? worded("line {}, {}, {}, size {}", line.id, blank.name, where, which)
                           : worded("line {}, {}, {}, sizes {}", line.id, blank.name, where, which);
}

std::vector<Finding> gatherFindings(const std::vector<Observed>& sizes, const Workshop& workshop,
                                    bool checkRemedies) {
  std::vector<Finding> findings;
  for (const Gathered& gathered : gather(sizes)) {
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
