// SPDX-License-Identifier: MIT
// FrameOpening: translations, room and slack, largest scale, least turn.
#include "creaseline/shape/fit.h"

#include <numbers>

#include "shape/free_turn.h"
#include "shape/opening_part.h"

namespace creaseline {

namespace {

constexpr double kMarginToleranceMm = 1e-7;
constexpr double kScaleTolerance = 1e-11;
constexpr double kRangeRounding = 1e-9;  // degrees
constexpr double kScaleSteps = 1e9;      // a scale is rounded down to a multiple of 1e-9

// A sign change of a decreasing function: at least zero at `low`, negative at `high`.
struct Bracket {
  double low = 0.0, lowValue = 0.0;
  double high = 0.0, highValue = 0.0;
};

// Narrows the bracket until it is no wider than `width(bracket)`. Illinois variant of the rule of
// false position (M. Dowell, P. Jarratt, BIT 11, 1971), with a halving now and then so that a
// jump cannot stall it.
template <class Function, class Width>
Bracket narrowed(Bracket bracket, Function function, Width width) {
  constexpr int kMostRounds = 300;
  int sameEnd = 0;
  for (int round = 0; round < kMostRounds; ++round) {
    const double span = bracket.high - bracket.low;
    if (span <= width(bracket)) {
      break;
    }
    double x = bracket.low + span * bracket.lowValue / (bracket.lowValue - bracket.highValue);
    if (round % 4 == 3) {
      x = bracket.low + span / 2.0;
    }
    // Stay a little off the ends: otherwise one end creeps and the bracket stays wide.
    const double inset = std::min(span / 4.0, width(bracket) / 2.0);
    x = std::clamp(x, bracket.low + inset, bracket.high - inset);
    const double value = function(x);
    if (value >= 0.0) {
      bracket.low = x;
      bracket.lowValue = value;
      sameEnd = sameEnd > 0 ? sameEnd + 1 : 1;
      bracket.highValue *= sameEnd > 1 ? 0.5 : 1.0;
    } else {
      bracket.high = x;
      bracket.highValue = value;
      sameEnd = sameEnd < 0 ? sameEnd - 1 : -1;
      bracket.lowValue *= sameEnd < -1 ? 0.5 : 1.0;
    }
  }
  return bracket;
}

constexpr Point kCorners[] = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};

// Whether the corners of a rectangle of those half sides around a place, and so all of it, lie
// within the region.
bool holdsCorners(const Region& region, Point at, Point half, double tolerance) {
  return std::all_of(std::begin(kCorners), std::end(kCorners), [&](Point corner) {
    return region.contains(at + Point{corner.x * half.x, corner.y * half.y}, tolerance);
  });
}

// Distance of the farthest point from the origin.
double farthestOf(std::span<const Point> hull) {
  double squared = 0.0;
  for (const Point& point : hull) {
    squared = std::max(squared, dot(point, point));
  }
  return std::sqrt(squared);
}

Ring scaled(std::span<const Point> hull, double factor) {
  Ring result(hull.begin(), hull.end());
  for (Point& point : result) {
    point = point * factor;
  }
  return result;
}

// Bracket of the largest further inset at which the hull still fits.
template <class Width>
Bracket marginBracket(const std::vector<OpeningPart>& parts, std::span<const Point> hull,
                      Width width) {
  const auto room = [&](double inset) { return tallestColumn(translationsIn(parts, hull, inset)); };
  Bracket bracket;
  bracket.high = std::numeric_limits<double>::infinity();
  for (const OpeningPart& part : parts) {
    bracket.high = std::min(bracket.high, part.mostInset());
  }
  const OpenRegion now = translationsIn(parts, hull, 0.0);
  if (now.to - now.from < bracket.high * 2.0) {
    // Where the design's width is what limits it, this is the answer.
    bracket.high = (now.to - now.from) / 2.0;
  }
  bracket.highValue = room(bracket.high);
  if (bracket.highValue >= 0.0) {
    return {bracket.high, bracket.highValue, bracket.high, bracket.highValue};
  }
  double step = std::max(1.0, -bracket.highValue);
  bracket.low = bracket.high - step;
  while ((bracket.lowValue = room(bracket.low)) < 0.0) {
    bracket.high = bracket.low;
    bracket.highValue = bracket.lowValue;
    step *= 2.0;
    bracket.low -= step;
  }
  return narrowed(bracket, room, width);
}

// Whole thousandths of a degree, away from zero; an end of a range that is one but for rounding
// counts as one.
std::int64_t thousandthsBeyond(double radians) {
  constexpr double kRounding = 1e-6;
  return static_cast<std::int64_t>(
      std::ceil(std::abs(radians) * 180'000.0 / std::numbers::pi - kRounding));
}

// The first whole thousandth of a degree, that way round, at which the hull fits.
std::optional<Angle> leastTurn(const FrameOpening& opening, const std::vector<OpeningPart>& parts,
                               std::span<const Point> hull, double way, double limit) {
  const FreeTurn turn(parts, hull);
  const std::int64_t most = thousandthsBeyond(limit);
  double start = 0.0;
  while (const auto fit = turn.firstFit(start, way, limit - start * way)) {
    const std::int64_t found = thousandthsBeyond(*fit);
    const Angle angle = Angle::fromMillidegrees(way > 0.0 ? found : -found);
    if (found > most) {
      return std::nullopt;
    }
    if (!opening.translations(transformedRing(Ring(hull.begin(), hull.end()), angle, {})).empty()) {
      return angle;
    }
    // A range too narrow to hold a whole thousandth: on from the next thousandth.
    start = way * static_cast<double>(found + 1) * std::numbers::pi / 180'000.0;
  }
  return std::nullopt;
}

std::vector<FittingAngles::Range> inDegrees(const std::vector<FreeTurn::Arc>& arcs) {
  std::vector<FittingAngles::Range> ranges;
  for (const FreeTurn::Arc& arc : arcs) {
    ranges.push_back({arc.from * 180.0 / std::numbers::pi, arc.to * 180.0 / std::numbers::pi});
  }
  return ranges;
}

// Of ranges that cover `period` degrees: one that ends there and one that starts at the beginning
// are one, and all of it is all round.
std::vector<FittingAngles::Range> joinedRound(std::vector<FittingAngles::Range> ranges,
                                              double start, double period) {
  if (ranges.empty() || ranges.front().from > start + kRangeRounding ||
      ranges.back().to < start + period - kRangeRounding) {
    return ranges;
  }
  if (ranges.size() == 1) {
    return {{-180.0, 180.0}};
  }
  ranges.back().to = ranges.front().to + period;
  ranges.erase(ranges.begin());
  return ranges;
}

// In order, with the start of each in (-180, 180].
std::vector<FittingAngles::Range> sortedRanges(std::vector<FittingAngles::Range> ranges) {
  if (ranges.size() == 1 && ranges.front().width() >= 360.0) {
    return ranges;
  }
  for (FittingAngles::Range& range : ranges) {
    const double turns = range.from <= -180.0 ? 360.0 : range.from > 180.0 ? -360.0 : 0.0;
    range = {range.from + turns, range.to + turns};
  }
  std::sort(ranges.begin(), ranges.end(),
            [](const auto& a, const auto& b) { return a.from < b.from; });
  return ranges;
}

std::vector<FittingAngles::Range> overFullTurn(const std::vector<FreeTurn::Arc>& arcs) {
  return sortedRanges(joinedRound(inDegrees(arcs), -180.0, 360.0));
}

// A half turn brings the opening onto itself, so what fits at an angle fits opposite.
std::vector<FittingAngles::Range> overHalfTurns(const std::vector<FreeTurn::Arc>& arcs) {
  std::vector<FittingAngles::Range> ranges = joinedRound(inDegrees(arcs), 0.0, 180.0);
  if (ranges.size() != 1 || ranges.front().width() < 360.0) {
    const std::size_t count = ranges.size();
    for (std::size_t i = 0; i < count; ++i) {
      ranges.push_back({ranges[i].from - 180.0, ranges[i].to - 180.0});
    }
  }
  return sortedRanges(std::move(ranges));
}

}  // namespace

Length Slack::least() const {
  return std::min({left, right, up, down});
}

FrameOpening::FrameOpening(const Window& window, Length clearance,
                           const std::optional<Window>& sewingField) {
  std::vector<OpeningPart> parts;
  parts.emplace_back(window, clearance.mm(), kCurveTolerance.mm());
  if (sewingField) {
    parts.emplace_back(*sewingField, 0.0, kCurveTolerance.mm());
  }
  parts_ = std::make_shared<const std::vector<OpeningPart>>(std::move(parts));
}

Region FrameOpening::translations(std::span<const Point> hull) const {
  if (hull.empty()) {
    return {};
  }
  return closed(translationsIn(*parts_, hull, 0.0));
}

Slack FrameOpening::slack(const Region& region, std::span<const Point> hull, Point at) const {
  Slack slack;
  const auto room = [](double mm) { return Length::fromMm(std::max(0.0, mm)); };
  if (const auto row = region.row(at.y)) {
    slack.left = room(at.x - row->low);
    slack.right = room(row->high - at.x);
  }
  if (const auto column = region.column(at.x)) {
    slack.up = room(at.y - column->low);
    slack.down = room(column->high - at.y);
  }
  double limit = kLargestTurnSlack.radians();
  for (const OpeningPart& part : *parts_) {
    limit = part.turnLimit(hull, at, limit);
  }
  // Rounded down: what is promised must hold. The small addition keeps the limit itself whole.
  const double thousandths = limit * 180'000.0 / std::numbers::pi + 1e-6;
  slack.turn = Angle::fromMillidegrees(static_cast<std::int64_t>(thousandths));
  return slack;
}

bool FrameOpening::bearsError(const Region& region, std::span<const Point> hull, Point at,
                              Length sideways, Length along, Angle turn) const {
  const double wanted = std::abs(turn.radians());
  if (wanted > kLargestTurnSlack.radians()) {
    return false;
  }
  constexpr double kRounding = 1e-9;
  // A turn moves no point further than this chord: with that much more room all round, which is
  // quickly seen, nothing else need be asked.
  const double chord = 2.0 * farthestOf(hull) * std::sin(wanted / 2.0);
  if (holdsCorners(region, at, {sideways.mm() + chord, along.mm() + chord}, 0.0)) {
    return true;
  }
  if (!holdsCorners(region, at, {sideways.mm(), along.mm()}, kRounding)) {
    return false;
  }
  for (const Point corner : kCorners) {
    const Point place = at + Point{corner.x * sideways.mm(), corner.y * along.mm()};
    for (const OpeningPart& part : *parts_) {
      if (wanted > 0.0 && part.turnLimit(hull, place, wanted) < wanted - kRounding) {
        return false;
      }
    }
  }
  return true;
}

double FrameOpening::depth(std::span<const Point> hull, Point at) const {
  double depth = std::numeric_limits<double>::infinity();
  for (const OpeningPart& part : *parts_) {
    for (const Point& point : hull) {
      depth = std::min(depth, part.depth(point + at));
    }
  }
  return depth;
}

double FrameOpening::margin(std::span<const Point> hull) const {
  if (hull.empty()) {
    return 0.0;
  }
  const Bracket bracket =
      marginBracket(*parts_, hull, [](const Bracket&) { return kMarginToleranceMm; });
  return (bracket.low + bracket.high) / 2.0 - kTouchMm;
}

double FrameOpening::largestScale(std::span<const Point> hull) const {
  if (hull.empty()) {
    return 0.0;
  }
  const auto room = [&](double factor) {
    return tallestColumn(translationsIn(*parts_, scaled(hull, factor), 0.0));
  };
  const Box box = ringBounds(Ring(hull.begin(), hull.end()));
  Bracket bracket{0.0, room(0.0), std::numeric_limits<double>::infinity(), 0.0};
  if (bracket.lowValue < 0.0) {
    return 0.0;
  }
  for (const OpeningPart& part : *parts_) {
    bracket.high = std::min({bracket.high, (part.size().x + 1e-6) / box.width(),
                             (part.size().y + 1e-6) / box.height()});
  }
  if (!std::isfinite(bracket.high)) {
    return bracket.high;
  }
  bracket.highValue = room(bracket.high);
  if (bracket.highValue < 0.0) {
    bracket = narrowed(bracket, room, [](const Bracket& b) { return kScaleTolerance * b.high; });
  } else {
    bracket.low = bracket.high;
  }
  return std::floor(bracket.low * kScaleSteps) / kScaleSteps;
}

FittingAngles FrameOpening::fittingAngles(std::span<const Point> hull) const {
  if (hull.empty()) {
    return {};
  }
  const bool symmetric = std::all_of(parts_->begin(), parts_->end(),
                                     [](const OpeningPart& part) { return part.symmetric(); });
  const FreeTurn turn(*parts_, hull);
  return FittingAngles(symmetric ? overHalfTurns(turn.within(0.0, std::numbers::pi))
                                 : overFullTurn(turn.within(-std::numbers::pi, std::numbers::pi)));
}

std::optional<Angle> FrameOpening::smallestTurn(std::span<const Point> hull, Angle limit) const {
  if (hull.empty()) {
    return std::nullopt;
  }
  const double most = std::abs(limit.radians());
  const auto clockwise = leastTurn(*this, *parts_, hull, 1.0, most);
  const auto other = leastTurn(*this, *parts_, hull, -1.0, most);
  if (clockwise && other) {
    return std::abs(clockwise->millidegrees()) <= std::abs(other->millidegrees()) ? clockwise
                                                                                  : other;
  }
  return clockwise ? clockwise : other;
}

}  // namespace creaseline
