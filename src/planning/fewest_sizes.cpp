// SPDX-License-Identifier: MIT
#include "planning/fewest_sizes.h"

#include <algorithm>
#include <cmath>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "creaseline/planning/wording.h"
#include "planning/finding_reasons.h"
#include "planning/placement.h"
#include "planning/remedies.h"

namespace creaseline {
namespace {

constexpr int kAskedPercent = 100;

WholeInterval scalesThatServe(const PlacementRequest& request, int most, const Workshop& workshop) {
  int least = static_cast<int>(std::ceil(most * workshop.figures.leastDesignShare));
  const PlacementRule* rule = findPlacementRule(request, workshop);
  const auto noSmaller = [&](std::optional<Length> usual, Length designed) {
    if (usual) {
      const Length asked = designed * request.placement.scale;
      least = std::max(least, static_cast<int>(std::ceil(100.0 * usual->mm() / asked.mm())));
    }
  };
  if (rule != nullptr) {
    noSmaller(rule->leastWidth, request.design->width);
    noSmaller(rule->leastHeight, request.design->height);
  }
  return {std::min(least, most), most};
}

// What is tried to find the scales: that nothing stops.
Case caseOf(std::vector<PlacementRequest> requests) {
  return {Severity::Watch, FindingCode::OneSizeDoesNotServeAll, {}, std::move(requests), false};
}

// Who gets which, the largest design first.
std::vector<SizeScale> groupedByScale(const std::vector<ServedSize>& garments) {
  const std::vector<int> made = fewestScales(garments);
  std::vector<SizeScale> groups;
  for (auto percent = made.rbegin(); percent != made.rend(); ++percent) {
    SizeScale group{*percent / 100.0, {}};
    for (const ServedSize& garment : garments) {
      if (scaleFor(garment, made) == *percent) {
        group.sizes.push_back(garment.request.size);
      }
    }
    groups.push_back(std::move(group));
  }
  return groups;
}

class SizeRange {
 public:
  SizeRange(const std::vector<ServedSize>& sizes, const Workshop& workshop) : workshop_(workshop) {
    for (const ServedSize& size : sizes) {
      if (size.hopeless()) {
        hopeless_.push_back(size.request.size);
        continue;
      }
      all_.push_back(size);
      if (size.stops) {
        failing_.push_back(size);
      } else {
        asAsked_.push_back(size.request.size);
      }
    }
  }

  std::optional<Finding> finding() const {
    const bool differ = std::any_of(all_.begin(), all_.end(), [this](const ServedSize& garment) {
      return garment.percent.high != all_.front().percent.high;
    });
    if (failing_.empty() || !differ) {
      return std::nullopt;
    }
    const std::vector<SizeScale> groups = groupedByScale(failing_);
    Finding finding;
    finding.severity = Severity::Watch;
    finding.code = FindingCode::OneSizeDoesNotServeAll;
    finding.reason = leastShareReason(workshop_);
    finding.line = first().lineIndex;
    finding.placement = first().placementIndex;
    for (const ServedSize& garment : failing_) {
      finding.sizes.push_back(garment.request.size);
    }
    finding.place = findingPlace(*first().line, *first().blank, first().placement.location,
                                 finding.sizes, *workshop_.rules);
    finding.text = worded("one size of the design will not serve all: {}", servesText(groups));
    offerKeeping(finding, groups);
    offerFewest(finding, groups.size() + (asAsked_.empty() ? 0 : 1));
    if (finding.remedies.empty()) {
      return std::nullopt;
    }
    rankRemedies(finding.remedies, workshop_.figures.remedies);
    return finding;
  }

 private:
  [[nodiscard]] const PlacementRequest& first() const { return failing_.front().request; }

  [[nodiscard]] std::string named(const std::vector<SizeName>& sizes) const {
    return sizesPhrase(sizes, first().blank->chart);
  }

  [[nodiscard]] std::string width(double factor) const {
    return worded("{} wide",
                  formatLength(first().design->width * (first().placement.scale * factor),
                               workshop_.shop->units));
  }

