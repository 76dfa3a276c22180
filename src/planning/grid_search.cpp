// SPDX-License-Identifier: MIT
#include "planning/grid_search.h"

#include <algorithm>
#include <map>
#include <memory>
#include <utility>

#include "planning/grid_layout.h"
#include "planning/grid_questions.h"
#include "planning/grid_strip.h"

namespace creaseline {
namespace {

// Per question allowed. Bounds the work between questions, which answers known already cost too.
constexpr int kStepsPerQuestion = 4;

// What is known of cutting a strip into so many parts: a bound, and how it is reached.
struct StripPlan {
  bool none = false;
  CutCost cost;
  std::vector<StripCut> cuts;
};

// A strip from one first cut to another, by their index, in so many parts.
struct StripRun {
  std::size_t from = 0, to = 0;
  int parts = 0;
};

struct Choice {
  CutCost cost;
  std::vector<StripRun> strips;
};

// In tables, since a search goes through all of them again and again.
class StripPlans {
 public:
  StripPlans() = default;
  StripPlans(std::size_t ends, int mostParts)
      : ends_(ends), parts_(static_cast<std::size_t>(mostParts)), index_(ends * ends * parts_) {}
  [[nodiscard]] const StripPlan* find(const StripRun& step) const {
    const std::size_t at = index_[slot(step)];
    return at == 0 ? nullptr : &plans_[at - 1];
  }
  void set(const StripRun& step, StripPlan plan) {
    std::size_t& at = index_[slot(step)];
    if (at == 0) {
      plans_.push_back(std::move(plan));
      at = plans_.size();
    } else {
      plans_[at - 1] = std::move(plan);
    }
  }

 private:
  [[nodiscard]] std::size_t slot(const StripRun& step) const {
    return (step.from * ends_ + step.to) * parts_ + static_cast<std::size_t>(step.parts) - 1;
  }
  std::size_t ends_ = 0, parts_ = 0;
  std::vector<std::size_t> index_;  // 0: not planned
  std::vector<StripPlan> plans_;
};

// First cuts by their coordinate, the design's ends first and last, and what is planned between.
struct Nodes {
  std::vector<Cut> cuts;
  std::vector<std::size_t> places;  // of each: those at one place differ in their marks alone
  std::vector<double> reach;        // of each one's marks beside it
  StripPlans plans;
  void add(const Cut& cut, std::size_t place) {
    cuts.push_back(cut);
    places.push_back(place);
    reach.push_back(reachBeside(cut));
  }
  [[nodiscard]] std::size_t last() const { return cuts.size() - 1; }
};

// All grids whose first cuts run one way.
class GridCuts {
 public:
  GridCuts(const Outline& outline, CutDirection direction, const SplitFigures& figures,
           GridQuestions& questions)
      : outline_(outline),
        direction_(direction),
        figures_(figures),
        questions_(questions),
        stepsLeft_(kStepsPerQuestion * figures.mostGridQuestions) {
    const Box box = outline.bounds();
    const Region::Interval extent{alongCut(box.min, direction), alongCut(box.max, direction)};
    const MarkRange range = markRange(extent, true, true, figures);
    stripLength_ = extent.length();
    add({direction, acrossCut(box.min, direction), 0.0, false, {}}, {{}});
    for (const CutPlace& place : gridPlaces(outline, direction, figures.mostParts)) {
      std::vector<MarkPair> pairs = closePairs(outline, place.at, direction, range, figures);
      for (MarkPair& pair :
           besidePairs(outline, place.at, direction, {extent, true, true}, figures)) {
        pairs.push_back(std::move(pair));
      }
      add({direction, place.at, place.crossed, place.meets, {}}, pairs);
    }
    add({direction, acrossCut(box.max, direction), 0.0, false, {}}, {{}});
    bare_.plans = StripPlans(bare_.cuts.size(), figures.mostParts);
    marked_.plans = StripPlans(marked_.cuts.size(), figures.mostParts);
  }

