// SPDX-License-Identifier: MIT
#include "planning/split_candidates.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace creaseline {
namespace {

constexpr std::size_t kMostPlaces = 48;  // of one direction, those that cross least
constexpr std::size_t kMostGridPlaces = 16;
constexpr std::size_t kMostMarkPairs = 4;
constexpr std::size_t kMostClosePairs = 6;

// A stretch on which marks may lie, less what of it is not wanted.
std::vector<Region::Interval> wantedStretches(const Outline& outline, CutDirection direction,
                                              double at, const MarkRange& range,
                                              const SplitFigures& figures) {
  auto stretches = clearStretches(outline, direction, at, figures.markHalf + figures.markClearance,
                                  range.allowed);
  for (Region::Interval& stretch : stretches) {
    const Region::Interval whole = stretch;
    stretch.low = std::clamp(range.wanted.low, whole.low, whole.high);
    stretch.high = std::clamp(range.wanted.high, whole.low, whole.high);
  }
  return stretches;
}

// Both ends of every stretch.
std::vector<double> endsOf(const std::vector<Region::Interval>& stretches) {
  std::vector<double> spots;
  for (const Region::Interval& stretch : stretches) {
    spots.push_back(stretch.low);
    if (stretch.length() > kSameCutMm) {
      spots.push_back(stretch.high);
    }
  }
  return spots;
}

// And between them, where a stretch is long, by half the distance of a pair.
std::vector<double> spotsOf(const std::vector<Region::Interval>& stretches, double apart) {
  std::vector<double> spots = endsOf(stretches);
  for (const Region::Interval& stretch : stretches) {
    const int steps = static_cast<int>(std::floor(stretch.length() / (apart / 2.0)));
    for (int i = 1; i <= steps; ++i) {
      spots.push_back(stretch.low + i * apart / 2.0);
    }
  }
  std::sort(spots.begin(), spots.end());
  spots.erase(std::unique(spots.begin(), spots.end(),
                          [](double a, double b) { return std::abs(a - b) <= kSameCutMm; }),
              spots.end());
  return spots;
}

std::vector<MarkPair> pairsOf(const std::vector<double>& spots, CutDirection direction, double at,
                              double apart) {
  std::vector<std::pair<double, double>> pairs;
  for (std::size_t i = 0; i < spots.size(); ++i) {
    for (std::size_t j = i + 1; j < spots.size(); ++j) {
      if (spots[j] - spots[i] >= apart) {
        pairs.emplace_back(spots[i], spots[j]);
      }
    }
  }
  const auto span = [](const auto& pair) { return pair.second - pair.first; };
  std::stable_sort(pairs.begin(), pairs.end(),
                   [&](const auto& a, const auto& b) { return span(a) > span(b); });
  std::vector<MarkPair> marks;
  for (const auto& [first, second] : pairs) {
    marks.push_back({pointOnCut(direction, at, first), pointOnCut(direction, at, second)});
  }
  return marks;
}

// The first at or after `from` that lies on a stretch.
std::optional<double> firstOn(const std::vector<Region::Interval>& stretches, double from) {
  for (const Region::Interval& stretch : stretches) {
    if (stretch.high >= from) {
      return std::max(stretch.low, from);
    }
  }
  return std::nullopt;
}

void addEqualParts(std::vector<CutPlace>& places, const Outline& outline, CutDirection direction,
                   int mostParts) {
  const Box box = outline.bounds();
  const double from = acrossCut(box.min, direction);
  const double length = acrossCut(box.max, direction) - from;
  for (int parts = 2; parts <= mostParts; ++parts) {
    for (int i = 1; i < parts; ++i) {
      const double at = from + length * i / parts;
      const bool known = std::any_of(places.begin(), places.end(), [at](const CutPlace& place) {
        return std::abs(place.at - at) <= kSameCutMm;
      });
      if (!known) {
        const Region::Interval extent{alongCut(box.min, direction), alongCut(box.max, direction)};
        places.push_back({at, crossedLength(outline, direction, at),
                          sewingMeets(outline, direction, at, extent)});
      }
    }
  }
  std::sort(places.begin(), places.end(),
            [](const CutPlace& a, const CutPlace& b) { return a.at < b.at; });
}

bool crossesLess(const CutPlace& a, const CutPlace& b) {
  return a.crossed < b.crossed;
}

// Of places in order the one that crosses least in each of as many equal bands as may be kept:
// a line of many letters has more gaps than that, and all of them cross nothing.
std::vector<CutPlace> spread(const std::vector<CutPlace>& places) {
  if (places.size() <= kMostGridPlaces) {
    return places;
  }
  const double from = places.front().at;
  const double band = (places.back().at - from) / kMostGridPlaces;
  std::vector<CutPlace> kept;
  auto at = places.begin();
  for (std::size_t i = 0; i < kMostGridPlaces; ++i) {
    const double end = from + band * static_cast<double>(i + 1);
    const auto next =
        i + 1 == kMostGridPlaces
            ? places.end()
            : std::find_if(at, places.end(), [end](const CutPlace& p) { return p.at >= end; });
    if (at != next) {
      kept.push_back(*std::min_element(at, next, crossesLess));
    }
    at = next;
  }
  return kept;
}

}  // namespace

