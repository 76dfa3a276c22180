// SPDX-License-Identifier: MIT
// All angles at which a hull goes into an opening, found from exact events.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "shape/misfit.h"
#include "shape/opening_part.h"

namespace creaseline {

// Translations inside all of the parts after a further inset. Precondition: the hull has a point.
[[nodiscard]] OpenRegion translationsIn(const std::vector<OpeningPart>& parts,
                                        std::span<const Point> hull, double inset);

// Turns a hull in an opening. Keeps references to both.
class FreeTurn {
 public:
  struct Arc {
    double from = 0.0, to = 0.0;  // radians, from <= to
  };

  FreeTurn(const std::vector<OpeningPart>& parts, std::span<const Point> hull)
      : parts_(parts), hull_(hull) {}

  // The angles within [from, to] at which the hull fits, in order. Where nothing fits, a proof
  // (Misfit) tells how far to go on; where it fits at two angles, one turn about a fixed centre
  // that leads from one place to the other proves that it fits in between. Both are in closed
  // form; what neither proves is halved. Gaps narrower than kNarrowest are closed.
  [[nodiscard]] std::vector<Arc> within(double from, double to) const;

  // The first angle from `start` on, clockwise (way 1) or the other way (-1), at which the hull
  // fits, at most `limit` away from it; nothing if none.
  [[nodiscard]] std::optional<double> firstFit(double start, double way, double limit) const;

  // Radians. A design of 200 mm comes to lie outside by less than 10 nm in so narrow a gap.
  static constexpr double kNarrowest = 1e-7;

 private:
  // How the hull lies at one angle: a place in the frame, or a proof that there is none.
  struct Pose {
    double angle = 0.0;
    Ring turned;
    Point at;
    std::optional<Misfit> misfit;
    [[nodiscard]] bool fits() const { return !misfit; }
  };
  [[nodiscard]] Pose poseAt(double angle) const;
  [[nodiscard]] std::optional<Pose> firstFit(Pose pose, double way, double limit) const;
  [[nodiscard]] bool joined(const Pose& a, const Pose& b) const;
  void addBetween(std::vector<Arc>& arcs, const Pose& a, const Pose& b) const;

  const std::vector<OpeningPart>& parts_;
  std::span<const Point> hull_;
};

}  // namespace creaseline
