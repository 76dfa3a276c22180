// SPDX-License-Identifier: MIT
#include "sheets/tiling.h"

#include <algorithm>
#include <cmath>

namespace creaseline {

namespace {

constexpr double kHalf = kTileOverlap / 2.0;
constexpr double kLongMark = 40.0;

struct Extent {
  double low, high;
};

// What a join should spare, along one axis.
struct Spared {
  std::vector<Extent> words;
  std::vector<Extent> exact;
};

// How much harm a join does there: words that are whole on neither of its sides, and, far worse,
// what is measured from and lies under the tape.
int harm(double join, const Spared& spared) {
  constexpr int kWorse = 1000;
  constexpr double kOff = 3.0;
  const auto cut = std::count_if(
      spared.words.begin(), spared.words.end(),
      [join](const Extent& word) { return word.low < join - kHalf && word.high > join + kHalf; });
  const auto met = std::count_if(
      spared.exact.begin(), spared.exact.end(),
      [join](const Extent& mark) { return mark.low < join + kOff && mark.high > join - kOff; });
  return static_cast<int>(cut) + kWorse * static_cast<int>(met);
}

// Joins from left to right, each within what the tiles before and behind it can reach.
std::vector<double> joinsOf(double length, double most, const Spared& spared) {
  const int count = tilesFor(length, most);
  const double step = most - kTileOverlap;
  std::vector<double> joins;
  for (int k = 1; k < count; ++k) {
    const double last = joins.empty() ? most - kHalf : joins.back() + step;
    const double first = length - most + kHalf - (count - 1 - k) * step;
    const double even = std::clamp(length * k / count, first, last);
    double best = even;
    int least = harm(even, spared);
    for (int away = 1; away <= static_cast<int>(last - first) && least > 0; ++away) {
      for (const double join : {even - away, even + away}) {
        if (join >= first && join <= last && harm(join, spared) < least) {
          least = harm(join, spared);
          best = join;
        }
      }
    }
    joins.push_back(best);
  }
  return joins;
}

Extent windowOf(std::size_t index, const std::vector<double>& joins, double length) {
  return {index == 0 ? 0.0 : joins[index - 1] - kHalf,
          index == joins.size() ? length : joins[index] + kHalf};
}

}  // namespace

int tilesFor(double length, double most) {
  if (length <= most) {
    return 1;
  }
  return static_cast<int>(std::ceil((length - kTileOverlap) / (most - kTileOverlap) - 1e-9));
}

Tiling tiled(QSizeF size, QSizeF most, const std::vector<QRectF>& words,
             const std::vector<QRectF>& exact) {
  Spared across;
  Spared along;
  for (const QRectF& word : words) {
    across.words.push_back({word.left(), word.right()});
    along.words.push_back({word.top(), word.bottom()});
  }
  for (const QRectF& mark : exact) {
    // A long line is spared by joins along it; those across it cannot miss it.
    if (mark.width() <= kLongMark) {
      across.exact.push_back({mark.left(), mark.right()});
    }
    if (mark.height() <= kLongMark) {
      along.exact.push_back({mark.top(), mark.bottom()});
    }
  }
  Tiling tiling;
  tiling.columnJoins = joinsOf(size.width(), most.width(), across);
  tiling.rowJoins = joinsOf(size.height(), most.height(), along);
  tiling.columns = static_cast<int>(tiling.columnJoins.size()) + 1;
  tiling.rows = static_cast<int>(tiling.rowJoins.size()) + 1;
  for (int row = 0; row < tiling.rows; ++row) {
    const Extent y = windowOf(static_cast<std::size_t>(row), tiling.rowJoins, size.height());
    for (int column = 0; column < tiling.columns; ++column) {
      const Extent x = windowOf(static_cast<std::size_t>(column), tiling.columnJoins, size.width());
      tiling.tiles.push_back({row, column, {QPointF(x.low, y.low), QPointF(x.high, y.high)}});
    }
  }
  return tiling;
}

}  // namespace creaseline