  [[nodiscard]] std::string servesText(const std::vector<SizeScale>& groups) const {
    std::vector<std::string> texts;
    if (!asAsked_.empty()) {
      texts.push_back(worded("as asked it serves {}", named(asAsked_)));
    }
    for (const SizeScale& group : groups) {
      texts.push_back(worded("{} ({:.0f} %) serves {}", width(group.factor), group.factor * 100.0,
                             named(group.sizes)));
    }
    if (!hopeless_.empty()) {
      texts.push_back(worded("none serves {}", named(hopeless_)));
    }
    return fmt::format("{}", fmt::join(texts, "; "));
  }

  [[nodiscard]] std::string madeText(const std::vector<SizeScale>& groups, bool alsoAsIs) const {
    const std::size_t count = groups.size() + (alsoAsIs ? 1 : 0);
    std::vector<std::string> texts;
    if (alsoAsIs) {
      texts.push_back(worded("as it is"));
    }
    for (const SizeScale& group : groups) {
      texts.push_back(worded("{} for {}", width(group.factor), named(group.sizes)));
    }
    const std::string list = fmt::format("{}", fmt::join(texts, ", "));
    return count == 1 ? worded("have 1 size of the design made: {}", list)
                      : worded("have {} sizes of the design made: {}", count, list);
  }

  // What serves as asked stays as asked.
  void offerKeeping(Finding& finding, const std::vector<SizeScale>& groups) const {
    offer(finding, failing_, groups, madeText(groups, !asAsked_.empty()));
  }

  // Fewer sizes in all, if what would serve as asked is sewn smaller as well.
  void offerFewest(Finding& finding, std::size_t keeping) const {
    std::vector<SizeScale> groups = groupedByScale(all_);
    if (groups.size() < keeping) {
      const std::string text = madeText(groups, false);
      offer(finding, all_, std::move(groups), text);
    }
  }

  void offer(Finding& finding, const std::vector<ServedSize>& garments,
             std::vector<SizeScale> groups, std::string text) const {
    std::vector<PlacementRequest> requests;
    for (const ServedSize& garment : garments) {
      requests.push_back(garment.request);
    }
    std::erase_if(groups, [](const SizeScale& group) { return group.factor == 1.0; });
    const Case problem = caseOf(std::move(requests));
    auto remedy = RemedyTrial(problem, workshop_)
                      .remedy(DesignSizesChange{std::move(groups)}, std::move(text));
    if (remedy) {
      remedy->result = worded("{} then plan without a stop", named(finding.sizes));
      finding.remedies.push_back(std::move(*remedy));
    }
  }

  const Workshop& workshop_;
  std::vector<ServedSize> all_;      // but those that no scale serves
  std::vector<ServedSize> failing_;  // as asked
  std::vector<SizeName> asAsked_, hopeless_;
};

}  // namespace

std::vector<ServedSize> servedSizes(const std::vector<Observed>& sizes, const Workshop& workshop) {
  std::vector<ServedSize> served;
  for (const Observed& size : sizes) {
    const PlacementRequest& request = size.request;
    const bool stops = worstOf(size.observations) == Severity::Stop;
    int most = kAskedPercent;
    if (stops) {
      const Case alone = caseOf({request});
      most = RemedyTrial(alone, workshop).workingPercent();
    }
    served.push_back(
        {request, stops, most == 0 ? WholeInterval{} : scalesThatServe(request, most, workshop)});
  }
  return served;
}

std::vector<int> fewestScales(const std::vector<ServedSize>& garments) {
  std::vector<WholeInterval> intervals;
  for (const ServedSize& garment : garments) {
    if (!garment.hopeless()) {
      intervals.push_back(garment.percent);
    }
  }
  return fewestPoints(std::move(intervals));
}

int scaleFor(const ServedSize& garment, const std::vector<int>& made) {
  const auto above = std::upper_bound(made.begin(), made.end(), garment.percent.high);
  return *(above - 1);
}

std::optional<Finding> fewestDesignSizes(const std::vector<ServedSize>& sizes,
                                         const Workshop& workshop) {
  return SizeRange(sizes, workshop).finding();
}

}  // namespace creaseline
