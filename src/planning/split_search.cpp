// SPDX-License-Identifier: MIT
#include "planning/split_search.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "planning/grid_search.h"
#include "planning/split_candidates.h"

namespace creaseline {
namespace {

// All cuts of one direction, and the shortest path over them.
class Strips {
 public:
  Strips(const Outline& outline, CutDirection direction, const SplitFigures& figures,
         const PartFits& fits, int& questions)
      : outline_(outline),
        direction_(direction),
        figures_(figures),
        fits_(fits),
        questions_(questions),
        box_(outline.bounds()) {
    std::vector<double> cuts;
    addPlace(cuts, {acrossCut(box_.min, direction), 0.0}, {{}});
    for (const CutPlace& place : parallelPlaces(outline, direction, figures.mostParts)) {
      addPlace(cuts, place, widePairs(outline, place, direction, figures));
    }
    addPlace(cuts, {acrossCut(box_.max, direction), 0.0}, {{}});
    sewn_ = SewnBetween(outline, direction, cuts);
    best_.push_back({Reached{0, CutCost{}, 0}});
  }

  // Calls for 1, 2, 3, ... parts in turn.
  std::optional<std::pair<CutCost, Split>> withNextParts() {
    const std::vector<Reached>& before = best_.back();
    std::vector<Reached> next;
    for (std::size_t to = 1; to < nodes_.size(); ++to) {
      std::optional<Reached> reached;
      for (std::size_t i = 0; i < before.size(); ++i) {
        const std::size_t from = before[i].node;
        if (nodes_[from].at >= nodes_[to].at - kSameCutMm) {
          continue;
        }
        const double length = nodes_[to].at - nodes_[from].at;
        const CutCost cost = before[i].cost + CutCost{nodes_[to].crossed, length * length};
        if ((!reached || cost < reached->cost) && partFits(from, to)) {
          reached = Reached{to, cost, i};
        }
      }
      if (reached) {
        next.push_back(*reached);
      }
    }
    best_.push_back(std::move(next));
    const std::vector<Reached>& last = best_.back();
    if (last.empty() || last.back().node + 1 != nodes_.size()) {
      return std::nullopt;
    }
    return std::make_pair(last.back().cost, traced());
  }

 private:
  struct Reached {
    std::size_t node = 0;
    CutCost cost;
    std::size_t before = 0;  // index into the list of one part less
  };

  void addPlace(std::vector<double>& cuts, const CutPlace& place,
                const std::vector<MarkPair>& pairs) {
    for (const MarkPair& marks : pairs) {
      nodes_.push_back({direction_, place.at, place.crossed, place.meets, marks});
      places_.push_back(cuts.size());
    }
    cuts.push_back(place.at);
  }

  [[nodiscard]] SplitPart partBetween(std::size_t from, std::size_t to) const {
    SplitPart part{box_, nodes_[from].marks, 1, 1};
    part.marks.insert(part.marks.end(), nodes_[to].marks.begin(), nodes_[to].marks.end());
    const double low = nodes_[from].at - letOut(nodes_[from], figures_);
    const double high = nodes_[to].at + letOut(nodes_[to], figures_);
    part.section.min = pointOnCut(direction_, low, alongCut(box_.min, direction_));
    part.section.max = pointOnCut(direction_, high, alongCut(box_.max, direction_));
    return part;
  }

  // False only if no frame can hold the marks and what is sewn between the cuts.
  [[nodiscard]] bool mayHold(std::size_t from, std::size_t to) const {
    Box box = sewn_.bounds(places_[from], places_[to]);
    box = withMarks(box, nodes_[from].marks, figures_);
    return figures_.mayHold(withMarks(box, nodes_[to].marks, figures_));
  }

  // What lies between two places, whichever marks are on them. Clipping is what costs most here,
  // and places are asked about in order of the second.
  const Outline& sewnIn(const Box& section, std::size_t from, std::size_t to) {
    if (sewnUpTo_ != to) {
      sewnUpTo_ = to;
      sewnFrom_.clear();
    }
    const auto [known, fresh] = sewnFrom_.try_emplace(from);
    if (fresh) {
      known->second = clipped(outline_, section);
    }
    return known->second;
  }