SewnBetween::SewnBetween(const Outline& outline, CutDirection direction,
                         const std::vector<double>& cuts)
    : count_(cuts.size()), bounds_(cuts.size() * cuts.size()) {
  const Box whole = outline.bounds();
  for (std::size_t from = count_; from-- > 0;) {
    for (std::size_t to = from + 1; to < count_; ++to) {
      Box& bounds = bounds_[from * count_ + to];
      if (to == from + 1) {
        Box section;
        section.min = pointOnCut(direction, cuts[from], alongCut(whole.min, direction) - 1.0);
        section.max = pointOnCut(direction, cuts[to], alongCut(whole.max, direction) + 1.0);
        bounds = boundsWithin(outline, section);
        continue;
      }
      for (const Box& half : {bounds_[from * count_ + from + 1], this->bounds(from + 1, to)}) {
        if (!half.empty()) {
          bounds.add(half.min);
          bounds.add(half.max);
        }
      }
    }
  }
}

Box withMarks(Box box, const std::vector<Point>& marks, const SplitFigures& figures) {
  const Point half{figures.markHalf, figures.markHalf};
  for (const Point mark : marks) {
    box.add(mark - half);
    box.add(mark + half);
  }
  return box;
}

double letOut(const Cut& cut, const SplitFigures& figures) {
  return cut.meets ? figures.overlap / 2.0 : 0.0;
}

bool CutCost::operator<(const CutCost& other) const {
  return std::abs(crossed - other.crossed) > kSameCutMm ? crossed < other.crossed
                                                        : uneven < other.uneven;
}

std::vector<CutPlace> parallelPlaces(const Outline& outline, CutDirection direction,
                                     int mostParts) {
  std::vector<CutPlace> places = cutPlaces(outline, direction);
  std::stable_sort(places.begin(), places.end(), crossesLess);
  places.resize(std::min(places.size(), kMostPlaces));
  addEqualParts(places, outline, direction, mostParts);
  return places;
}

std::vector<CutPlace> gridPlaces(const Outline& outline, CutDirection direction, int mostParts) {
  std::vector<CutPlace> places = spread(cutPlaces(outline, direction));
  addEqualParts(places, outline, direction, mostParts);
  return places;
}

