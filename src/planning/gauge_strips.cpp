// SPDX-License-Identifier: MIT
// Which sizes share a strip. See gauge_figure.h for the geometry.
#include <algorithm>
#include <optional>
#include <stdexcept>

#include "planning/figure_parts.h"
#include "planning/gauge_parts.h"

namespace creaseline {

namespace gauges {

namespace {

constexpr double kShareOfEdge = 0.8;  // of a short edge: its ends run into the next seam
constexpr double kRounding = 1e-6;

// The run of sides of that name which crosses or touches the centre line.
Polyline edgeRun(const PanelShape& panel, EdgeName edge) {
  const std::size_t count = panel.outline.size();
  const auto isEdge = [&](std::size_t i) { return panel.sides[i % count].name == edge; };
  for (std::size_t start = 0; start < count; ++start) {
    if (!isEdge(start) || isEdge(start + count - 1)) {
      continue;
    }
    Polyline run{panel.outline[start]};
    for (std::size_t i = start; isEdge(i) && run.size() <= count; ++i) {
      run.push_back(panel.outline[(i + 1) % count]);
    }
    const auto [left, right] =
        std::minmax_element(run.begin(), run.end(), [](Point a, Point b) { return a.x < b.x; });
    if (left->x < 0.0 && right->x > 0.0) {
      return run;
    }
  }
  throw std::invalid_argument("the panel has no such edge on its centre line");
}

// Cuff and face edge, collar seam: the panel lies towards +y. Armhole, hem: it lies towards -y.
double intoPanel(EdgeName edge) {
  return edge == EdgeName::Armhole || edge == EdgeName::Hem ? -1.0 : 1.0;
}

Point inStrip(Point onPanel, double edgeY, PanelName panel, EdgeName edge) {
  return {figure::asDrawn({onPanel.x, 0.0}, panel).x, (onPanel.y - edgeY) * intoPanel(edge)};
}

double edgeLevel(const Polyline& run) {
  Polyline rising = run;
  if (rising.front().x > rising.back().x) {
    std::reverse(rising.begin(), rising.end());
  }
  return heightAt(rising, 0.0);
}

// The part of a line of rising x within +-reach.
Polyline clipped(const Polyline& line, double reach) {
  Polyline kept{{-reach, heightAt(line, -reach)}};
  for (const Point point : line) {
    if (std::abs(point.x) < reach - kRounding) {
      kept.push_back(point);
    }
  }
  kept.push_back({reach, heightAt(line, reach)});
  return kept;
}

// Least and largest of b - a over both curves' common seat. Both are chains of chords, so that
// their extremes lie at points of one of them.
struct Difference {
  double least = 0.0, most = 0.0, atEnds = 0.0;
};
Difference difference(const Polyline& a, const Polyline& b) {
  const double reach = std::min(a.back().x, b.back().x);
  Difference result;
  for (const Polyline* line : {&a, &b}) {
    for (const Point point : *line) {
      const double x = std::clamp(point.x, -reach, reach);
      const double gap = heightAt(b, x) - heightAt(a, x);
      result.least = std::min(result.least, gap);
      result.most = std::max(result.most, gap);
    }
  }
  result.atEnds = heightAt(b, reach) - heightAt(a, reach);
  return result;
}

// Cut first is the curve that leaves more paper.
enum class Relation { Same, ACutFirst, BCutFirst, Confusing };

Relation relation(const Polyline& a, const Polyline& b) {
  const Difference gap = difference(a, b);
  if (std::max(-gap.least, gap.most) <= kSameMark) {
    return Relation::Same;
  }
  if (gap.least >= -kRounding && gap.atEnds >= kCurvesApart) {
    return Relation::ACutFirst;
  }
  if (gap.most <= kRounding && -gap.atEnds >= kCurvesApart) {
    return Relation::BCutFirst;
  }
  return Relation::Confusing;
}

// Index of the curve it shares; curves.size() if it is a new one; nothing if it would confuse.
std::optional<std::size_t> placeOfCurve(const std::vector<SharedCurve>& curves,
                                        const Polyline& line) {
  std::size_t same = curves.size();
  for (std::size_t i = 0; i < curves.size(); ++i) {
    switch (relation(curves[i].line, line)) {
      case Relation::Same:
        same = i;
        break;
      case Relation::Confusing:
        return std::nullopt;
      case Relation::ACutFirst:
      case Relation::BCutFirst:
        break;
    }
  }
  return same;
}

std::optional<std::size_t> placeOfCross(const std::vector<SharedCross>& crosses, Point at,
                                        Angle turn) {
  std::size_t same = crosses.size();
  for (std::size_t i = 0; i < crosses.size(); ++i) {
    const double apart = norm(crosses[i].at - at);
    if (apart <= kSameMark && crosses[i].turn == turn) {
      same = i;
    } else if (apart < kCrossesApart) {
      return std::nullopt;
    }
  }
  return same;
}

Angle drawnTurn(const PlacementPlan& plan) {
  return isSleeve(plan.panel) ? plan.placed.panelTurn + Angle::fromDegrees(180.0)
                              : plan.placed.panelTurn;
}

}  // namespace

EdgeName edgeOf(Landmark from) {
  switch (from) {
    case Landmark::CollarSeam:
    case Landmark::ShoulderPoint:
    case Landmark::PlacketEnd:
    case Landmark::PocketTop:
    case Landmark::PocketOpening:
    case Landmark::YokeSeam:
      return EdgeName::CollarSeam;
    case Landmark::HemEdge:
    case Landmark::BorderTop:
    case Landmark::BorderMiddle:
      return EdgeName::Hem;
    case Landmark::TopEdge:
    case Landmark::PieceMiddle:
      return EdgeName::TopEdge;
    case Landmark::WaistSeam:
      return EdgeName::WaistSeam;
    case Landmark::FaceEdge:
      return EdgeName::FaceEdge;
    case Landmark::CuffEdge:
    case Landmark::CuffSeam:
      return EdgeName::CuffEdge;
    case Landmark::ShoulderSeam:
      return EdgeName::Armhole;
  }
  return EdgeName::CollarSeam;
}

double heightAt(const Polyline& curve, double x) {
  if (x <= curve.front().x) {
    return curve.front().y;
  }
  for (std::size_t i = 1; i < curve.size(); ++i) {
    if (x <= curve[i].x) {
      const Point a = curve[i - 1];
      const Point b = curve[i];
      return b.x == a.x ? b.y : a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x);
    }
  }
  return curve.back().y;
}

Polyline seatCurve(const PanelShape& panel, EdgeName edge) {
  const Polyline run = edgeRun(panel, edge);
  const double level = edgeLevel(run);
  Polyline line;
  for (const Point point : run) {
    line.push_back(inStrip(point, level, panel.name, edge));
  }
  if (line.front().x > line.back().x) {
    std::reverse(line.begin(), line.end());
  }
  const double half = std::min(-line.front().x, line.back().x);
  return clipped(line, std::min(kSeat, kShareOfEdge * half));
}

Point crossAt(const PlacementPlan& plan, EdgeName edge) {
  const PanelShape* panel = plan.garment->panel(plan.panel);
  if (panel == nullptr) {
    throw std::invalid_argument("the garment has no such panel");
  }
  return inStrip(plan.placed.centre, edgeLevel(edgeRun(*panel, edge)), plan.panel, edge);
}

bool takeIn(StripContent& content, const FigureContext& context, std::size_t index, EdgeName edge) {
  const PlacementPlan& plan = context.plan.placements[index];
  const PanelShape* panel = plan.garment->panel(plan.panel);
  if (panel == nullptr) {
    throw std::invalid_argument("the garment has no such panel");
  }
  const Polyline line = seatCurve(*panel, edge);
  const Point at = crossAt(plan, edge);
  const Angle turn = drawnTurn(plan);
  const auto curve = placeOfCurve(content.curves, line);
  const auto cross = placeOfCross(content.crosses, at, turn);
  if (!curve || !cross) {
    return false;
  }
  if (*curve == content.curves.size()) {
    content.curves.push_back({line, {}});
  }
  content.curves[*curve].placements.push_back(index);
  if (*cross == content.crosses.size()) {
    content.crosses.push_back({at, turn, {}});
  }
  content.crosses[*cross].placements.push_back(index);
  // Told apart at their ends, so sorted by them.
  std::stable_sort(content.curves.begin(), content.curves.end(),
                   [](const SharedCurve& a, const SharedCurve& b) {
                     const double reach = std::min(a.line.back().x, b.line.back().x);
                     return heightAt(a.line, reach) < heightAt(b.line, reach);
                   });
  return true;
}

}  // namespace gauges

