// SPDX-License-Identifier: MIT
// The proof that a hull fits nowhere at one angle, and how far it holds when the hull is turned.
#pragma once

#include <optional>
#include <span>

#include "shape/chain.h"

namespace creaseline {

// At most five straight limits n.t <= d - n.p, of a face or of a tangent to a corner's arc each
// with the hull point p that it bears on, add up with positive weights to 0 <= `gap`, which is
// negative. Turned by an angle a, the same limits add up to
//   gap + along * (1 - cos a) - across * sin a,
// and as long as that is negative no translation fits, whatever other limits there are. That is
// the dual of the linear programme of the fit; it needs no sampling (Farkas' lemma).
struct Misfit {
  double gap = 0.0;     // millimetres, negative
  double along = 0.0;   // sum of weight * n.p
  double across = 0.0;  // sum of weight * n.p', p' being p turned by a quarter
  // Radians from here, clockwise (way 1) or the other way (-1), to where the sum is zero again;
  // nothing if it is negative all round. Between 0 and a full turn.
  [[nodiscard]] std::optional<double> turnToOpen(double way) const;
};

// Precondition: `open` are the translations of the hull, and no column is open. The hull is as
// turned at the angle looked at.
[[nodiscard]] Misfit misfitOf(const OpenRegion& open, std::span<const Point> hull);

}  // namespace creaseline
