// SPDX-License-Identifier: MIT
#include "planning/fewest_sizes_of_lines.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <tuple>
#include <utility>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/finding_reasons.h"
#include "planning/remedies.h"

namespace creaseline {
namespace {

constexpr int kUnchanged = 100;             // percent
constexpr std::size_t kMostLinesNamed = 8;  // the change itself names all

bool sameDesign(const Design& a, const Design& b) {
  if (&a == &b) {
    return true;
  }
  Design renamed = b;
  renamed.id = a.id;
  return a == renamed;
}

// Questions by what they sew; nearly always a look in the map decides.
class DesignGroups {
 public:
  void add(const Design& design, double scale, std::size_t question) {
    std::vector<Group>& alike =
        groups_[{design.name, (design.width * scale).nanometres(), design.stitches}];
    for (Group& group : alike) {
      if (sameDesign(*group.design, design)) {
        group.questions.push_back(question);
        return;
      }
    }
    alike.push_back({&design, {question}});
  }

  [[nodiscard]] std::vector<std::vector<std::size_t>> all() const {
    std::vector<std::vector<std::size_t>> all;
    for (const auto& [key, alike] : groups_) {
      for (const Group& group : alike) {
        all.push_back(group.questions);
      }
    }
    return all;
  }

 private:
  struct Group {
    const Design* design = nullptr;
    std::vector<std::size_t> questions;
  };
  std::map<std::tuple<std::string, std::int64_t, int>, std::vector<Group>> groups_;
};

// One size of a question.
struct SharedGarment {
  std::size_t question = 0;
  ServedSize served;
};

std::vector<ServedSize> scalesOf(const std::vector<SharedGarment>& garments) {
  std::vector<ServedSize> all;
  for (const SharedGarment& garment : garments) {
    all.push_back(garment.served);
  }
  return all;
}

// The design made in these sizes, and what each garment is sewn with.
struct DesignMade {
  std::vector<int> percents;  // ascending
  std::vector<SharedGarment> garments;
  std::vector<SharedGarment> asAsked;  // left alone

  [[nodiscard]] std::size_t count() const { return percents.size() + (asAsked.empty() ? 0 : 1); }
};

class LinesTogether {
 public:
  LinesTogether(const SharedDesign& design, const Questions& questions, const Order& order,
                const Workshop& workshop)
      : questions_(questions), order_(order), workshop_(workshop) {
    std::set<int> apart;
    for (const std::size_t question : design.questions) {
      const std::vector<ServedSize>& sizes = questions.asked[question].served;
      for (const int percent : fewestScales(sizes)) {
        apart.insert(percent);
      }
      for (const ServedSize& size : sizes) {
        sort({question, size});
      }
    }
    apart_ = apart.size();
  }

  [[nodiscard]] std::optional<Finding> finding() const {
    const DesignMade fewest{fewestScales(scalesOf(all_)), all_, {}};
    if (failing_.empty() || lines_.size() < 2 || fewest.count() >= apart_) {
      return std::nullopt;
    }
    const DesignMade keeping{fewestScales(scalesOf(failing_)), failing_, asAsked_};
    Finding finding;
    finding.severity = Severity::Watch;
    finding.code = FindingCode::OneSizeDoesNotServeAll;
    finding.reason = leastShareReason(workshop_);
    finding.wholeOrder = true;
    const OrderPlace first = firstPlace();
    finding.line = first.line;
    finding.placement = first.placement;
    finding.place = worded("{}, design {}", linesPhrase(lines_), design().name);
    // What serves as asked stays so; then fewer in all, if what would serve is sewn smaller too.
    std::size_t needed = offer(finding, keeping) ? keeping.count() : apart_;
    if (fewest.count() < keeping.count() && offer(finding, fewest)) {
      needed = fewest.count();
    }
    if (needed >= apart_) {
      return std::nullopt;
    }
    finding.text = worded(
        "the design as asked will not serve all lines; line by line they need {} sizes of it, "
        "together {}: {}",
        apart_, needed, servesText(keeping));
    rankRemedies(finding.remedies, workshop_.figures.remedies);
    return finding;
  }

 private:
  void sort(SharedGarment garment) {
    if (garment.served.hopeless()) {
      hopeless_.push_back(std::move(garment));
      return;
    }
    for (const OrderPlace& place : questions_.places[garment.question]) {
      lines_.insert(place.line);
    }
    all_.push_back(garment);
    (garment.served.stops ? failing_ : asAsked_).push_back(std::move(garment));
  }

  [[nodiscard]] const Design& design() const { return *all_.front().served.request.design; }

