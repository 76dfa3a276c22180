// SPDX-License-Identifier: MIT
#include "planning/grid_strip.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace creaseline {
namespace {

Box sectionOf(const Outline& outline, const GridStrip::Sides& sides, const SplitFigures& figures) {
  const CutDirection direction = sides.from.direction;
  const Box box = outline.bounds();
  Box section;
  section.min = pointOnCut(direction, sides.from.at - letOut(sides.from, figures),
                           alongCut(box.min, direction));
  section.max =
      pointOnCut(direction, sides.to.at + letOut(sides.to, figures), alongCut(box.max, direction));
  return section;
}

// What may hinder marks on the strip's cuts, which can lie beyond the design but not beyond the
// strip.
Outline nearStrip(const Outline& outline, const Box& section, const SplitFigures& figures) {
  const double reach = figures.markHalf + figures.markClearance;
  const Point margin{3.0 * reach, 3.0 * reach};
  return clipped(outline, {section.min - margin, section.max + margin});
}

}  // namespace

CutDirection otherWay(CutDirection direction) {
  return direction == CutDirection::Upright ? CutDirection::Level : CutDirection::Upright;
}

MarkRange markRange(Region::Interval extent, bool lowEnd, bool highEnd,
                    const SplitFigures& figures) {
  const double reach = figures.markHalf + figures.markClearance;
  MarkRange range{extent, extent};
  range.allowed.low += lowEnd ? -2.0 * reach : figures.marksClear();
  range.allowed.high += highEnd ? 2.0 * reach : -figures.marksClear();
  range.wanted.low += lowEnd ? figures.markHalf : figures.marksClear();
  range.wanted.high -= highEnd ? figures.markHalf : figures.marksClear();
  if (range.wanted.length() < figures.marksApart) {
    range.wanted = range.allowed;
  }
  return range;
}

GridStrip::GridStrip(const Outline& outline, const Sides& sides, const SplitFigures& figures)
    : first_(sides.from.direction),
      second_(otherWay(first_)),
      outline_(outline),
      figures_(figures),
      across_{sides.from.at, sides.to.at},
      section_(sectionOf(outline, sides, figures)),
      sewing_(clipped(outline, section_)),
      range_(markRange(across_, sides.fromEnd, sides.toEnd, figures)),
      ends_{across_, sides.fromEnd, sides.toEnd} {
  if (empty()) {
    return;
  }
  const Box box = outline.bounds();
  std::vector<double> at;
  const auto add = [&](const CutPlace& place, bool end) {
    places_.push_back({{second_, place.at, place.crossed, place.meets, {}}, end, 0.0, at.size()});
    at.push_back(place.at);
  };
  add({acrossCut(box.min, second_), 0.0}, true);
  for (const CutPlace& place : gridPlaces(sewing_, second_, figures.mostParts)) {
    add(place, false);
  }
  add({acrossCut(box.max, second_), 0.0}, true);
  sewn_ = SewnBetween(sewing_, second_, at);
}

void GridStrip::setMarks() {
  if (!cuts_.empty()) {
    return;
  }
  const Outline near = nearStrip(outline_, section_, figures_);
  for (const StripCut& place : places_) {
    if (place.end) {
      cuts_.push_back(place);
      continue;
    }
    if (range_.allowed.length() >= figures_.marksApart) {
      for (MarkPair& pair : closePairs(near, place.at, second_, range_, figures_)) {
        addCut(place, std::move(pair));
      }
    }
    for (MarkPair& pair : besidePairs(near, place.at, second_, ends_, figures_)) {
      addCut(place, std::move(pair));
    }
  }
}

void GridStrip::addCut(const StripCut& place, MarkPair marks) {
  cuts_.push_back(place);
  cuts_.back().marks = std::move(marks);
  cuts_.back().reach = reachBeside(cuts_.back());
}

bool GridStrip::mayBePart(const StripCut& from, const StripCut& to) const {
  const bool end = from.end || to.end;
  return to.at - from.at > (end ? kSameCutMm : figures_.marksClear() + from.reach + to.reach);
}

