// SPDX-License-Identifier: MIT
#include "planning/findings.h"

#include <fmt/format.h>
#include <algorithm>
#include <tuple>

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

std::string placeText(const PlacementRequest& request, const std::vector<SizeName>& sizes,
                      const Workshop& workshop) {
  const Location* location = workshop.rules->location(request.placement.location);
  return fmt::format("line {}, {}, {}, {} {}", request.line->id, request.blank->name,
                     location == nullptr ? request.placement.location.text() : location->name,
                     sizes.size() == 1 ? "size" : "sizes",
                     sizesPhrase(sizes, request.blank->chart));
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
    finding.text +=
        fmt::format(" (size {}, the worst)", sizes[gathered.worstSize].request.size.text());
  }
  finding.place = placeText(first, finding.sizes, workshop);
  if (checkRemedies) {
    finding.remedies = findRemedies(problem, workshop);
  }
  return finding;
}

// Sizes that stop while others do not, and would not at a smaller scale: the design needs a
// second size.
void addSizeRange(std::vector<Finding>& findings, const std::vector<Observed>& sizes,
                  const Workshop& workshop) {
  Case failing{Severity::Watch, FindingCode::OneSizeDoesNotServeAll, {}, {}, false};
  std::vector<SizeName> served;
  std::vector<SizeName> unserved;
  for (const Observed& size : sizes) {
    if (worstOf(size.observations) == Severity::Stop) {
      failing.requests.push_back(size.request);
      unserved.push_back(size.request.size);
    } else {
      served.push_back(size.request.size);
    }
  }
  if (served.empty() || unserved.empty()) {
    return;
  }
  const int percent = workingPercent(failing, workshop);
  if (percent == 0) {
    return;
  }
  const PlacementRequest& first = failing.requests.front();
  const SizeChart& chart = first.blank->chart;
  const std::string smaller = formatLength(
      first.design->width * (first.placement.scale * percent / 100.0), workshop.shop->units);
  Finding finding;
  finding.severity = Severity::Watch;
  finding.code = FindingCode::OneSizeDoesNotServeAll;
  finding.line = first.lineIndex;
  finding.placement = first.placementIndex;
  finding.sizes = unserved;
  finding.place = placeText(first, unserved, workshop);
  finding.text = fmt::format(
      "one size of the design will not serve all: as asked it serves {}; {} wide ({} %) serves {}",
      sizesPhrase(served, chart), smaller, percent, sizesPhrase(unserved, chart));
  finding.remedies.push_back(
      {SizeSplitChange{percent / 100.0, unserved},
       fmt::format("have two sizes of the design made: as it is, and {} wide", smaller),
       fmt::format("{} then plan without a stop", sizesPhrase(unserved, chart))});
  findings.push_back(std::move(finding));
}

}  // namespace

std::vector<Finding> gatherFindings(const std::vector<Observed>& sizes, const Workshop& workshop,
                                    bool checkRemedies) {
  std::vector<Finding> findings;
  for (const Gathered& gathered : gather(sizes)) {
    findings.push_back(makeFinding(gathered, sizes, workshop, checkRemedies));
  }
  if (checkRemedies && sizes.size() > 1) {
    addSizeRange(findings, sizes, workshop);
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