  // The best grid of so many parts, if it is better than that one.
  std::optional<std::pair<CutCost, GridLayout>> withParts(int parts,
                                                          const std::optional<CutCost>& toBeat) {
    const auto hopeless = [&toBeat](const std::optional<Choice>& choice) {
      return !choice || (toBeat && !(choice->cost < *toBeat));
    };
    while (stepsLeft_-- > 0 && !questions_.ranOut()) {
      // Without marks there are far fewer choices, and none costs more.
      const auto bare = bestChoice(bare_, parts);
      if (hopeless(bare)) {
        return std::nullopt;
      }
      if (!bareHolds(*bare)) {
        continue;
      }
      const auto marked = bestChoice(marked_, parts);
      if (hopeless(marked)) {
        return std::nullopt;
      }
      if (holds(*marked)) {
        return std::make_pair(marked->cost, layout(*marked));
      }
    }
    ranOut_ = true;
    return std::nullopt;
  }

  [[nodiscard]] bool ranOut() const { return ranOut_; }

 private:
  struct Reached {
    CutCost cost;
    StripRun step;
  };
  using ReachedBySum = std::vector<std::optional<Reached>>;

  void add(const Cut& place, const std::vector<MarkPair>& pairs) {
    const std::size_t index = bare_.cuts.size();
    bare_.add(place, index);
    for (const MarkPair& pair : pairs) {
      Cut marked = place;
      marked.marks = pair;
      marked_.add(marked, index);
    }
  }

  // The same strip and number of parts, whatever the marks.
  [[nodiscard]] StripRun bareStep(const StripRun& step) const {
    return {marked_.places[step.from], marked_.places[step.to], step.parts};
  }

  [[nodiscard]] std::vector<MarkPair> carried(const StripRun& step) const {
    std::vector<MarkPair> pairs;
    for (const std::size_t node : {step.from, step.to}) {
      if (!marked_.cuts[node].marks.empty()) {
        pairs.push_back(marked_.cuts[node].marks);
      }
    }
    return pairs;
  }

  GridStrip& stripOf(const StripRun& bare) {
    std::unique_ptr<GridStrip>& strip = strips_[{bare.from, bare.to}];
    if (!strip) {
      strip =
          std::make_unique<GridStrip>(outline_,
                                      GridStrip::Sides{bare_.cuts[bare.from], bare_.cuts[bare.to],
                                                       bare.from == 0, bare.to == bare_.last()},
                                      figures_);
    }
    return *strip;
  }

  // No more than the strip can cost: as planned with these marks, or with none, else as if its cuts
  // crossed nothing.
  [[nodiscard]] std::optional<CutCost> bound(const Nodes& nodes, const StripRun& step) const {
    const StripPlan* plan = nodes.plans.find(step);
    if (plan == nullptr) {
      plan = bare_.plans.find({nodes.places[step.from], nodes.places[step.to], step.parts});
    }
    if (plan != nullptr) {
      return plan->none ? std::nullopt : std::optional(plan->cost);
    }
    const double size =
        (nodes.cuts[step.to].at - nodes.cuts[step.from].at) * stripLength_ / step.parts;
    return CutCost{0.0, size * size * step.parts};
  }

  // A strip of the design's whole width is no strip, and neighbours' marks must lie clear.
  [[nodiscard]] bool mayBeStrip(const Nodes& nodes, std::size_t from, std::size_t to) const {
    const bool ends = from == 0 || to == nodes.last();
    return !(from == 0 && to == nodes.last()) &&
           nodes.cuts[to].at - nodes.cuts[from].at >
               (ends ? kSameCutMm : figures_.marksClear() + nodes.reach[from] + nodes.reach[to]);
  }

  // Cuts with marks that a frame reaches, and places that have such cuts.
  [[nodiscard]] std::vector<bool> usable(const Nodes& nodes) const {
    std::vector<bool> places(bare_.cuts.size(), false);
    std::vector<bool> cuts(marked_.cuts.size(), false);
    for (std::size_t i = 0; i < marked_.cuts.size(); ++i) {
      const MarkPair& marks = marked_.cuts[i].marks;
      cuts[i] = marks.empty() || !questions_.refused({{}, {marks}, {}});
      places[marked_.places[i]] = places[marked_.places[i]] || cuts[i];
    }
    return &nodes == &marked_ ? cuts : places;
  }

