// SPDX-License-Identifier: MIT
#include "planning/parts.h"

#include <algorithm>
#include <cmath>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/wording.h"
#include "planning/frame_search.h"
#include "planning/placement.h"

namespace creaseline {
namespace {

// Asked whether a frame holds a part. A remedy is one of several ways out and must be found in good
// time; what is asked for is searched for longer.
constexpr int kMostQuestions = 4000;
constexpr int kMostInTrial = 200;
constexpr int kMostOfGridInTrial = 500;

// The four tips of a mark's arms: for a convex window they are the whole mark.
Piece markPiece(Point at, Length extent, Angle turn) {
  const double half = extent.mm() / 2.0;
  Piece piece;
  for (const Point tip :
       {Point{0.0, -half}, Point{half, 0.0}, Point{0.0, half}, Point{-half, 0.0}}) {
    piece.outer.push_back(at + turned(tip, turn));
  }
  return piece;
}

bool mayBeMarked(const PanelShape& panel, Point at) {
  return contains(panel.outline, at) &&
         std::none_of(panel.keepOuts.begin(), panel.keepOuts.end(), [at](const KeepOut& keepOut) {
           return keepOut.needle && contains(keepOut.area, at);
         });
}

// Plans the parts of one placement whose whole is decided but for a frame.
class PartPlanner {
 public:
  PartPlanner(const PlacementRequest& request, const Workshop& workshop, const PlacementPlan& whole,
              Effort effort)
      : request_(request),
        workshop_(workshop),
        whole_(whole),
        panel_(*whole.garment->hooped(whole.panel, whole.location)),
        figures_(workshop.figures.parts),
        // Which of the frames is best decides whether there is room enough.
        effort_(explains(effort) ? effort : Effort::BestFrame) {}

  Answer plan() {
    Answer answer{whole_, {}, {}};
    if (!whole_.design.pieces.empty()) {
      answer.notSplit = worded("it has appliqué pieces, and where in it they lie is not known");
      return answer;
    }
    const SplitSearch search =
        findSplit(whole_.design.outline, splitFigures(),
                  [this](const Outline& sewing, const std::vector<Point>& marks) {
                    return fits(sewing, marks);
                  });
    if (!search.split) {
      answer.notSplit =
          search.gaveUp
              ? worded("of the many ways to cut it none that works was found in good time")
              : worded(
                    "cuts one way, and cuts both ways, into up to {} parts leave no "
                    "room for every part with two register marks to align it on",
                    figures_.mostParts);
      return answer;
    }
    for (std::size_t i = 0; i < search.split->parts.size(); ++i) {
      answer.parts.push_back(place(*search.split, i));
    }
    preferOneFrame(answer.parts);
    for (PlacementPlan& part : answer.parts) {
      decideRest(part, request_, panel_, workshop_, effort_);
    }
    return answer;
  }

 private:
  [[nodiscard]] SplitFigures splitFigures() const {
    SplitFigures figures{figures_.overlap.mm(),
                         figures_.registerMark.mm() / 2.0,
                         figures_.markClearance.mm(),
                         figures_.marksApart.mm(),
                         figures_.mostParts,
                         kMostQuestions,
                         kMostQuestions,
                         {}};
    if (effort_ != Effort::Full) {
      figures.mostQuestions = kMostInTrial;
      figures.mostGridQuestions = kMostOfGridInTrial;
    }
    const std::int32_t turn = std::abs(whole_.placed.panelTurn.millidegrees());
    for (const Box& box : largestHeld(workshop_, panel_, whole_.placed.bounds)) {
      const double diagonal = std::hypot(box.width(), box.height());
      // What lies askew in a frame reaches no further than from corner to corner.
      figures.largest.push_back(turn % 180'000 == 0  ? Extent{box.width(), box.height()}
                                : turn % 90'000 == 0 ? Extent{box.height(), box.width()}
                                                     : Extent{diagonal, diagonal});
    }
    return figures;
  }

  [[nodiscard]] Point onPanel(Point inDesign) const {
    return whole_.placed.centre + turned(inDesign, whole_.placed.panelTurn);
  }