std::vector<MarkPair> widePairs(const Outline& outline, const CutPlace& place,
                                CutDirection direction, const SplitFigures& figures) {
  const Box box = outline.bounds();
  const double reach = figures.markHalf + figures.markClearance;
  const double middle = alongCut(box.centre(), direction);
  const double half = alongCut(box.max, direction) - middle;
  // Within the design's extent if the marks are far enough apart there.
  const double wanted = std::max(half - figures.markHalf, figures.marksApart / 2.0);
  const double range = std::max(half + 2.0 * reach, wanted + reach);
  const auto stretches = wantedStretches(
      outline, direction, place.at,
      {{middle - range, middle + range}, {middle - wanted, middle + wanted}}, figures);
  auto pairs = pairsOf(endsOf(stretches), direction, place.at, figures.marksApart);
  // The widest are the most exact; the narrowest is what fits where nothing else does.
  if (pairs.size() > kMostMarkPairs) {
    pairs.erase(pairs.begin() + kMostMarkPairs - 1, pairs.end() - 1);
  }
  return pairs;
}

std::vector<MarkPair> closePairs(const Outline& outline, double at, CutDirection direction,
                                 const MarkRange& range, const SplitFigures& figures) {
  const auto stretches = wantedStretches(outline, direction, at, range, figures);
  std::vector<double> firsts;
  for (const double spot : spotsOf(stretches, figures.marksApart)) {
    firsts.push_back(spot);
  }
  std::vector<std::pair<double, double>> pairs;
  for (const double first : firsts) {
    // The hair's breadth keeps the distance no less than it must be after rounding.
    const auto second = firstOn(stretches, first + figures.marksApart + kSameCutMm);
    if (second) {
      pairs.emplace_back(first, *second);
    }
  }
  // The same from the other end, from which stretches may offer a nearer first.
  for (auto& [first, second] : pairs) {
    for (const Region::Interval& stretch : stretches) {
      const double nearer = std::min(stretch.high, second - figures.marksApart - kSameCutMm);
      if (nearer >= stretch.low && nearer > first) {
        first = nearer;
      }
    }
  }
  pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());
  std::vector<MarkPair> marks;
  const std::size_t count = std::min(pairs.size(), kMostClosePairs);
  for (std::size_t i = 0; i < count; ++i) {
    const auto& [first, second] = pairs[count < 2 ? 0 : i * (pairs.size() - 1) / (count - 1)];
    marks.push_back({pointOnCut(direction, at, first), pointOnCut(direction, at, second)});
  }
  return marks;
}

std::vector<MarkPair> besidePairs(const Outline& outline, double at, CutDirection direction,
                                  const CutEnds& ends, const SplitFigures& figures) {
  const double reach = figures.markHalf + figures.markClearance;
  const double half = figures.marksApart / 2.0 + kSameCutMm;
  // The outermost stretch is clear of all sewing; its inner end is nearest to the part.
  const auto mark = [&](double across, bool low) {
    const Region::Interval range =
        low ? Region::Interval{ends.extent.low - 2.0 * reach, ends.extent.low + figures.markHalf}
            : Region::Interval{ends.extent.high - figures.markHalf, ends.extent.high + 2.0 * reach};
    const auto clear = clearStretches(outline, direction, across, reach, range);
    return pointOnCut(direction, across, low ? clear.front().high : clear.back().low);
  };
  std::vector<MarkPair> pairs;
  for (const bool low : {true, false}) {
    if (low ? ends.low : ends.high) {
      pairs.push_back({mark(at - half, low), mark(at + half, low)});
    }
  }
  return pairs;
}

double reachBeside(const Cut& cut) {
  double reach = 0.0;
  for (const Point mark : cut.marks) {
    reach = std::max(reach, std::abs(acrossCut(mark, cut.direction) - cut.at));
  }
  return reach;
}

bool marksMeet(const MarkPair& a, const MarkPair& b, const SplitFigures& figures) {
  return std::any_of(a.begin(), a.end(), [&](Point one) {
    return std::any_of(b.begin(), b.end(), [&](Point other) {
      return norm(one - other) < figures.marksClear() - kSameCutMm;
    });
  });
}

std::vector<MarkPair> allPairs(const Outline& outline, double at, CutDirection direction,
                               const MarkRange& range, const SplitFigures& figures) {
  const auto stretches = wantedStretches(outline, direction, at, range, figures);
  return pairsOf(spotsOf(stretches, figures.marksApart), direction, at, figures.marksApart);
}

}  // namespace creaseline