  [[nodiscard]] OrderPlace firstPlace() const {
    OrderPlace first = questions_.places[failing_.front().question].front();
    for (const SharedGarment& garment : failing_) {
      first = std::min(first, questions_.places[garment.question].front());
    }
    return first;
  }

  // "line 2", "lines 1, 2, 5"
  [[nodiscard]] std::string linesPhrase(const std::set<std::size_t>& lines) const {
    std::vector<std::string> ids;
    for (const std::size_t line : lines) {
      if (ids.size() == kMostLinesNamed) {
        break;
      }
      ids.push_back(order_.lines[line].id);
    }
    const std::string list = fmt::format("{}", fmt::join(ids, ", "));
    if (ids.size() < lines.size()) {
      return worded("lines {} and {} more", list, lines.size() - ids.size());
    }
    return ids.size() == 1 ? worded("line {}", list) : worded("lines {}", list);
  }

  // "YS YM (line 2), S to XL (lines 1, 3)": sizes of one blank together
  [[nodiscard]] std::string named(const std::vector<SharedGarment>& garments) const {
    struct OfBlank {
      const Blank* blank = nullptr;
      std::vector<SizeName> sizes;
      std::set<std::size_t> lines;
    };
    std::vector<OfBlank> all;
    std::map<const Blank*, std::size_t> known;
    for (const SharedGarment& garment : garments) {
      const PlacementRequest& request = garment.served.request;
      const auto [entry, fresh] = known.try_emplace(request.blank, all.size());
      if (fresh) {
        all.push_back({request.blank, {}, {}});
      }
      OfBlank& of = all[entry->second];
      of.sizes.push_back(request.size);
      for (const OrderPlace& place : questions_.places[garment.question]) {
        of.lines.insert(place.line);
      }
    }
    std::vector<std::string> texts;
    for (const OfBlank& of : all) {
      texts.push_back(
          fmt::format("{} ({})", sizesPhrase(of.sizes, of.blank->chart), linesPhrase(of.lines)));
    }
    return fmt::format("{}", fmt::join(texts, ", "));
  }

  [[nodiscard]] std::string width(int percent) const {
    const double scale = all_.front().served.request.placement.scale * (percent / 100.0);
    return worded("{} wide", formatLength(design().width * scale, workshop_.shop->units));
  }

  // Those that are sewn with one of the sizes made.
  static std::vector<SharedGarment> sewnAt(int percent, const DesignMade& made) {
    std::vector<SharedGarment> garments;
    for (const SharedGarment& garment : made.garments) {
      if (scaleFor(garment.served, made.percents) == percent) {
        garments.push_back(garment);
      }
    }
    return garments;
  }

  [[nodiscard]] std::string servesText(const DesignMade& made) const {
    std::vector<std::string> texts;
    if (!asAsked_.empty()) {
      texts.push_back(worded("as asked it serves {}", named(asAsked_)));
    }
    for (auto percent = made.percents.rbegin(); percent != made.percents.rend(); ++percent) {
      texts.push_back(worded("{} ({:.0f} %) serves {}", width(*percent),
                             static_cast<double>(*percent), named(sewnAt(*percent, made))));
    }
    if (!hopeless_.empty()) {
      texts.push_back(worded("none serves {}", named(hopeless_)));
    }
    return fmt::format("{}", fmt::join(texts, "; "));
  }

  [[nodiscard]] std::string madeText(const DesignMade& made) const {
    std::vector<std::string> texts;
    if (!made.asAsked.empty()) {
      texts.push_back(worded("as it is for {}", named(made.asAsked)));
    }
    for (auto percent = made.percents.rbegin(); percent != made.percents.rend(); ++percent) {
      texts.push_back(worded("{} for {}", width(*percent), named(sewnAt(*percent, made))));
    }
    const std::string list = fmt::format("{}", fmt::join(texts, "; "));
    const std::size_t count = made.count();
    if (count >= apart_) {
      return worded("have {} sizes of the design made: {}", count, list);
    }
    return count == 1
               ? worded("have 1 size of the design made, where line by line it would be {}: {}",
                        apart_, list)
               : worded("have {} sizes of the design made, where line by line it would be {}: {}",
                        count, apart_, list);
  }

  // What the garments of each question change to; what stays as asked is not among them.
  static std::map<std::size_t, std::vector<SharedGarment>> changed(const DesignMade& made) {
    std::map<std::size_t, std::vector<SharedGarment>> byQuestion;
    for (const SharedGarment& garment : made.garments) {
      if (scaleFor(garment.served, made.percents) != kUnchanged) {
        byQuestion[garment.question].push_back(garment);
      }
    }
    return byQuestion;
  }

