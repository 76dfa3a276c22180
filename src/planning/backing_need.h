// SPDX-License-Identifier: MIT
// How much of a stock entry a number of pieces takes at most.
#pragma once

#include <cstdint>
#include <vector>

#include "creaseline/planning/pick_list.h"

namespace creaseline {

struct BackingPieces {
  Length width, height;
  int pieces = 0;
};

// What pieces take of a roll or of sheets, exactly.
struct CutNeed {
  Length roll;
  std::int64_t sheets = 0;
  bool goesOn = true;  // false: a piece is larger than the sheet or wider than the roll
};

// Each cut size is cut for itself in straight rows, whichever way of the piece takes less; better
// cutting needs less. A piece that goes on no way takes more than there is.
CutNeed cutNeed(const BackingStock& stock, const std::vector<BackingPieces>& pieces);
std::vector<CutBlock> cutBlocks(const BackingStock& stock,
                                const std::vector<BackingPieces>& pieces);
CutLayout cutLayout(const BackingStock& stock, const std::vector<BackingPieces>& pieces,
                    const UnitChoice& units);
BackingTotal backingTotal(const BackingStock& stock, const std::vector<BackingPieces>& pieces,
                          const UnitChoice& units);

}  // namespace creaseline
