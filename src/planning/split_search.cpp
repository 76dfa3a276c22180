// SPDX-License-Identifier: MIT
#include "planning/split_search.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace creaseline {
namespace {

constexpr std::size_t kMostPlaces = 48;  // of one direction, those that cross least
constexpr std::size_t kMostMarkPairs = 4;
constexpr double kSameMm = 1e-6;

// Lexicographic: crossed length, to the micrometre, before evenness.
struct Cost {
  double crossed = 0.0;
  double uneven = 0.0;  // sum of the parts' squared lengths
  Cost operator+(const Cost& other) const {
    return {crossed + other.crossed, uneven + other.uneven};
  }
  bool operator<(const Cost& other) const {
    return std::abs(crossed - other.crossed) > kSameMm ? crossed < other.crossed
                                                       : uneven < other.uneven;
  }
};

// Two marks on a cut, far apart: at either end of the sewing, or in gaps nearer to the middle,
// which need less room in the frame.
std::vector<std::vector<Point>> markPairs(const Outline& outline, const CutPlace& place,
                                          CutDirection direction, const SplitFigures& figures) {
  const Box box = outline.bounds();
  const double reach = figures.markHalf + figures.markClearance;
  const double middle = alongCut(box.centre(), direction);
  const double half = alongCut(box.max, direction) - middle;
  // Within the design's extent if the marks are far enough apart there.
  const double wanted = std::max(half - figures.markHalf, figures.marksApart / 2.0);
  const double range = std::max(half + 2.0 * reach, wanted + reach);
  const auto stretches =
      clearStretches(outline, direction, place.at, reach, {middle - range, middle + range});
  // In each stretch the ends, as far as they are wanted.
  std::vector<double> spots;
  for (const Region::Interval& stretch : stretches) {
    const double from = std::clamp(middle - wanted, stretch.low, stretch.high);
    const double to = std::clamp(middle + wanted, stretch.low, stretch.high);
    spots.push_back(from);
    if (to - from > kSameMm) {
      spots.push_back(to);
    }
  }
  std::vector<std::pair<double, double>> pairs;
  for (std::size_t i = 0; i < spots.size(); ++i) {
    for (std::size_t j = i + 1; j < spots.size(); ++j) {
      if (spots[j] - spots[i] >= figures.marksApart) {
        pairs.emplace_back(spots[i], spots[j]);
      }
    }
  }
  const auto span = [](const auto& pair) { return pair.second - pair.first; };
  std::stable_sort(pairs.begin(), pairs.end(),
                   [&](const auto& a, const auto& b) { return span(a) > span(b); });
  // The widest are the most exact; the narrowest is what fits where nothing else does.
  if (pairs.size() > kMostMarkPairs) {
    pairs.erase(pairs.begin() + kMostMarkPairs - 1, pairs.end() - 1);
  }
  std::vector<std::vector<Point>> marks;
  for (const auto& [first, second] : pairs) {
    marks.push_back(
        {pointOnCut(direction, place.at, first), pointOnCut(direction, place.at, second)});
  }
  return marks;
}

// The places of least crossing, filled up to equal parts of every number where these leave too
// much between them.
std::vector<CutPlace> placesFor(const Outline& outline, CutDirection direction, int mostParts) {
  std::vector<CutPlace> places = cutPlaces(outline, direction);
  std::stable_sort(places.begin(), places.end(),
                   [](const CutPlace& a, const CutPlace& b) { return a.crossed < b.crossed; });
  places.resize(std::min(places.size(), kMostPlaces));
  const Box box = outline.bounds();
  const double from = acrossCut(box.min, direction);
  const double length = acrossCut(box.max, direction) - from;
  for (int parts = 2; parts <= mostParts; ++parts) {
    for (int i = 1; i < parts; ++i) {
      const double at = from + length * i / parts;
      const bool known = std::any_of(places.begin(), places.end(), [at](const CutPlace& place) {
        return std::abs(place.at - at) <= kSameMm;
      });
      if (!known) {
        places.push_back({at, crossedLength(outline, direction, at)});
      }
    }
  }
  std::sort(places.begin(), places.end(),
            [](const CutPlace& a, const CutPlace& b) { return a.at < b.at; });
  return places;
}

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
    nodes_.push_back({direction, acrossCut(box_.min, direction), 0.0, {}});
    for (const CutPlace& place : placesFor(outline, direction, figures.mostParts)) {
      for (std::vector<Point>& marks : markPairs(outline, place, direction, figures)) {
        nodes_.push_back({direction, place.at, place.crossed, std::move(marks)});
      }
    }
    nodes_.push_back({direction, acrossCut(box_.max, direction), 0.0, {}});
    best_.push_back({Reached{0, Cost{}, 0}});
  }

  // Calls for 1, 2, 3, ... parts in turn.
  std::optional<std::pair<Cost, Split>> withNextParts() {
    const std::vector<Reached>& before = best_.back();
    std::vector<Reached> next;
    for (std::size_t to = 1; to < nodes_.size(); ++to) {
      std::optional<Reached> reached;
      for (std::size_t i = 0; i < before.size(); ++i) {
        const std::size_t from = before[i].node;
        if (nodes_[from].at >= nodes_[to].at - kSameMm) {
          continue;
        }
        const double length = nodes_[to].at - nodes_[from].at;
        const Cost cost = before[i].cost + Cost{nodes_[to].crossed, length * length};
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
    Cost cost;
    std::size_t before = 0;  // index into the list of one part less
  };

  [[nodiscard]] double letOut(const Cut& cut) const {
    return cut.crossed > 0.0 ? figures_.overlap / 2.0 : 0.0;
  }

  [[nodiscard]] SplitPart partBetween(std::size_t from, std::size_t to) const {
    SplitPart part{box_, nodes_[from].marks};
    part.marks.insert(part.marks.end(), nodes_[to].marks.begin(), nodes_[to].marks.end());
    const double low = nodes_[from].at - letOut(nodes_[from]);
    const double high = nodes_[to].at + letOut(nodes_[to]);
    part.section.min = pointOnCut(direction_, low, alongCut(box_.min, direction_));
    part.section.max = pointOnCut(direction_, high, alongCut(box_.max, direction_));
    return part;
  }

  bool partFits(std::size_t from, std::size_t to) {
    const auto [known, fresh] = answers_.try_emplace({from, to}, false);
    if (fresh && questions_ < figures_.mostQuestions) {
      const SplitPart part = partBetween(from, to);
      const Outline sewing = clipped(outline_, part.section);
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
    Split split{direction_, {}, {}};
    for (std::size_t i = 1; i < path.size(); ++i) {
      split.parts.push_back(partBetween(path[i - 1], path[i]));
      if (i + 1 < path.size()) {
        split.cuts.push_back(nodes_[path[i]]);
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
  std::vector<Cut> nodes_;  // by their coordinate; the outline's ends first and last
  std::vector<std::vector<Reached>> best_;  // by number of parts, then by node
  std::map<std::pair<std::size_t, std::size_t>, bool> answers_;
};

}  // namespace

double Split::crossed() const {
  double sum = 0.0;
  for (const Cut& cut : cuts) {
    sum += cut.crossed;
  }
  return sum;
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
  search.gaveUp = !search.split && search.questions >= figures.mostQuestions;
  return search;
}

}  // namespace creaseline
