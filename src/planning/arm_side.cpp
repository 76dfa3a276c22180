// SPDX-License-Identifier: MIT
#include "planning/arm_side.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "base/worded.h"
#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

// From the frame's centre to the machine, in the frame's own view, as a turn from its top.
Angle towardsMachine(BracketSide side) {
  switch (side) {
    case BracketSide::Right:
      return Angle::fromDegrees(90.0);
    case BracketSide::Bottom:
      return Angle::fromDegrees(180.0);
    case BracketSide::Left:
      return Angle::fromDegrees(-90.0);
    case BracketSide::Top:
    case BracketSide::Both:
      break;
  }
  return {};
}

Angle machineOnPanel(const PreparedFrame& frame) {
  return towardsMachine(frame.frame->bracket) + frame.turn;
}

// "its bracket lies towards the collar"
std::string bracketLies(const PreparedFrame& frame, const PanelShape& panel) {
  const std::string facing = facingPhrase(panel, machineOnPanel(frame));
  return frame.frame->bracket == BracketSide::Both
             ? worded("with brackets at both its sides its top lies {}", facing)
             : worded("its bracket lies {}", facing);
}

// Cosine of the least angle between the direction and any point of the side. Along a straight side
// the angle grows or falls throughout, so its ends decide unless it crosses the line ahead.
double straightAhead(Point from, Point to, Point direction) {
  const auto ahead = [direction](Point seen) { return dot(seen, direction); };
  const double left = cross(direction, from);
  const double right = cross(direction, to);
  if (left * right < 0.0) {
    const Point crossing = from + (to - from) * (left / (left - right));
    if (ahead(crossing) >= 0.0) {
      return 1.0;
    }
  }
  constexpr double kHere = 1e-9;  // millimetres: no direction can be told
  return std::max(ahead(from) / std::max(norm(from), kHere), ahead(to) / std::max(norm(to), kHere));
}

const FrameEdgeRule* openEdge(EdgeName edge, PanelName panel, const Rules& rules) {
  // The arm reaches a sleeve from the body, but not the body through the length of a sleeve.
  if (edge == EdgeName::Armhole && (panel == PanelName::Front || panel == PanelName::Back)) {
    return nullptr;
  }
  const auto found = std::find_if(rules.frameEdges.begin(), rules.frameEdges.end(),
                                  [edge](const FrameEdgeRule& rule) { return rule.edge == edge; });
  return found == rules.frameEdges.end() || found->armThrough.empty() ? nullptr : &*found;
}

// Whether some point of the stretch satisfies both: n.x >= least.
struct HalfPlane {
  Point normal;
  double least = 0.0;
};
bool meetsBoth(Point from, Point to, const std::array<HalfPlane, 2>& sides) {
  double low = 0.0;  // the share of the stretch that is left
  double high = 1.0;
  for (const HalfPlane& side : sides) {
    const double start = dot(side.normal, from) - side.least;
    const double end = dot(side.normal, to) - side.least;
    if (start < 0.0 && end < 0.0) {
      return false;
    }
    if (start < 0.0) {
      low = std::max(low, start / (start - end));
    } else if (end < 0.0) {
      high = std::min(high, start / (start - end));
    }
  }
  return low <= high;
}

// The mouth of a bag and the brim of a hat go by the kind's own name for them.
std::string throughPhrase(const FrameEdgeRule& rule, const PanelShape& panel) {
  return rule.edge == EdgeName::TopEdge && panel.openings.size() == 1 ? panel.openings.front().name
                                                                      : rule.armThrough;
}

}  // namespace

bool liesOpen(const PanelShape& panel) {
  return panel.openings.empty() ||
         std::any_of(panel.openings.begin(), panel.openings.end(),
                     [](const PanelOpening& opening) { return !opening.width; });
}

const FrameEdgeRule* armEdge(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                             const Workshop& workshop) {
  constexpr double kRounding = 1e-9;  // an edge exactly at the end of the reach is within it
  const Point direction = turned({0.0, -1.0}, machineOnPanel(frame));
  double best = std::cos(workshop.figures.armReach.radians()) - kRounding;
  const FrameEdgeRule* through = nullptr;
  for (std::size_t i = 0; i < panel.sides.size(); ++i) {
    const FrameEdgeRule* rule = openEdge(panel.sides[i].name, panel.name, *workshop.rules);
    if (rule == nullptr) {
      continue;
    }
    const Point from = panel.outline[i] - centre;
    const Point to = panel.outline[(i + 1) % panel.outline.size()] - centre;
    const double ahead = straightAhead(from, to, direction);
    if (ahead > best) {
      best = ahead;
      through = rule;
    }
  }
  return through;
}

