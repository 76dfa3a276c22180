// SPDX-License-Identifier: MIT
#include "shape/free_turn.h"

#include <cmath>
#include <numbers>

namespace creaseline {

namespace {

// A column this much too low, in millimetres, is rounding: openings are let out by fifty times as
// much, see kTouchMm.
constexpr double kTurnRoundingMm = 1e-11;
// Radians by which a search goes on at least, below any range that a touching fit leaves.
constexpr double kLeastStep = 1e-13;
// Radians between the angles that are looked at first. Only the speed depends on it.
constexpr double kStride = std::numbers::pi / 12.0;

Ring turnedBy(std::span<const Point> hull, double angle) {
  const double cosine = std::cos(angle);
  const double sine = std::sin(angle);
  Ring turned;
  turned.reserve(hull.size());
  for (const Point& point : hull) {
    turned.push_back({point.x * cosine - point.y * sine, point.x * sine + point.y * cosine});
  }
  return turned;
}

// A point well inside: half way along the row through the middle, then half way up its column.
Point insideOf(const OpenRegion& open) {
  const Region region = closed(open);
  if (region.empty()) {
    const double x = leastSum(open.top, open.flippedBottom).x;
    return {x, (valueAt(open.top, x) - valueAt(open.flippedBottom, x)) / 2.0};
  }
  Point inside = region.bounds().centre();
  if (const auto row = region.row(inside.y)) {
    inside.x = row->middle();
  }
  if (const auto column = region.column(inside.x)) {
    inside.y = column->middle();
  }
  return inside;
}

Ring movedBy(const Ring& ring, Point shift) {
  Ring moved;
  moved.reserve(ring.size());
  for (const Point& point : ring) {
    moved.push_back(point + shift);
  }
  return moved;
}

void append(std::vector<FreeTurn::Arc>& arcs, double from, double to) {
  if (!arcs.empty() && arcs.back().to >= from) {
    arcs.back().to = to;
  } else {
    arcs.push_back({from, to});
  }
}

}  // namespace

OpenRegion translationsIn(const std::vector<OpeningPart>& parts, std::span<const Point> hull,
                          double inset) {
  OpenRegion open = parts.front().translations(hull, inset);
  for (std::size_t i = 1; i < parts.size() && open.from <= open.to; ++i) {
    open = intersected(open, parts[i].translations(hull, inset));
  }
  return open;
}

FreeTurn::Pose FreeTurn::poseAt(double angle) const {
  Pose pose{angle, turnedBy(hull_, angle), {}, {}};
  OpenRegion open = translationsIn(parts_, pose.turned, 0.0);
  if (open.from > open.to && open.from - open.to < kTurnRoundingMm) {
    // A single column, but for rounding: its height has not been looked at.
    open = translationsIn(parts_, pose.turned, -kTurnRoundingMm);
  }
  if (tallestColumn(open) < -kTurnRoundingMm) {
    pose.misfit = misfitOf(open, pose.turned);
    return pose;
  }
  pose.at = insideOf(open);
  return pose;
}

std::optional<FreeTurn::Pose> FreeTurn::firstFit(Pose pose, double way, double limit) const {
  while (pose.misfit) {
    const auto turn = pose.misfit->turnToOpen(way);
    if (!turn) {
      return std::nullopt;
    }
    const double next = pose.angle + way * std::max(*turn, kLeastStep);
    if ((next - limit) * way > 0.0) {
      return std::nullopt;
    }
    pose = poseAt(next);
  }
  return pose;
}

std::optional<double> FreeTurn::firstFit(double start, double way, double limit) const {
  // Rounding must not lose a fit at the limit itself.
  const auto pose = firstFit(poseAt(start), way, start + way * (limit + kLeastStep));
  return pose ? std::optional(pose->angle) : std::nullopt;
}

bool FreeTurn::joined(const Pose& a, const Pose& b) const {
  const double turn = b.angle - a.angle;
  if (turn <= kNarrowest) {
    return true;
  }
  // The fixed point c of the motion: R (x - c) + c = R x + d, so c = (d + cot(turn/2) d') / 2.
  const Point d = b.at - turnedBy(std::span(&a.at, 1), turn).front();
  const double cotangent = 1.0 / std::tan(turn / 2.0);
  const Point centre = (d + Point{-d.y, d.x} * cotangent) * 0.5;
  const Ring before = movedBy(a.turned, a.at);
  const Ring after = movedBy(b.turned, b.at);
  for (const OpeningPart& part : parts_) {
    if (!part.holds({before, after, centre, turn})) {
      return false;
    }
  }
  return true;
}

// Both fit.
void FreeTurn::addBetween(std::vector<Arc>& arcs, const Pose& a, const Pose& b) const {
  if (joined(a, b)) {
    append(arcs, a.angle, b.angle);
    return;
  }
  Pose middle = poseAt((a.angle + b.angle) / 2.0);
  if (middle.fits()) {
    addBetween(arcs, a, middle);
    addBetween(arcs, middle, b);
    return;
  }
  const auto last = firstFit(middle, -1.0, a.angle);
  addBetween(arcs, a, last ? *last : a);
  const auto next = firstFit(std::move(middle), 1.0, b.angle);
  addBetween(arcs, next ? *next : b, b);
}

std::vector<FreeTurn::Arc> FreeTurn::within(double from, double to) const {
  std::vector<Arc> arcs;
  Pose pose = poseAt(from);
  while (true) {
    if (!pose.fits()) {
      auto fit = firstFit(std::move(pose), 1.0, to);
      if (!fit) {
        return arcs;
      }
      pose = std::move(*fit);
      append(arcs, pose.angle, pose.angle);
    }
    if (pose.angle >= to) {
      append(arcs, pose.angle, pose.angle);
      return arcs;
    }
    Pose next = poseAt(std::min(pose.angle + kStride, to));
    if (next.fits()) {
      addBetween(arcs, pose, next);
    } else {
      const auto last = firstFit(next, -1.0, pose.angle);
      addBetween(arcs, pose, last ? *last : pose);
    }
    pose = std::move(next);
  }
}

}  // namespace creaseline