  static std::vector<SizeScale> scales(const std::vector<SharedGarment>& garments,
                                       const std::vector<int>& made) {
    std::map<int, std::vector<SizeName>, std::greater<>> sizes;
    for (const SharedGarment& garment : garments) {
      sizes[scaleFor(garment.served, made)].push_back(garment.served.request.size);
    }
    std::vector<SizeScale> scales;
    for (auto& [percent, names] : sizes) {
      scales.push_back({percent / 100.0, std::move(names)});
    }
    return scales;
  }

  // Planned with the sizes that it would get; nothing if it stops.
  [[nodiscard]] std::optional<Remedy> tried(const std::vector<SharedGarment>& garments,
                                            std::vector<SizeScale> scales) const {
    Case problem{Severity::Watch, FindingCode::OneSizeDoesNotServeAll, {}, {}, false};
    for (const SharedGarment& garment : garments) {
      problem.requests.push_back(garment.served.request);
    }
    const Workshop workshop =
        withFrameTurn(workshop_, problem.requests.front().placement.frameTurn);
    return RemedyTrial(problem, workshop).remedy(DesignSizesChange{std::move(scales)}, {});
  }

  bool offer(Finding& finding, const DesignMade& made) const {
    DesignSizesOfLinesChange change;
    Length moves;
    for (const auto& [question, garments] : changed(made)) {
      std::vector<SizeScale> of = scales(garments, made.percents);
      const auto trial = tried(garments, of);
      if (!trial) {
        return false;
      }
      moves = std::max(moves, trial->moves.value_or(Length()));
      for (const OrderPlace& place : questions_.places[question]) {
        change.placements.push_back({place.line, place.placement, of});
      }
    }
    std::sort(change.placements.begin(), change.placements.end(),
              [](const PlacementScales& a, const PlacementScales& b) {
                return std::tie(a.line, a.placement) < std::tie(b.line, b.placement);
              });
    finding.remedies.push_back({std::move(change), madeText(made),
                                worded("{} then plan without a stop", named(failing_)), moves});
    return true;
  }

  const Questions& questions_;
  const Order& order_;
  const Workshop& workshop_;
  std::vector<SharedGarment> all_;  // but those that no scale serves
  std::vector<SharedGarment> failing_, asAsked_, hopeless_;
  std::set<std::size_t> lines_;  // with a garment that some scale serves
  std::size_t apart_ = 0;        // different sizes if each line has the fewest for itself
};

}  // namespace

std::vector<SharedDesign> sharedDesigns(const Questions& questions, const Order& order,
                                        const OrderIndex& index) {
  DesignGroups groups;
  for (std::size_t i = 0; i < questions.asked.size(); ++i) {
    const OrderPlace& at = questions.asked[i].at;
    const OrderLine& line = order.lines[at.line];
    const OrderPlacement& placement = line.placements[at.placement];
    groups.add(designOf(line, placement.design, index), placement.scale, i);
  }
  std::vector<SharedDesign> shared;
  for (std::vector<std::size_t>& group : groups.all()) {
    // Lines that ask the same need the same sizes: together no fewer.
    const std::size_t line = questions.places[group.front()].front().line;
    const bool several =
        group.size() > 1 &&
        std::any_of(group.begin(), group.end(), [&questions, line](std::size_t question) {
          const std::vector<OrderPlace>& places = questions.places[question];
          return places.front().line != line || places.back().line != line;
        });
    if (several) {
      shared.push_back({std::move(group), std::nullopt});
    }
  }
  return shared;
}

std::optional<Finding> fewestSizesOfLines(const SharedDesign& design, const Questions& questions,
                                          const Order& order, const Workshop& workshop) {
  return LinesTogether(design, questions, order, workshop).finding();
}

// A shop has the sizes made for the order, not for a line. Told both, it would read two numbers for
// one design, have both made, and pay for sizes that nobody needs. What the separate findings say
// is in the one about all lines: which size serves whom, and what stays as asked.
void replaceByWholeOrder(std::vector<Finding>& findings, SharedDesign& design,
                         const Questions& questions) {
  if (!design.finding) {
    return;
  }
  std::set<OrderPlace> places;
  for (const std::size_t question : design.questions) {
    places.insert(questions.places[question].begin(), questions.places[question].end());
  }
  std::erase_if(findings, [&places](const Finding& finding) {
    return finding.code == FindingCode::OneSizeDoesNotServeAll && !finding.wholeOrder &&
           places.count({finding.line, finding.placement}) != 0;
  });
  findings.push_back(std::move(*design.finding));
}

}  // namespace creaseline
