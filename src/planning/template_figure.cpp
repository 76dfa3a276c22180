// SPDX-License-Identifier: MIT
// Lays out a template: shapes about the centre, a band of words above and below them, the cut line
// round all.
#include "creaseline/planning/template_figure.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/worded.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/wording.h"
#include "planning/figure_parts.h"
#include "planning/placement.h"
#include "planning/template_parts.h"

namespace creaseline {

namespace templates {

Point toFigure(Point fromCentre, PanelName panel, TemplateView view) {
  const Point seen = figure::asDrawn(fromCentre, panel);
  switch (view) {
    case TemplateView::Usual:
      return seen;
    case TemplateView::Mirrored:
      return {-seen.x, seen.y};
    case TemplateView::Turned:
      return -seen;
  }
  return seen;
}

Outline outlineShown(const PlacementPlan& plan, TemplateView view) {
  Outline shown = plan.design.outline.transformed(plan.placed.panelTurn, 1.0, {});
  const auto show = [&](Ring& ring) {
    for (Point& point : ring) {
      point = toFigure(point, plan.panel, view);
    }
  };
  for (Piece& piece : shown.pieces) {
    show(piece.outer);
    std::for_each(piece.holes.begin(), piece.holes.end(), show);
  }
  return shown;
}

Ring windowShown(const FigureContext& context, const PlacementPlan& plan, TemplateView view) {
  const Frame* frame = plan.frame ? context.shop.frame(plan.frame->frame) : nullptr;
  if (frame == nullptr) {
    return {};
  }
  Ring ring = transformedRing(frame->window.boundary(Length::fromMm(0.02)), plan.frame->turn,
                              plan.frame->centre - plan.placed.centre);
  for (Point& point : ring) {
    point = toFigure(point, plan.panel, view);
  }
  return ring;
}

std::vector<MarkShown> marksShown(const PlacementPlan& plan, TemplateView view) {
  std::vector<MarkShown> shown;
  if (!plan.part) {
    return shown;
  }
  for (const RegisterMark& mark : plan.part->marks) {
    const Point at = mark.at - plan.placed.centre;
    const auto tip = [&](Point way) {
      return toFigure(at + turned(way * (mark.extent.mm() / 2.0), plan.placed.panelTurn),
                      plan.panel, view);
    };
    shown.push_back({mark.name,
                     toFigure(at, plan.panel, view),
                     {tip({0.0, -1.0}), tip({0.0, 1.0})},
                     {tip({-1.0, 0.0}), tip({1.0, 0.0})}});
  }
  return shown;
}

Box paperBox(const FigureContext& context, const PlacementPlan& plan, TemplateView view) {
  Box box = outlineShown(plan, view).bounds();
  for (const MarkShown& mark : marksShown(plan, view)) {
    for (const Polyline& arm : {mark.upright, mark.level}) {
      std::for_each(arm.begin(), arm.end(), [&box](Point tip) { box.add(tip); });
    }
  }
  for (const Point point : windowShown(context, plan, view)) {
    box.add(point);
  }
  box = box.grown(kRim);
  box.add({-kLeastHalfWidth, 0.0});
  box.add({kLeastHalfWidth, 0.0});
  return box;
}

}  // namespace templates

namespace {

using figure::TextBlock;

constexpr std::string_view kDropLine = toBeWorded("drop line");
constexpr double kSameLine = 0.05;  // nearer than a stroke is wide
constexpr double kFoldMark = 5.0;
constexpr double kFoldPair = 25.0;   // from an axis to the marks that meet in the fold
constexpr double kTextMargin = 3.5;  // from the cut line and from the middle
constexpr double kBesideLine = 2.8;  // middle of a text above or below a line
constexpr double kArrowLength = 15.0;
constexpr double kArrowRoom = 12.0;  // across

class TemplateLayout {
 public:
  TemplateLayout(const FigureContext& context, const SizeGroup& group, TemplateView view)
      : context_(context),
        group_(group),
        plan_(context.plan.placements[group.front()]),
        view_(view),
        inner_(templates::paperBox(context, plan_, view)) {}