  // All ways on from one cut to another.
  void reach(const Nodes& nodes, std::size_t from, std::size_t to, const ReachedBySum& before,
             ReachedBySum& after) const {
    const int most = static_cast<int>(after.size()) - 1;
    for (int parts = 1; parts < most; ++parts) {
      const StripRun step{from, to, parts};
      const auto cost = bound(nodes, step);
      for (int sum = parts; cost && sum <= most; ++sum) {
        const auto& start = before[static_cast<std::size_t>(sum - parts)];
        auto& best = after[static_cast<std::size_t>(sum)];
        if (start) {
          const CutCost whole = start->cost + *cost + CutCost{nodes.cuts[to].crossed, 0.0};
          if (!best || whole < best->cost) {
            best = Reached{whole, step};
          }
        }
      }
    }
  }

  // The best by all that is known.
  [[nodiscard]] std::optional<Choice> bestChoice(const Nodes& nodes, int parts) const {
    const std::vector<bool> serves = usable(nodes);
    std::vector<ReachedBySum> reached(nodes.cuts.size(),
                                      ReachedBySum(static_cast<std::size_t>(parts) + 1));
    reached[0][0] = Reached{};
    for (std::size_t to = 1; to < nodes.cuts.size(); ++to) {
      for (std::size_t from = 0; serves[to] && from < to; ++from) {
        if (serves[from] && mayBeStrip(nodes, from, to)) {
          reach(nodes, from, to, reached[from], reached[to]);
        }
      }
    }
    if (!reached.back().back()) {
      return std::nullopt;
    }
    Choice choice{reached.back().back()->cost, {}};
    auto sum = static_cast<std::size_t>(parts);
    for (std::size_t node = nodes.last(); node != 0; node = choice.strips.back().from) {
      choice.strips.push_back(reached[node][sum]->step);
      sum -= static_cast<std::size_t>(choice.strips.back().parts);
    }
    std::reverse(choice.strips.begin(), choice.strips.end());
    return choice;
  }

  [[nodiscard]] bool spokenAgainst(const GridStrip& strip, const StripPlan& plan,
                                   const std::vector<MarkPair>& pairs) const {
    for (std::size_t i = 1; i < plan.cuts.size(); ++i) {
      if (strip.ruledOut(strip.part(plan.cuts[i - 1], plan.cuts[i], pairs), questions_)) {
        return true;
      }
    }
    return false;
  }

  static StripPlan planOf(std::optional<StripChoice> best) {
    return best ? StripPlan{false, best->cost, std::move(best->cuts)} : StripPlan{true, {}, {}};
  }

  // Plans a strip without marks if that says more than is known; false if not.
  bool planBare(const StripRun& bare) {
    const GridStrip& strip = stripOf(bare);
    const StripPlan* known = bare_.plans.find(bare);
    if (known != nullptr && !spokenAgainst(strip, *known, {})) {
      return false;
    }
    bare_.plans.set(bare, planOf(strip.bareBest(bare.parts, questions_)));
    return true;
  }

  // The same with its marks and those of the cuts on either side.
  bool planMarked(const StripRun& step) {
    GridStrip& strip = stripOf(bareStep(step));
    const StripPlan* known = marked_.plans.find(step);
    if (known != nullptr && !spokenAgainst(strip, *known, carried(step))) {
      return false;
    }
    strip.setMarks();
    marked_.plans.set(step, planOf(strip.best(step.parts, carried(step), questions_)));
    return true;
  }

  // Whether every part of the choice can be sewn, marks aside. Where not, more is known afterwards.
  bool bareHolds(const Choice& bare) {
    return std::count_if(bare.strips.begin(), bare.strips.end(),
                         [this](const StripRun& step) { return planBare(step); }) == 0 &&
           std::all_of(bare.strips.begin(), bare.strips.end(), [this](const StripRun& step) {
             return partsFit(stripOf(step), *bare_.plans.find(step), {});
           });
  }

  // The same with marks. Asks first about parts without: what it learns there speaks against the
  // most choices.
  bool holds(const Choice& choice) {
    Choice bare = choice;
    std::transform(choice.strips.begin(), choice.strips.end(), bare.strips.begin(),
                   [this](const StripRun& step) { return bareStep(step); });
    return bareHolds(bare) &&
           std::count_if(choice.strips.begin(), choice.strips.end(),
                         [this](const StripRun& step) { return planMarked(step); }) == 0 &&
           std::all_of(choice.strips.begin(), choice.strips.end(), [this](const StripRun& step) {
             return partsFit(stripOf(bareStep(step)), *marked_.plans.find(step), carried(step));
           });
  }

