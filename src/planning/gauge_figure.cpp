// SPDX-License-Identifier: MIT
// Lays out a gauge.
//
//        curve of S      the garment's edge, kSeat to both sides of the centre line
//   ____          ____
//   cut S \      / ____   beyond the seat the lines only have to be found by scissors: they run out
//   ____   \    /  |      level, one line of text apart, to both sides
//   cut M | `--' | |
//   ______|  |   |_|___
//   whose    |  + centre chest: S M
//   it is  ruler        + left chest
//
// Each curve ends a little nearer to the centre line than the one before, so that its way down to
// its level does not meet the level of the one before.
#include "creaseline/planning/gauge_figure.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "base/worded.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/wording.h"
#include "planning/figure_parts.h"
#include "planning/gauge_parts.h"

namespace creaseline {

namespace {

using figure::TextBlock;
using gauges::SharedCross;
using gauges::SharedCurve;

constexpr double kLevelsApart = 4.6;  // a line of text
constexpr double kEndsApart = 1.5;
constexpr double kBelowCross = 15.0;  // card below the deepest cross, so that it can be held
constexpr double kBesideCross = 12.0;
constexpr double kBesideSeat = 10.0;
constexpr double kRulerRoom = 17.0;  // marks and numbers, left of the centre line
constexpr double kMargin = 2.5;
constexpr double kLeastTab = 30.0;  // beside the seat, to hold it by and for words

struct RulerScale {
  double step;    // millimetres between marks
  int marks;      // between two numbers
  int perNumber;  // what a number counts up by
};

RulerScale rulerScale(const UnitChoice& units) {
  switch (units.length) {
    case LengthUnit::Inch: {
      const int marks = static_cast<int>(units.mark);
      return {Length::kMmPerInch / marks, marks, 1};
    }
    case LengthUnit::Centimetre:
      return {1.0, 10, 1};
    case LengthUnit::Millimetre:
      return {1.0, 10, 10};
  }
  return {1.0, 10, 1};
}

// Longer at halves, as on any ruler, and longest at the numbers.
double markLength(int mark, const RulerScale& scale) {
  if (mark % scale.marks == 0) {
    return 8.0;
  }
  if (mark % (scale.marks / 2) == 0) {
    return 5.5;
  }
  const bool inches = scale.marks % 4 == 0;
  if (inches && mark % (scale.marks / 4) == 0) {
    return 4.0;
  }
  return inches && mark % (scale.marks / 8) != 0 ? 1.8 : 2.8;
}

bool overlap(const Box& a, const Box& b) {
  return gapBetween(a, b) < 0.0;
}

class GaugeLayout {
 public:
  GaugeLayout(const FigureContext& context, const GaugeStrip& strip)
      : context_(context),
        strip_(strip),
        first_(context.plan.placements[strip.placements.front()]) {
    for (const std::size_t index : strip.placements) {
      if (!gauges::takeIn(content_, context, index, strip.edge)) {
        // Only of a strip that gaugeStrips() did not make.
        throw std::invalid_argument("placements that do not go on one strip");
      }
    }
  }

  Figure make() {
    findLevels();
    addCrosses();
    findSides();
    addOwner();
    addCurves();
    addRuler();
    figure::setBounds(figure_);
    return std::move(figure_);
  }

 private:
  // From strip coordinates to paper. Cuff and hem hang at the bottom.
  [[nodiscard]] Point onPaper(Point inStrip) const {
    const bool hangs = strip_.edge == EdgeName::CuffEdge || strip_.edge == EdgeName::Hem;
    return hangs ? Point{inStrip.x, -inStrip.y} : inStrip;
  }

  void stroke(StrokeKind kind, Polyline line) {
    for (Point& point : line) {
      point = onPaper(point);
    }
    figure::addStroke(figure_, kind, std::move(line));
  }

  // Where curves end and at which level they run out.
  void findLevels() {
    double seat = kSeat;
    for (const SharedCurve& curve : content_.curves) {
      seat = std::min(seat, curve.line.back().x);
    }
    double level = 0.0;
    for (std::size_t i = 0; i < content_.curves.size(); ++i) {
      const double end = seat - kEndsApart * static_cast<double>(i);
      const Polyline& line = content_.curves[i].line;
      const double lowest = std::max(gauges::heightAt(line, end), gauges::heightAt(line, -end));
      level = i == 0 ? lowest : std::max(lowest, level + kLevelsApart);
      ends_.push_back(end);
      levels_.push_back(level);
    }
    seat_ = seat;
  }