namespace {

struct Opened {
  GaugeStrip strip;
  gauges::StripContent content;
};

bool sameEdge(const GaugeStrip& a, const GaugeStrip& b) {
  return a.line == b.line && a.panel == b.panel && a.edge == b.edge;
}

// All placements of one size on one panel go together: a size has one strip for that edge.
using SizeOnEdge = GaugeStrip;

std::vector<SizeOnEdge> sizesOnEdges(const FigureContext& context) {
  std::vector<SizeOnEdge> sizes;
  for (std::size_t index = 0; index < context.plan.placements.size(); ++index) {
    const PlacementPlan& plan = context.plan.placements[index];
    if (!plan.hasRule || plan.stops() || !plan.garment) {
      continue;
    }
    const GaugeStrip key{plan.line, plan.panel, gauges::edgeOf(plan.placed.from), {}};
    const auto match = std::find_if(sizes.begin(), sizes.end(), [&](const SizeOnEdge& size) {
      return sameEdge(size, key) &&
             context.plan.placements[size.placements.front()].size == plan.size;
    });
    if (match == sizes.end()) {
      sizes.push_back(key);
      sizes.back().placements.push_back(index);
    } else {
      match->placements.push_back(index);
    }
  }
  return sizes;
}

// True, and the strip changed, if all of them go on it.
bool takeAll(Opened& opened, const FigureContext& context,
             const std::vector<std::size_t>& indices) {
  gauges::StripContent trial = opened.content;
  for (const std::size_t index : indices) {
    if (!gauges::takeIn(trial, context, index, opened.strip.edge)) {
      return false;
    }
  }
  opened.content = std::move(trial);
  opened.strip.placements.insert(opened.strip.placements.end(), indices.begin(), indices.end());
  return true;
}

void place(std::vector<Opened>& strips, const FigureContext& context, const SizeOnEdge& key,
           const std::vector<std::size_t>& indices) {
  for (Opened& opened : strips) {
    if (sameEdge(opened.strip, key) && takeAll(opened, context, indices)) {
      return;
    }
  }
  Opened fresh{{key.line, key.panel, key.edge, {}}, {}};
  if (takeAll(fresh, context, indices)) {
    strips.push_back(std::move(fresh));
    return;
  }
  // Two designs of one size whose crosses nearly meet: a strip for each.
  for (const std::size_t index : indices) {
    place(strips, context, key, {index});
  }
}

}  // namespace

std::vector<GaugeStrip> gaugeStrips(const FigureContext& context) {
  std::vector<Opened> strips;
  for (const SizeOnEdge& size : sizesOnEdges(context)) {
    place(strips, context, size, size.placements);
  }
  std::vector<GaugeStrip> made;
  for (Opened& opened : strips) {
    std::sort(opened.strip.placements.begin(), opened.strip.placements.end());
    made.push_back(std::move(opened.strip));
  }
  return made;
}

}  // namespace creaseline