  bool partFits(std::size_t from, std::size_t to) {
    if (!mayHold(from, to)) {
      return false;
    }
    const auto [known, fresh] = answers_.try_emplace({from, to}, false);
    if (fresh && questions_ < figures_.mostQuestions) {
      const SplitPart part = partBetween(from, to);
      const Outline& sewing = sewnIn(part.section, places_[from], places_[to]);
      if (!sewing.empty()) {
        ++questions_;
        known->second = fits_(sewing, part.marks);
      }
    }
    return known->second;
  }

  [[nodiscard]] Split traced() const {
    std::vector<std::size_t> path;
    std::size_t at = best_.back().size() - 1;
    for (std::size_t level = best_.size(); level-- > 0;) {
      path.push_back(best_[level][at].node);
      at = best_[level][at].before;
    }
    std::reverse(path.begin(), path.end());
    Split split;
    split.direction = direction_;
    const Region::Interval along{alongCut(box_.min, direction_), alongCut(box_.max, direction_)};
    for (std::size_t i = 1; i < path.size(); ++i) {
      split.parts.push_back(partBetween(path[i - 1], path[i]));
      split.parts.back().strip = static_cast<int>(i);
      if (i + 1 < path.size()) {
        const Cut& cut = nodes_[path[i]];
        split.cuts.push_back(cut);
        split.seams.push_back(
            {i - 1, i, direction_, cut.at, along, cut.crossed, cut.meets, cut.marks});
      }
    }
    return split;
  }

  const Outline& outline_;
  CutDirection direction_;
  const SplitFigures& figures_;
  const PartFits& fits_;
  int& questions_;
  Box box_;
  std::vector<Cut> nodes_;           // by their coordinate; the outline's ends first and last
  std::vector<std::size_t> places_;  // of each
  SewnBetween sewn_;                 // between places
  std::size_t sewnUpTo_ = 0;         // what is sewn before this place, by the place where it begins
  std::map<std::size_t, Outline> sewnFrom_;
  std::vector<std::vector<Reached>> best_;  // by number of parts, then by node
  std::map<std::pair<std::size_t, std::size_t>, bool> answers_;
};

}  // namespace

bool SplitFigures::mayHold(const Box& box) const {
  return largest.empty() ||
         std::any_of(largest.begin(), largest.end(), [&box](const Extent& extent) {
           return box.width() <= extent.width + kSameCutMm &&
                  box.height() <= extent.height + kSameCutMm;
         });
}

double Split::crossed() const {
  double sum = 0.0;
  for (const Cut& cut : cuts) {
    sum += cut.crossed;
  }
  return sum;
}

bool Seam::marksBeside() const {
  return std::any_of(marks.begin(), marks.end(), [this](Point mark) {
    return std::abs(acrossCut(mark, direction) - at) > kSameCutMm;
  });
}

SplitSearch findSplit(const Outline& outline, const SplitFigures& figures, const PartFits& fits) {
  SplitSearch search;
  if (outline.empty()) {
    return search;
  }
  Strips upright(outline, CutDirection::Upright, figures, fits, search.questions);
  Strips level(outline, CutDirection::Level, figures, fits, search.questions);
  for (int parts = 1; parts <= figures.mostParts && !search.split; ++parts) {
    auto first = upright.withNextParts();
    auto second = level.withNextParts();
    if (first && (!second || !(second->first < first->first))) {
      search.split = std::move(first->second);
    } else if (second) {
      search.split = std::move(second->second);
    }
  }
  if (search.split) {
    return search;
  }
  GridSearch grid = findGrid(outline, figures, fits);
  search.split = std::move(grid.split);
  search.gaveUp = !search.split && (grid.gaveUp || search.questions >= figures.mostQuestions);
  search.questions += grid.questions;
  return search;
}

}  // namespace creaseline