  Figure make() {
    const double leftColumn = -inner_.min.x - 2.0 * kTextMargin;
    const double rightColumn = inner_.max.x - 2.0 * kTextMargin;
    const TextBlock title = titleBlock(leftColumn);
    const TextBlock place = placeBlock(rightColumn - kArrowRoom);
    const TextBlock owner = ownerBlock(leftColumn);
    const TextBlock help = helpBlock(rightColumn);
    const double above =
        std::max({figure::heightOf(title), figure::heightOf(place), kArrowLength}) +
        2.0 * kTextMargin;
    const double below =
        std::max(figure::heightOf(owner), figure::heightOf(help)) + 2.0 * kTextMargin;
    paper_ = {inner_.min - Point{0.0, above}, inner_.max + Point{0.0, below}};
    addShapes();
    addGuides();
    addSides();
    addPaper();
    addArrow({paper_.max.x - kArrowRoom / 2.0, paper_.min.y + above / 2.0});
    const double left = paper_.min.x + kTextMargin;
    figure::addBlock(figure_, {left, paper_.min.y + kTextMargin}, title);
    figure::addBlock(figure_, {kTextMargin, paper_.min.y + kTextMargin}, place);
    figure::addBlock(figure_, {left, inner_.max.y + kTextMargin}, owner);
    figure::addBlock(figure_, {kTextMargin, inner_.max.y + kTextMargin}, help);
    figure::setBounds(figure_);
    return std::move(figure_);
  }

 private:
  [[nodiscard]] Point shown(Point fromCentre) const {
    return templates::toFigure(fromCentre, plan_.panel, view_);
  }

  // ---- Words ----

  [[nodiscard]] TextBlock titleBlock(double width) const {
    TextBlock block;
    const std::string view = templateViewPhrase(view_);
    if (!view.empty()) {
      figure::addParagraph(block, view, width, true, true);
    }
    figure::addParagraph(block, figure::locationName(context_, plan_) + ": " + plan_.design.name,
                         width, true);
    figure::addParagraph(block, sizePhrase(plan_.design.width, plan_.design.height, context_.units),
                         width);
    return block;
  }

  [[nodiscard]] TextBlock placeBlock(double width) const {
    TextBlock block;
    figure::addParagraph(block, worded("up when worn: as the arrow points"), width);
    if (dropLabel().front().text == inLanguage(kDropLine)) {
      figure::addParagraph(block, inLanguage(kDropLine) + ": " + dropPhrase(), width);
    }
    if (!creaseInReach()) {
      figure::addParagraph(block, nearestCreasePhrase(), width);
    }
    return block;
  }

  [[nodiscard]] TextBlock ownerBlock(double width) const {
    TextBlock block;
    figure::addParagraph(block, worded("order {}", context_.order.id), width, true);
    for (const std::string& serves : templateServes(context_, group_)) {
      figure::addParagraph(block, serves, width);
    }
    return block;
  }

  [[nodiscard]] TextBlock helpBlock(double width) const {
    TextBlock block;
    if (plan_.frame) {
      if (const Frame* frame = context_.shop.frame(plan_.frame->frame)) {
        figure::addParagraph(
            block,
            worded("dashed: window of {}", framePhrase(*frame, *plan_.frame, context_.units)),
            width);
      }
    }
    if (plan_.part) {
      for (const std::string& phrase :
           {alignedMarksPhrase(*plan_.part), sewnMarksPhrase(*plan_.part)}) {
        if (!phrase.empty()) {
          figure::addParagraph(block, worded("small crosses: {}", phrase), width);
        }
      }
    }
    figure::addParagraph(block,
                         worded("Cut along the line. Fold so that the two outer marks of an edge "
                                "meet: the folds cross at the centre of the design."),
                         width);
    return block;
  }

  // "the cross lies 4 in to the wearer's left of the centre crease (viewer's right)"
  [[nodiscard]] std::string nearestCreasePhrase() const {
    std::vector<std::string> phrases;
    for (const std::size_t index : group_) {
      const std::string phrase = lateralPhrase(context_.plan.placements[index], context_.units);
      if (std::find(phrases.begin(), phrases.end(), phrase) == phrases.end()) {
        phrases.push_back(phrase);
      }
    }
    return phrases.size() == 1 ? worded("the cross lies {}", phrases.front())
                               : worded(
                                     "{} lies beyond this paper, how far differs by size: see the "
                                     "placement sheets",
                                     centreLinePhrase(plan_));
  }