  [[nodiscard]] bool fits(const Outline& sewing, const std::vector<Point>& marks) const {
    Outline held = sewing.transformed(whole_.placed.panelTurn, 1.0, whole_.placed.centre);
    for (const Point mark : marks) {
      const Point at = onPanel(mark);
      if (!mayBeMarked(panel_, at)) {
        return false;
      }
      held.pieces.push_back(markPiece(at, figures_.registerMark, whole_.placed.panelTurn));
    }
    const FrameSearch search =
        searchFrames(workshop_, panel_, held, onPanel(sewing.bounds().centre()), Effort::AnyRoomy);
    return !search.accepted.empty() && search.accepted.front().bearsError;
  }

  // A part with its place and frames; what the frames do not decide is taken from the whole.
  PlacementPlan place(const Split& split, std::size_t index) const {
    const SplitPart& sewn = split.parts[index];
    const int number = static_cast<int>(index) + 1;
    const int of = static_cast<int>(split.parts.size());
    PlacementPlan plan = whole_;
    plan.design = partOf(whole_.design, sewn.section, number, of);
    plan.placed = placed(clipped(whole_.design.outline, sewn.section).bounds().centre(),
                         plan.design.outline, number, of);
    plan.outlineOnPanel =
        plan.design.outline.transformed(plan.placed.panelTurn, 1.0, plan.placed.centre);
    plan.part = part(split, index);
    decideFrame(plan, panel_, framedOutline(plan), workshop_, effort_);
    return plan;
  }

  [[nodiscard]] Placed placed(Point centreInDesign, const Outline& outline, int number,
                              int of) const {
    const UnitChoice& units = workshop_.shop->units;
    Placed placed = whole_.placed;
    const Box box = outline.transformed(placed.panelTurn, 1.0, {}).bounds();
    placed.centre = onPanel(centreInDesign);
    placed.bounds = {box.min + placed.centre, box.max + placed.centre};
    const Length down = Length::fromMm(placed.centre.y - whole_.placed.centre.y);
    const Length right = Length::fromMm(placed.centre.x - whole_.placed.centre.x);
    const double direction = landmarkDirection(placed.from);
    placed.centreOffset += direction > 0.0 ? down : -down;
    placed.centreBelowDatum += down;
    placed.lateral += right;
    placed.drop = placed.centreOffset - Length::fromMm(direction > 0.0 ? -box.min.y : box.max.y);
    const std::string which = partPhrase(number, of);
    if (down != Length()) {
      const std::string by = formatLength(abs(down), units);
      placed.dropReasons.push_back(
          {down > Length() ? worded("{}: its centre lies {} below the whole design's", which, by)
                           : worded("{}: its centre lies {} above the whole design's", which, by),
           {},
           worded("where the design is cut"),
           false,
           {},
           worded("another size of the design, or other frames")});
    }
    if (right != Length()) {
      const std::string by = formatLength(abs(right), units);
      placed.lateralReasons.push_back(
          {right > Length()
               ? worded("{}: its centre lies {} to the viewer's right of the whole design's", which,
                        by)
               : worded("{}: its centre lies {} to the viewer's left of the whole design's", which,
                        by),
           {},
           worded("where the design is cut"),
           false,
           {},
           worded("another size of the design, or other frames")});
    }
    return placed;
  }

  [[nodiscard]] DesignPart part(const Split& split, std::size_t index) const {
    DesignPart part;
    part.number = static_cast<int>(index) + 1;
    part.of = static_cast<int>(split.parts.size());
    part.section = split.parts[index].section;
    if (split.bothWays) {
      part.cell = GridCell{split.direction, split.parts[index].strip, split.parts[index].place};
    }
    part.wholeCentre = whole_.placed.centre;
    part.wholeOnPanel = whole_.outlineOnPanel;
    int letter = 0;
    for (const Seam& seam : split.seams) {
      if (seam.first == index || seam.second == index) {
        join(part, seam, letter);
      }
      letter += static_cast<int>(seam.marks.size());
    }
    giveReasons(part, split);
    return part;
  }