// What a centre sees within the reach lies in a wedge; a wedge from anywhere in the box lies
// between the two sides of it, each moved out to the corner of the box that it meets last.
bool armMayReach(const PreparedFrame& frame, const Box& centres, const PanelShape& panel,
                 const Workshop& workshop) {
  if (liesOpen(panel)) {
    return true;
  }
  constexpr double kRounding = 1e-6;  // millimetres
  const double reach = workshop.figures.armReach.radians();
  if (reach >= std::numbers::pi / 2.0) {
    return true;  // no wedge
  }
  const Point direction = turned({0.0, -1.0}, machineOnPanel(frame));
  std::array<HalfPlane, 2> sides;
  for (std::size_t i = 0; i < sides.size(); ++i) {
    // Square to the wedge's side, inwards.
    const double hand = i == 0 ? 1.0 : -1.0;
    const Point across{-direction.y * hand, direction.x * hand};
    const Point normal = direction * std::sin(reach) + across * std::cos(reach);
    const Point last{normal.x > 0.0 ? centres.min.x : centres.max.x,
                     normal.y > 0.0 ? centres.min.y : centres.max.y};
    sides[i] = {normal, dot(normal, last) - kRounding};
  }
  for (std::size_t i = 0; i < panel.sides.size(); ++i) {
    if (openEdge(panel.sides[i].name, panel.name, *workshop.rules) != nullptr &&
        meetsBoth(panel.outline[i], panel.outline[(i + 1) % panel.outline.size()], sides)) {
      return true;
    }
  }
  return false;
}

std::string noArmPhrase(const PreparedFrame& frame, const PanelShape& panel) {
  return worded("{}, where the garment has no opening for the machine's arm",
                bracketLies(frame, panel));
}

Reason armReason(const PreparedFrame& frame, Point centre, const PanelShape& panel,
                 const Workshop& workshop) {
  const std::string lies = bracketLies(frame, panel);
  const std::string changedBy = worded("another frame or another way of lying");
  if (liesOpen(panel)) {
    const std::string basis = panel.openings.empty() ? worded("common practice, no source")
                                                     : panel.openings.front().basis;
    return {worded("{}; the cloth lies open there for the machine's arm", lies),
            {},
            basis,
            false,
            {},
            changedBy};
  }
  const FrameEdgeRule* rule = armEdge(frame, centre, panel, workshop);
  if (rule == nullptr) {
    return {noArmPhrase(frame, panel), {}, {}, false, {}, changedBy};
  }
  return {worded("{}; the machine's arm goes in through {}", lies, throughPhrase(*rule, panel)),
          rule->id,
          rule->basis,
          false,
          {},
          changedBy};
}

std::optional<Reason> ringReason(const PreparedFrame& frame, const PanelShape& panel,
                                 const UnitChoice& shown) {
  if (panel.openings.empty()) {
    return std::nullopt;
  }
  const auto widest = std::max_element(panel.openings.begin(), panel.openings.end(),
                                       [](const PanelOpening& a, const PanelOpening& b) {
                                         return a.width && (!b.width || *a.width < *b.width);
                                       });
  const Length across = std::min(frame.bodyWidth, frame.bodyHeight);
  const std::string changedBy = worded("another frame");
  if (!widest->width) {
    return Reason{worded("its ring goes in through {}, which opens to lie flat", widest->name),
                  {},
                  widest->basis,
                  false,
                  {},
                  changedBy};
  }
  const UnitChoice units = unitsTellingApart(across, {*widest->width}, shown);
  return Reason{
      worded("its ring, {} across, goes in through {}, {} wide laid flat: room {}",
             formatLength(across, units), widest->name, formatLength(*widest->width, units),
             roomPhrase(*widest->width - across, units)),
      {},
      widest->basis,
      false,
      {},
      changedBy};
}

}  // namespace creaseline
