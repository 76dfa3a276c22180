// SPDX-License-Identifier: MIT
// Cuts what is larger than a page into tiles that overlap, so that neighbours are laid on each
// other and taped. All lengths are millimetres; nothing is scaled.
#pragma once

#include <QRectF>
#include <QSizeF>
#include <vector>

namespace creaseline {

// Neighbouring tiles show this much alike, half of it on each side of the line where they join. It
// holds the joining marks and the tape.
inline constexpr double kTileOverlap = 16.0;

struct Tile {
  int row = 0, column = 0;
  QRectF window;  // what it shows
};

struct Tiling {
  int rows = 1, columns = 1;
  std::vector<double> rowJoins, columnJoins;  // where tiles are cut and laid on each other
  std::vector<Tile> tiles;                    // row by row
  [[nodiscard]] int count() const { return rows * columns; }
};

// The number of tiles that a length needs if a tile takes `most`.
[[nodiscard]] int tilesFor(double length, double most);

// Tiles of at most that size for [0, width] x [0, height]. The joins keep off what is measured
// from, `exact`, as far as tiles reach, then cut the fewest of `words` in two, else lie where tiles
// come out alike.
[[nodiscard]] Tiling tiled(QSizeF size, QSizeF most, const std::vector<QRectF>& words,
                           const std::vector<QRectF>& exact);

}  // namespace creaseline
