// SPDX-License-Identifier: MIT
// The full set of angles at which a design goes into a frame.
#pragma once

#include <optional>
#include <vector>

#include "creaseline/base/angle.h"

namespace creaseline {

// Closed ranges of turns in degrees, positive clockwise to the viewer. The ends are exact up to
// rounding and are not whole thousandths of a degree, so they are not kept as Angle.
class FittingAngles {
 public:
  struct Range {
    double from = 0.0;  // in (-180, 180]
    double to = 0.0;    // from <= to <= from + 360: a range over the half turn ends beyond 180
    bool operator==(const Range&) const = default;
    [[nodiscard]] double width() const { return to - from; }
  };

  FittingAngles() = default;  // none
  // Ranges in order, none touching the next. For shape/fitting_angles.cpp.
  explicit FittingAngles(std::vector<Range> ranges) : ranges_(std::move(ranges)) {}

  [[nodiscard]] const std::vector<Range>& ranges() const { return ranges_; }
  [[nodiscard]] bool empty() const { return ranges_.empty(); }
  [[nodiscard]] bool all() const { return ranges_.size() == 1 && ranges_[0].width() >= 360.0; }
  // Sum of the widths, degrees.
  [[nodiscard]] double total() const;
  // Degrees, any whole turns more or less.
  [[nodiscard]] bool contains(double degrees) const;
  // The range that holds the angle, moved by whole turns so that from <= degrees <= to, for an
  // angle in (-180, 180]; nothing if none holds it.
  [[nodiscard]] std::optional<Range> around(Angle angle) const;
  // The angle nearest to the wanted one, in whole thousandths of a degree; of two as near the
  // clockwise one. Nothing if no range holds a whole thousandth.
  [[nodiscard]] std::optional<Angle> nearest(Angle wanted) const;

  bool operator==(const FittingAngles&) const = default;

 private:
  std::vector<Range> ranges_;
};

}  // namespace creaseline
