// SPDX-License-Identifier: MIT
#include "planning/grid_layout.h"

#include <algorithm>
#include <tuple>

#include "planning/grid_strip.h"

namespace creaseline {
namespace {

constexpr std::size_t kMostWiderPairs = 16;  // tried at each seam

class Layout {
 public:
  Layout(const Outline& outline, const GridLayout& grid, const SplitFigures& figures,
         GridQuestions& questions)
      : outline_(outline),
        grid_(grid),
        figures_(figures),
        questions_(questions),
        across_(otherWay(grid.direction)),
        box_(outline.bounds()) {
    split_.direction = grid.direction;
    split_.cuts = grid.firstCuts;
    for (const std::vector<Cut>& cuts : grid.across) {
      split_.cuts.insert(split_.cuts.end(), cuts.begin(), cuts.end());
      split_.bothWays |= !cuts.empty();
    }
  }

  Split make() {
    for (std::size_t strip = 0; strip < grid_.across.size(); ++strip) {
      addStrip(strip);
    }
    for (std::size_t strip = 0; strip < grid_.across.size(); ++strip) {
      joinAcross(strip);
      if (strip > 0) {
        joinStrips(strip - 1, strip);
      }
    }
    std::sort(split_.seams.begin(), split_.seams.end(), [](const Seam& a, const Seam& b) {
      return std::tie(a.second, a.first) < std::tie(b.second, b.first);
    });
    for (Seam& seam : split_.seams) {
      widen(seam);
    }
    for (std::size_t i = 0; i < split_.parts.size(); ++i) {
      split_.parts[i].marks = asPart(i).marks();
    }
    giveCutsTheirMarks();
    return std::move(split_);
  }

 private:
  [[nodiscard]] std::size_t places(std::size_t strip) const {
    return grid_.across[strip].size() + 1;
  }

  // Between cuts, or from one to the design's end.
  [[nodiscard]] Region::Interval between(const std::vector<Cut>& cuts, std::size_t index,
                                         CutDirection direction) const {
    return {index == 0 ? acrossCut(box_.min, direction) : cuts[index - 1].at,
            index == cuts.size() ? acrossCut(box_.max, direction) : cuts[index].at};
  }
  [[nodiscard]] Region::Interval stripExtent(std::size_t strip) const {
    return between(grid_.firstCuts, strip, grid_.direction);
  }
  [[nodiscard]] Region::Interval placeExtent(std::size_t strip, std::size_t place) const {
    return between(grid_.across[strip], place, across_);
  }

  [[nodiscard]] Region::Interval sewn(const std::vector<Cut>& cuts, std::size_t index,
                                      CutDirection direction) const {
    Region::Interval extent = between(cuts, index, direction);
    extent.low -= index == 0 ? 0.0 : letOut(cuts[index - 1], figures_);
    extent.high += index == cuts.size() ? 0.0 : letOut(cuts[index], figures_);
    return extent;
  }

  // The place in a strip where the middle of the marks lies.
  [[nodiscard]] std::size_t placeOf(std::size_t strip, const MarkPair& marks) const {
    const double middle =
        (alongCut(marks[0], grid_.direction) + alongCut(marks[1], grid_.direction)) / 2.0;
    const std::vector<Cut>& cuts = grid_.across[strip];
    return static_cast<std::size_t>(
        std::count_if(cuts.begin(), cuts.end(), [&](const Cut& cut) { return cut.at <= middle; }));
  }

  void addStrip(std::size_t strip) {
    const std::size_t count = places(strip);
    const std::size_t entry = strip == 0 ? 0 : placeOf(strip, grid_.firstCuts[strip - 1].marks);
    index_.emplace_back(count, 0);
    for (std::size_t i = 0; i < count; ++i) {
      const std::size_t place = entry + i < count ? entry + i : count - 1 - i;
      index_[strip][place] = split_.parts.size();
      const Region::Interval first = sewn(grid_.firstCuts, strip, grid_.direction);
      const Region::Interval second = sewn(grid_.across[strip], place, across_);
      SplitPart part;
      part.section = {pointOnCut(grid_.direction, first.low, second.low),
                      pointOnCut(grid_.direction, first.high, second.high)};
      part.strip = static_cast<int>(strip) + 1;
      part.place = static_cast<int>(place) + 1;
      split_.parts.push_back(std::move(part));
    }
  }