bool GridStrip::tooLarge(const StripCut& from, const StripCut& to) const {
  Box box = withMarks(sewn_.bounds(from.place, to.place), from.marks, figures_);
  return !figures_.mayHold(withMarks(box, to.marks, figures_));
}

GridPart GridStrip::part(const StripCut& from, const StripCut& to,
                         const std::vector<MarkPair>& carried) const {
  GridPart part{section_, {}, sewn_.bounds(from.place, to.place)};
  part.section.min =
      pointOnCut(first_, acrossCut(section_.min, first_), from.at - letOut(from, figures_));
  part.section.max =
      pointOnCut(first_, acrossCut(section_.max, first_), to.at + letOut(to, figures_));
  for (const MarkPair& pair : carried) {
    const double middle = (alongCut(pair[0], first_) + alongCut(pair[1], first_)) / 2.0;
    if ((from.end || from.at <= middle) && (to.end || middle < to.at)) {
      part.pairs.push_back(pair);
    }
  }
  for (const StripCut* cut : {&from, &to}) {
    if (!cut->marks.empty()) {
      part.pairs.push_back(cut->marks);
    }
  }
  return part;
}

bool GridStrip::ruledOut(const GridPart& part, const GridQuestions& questions) const {
  return std::any_of(leftOut_.begin(), leftOut_.end(),
                     [&part](const Box& box) { return liesIn(part.section, box); }) ||
         questions.refused(part);
}

std::optional<StripChoice> GridStrip::best(int parts, const std::vector<MarkPair>& carried,
                                           const GridQuestions& questions) const {
  std::vector<StripCut> clear;
  std::copy_if(cuts_.begin(), cuts_.end(), std::back_inserter(clear), [&](const StripCut& cut) {
    return std::none_of(carried.begin(), carried.end(),
                        [&](const MarkPair& pair) { return marksMeet(cut.marks, pair, figures_); });
  });
  return bestOf(clear, parts, carried, questions);
}

std::optional<StripChoice> GridStrip::bareBest(int parts, const GridQuestions& questions) const {
  return bestOf(places_, parts, {}, questions);
}

std::optional<StripChoice> GridStrip::bestOf(const std::vector<StripCut>& cuts, int parts,
                                             const std::vector<MarkPair>& carried,
                                             const GridQuestions& questions) const {
  if (cuts.empty()) {
    return std::nullopt;
  }
  struct Reached {
    CutCost cost;
    std::size_t before = 0;
  };
  const std::size_t last = cuts.size() - 1;
  // By number of parts, then by cut.
  std::vector<std::vector<std::optional<Reached>>> reached(
      static_cast<std::size_t>(parts) + 1,
      std::vector<std::optional<Reached>>(cuts.size(), std::nullopt));
  reached[0][0] = Reached{};
  for (std::size_t count = 1; count < reached.size(); ++count) {
    // The last part ends where the strip ends, and no other does.
    const bool ends = count + 1 == reached.size();
    for (std::size_t to = ends ? last : 1; to < (ends ? cuts.size() : last); ++to) {
      std::optional<Reached>& best = reached[count][to];
      for (std::size_t from = 0; from < to; ++from) {
        const std::optional<Reached>& before = reached[count - 1][from];
        if (!before || !mayBePart(cuts[from], cuts[to]) || tooLarge(cuts[from], cuts[to])) {
          continue;
        }
        const double size = (cuts[to].at - cuts[from].at) * across_.length();
        const CutCost cost = before->cost + CutCost{cuts[to].crossed, size * size};
        if (best && !(cost < best->cost)) {
          continue;
        }
        if (!ruledOut(part(cuts[from], cuts[to], carried), questions)) {
          best = Reached{cost, from};
        }
      }
    }
  }
  if (!reached.back().back()) {
    return std::nullopt;
  }
  StripChoice choice{reached.back().back()->cost, {cuts.back()}};
  std::size_t at = last;
  for (std::size_t count = reached.size() - 1; count > 0; --count) {
    at = reached[count][at]->before;
    choice.cuts.push_back(cuts[at]);
  }
  std::reverse(choice.cuts.begin(), choice.cuts.end());
  return choice;
}

}  // namespace creaseline
