// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <cmath>

namespace creaseline {

// From one colour, share 0, to the other, share 1, channel by channel.
inline QColor mixed(const QColor& a, const QColor& b, double shareOfB) {
  const auto mix = [&](int from, int to) {
    return static_cast<int>(std::lround(from + (to - from) * shareOfB));
  };
  return QColor(mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue()));
}

}  // namespace creaseline
