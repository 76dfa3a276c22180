// SPDX-License-Identifier: MIT
#include "planning/fewest_sizes.h"

#include <algorithm>
#include <cmath>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "creaseline/planning/wording.h"
#include "planning/placement.h"
#include "planning/remedies.h"
#include "planning/set_cover.h"

namespace creaseline {
namespace {

constexpr int kAsAsked = 100;

// The scales, in percent of what is asked, at which a garment size can be sewn.
struct Served {
  PlacementRequest request;
  WholeInterval percent;
};

WholeInterval scalesThatServe(const PlacementRequest& request, int most, const Workshop& workshop) {
  int least = static_cast<int>(std::ceil(most * workshop.figures.leastDesignShare));
  const PlacementRule* rule = findPlacementRule(request, workshop);
  if (rule != nullptr && rule->leastWidth) {
    const Length asked = request.design->width * request.placement.scale;
    least =
        std::max(least, static_cast<int>(std::ceil(100.0 * rule->leastWidth->mm() / asked.mm())));
  }
  return {std::min(least, most), most};
}

// Who gets which, the largest design first.
std::vector<SizeScale> grouped(const std::vector<Served>& garments) {
  std::vector<WholeInterval> intervals;
  for (const Served& garment : garments) {
    intervals.push_back(garment.percent);
  }
  std::vector<int> points = fewestPoints(std::move(intervals));
  std::reverse(points.begin(), points.end());
  std::vector<SizeScale> groups;
  std::vector<bool> done(garments.size(), false);
  for (const int point : points) {
    SizeScale group{point / 100.0, {}};
    for (std::size_t i = 0; i < garments.size(); ++i) {
      if (!done[i] && point >= garments[i].percent.low && point <= garments[i].percent.high) {
        done[i] = true;
        group.sizes.push_back(garments[i].request.size);
      }
    }
    groups.push_back(std::move(group));
  }
  return groups;
}

class SizeRange {
 public:
  SizeRange(const std::vector<Observed>& sizes, const Workshop& workshop) : workshop_(workshop) {
    for (const Observed& size : sizes) {
      const PlacementRequest& request = size.request;
      if (worstOf(size.observations) != Severity::Stop) {
        const WholeInterval percent = scalesThatServe(request, kAsAsked, workshop);
        all_.push_back({request, percent});
        asAsked_.push_back(request.size);
        continue;
      }
      const Case alone = caseOf({request});
      const int most = RemedyTrial(alone, workshop).workingPercent();
      if (most == 0) {
        hopeless_.push_back(request.size);
        continue;
      }
      failing_.push_back({request, scalesThatServe(request, most, workshop)});
      all_.push_back(failing_.back());
    }
  }

  std::optional<Finding> finding() const {
    const bool differ = std::any_of(all_.begin(), all_.end(), [this](const Served& garment) {
      return garment.percent.high != all_.front().percent.high;
    });
    if (failing_.empty() || !differ) {
      return std::nullopt;
    }
    const std::vector<SizeScale> groups = grouped(failing_);
    Finding finding;
    finding.severity = Severity::Watch;
    finding.code = FindingCode::OneSizeDoesNotServeAll;
    finding.line = first().lineIndex;
    finding.placement = first().placementIndex;
    for (const Served& garment : failing_) {
      finding.sizes.push_back(garment.request.size);
    }
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
  static Case caseOf(std::vector<PlacementRequest> requests) {
    return {Severity::Watch, FindingCode::OneSizeDoesNotServeAll, {}, std::move(requests), false};
  }

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
    std::vector<SizeScale> groups = grouped(all_);
    if (groups.size() < keeping) {
      const std::string text = madeText(groups, false);
      offer(finding, all_, std::move(groups), text);
    }
  }

  void offer(Finding& finding, const std::vector<Served>& garments, std::vector<SizeScale> groups,
             std::string text) const {
    std::vector<PlacementRequest> requests;
    for (const Served& garment : garments) {
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
  std::vector<Served> all_;      // but those that no scale serves
  std::vector<Served> failing_;  // as asked
  std::vector<SizeName> asAsked_, hopeless_;
};

}  // namespace

std::optional<Finding> fewestDesignSizes(const std::vector<Observed>& sizes,
                                         const Workshop& workshop) {
  return SizeRange(sizes, workshop).finding();
}

}  // namespace creaseline