  bool partsFit(GridStrip& strip, const StripPlan& plan, const std::vector<MarkPair>& pairs) {
    for (std::size_t i = 1; i < plan.cuts.size(); ++i) {
      const GridPart part = strip.part(plan.cuts[i - 1], plan.cuts[i], pairs);
      const Outline sewing = strip.sewingIn(part.section);
      if (sewing.empty()) {
        strip.leaveOut(part.section);
        return false;
      }
      if (!questions_.fits(sewing, part)) {
        return false;
      }
    }
    return true;
  }

  [[nodiscard]] GridLayout layout(const Choice& choice) const {
    GridLayout grid;
    grid.direction = direction_;
    for (const StripRun& step : choice.strips) {
      const std::vector<StripCut>& cuts = marked_.plans.find(step)->cuts;
      if (step.from != 0) {
        grid.firstCuts.push_back(marked_.cuts[step.from]);
      }
      grid.across.emplace_back(cuts.begin() + 1, cuts.end() - 1);
    }
    return grid;
  }

  const Outline& outline_;
  CutDirection direction_;
  const SplitFigures& figures_;
  GridQuestions& questions_;
  int stepsLeft_ = 0;
  bool ranOut_ = false;
  double stripLength_ = 0.0;
  Nodes bare_;    // one for each place, without marks
  Nodes marked_;  // one for each pair of marks
  std::map<std::pair<std::size_t, std::size_t>, std::unique_ptr<GridStrip>> strips_;  // by places
};

// The corners of the hull that lie furthest each way, level, upright and askew.
std::vector<Point> outermost(const Outline& outline) {
  const Ring hull = outline.hull();
  std::vector<Point> corners;
  for (const Point way : {Point{1, 0}, Point{1, 1}, Point{0, 1}, Point{-1, 1}, Point{-1, 0},
                          Point{-1, -1}, Point{0, -1}, Point{1, -1}}) {
    const Point corner = *std::max_element(
        hull.begin(), hull.end(), [way](Point a, Point b) { return dot(a, way) < dot(b, way); });
    if (std::find(corners.begin(), corners.end(), corner) == corners.end()) {
      corners.push_back(corner);
    }
  }
  return corners;
}

// Whatever the cuts, some part holds each corner of the design: where no frame reaches one of them
// with nothing else, there is no grid.
bool cornersInReach(const Outline& outline, GridQuestions& questions) {
  const std::vector<Point> corners = outermost(outline);
  return std::all_of(corners.begin(), corners.end(), [&questions](Point corner) {
    constexpr double kHalf = kSameCutMm;
    const Box speck = Box{corner, corner}.grown(kHalf);
    return questions.asked(
        {{{{speck.min, {speck.max.x, speck.min.y}, speck.max, {speck.min.x, speck.max.y}}, {}}}},
        {speck, {}, {}});
  });
}

}  // namespace

GridSearch findGrid(const Outline& outline, const SplitFigures& figures, const PartFits& fits) {
  GridSearch search;
  if (outline.empty()) {
    return search;
  }
  GridQuestions questions(fits, figures);
  if (!cornersInReach(outline, questions)) {
    search.gaveUp = questions.ranOut();
    search.questions = questions.count();
    return search;
  }
  GridCuts upright(outline, CutDirection::Upright, figures, questions);
  GridCuts level(outline, CutDirection::Level, figures, questions);
  for (int parts = 2; parts <= figures.mostParts && !search.split; ++parts) {
    auto first = upright.withParts(parts, std::nullopt);
    auto second = level.withParts(parts, first ? std::optional(first->first) : std::nullopt);
    if (first || second) {
      GridLayout& best = second ? second->second : first->second;
      search.split = splitOf(outline, best, figures, questions);
    }
  }
  search.gaveUp = !search.split && (upright.ranOut() || level.ranOut());
  search.questions = questions.count();
  return search;
}

}  // namespace creaseline