  void join(DesignPart& part, const Seam& seam, int letter) const {
    const int first = static_cast<int>(seam.first) + 1;
    const int second = static_cast<int>(seam.second) + 1;
    part.joins.push_back({part.number == first ? second : first,
                          onPanel(pointOnCut(seam.direction, seam.at, seam.along.low)),
                          onPanel(pointOnCut(seam.direction, seam.at, seam.along.high)),
                          Length::fromMm(seam.crossed), seam.meets ? figures_.overlap : Length()});
    for (const Point mark : seam.marks) {
      part.marks.push_back({std::string(1, static_cast<char>('A' + letter)), onPanel(mark),
                            figures_.registerMark, first, second});
      ++letter;
    }
  }

  static void say(DesignPart& part, std::string text, std::string basis) {
    part.reasons.push_back({std::move(text),
                            {},
                            std::move(basis),
                            false,
                            {},
                            worded("another size of the design, or other frames")});
  }

  void giveReasons(DesignPart& part, const Split& split) const {
    const UnitChoice& units = workshop_.shop->units;
    const Defaults& defaults = workshop_.rules->defaults;
    const std::string hoopings = counted(part.of, toBeWorded("hooping"), toBeWorded("hoopings"));
    say(part,
        split.bothWays
            ? worded("no frame holds the whole design, and no parallel cuts divide it; {} are the "
                     "fewest by upright and level cuts that leave every part room for the shop's "
                     "hooping error",
                     hoopings)
            : worded("no frame holds the whole design; {} are the fewest by parallel cuts that "
                     "leave every part room for the shop's hooping error",
                     hoopings),
        worded("all cuts where the design's outline is crossed least, and cuts into equal parts"));
    if (part.cell) {
      say(part, worded("this part is {} of the design as it reads", cellPhrase(*part.cell)),
          split.direction == CutDirection::Upright
              ? worded("cut into columns first, then columns into rows: least sewing crossed")
              : worded("cut into rows first, then rows into columns: least sewing crossed"));
    }
    sayOfJoins(part, split);
    say(part,
        worded("register marks lie clear of all sewing, at least {} apart",
               formatLength(figures_.marksApart, units)),
        defaults.registerMarksApart.basis);
    const bool beside = std::any_of(split.seams.begin(), split.seams.end(), [&](const Seam& seam) {
      return seam.marksBeside() && (isOf(seam.first, part) || isOf(seam.second, part));
    });
    if (beside) {
      say(part,
          worded("where the sewing leaves no gap for them on a cut its marks lie in the margin "
                 "beyond its end, one on either side of it"),
          worded("from memory: marks as far apart there align a part as well as marks on the cut"));
    }
    say(part, worded("stitches are this part's share of the design by area"),
        worded("estimate: where in the design each stitch lies is not known"));
  }

  static bool isOf(std::size_t index, const DesignPart& part) {
    return static_cast<int>(index) + 1 == part.number;
  }

  void sayOfJoins(DesignPart& part, const Split& split) const {
    const UnitChoice& units = workshop_.shop->units;
    for (const PartJoin& join : part.joins) {
      const std::string measured = worded("measured on the design's outline");
      if (join.crossed > Length()) {
        say(part,
            worded("the cut to part {} crosses {} of sewing; all cuts together cross {}, the "
                   "least of those tried",
                   join.neighbour, formatLength(join.crossed, units),
                   formatLength(Length::fromMm(split.crossed()), units)),
            measured);
      } else if (join.overlap > Length()) {
        say(part,
            worded("the cut to part {} runs between pieces of the design that touch and crosses "
                   "none of them",
                   join.neighbour),
            measured);
      } else {
        say(part, worded("the cut to part {} crosses no sewing", join.neighbour), measured);
      }
      if (join.overlap > Length()) {
        say(part,
            worded("the parts overlap there by {}", formatLength(join.overlap, fineUnits(units))),
            workshop_.rules->defaults.partOverlap.basis);
      }
    }
  }