  [[nodiscard]] std::string curveLabel(const SharedCurve& curve) const {
    return worded("cut here for {}", figure::sizesOf(context_, curve.placements));
  }

  [[nodiscard]] std::string edgeWord() const {
    return strip_.edge == EdgeName::Armhole ? worded("armhole seam") : edgePhrase(strip_.edge);
  }

  [[nodiscard]] std::string crossLabel(const SharedCross& cross) const {
    std::vector<std::pair<std::string, std::vector<std::size_t>>> locations;
    for (const std::size_t index : cross.placements) {
      const PlacementPlan& plan = context_.plan.placements[index];
      const std::string name = figure::locationName(context_, plan) + partSuffix(plan);
      if (locations.empty() || locations.back().first != name) {
        locations.push_back({name, {}});
      }
      locations.back().second.push_back(index);
    }
    std::string text;
    for (const auto& [name, placements] : locations) {
      text += fmt::format("{}{}: {}", text.empty() ? "" : "; ", name,
                          figure::sizesOf(context_, placements));
    }
    return text;
  }

  // Each with its words beside it: towards the centre line where there is room, else above, below
  // or outwards.
  void addCrosses() {
    const Point arms{kCrossArm, kCrossArm};
    for (const SharedCross& cross : content_.crosses) {
      const Point at = onPaper(cross.at);
      figure_.crosses.push_back({at, cross.turn, crossLabel(cross), TextSide::Right});
      taken_.push_back({at - arms, at + arms});
      deepest_ = std::max(deepest_, cross.at.y);
    }
    for (FigureCross& cross : figure_.crosses) {
      cross.side = freeSide(cross);
      taken_.push_back(figure::textBox(crossText(cross)));
    }
  }

  [[nodiscard]] TextSide freeSide(FigureCross cross) const {
    if (std::abs(cross.at.x) < kCrossArm) {
      return TextSide::Right;  // the ruler is at the left
    }
    const bool right = cross.at.x > 0.0;
    const TextSide inwards = right ? TextSide::Left : TextSide::Right;
    for (const TextSide side : {inwards, TextSide::Above, TextSide::Below}) {
      cross.side = side;
      const Box box = figure::textBox(crossText(cross));
      const bool onRuler = box.min.x < 1.0 && box.max.x > -kRulerRoom;
      const bool meets = std::any_of(taken_.begin(), taken_.end(),
                                     [&](const Box& other) { return overlap(box, other); });
      if (!onRuler && !meets) {
        return side;
      }
    }
    return right ? TextSide::Right : TextSide::Left;
  }

  // How far the strip reaches, and on which side of it there is room for words: where a cross makes
  // it wide anyway, else on a tab at the left.
  void findSides() {
    left_ = -seat_ - kBesideSeat;
    right_ = seat_ + kBesideSeat;
    bool middleFree = true;
    for (const SharedCross& cross : content_.crosses) {
      left_ = std::min(left_, cross.at.x - kBesideCross);
      right_ = std::max(right_, cross.at.x + kBesideCross);
      middleFree = middleFree && std::abs(cross.at.x) >= kCrossArm;
    }
    for (const Box& box : taken_) {
      left_ = std::min(left_, box.min.x - kMargin);
      right_ = std::max(right_, box.max.x + kMargin);
    }
    double tab = kLeastTab;
    if (content_.curves.size() > 1) {
      for (const SharedCurve& curve : content_.curves) {
        tab = std::max(tab, figure::roomFor(curveLabel(curve), true) + 2.0 * kMargin);
      }
    }
    tabAtRight_ = middleFree && right_ >= seat_ + tab && right_ > -left_;
    if (!tabAtRight_) {
      left_ = std::min(left_, -seat_ - tab);
    }
  }

  [[nodiscard]] TextBlock ownerBlock(double width) const {
    TextBlock block;
    figure::addParagraph(block, gaugeTitle(context_, strip_), width, true);
    figure::addParagraph(
        block, worded("order {}, {}", context_.order.id, figure::linePhrase(context_, strip_.line)),
        width);
    figure::addParagraph(block,
                         worded("Lay the edge to the {}, the dash-dotted line on {}; mark "
                                "the centre through the cross.",
                                edgeWord(), centreLinePhrase(first_)),
                         width);
    if (content_.curves.size() > 1) {
      figure::addParagraph(
          block,
          worded("Cut first for {}; when those are done, cut on along the next line.",
                 figure::sizesOf(context_, content_.curves.front().placements)),
          width);
    }
    figure::addParagraph(block, worded("Print on card."), width);
    for (const std::string& text : gaugeAssumptions(context_, strip_)) {
      figure::addParagraph(block, text, width, true);
    }
    return block;
  }