  // "3 in below the collar seam"
  [[nodiscard]] std::string dropPhrase() const {
    for (const std::size_t index : group_) {
      if (roundToMark(context_.plan.placements[index].placed.drop, context_.units) !=
          roundToMark(plan_.placed.drop, context_.units)) {
        return worded("differs by size, see the placement sheets");
      }
    }
    return fmt::format("{} {}", formatLength(plan_.placed.drop, context_.units),
                       landmarkPhrase(plan_.placed.from));
  }

  // What stands beside the line itself: all of it where there is room between line and paper's
  // edge.
  [[nodiscard]] TextBlock dropLabel() const {
    TextBlock block;
    figure::addParagraph(block, worded("this edge {}", dropPhrase()),
                         -inner_.min.x - 2.0 * kTextMargin, true);
    const double drop = dropLine();
    const double room = drop < 0.0 ? drop - inner_.min.y : inner_.max.y - drop;
    if (figure::heightOf(block) + kBesideLine > room || block.size() > 2) {
      return {{inLanguage(kDropLine), true, false}};
    }
    return block;
  }

  // Beside the drop line, away from the design, ending before the middle.
  void addDropLabel(double drop, double outward) {
    const TextBlock block = dropLabel();
    double y = drop + outward * kBesideLine;
    if (outward < 0.0) {
      y -= static_cast<double>(block.size() - 1) * figure::kLineHeight;
    }
    for (const figure::TextLine& line : block) {
      figure_.texts.push_back({{-1.5, y}, TextSide::Left, line.text, true, false});
      y += figure::kLineHeight;
    }
  }

  // ---- Shapes ----

  [[nodiscard]] bool creaseInReach() const {
    return creaseX() >= inner_.min.x && creaseX() <= inner_.max.x;
  }

  [[nodiscard]] double creaseX() const { return shown({-plan_.placed.lateral.mm(), 0.0}).x; }

  void addShapes() {
    const Outline outline = templates::outlineShown(plan_, view_);
    outlineBox_ = outline.bounds();
    for (const Piece& piece : outline.pieces) {
      figure::addStroke(figure_, StrokeKind::Design, piece.outer, true);
      for (const Ring& hole : piece.holes) {
        figure::addStroke(figure_, StrokeKind::Hole, hole, true);
      }
    }
    const Ring window = templates::windowShown(context_, plan_, view_);
    if (!window.empty()) {
      figure::addStroke(figure_, StrokeKind::Window, window, true);
    }
    figure_.crosses.push_back({{}, shownTurn(), {}, TextSide::Right});
    addMarks();
  }

  // The register marks as they are sewn, and the joins on which they lie.
  void addMarks() {
    if (!plan_.part) {
      return;
    }
    for (const templates::MarkShown& mark : templates::marksShown(plan_, view_)) {
      figure::addStroke(figure_, StrokeKind::Register, mark.upright);
      figure::addStroke(figure_, StrokeKind::Register, mark.level);
      constexpr double kAside = 1.0;
      figure_.texts.push_back(
          {mark.at + Point{kAside, -3.0 * kAside}, TextSide::Right, mark.name, true, false});
    }
    for (const PartJoin& join : plan_.part->joins) {
      figure::addStroke(
          figure_, StrokeKind::Guide,
          {shown(join.from - plan_.placed.centre), shown(join.to - plan_.placed.centre)});
    }
  }

  // Turn of the design on the paper; mirroring turns the other way about.
  [[nodiscard]] Angle shownTurn() const {
    const Angle half =
        Angle::fromDegrees(isSleeve(plan_.panel) != (view_ == TemplateView::Turned) ? 180.0 : 0.0);
    const Angle turn = plan_.placed.panelTurn + half;
    return view_ == TemplateView::Mirrored ? -turn : turn;
  }

  // y of the side of the design to which the drop is measured.
  [[nodiscard]] double dropLine() const {
    const Box onPanel = plan_.design.outline.transformed(plan_.placed.panelTurn, 1.0, {}).bounds();
    const bool fromDatum = landmarkDirection(plan_.placed.from) > 0.0;
    return shown({0.0, fromDatum ? onPanel.min.y : onPanel.max.y}).y;
  }

