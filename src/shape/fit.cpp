// SPDX-License-Identifier: MIT
// FrameOpening: translations, room and slack, largest scale, least turn.
#include "creaseline/shape/fit.h"

#include <numbers>

#include "shape/opening_part.h"

namespace creaseline {

namespace {

constexpr double kMarginToleranceMm = 1e-7;
constexpr double kScaleTolerance = 1e-11;
constexpr double kScaleSteps = 1e9;  // a scale is rounded down to a multiple of 1e-9

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

OpenRegion translationsIn(const std::vector<OpeningPart>& parts, std::span<const Point> hull,
                          double inset) {
  OpenRegion open = parts.front().translations(hull, inset);
  for (std::size_t i = 1; i < parts.size() && open.from <= open.to; ++i) {
    open = intersected(open, parts[i].translations(hull, inset));
  }
  return open;
}

Ring scaled(std::span<const Point> hull, double factor) {
  Ring result(hull.begin(), hull.end());
  for (Point& point : result) {
    point = point * factor;
  }
  return result;
}

Ring turnedHull(std::span<const Point> hull, Angle angle) {
  return transformedRing(Ring(hull.begin(), hull.end()), angle, {});
}

double farthestFrom(std::span<const Point> hull, Point centre) {
  double farthest = 0.0;
  for (const Point& point : hull) {
    farthest = std::max(farthest, norm(point - centre));
  }
  return farthest;
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

}  // namespace

Length Slack::least() const {
  return std::min({left, right, up, down});
}

FrameOpening::FrameOpening(const Window& window, Length clearance,
                           const std::optional<Window>& sewingField) {
  std::vector<OpeningPart> parts;
  parts.emplace_back(window, clearance.mm(), kEllipseTolerance.mm());
  if (sewingField) {
    parts.emplace_back(*sewingField, 0.0, kEllipseTolerance.mm());
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

std::optional<Angle> FrameOpening::smallestTurn(std::span<const Point> hull, Angle limit) const {
  if (hull.empty()) {
    return std::nullopt;
  }
  const Box box = ringBounds(Ring(hull.begin(), hull.end()));
  const double radius = std::max(farthestFrom(hull, box.centre()), 1e-9);
  // Thousandths of a degree around `turn` in which nothing fits, or 0 if the turn itself fits.
  const auto excluded = [&](std::int64_t turn) -> std::int64_t {
    const Ring ring = turnedHull(hull, Angle::fromMillidegrees(turn));
    if (!translations(ring).empty()) {
      return 0;
    }
    const Bracket bracket = marginBracket(
        *parts_, ring, [](const Bracket& b) { return std::max(1e-7, std::abs(b.high) / 8.0); });
    const double missing = std::max(0.0, -bracket.high);
    const double thousandths = missing / radius * 180'000.0 / std::numbers::pi;
    return std::max<std::int64_t>(1, static_cast<std::int64_t>(std::min(thousandths, 360'000.0)));
  };
  std::int64_t next[2] = {0, 0};  // the next turn to look at, clockwise and the other way
  const std::int64_t most = std::abs(std::int64_t{limit.millidegrees()});
  while (std::min(next[0], next[1]) <= most) {
    const int way = next[0] <= next[1] ? 0 : 1;
    const std::int64_t turn = way == 0 ? next[0] : -next[1];
    const std::int64_t step = excluded(turn);
    if (step == 0) {
      return Angle::fromMillidegrees(turn);
    }
    next[way] += step;
  }
  return std::nullopt;
}

}  // namespace creaseline