  // Beside the ruler, below the curves and whatever lies there.
  void addOwner() {
    const double from = tabAtRight_ ? kMargin : left_ + kMargin;
    const double to = tabAtRight_ ? right_ - kMargin : -kRulerRoom;
    const TextBlock block = ownerBlock(to - from);
    const double height = figure::heightOf(block);
    double top = levels_.back() + kLevelsApart;
    for (const SharedCurve& curve : content_.curves) {
      top = std::max(top, gauges::heightAt(curve.line, tabAtRight_ ? from : to));
    }
    top += kMargin;
    const auto boxFrom = [&](double y) {
      const Point a = onPaper({from, y});
      const Point b = onPaper({to, y + height});
      return Box{{a.x, std::min(a.y, b.y)}, {b.x, std::max(a.y, b.y)}};
    };
    const auto inTheWay = [&] {
      return std::find_if(taken_.begin(), taken_.end(),
                          [&](const Box& box) { return overlap(boxFrom(top), box); });
    };
    for (auto box = inTheWay(); box != taken_.end(); box = inTheWay()) {
      top = std::max(onPaper(box->min).y, onPaper(box->max).y) + kMargin;
    }
    figure::addBlock(figure_, boxFrom(top).min, block);
    depth_ = std::max(deepest_ + kBelowCross, top + height + kMargin);
  }

  void addCurves() {
    for (std::size_t i = 0; i < content_.curves.size(); ++i) {
      const Polyline& line = content_.curves[i].line;
      const double end = ends_[i];
      Polyline edge{{-end, gauges::heightAt(line, -end)}};
      std::copy_if(line.begin(), line.end(), std::back_inserter(edge),
                   [end](Point point) { return std::abs(point.x) < end; });
      edge.push_back({end, gauges::heightAt(line, end)});
      stroke(StrokeKind::Cut, {edge.front(), {-end, levels_[i]}, {left_, levels_[i]}});
      stroke(StrokeKind::Cut, {edge.back(), {end, levels_[i]}, {right_, levels_[i]}});
      stroke(StrokeKind::Collar, edge);
      if (content_.curves.size() == 1) {
        break;
      }
      const double x = tabAtRight_ ? right_ - kMargin + kTextGap : left_ + kMargin - kTextGap;
      figure_.texts.push_back({onPaper({x, levels_[i] + kLevelsApart / 2.0}),
                               tabAtRight_ ? TextSide::Left : TextSide::Right,
                               curveLabel(content_.curves[i]), true, false});
    }
    stroke(
        StrokeKind::Cut,
        {{left_, levels_.front()}, {left_, depth_}, {right_, depth_}, {right_, levels_.front()}});
  }

  void addRuler() {
    stroke(StrokeKind::Crease, {{0.0, 0.0}, {0.0, depth_}});
    const std::string crease = centreLineLabel(first_);
    figure_.texts.push_back({onPaper({0.5, depth_ - 3.5}), TextSide::Right, crease, false, false});
    const RulerScale scale = rulerScale(context_.units);
    for (int mark = 1; mark * scale.step < depth_ - kMargin; ++mark) {
      const double y = mark * scale.step;
      const double length = markLength(mark, scale);
      stroke(StrokeKind::Ruler, {{-length, y}, {0.0, y}});
      if (mark % scale.marks == 0 && y < depth_ - kLevelsApart) {
        const int number = mark / scale.marks * scale.perNumber;
        figure_.texts.push_back(
            {onPaper({-length, y}), TextSide::Left, fmt::format("{}", number), false, false});
      }
    }
  }

  const FigureContext& context_;
  const GaugeStrip& strip_;
  const PlacementPlan& first_;
  gauges::StripContent content_;
  std::vector<double> ends_, levels_;  // of each curve
  double seat_ = kSeat;
  double deepest_ = 0.0;
  double left_ = 0.0, right_ = 0.0, depth_ = 0.0;
  bool tabAtRight_ = false;
  std::vector<Box> taken_;  // crosses and their words, on paper
  Figure figure_;
};

}  // namespace

Figure gaugeFigure(const FigureContext& context, const GaugeStrip& strip) {
  return GaugeLayout(context, strip).make();
}

}  // namespace creaseline