  // 0: chosen; n: the n-th alternative, with room enough; nothing: it does not serve.
  [[nodiscard]] std::optional<std::size_t> rankOf(const FrameId& frame,
                                                  const PlacementPlan& plan) const {
    if (plan.frame && plan.frame->frame == frame) {
      return 0;
    }
    for (std::size_t i = 0; i < plan.alternatives.size(); ++i) {
      if (plan.alternatives[i].frame == frame && plan.alternatives[i].bearsError) {
        return i + 1;
      }
    }
    return std::nullopt;
  }

  [[nodiscard]] std::optional<std::size_t> rankOf(const FrameId& frame,
                                                  const std::vector<PlacementPlan>& parts) const {
    std::size_t sum = 0;
    for (const PlacementPlan& part : parts) {
      const auto rank = rankOf(frame, part);
      if (!rank) {
        return std::nullopt;
      }
      sum += *rank;
    }
    return sum;
  }

  // One frame for all parts spares changes, where it serves each of them with room enough.
  void preferOneFrame(std::vector<PlacementPlan>& parts) const {
    const Frame* best = nullptr;
    std::optional<std::size_t> least;
    for (const Frame& frame : workshop_.shop->frames) {
      const auto sum = rankOf(frame.id, parts);
      if (sum && (!least || *sum < *least)) {
        least = sum;
        best = &frame;
      }
    }
    if (best == nullptr) {
      return;
    }
    for (PlacementPlan& part : parts) {
      const std::size_t rank = *rankOf(best->id, part);
      if (rank > 0) {
        std::swap(*part.frame, part.alternatives[rank - 1]);
        part.frame->reasons.push_back({worded("the same frame for all parts of the design"),
                                       {},
                                       worded("ranking of frames"),
                                       false,
                                       {},
                                       worded("naming frames in the order")});
      }
    }
  }

  const PlacementRequest& request_;
  const Workshop& workshop_;
  const PlacementPlan& whole_;
  const PanelShape& panel_;
  const PartFigures& figures_;
  Effort effort_;
};

}  // namespace

Answer answerInParts(const PlacementRequest& request, const Workshop& workshop, Effort effort) {
  PlacementPlan whole = answer(request, workshop, effort);
  if (!request.placement.split || !whole.hasRule || whole.frame) {
    return {std::move(whole), {}, {}};
  }
  return PartPlanner(request, workshop, whole, effort).plan();
}

Design partOf(const Design& whole, const Box& section, int number, int of) {
  Design part = whole;
  part.name = whole.name + ", " + partPhrase(number, of);
  part.outline = clipped(whole.outline, section).centred();
  const Box box = part.outline.bounds();
  part.width = Length::fromMm(box.width());
  part.height = Length::fromMm(box.height());
  const double share = part.outline.area().squareMm() / whole.outline.area().squareMm();
  const auto shareOf = [share](int stitches) {
    return std::max(1, static_cast<int>(std::lround(stitches * share)));
  };
  part.stitches = 0;
  for (ThreadBlock& block : part.blocks) {
    block.stitches = shareOf(block.stitches);
    part.stitches += block.stitches;
  }
  if (part.blocks.empty()) {
    part.stitches = shareOf(whole.stitches);
  }
  return part;
}

Outline framedOutline(const PlacementPlan& plan) {
  Outline framed = plan.outlineOnPanel;
  if (plan.part) {
    for (const RegisterMark& mark : plan.part->marks) {
      framed.pieces.push_back(markPiece(mark.at, mark.extent, plan.placed.panelTurn));
    }
  }
  return framed;
}

bool sameDesignPart(const PlacementPlan& a, const PlacementPlan& b) {
  if (!a.part || !b.part) {
    return !a.part && !b.part;
  }
  constexpr double kSameMm = 1e-6;
  return a.part->number == b.part->number && a.part->of == b.part->of &&
         std::equal(a.part->marks.begin(), a.part->marks.end(), b.part->marks.begin(),
                    b.part->marks.end(), [&](const RegisterMark& x, const RegisterMark& y) {
                      return norm((x.at - a.placed.centre) - (y.at - b.placed.centre)) <= kSameMm;
                    });
}

}  // namespace creaseline