  void addGuides() {
    const double crease = creaseX();
    const bool creaseInMiddle = std::abs(crease) < kSameLine;
    if (!creaseInMiddle) {
      figure::addStroke(figure_, StrokeKind::Guide, {{0.0, inner_.min.y}, {0.0, inner_.max.y}});
    }
    figure::addStroke(figure_, StrokeKind::Guide, {{inner_.min.x, 0.0}, {inner_.max.x, 0.0}});
    const double drop = dropLine();
    figure::addStroke(figure_, StrokeKind::Guide, {{paper_.min.x, drop}, {paper_.max.x, drop}});
    const double outward = drop < 0.0 ? -1.0 : 1.0;
    addDropLabel(drop, outward);
    if (creaseInReach()) {
      figure::addStroke(figure_, StrokeKind::Crease,
                        {{crease, paper_.min.y}, {crease, paper_.max.y}});
      const double end = outward < 0.0 ? inner_.max.y - 3.0 : inner_.min.y + 3.0;
      // Without "the", away from the drop's words and towards the middle of the paper.
      figure_.texts.push_back({{crease, end},
                               crease < -kSameLine ? TextSide::Right : TextSide::Left,
                               centreLineLabel(plan_),
                               false,
                               false});
    }
  }

  // Top and bottom of the design, in words beside the sides where they are.
  void addSides() {
    const Point up = turned({0.0, -1.0}, shownTurn());
    const auto add = [&](Point direction, const std::string& name, const std::string& wholeName) {
      if (std::abs(direction.y) >= std::abs(direction.x)) {
        const bool above = direction.y < 0.0;
        const double y = above ? outlineBox_.min.y - kBesideLine : outlineBox_.max.y + kBesideLine;
        figure_.texts.push_back({{1.5, y}, TextSide::Right, wholeName, true, false});
      } else {
        const bool left = direction.x < 0.0;
        figure_.texts.push_back({{left ? outlineBox_.min.x : outlineBox_.max.x, -4.0},
                                 left ? TextSide::Left : TextSide::Right,
                                 name,
                                 true,
                                 false});
      }
    };
    add(up, worded("top"), worded("top of the design"));
    add(-up, worded("bottom"), worded("bottom of the design"));
  }

  void addPaper() {
    const Point min = paper_.min;
    const Point max = paper_.max;
    figure::addStroke(figure_, StrokeKind::Cut, {min, {max.x, min.y}, max, {min.x, max.y}}, true);
    for (const double from : {-kFoldPair, 0.0, kFoldPair}) {
      const double length = from == 0.0 ? kFoldMark : kFoldMark / 2.0;
      addFold({from, min.y}, {from, min.y + length});
      addFold({from, max.y}, {from, max.y - length});
      addFold({min.x, from}, {min.x + length, from});
      addFold({max.x, from}, {max.x - length, from});
    }
  }

  void addFold(Point edge, Point inner) {
    figure::addStroke(figure_, StrokeKind::Fold, {edge, inner});
  }

  void addArrow(Point middle) {
    const PanelShape* panel = plan_.garment ? plan_.garment->panel(plan_.panel) : nullptr;
    const Angle wornUp = panel != nullptr ? panel->wornUp : Angle();
    const Point up = shown(turned({0.0, -1.0}, wornUp));
    const Point right{-up.y, up.x};
    const auto at = [&](double along, double across) {
      return middle + up * (along * kArrowLength / 2.0) + right * (across * kArrowRoom / 4.0);
    };
    figure::addStroke(figure_, StrokeKind::Arrow,
                      {at(1.0, 0.0), at(0.2, 1.0), at(0.2, 0.35), at(-1.0, 0.35), at(-1.0, -0.35),
                       at(0.2, -0.35), at(0.2, -1.0)},
                      true);
  }

  const FigureContext& context_;
  const SizeGroup& group_;
  const PlacementPlan& plan_;
  TemplateView view_;
  Box inner_;  // paper without its bands
  Box paper_;
  Box outlineBox_;
  Figure figure_;
};

}  // namespace

Figure templateFigure(const FigureContext& context, const SizeGroup& group, TemplateView view) {
  return TemplateLayout(context, group, view).make();
}

}  // namespace creaseline