  void join(std::size_t one, std::size_t other, const Cut& cut, Region::Interval along,
            bool marked) {
    split_.seams.push_back({std::min(one, other), std::max(one, other), cut.direction, cut.at,
                            along, crossedLength(outline_, cut.direction, cut.at, along),
                            sewingMeets(outline_, cut.direction, cut.at, along),
                            marked ? cut.marks : MarkPair()});
  }

  void joinAcross(std::size_t strip) {
    for (std::size_t i = 0; i + 1 < places(strip); ++i) {
      join(index_[strip][i], index_[strip][i + 1], grid_.across[strip][i], stripExtent(strip),
           true);
    }
  }

  void joinStrips(std::size_t before, std::size_t after) {
    const Cut& cut = grid_.firstCuts[before];
    for (std::size_t i = 0; i < places(before); ++i) {
      for (std::size_t j = 0; j < places(after); ++j) {
        const Region::Interval one = placeExtent(before, i);
        const Region::Interval other = placeExtent(after, j);
        const Region::Interval along{std::max(one.low, other.low), std::min(one.high, other.high)};
        if (along.length() > kSameCutMm) {
          join(index_[before][i], index_[after][j], cut, along,
               i == placeOf(before, cut.marks) && j == placeOf(after, cut.marks));
        }
      }
    }
  }

  [[nodiscard]] GridPart asPart(std::size_t index) const {
    GridPart part{split_.parts[index].section, {}, {}};
    for (const Seam& seam : split_.seams) {
      if (!seam.marks.empty() && (seam.first == index || seam.second == index)) {
        part.pairs.push_back(seam.marks);
      }
    }
    return part;
  }

  [[nodiscard]] bool holds(std::size_t index) {
    const GridPart part = asPart(index);
    return questions_.asked(clipped(outline_, part.section), part);
  }

  // Marks beside a cut may lie where another's would be set.
  [[nodiscard]] bool clearOfOthers(const Seam& seam) const {
    return std::none_of(split_.seams.begin(), split_.seams.end(), [&](const Seam& other) {
      return &other != &seam && marksMeet(seam.marks, other.marks, figures_);
    });
  }

  void widen(Seam& seam) {
    if (seam.marks.empty()) {
      return;
    }
    const Region::Interval whole{alongCut(box_.min, seam.direction),
                                 alongCut(box_.max, seam.direction)};
    const MarkRange range =
        markRange(seam.along, seam.along.low <= whole.low, seam.along.high >= whole.high, figures_);
    std::vector<MarkPair> wider = allPairs(outline_, seam.at, seam.direction, range, figures_);
    const auto span = [](const MarkPair& pair) { return norm(pair[1] - pair[0]); };
    const double known = span(seam.marks) + kSameCutMm;
    wider.erase(std::find_if(wider.begin(), wider.end(),
                             [&](const MarkPair& pair) { return span(pair) <= known; }),
                wider.end());
    const std::size_t count = std::min(wider.size(), kMostWiderPairs);
    const MarkPair before = seam.marks;
    for (std::size_t i = 0; i < count; ++i) {
      seam.marks = wider[i * wider.size() / count];
      if (clearOfOthers(seam) && holds(seam.first) && holds(seam.second)) {
        return;
      }
    }
    seam.marks = before;
  }

  void giveCutsTheirMarks() {
    for (const Seam& seam : split_.seams) {
      for (Cut& cut : split_.cuts) {
        const bool same = cut.direction == seam.direction && cut.at == seam.at &&
                          !seam.marks.empty() && !cut.marks.empty();
        if (same && liesOn(cut, seam)) {
          cut.marks = seam.marks;
        }
      }
    }
  }

  // Two strips may be cut at one place: each such cut has marks of its own.
  [[nodiscard]] bool liesOn(const Cut& cut, const Seam& seam) const {
    const double middle =
        (alongCut(cut.marks[0], cut.direction) + alongCut(cut.marks[1], cut.direction)) / 2.0;
    return cut.direction == grid_.direction ||
           (seam.along.low <= middle && middle <= seam.along.high);
  }

  const Outline& outline_;
  const GridLayout& grid_;
  const SplitFigures& figures_;
  GridQuestions& questions_;
  CutDirection across_;
  Box box_;
  std::vector<std::vector<std::size_t>> index_;  // of parts, by strip and place
  Split split_;
};

}  // namespace

Split splitOf(const Outline& outline, const GridLayout& grid, const SplitFigures& figures,
              GridQuestions& questions) {
  return Layout(outline, grid, figures, questions).make();
}

}  // namespace creaseline
