// SPDX-License-Identifier: MIT
#include "planning/backing_need.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <map>
#include <utility>

#include "base/worded.h"
#include "creaseline/planning/counting.h"

namespace creaseline {
namespace {

std::int64_t times(Length whole, Length part) {
  return part > Length() ? whole.nanometres() / part.nanometres() : 0;
}

std::int64_t rowsFor(int pieces, std::int64_t across) {
  return (pieces + across - 1) / across;
}

// A piece as it is, and turned.
std::array<std::pair<Length, Length>, 2> waysOf(const BackingPieces& size) {
  return {{{size.width, size.height}, {size.height, size.width}}};
}

CutBlock blockOfSheets(const BackingStock& stock, const BackingPieces& size) {
  CutBlock best{size.width, size.height, size.pieces, 0, 0, {}, 0};
  for (const auto& [across, along] : waysOf(size)) {
    const std::int64_t beside = times(stock.width, across);
    const std::int64_t rows = times(stock.length, along);
    if (beside * rows > best.beside * best.rows) {
      best = {across, along, size.pieces, beside, rows, {}, 0};
    }
  }
  best.sheets = rowsFor(size.pieces, std::max<std::int64_t>(1, best.beside * best.rows));
  return best;
}

CutBlock blockOfRoll(const BackingStock& stock, const BackingPieces& size) {
  CutBlock best{size.width, size.height, size.pieces, 0, 0, {}, 0};
  for (const auto& [across, along] : waysOf(size)) {
    const std::int64_t beside = times(stock.width, across);
    if (beside == 0) {
      continue;
    }
    const std::int64_t rows = rowsFor(size.pieces, beside);
    const auto taken = Length::fromNanometres(rows * along.nanometres());
    if (best.beside == 0 || taken < best.taken) {
      best = {across, along, size.pieces, beside, rows, taken, 0};
    }
  }
  return best;
}

// Metres or yards to a tenth, rounded by `round`.
template <class Round>
std::string rollText(double mm, const UnitChoice& units, Round round) {
  constexpr double kMmPerYard = 914.4;  // international yard and pound agreement, 1959
  const bool yards = units.length == LengthUnit::Inch;
  const double tenths = mm / (yards ? kMmPerYard : 1000.0) * 10.0;
  const double value = round(tenths) / 10.0;
  return yards ? worded("{:.1f} yd", value) : worded("{:.1f} m", value);
}

// Pieces of one size from several runs are cut together.
std::vector<BackingPieces> bySize(const std::vector<BackingPieces>& pieces) {
  std::map<std::pair<Length, Length>, int> counts;
  for (const BackingPieces& need : pieces) {
    counts[std::minmax(need.width, need.height)] += need.pieces;
  }
  std::vector<BackingPieces> sums;
  for (const auto& [size, count] : counts) {
    sums.push_back({size.first, size.second, count});
  }
  return sums;
}

void addSheets(BackingTotal& total, const BackingStock& stock, const CutNeed& need) {
  total.enough = need.goesOn && need.sheets <= stock.sheets;
  total.need = counted(static_cast<int>(need.sheets), toBeWorded("sheet"), toBeWorded("sheets"));
  total.onHand = counted(stock.sheets, toBeWorded("sheet"), toBeWorded("sheets"));
}

void addRoll(BackingTotal& total, const BackingStock& stock, const CutNeed& need,
             const UnitChoice& units) {
  total.enough = need.goesOn && need.roll <= stock.length;
  total.need = need.goesOn
                   ? worded("{} of roll", rollText(need.roll.mm(), units,
                                                   [](double v) { return std::ceil(v - 1e-9); }))
                   : worded("a wider roll");
  total.onHand = rollText(stock.length.mm(), units, [](double v) { return std::floor(v + 1e-9); });
}

}  // namespace

std::vector<CutBlock> cutBlocks(const BackingStock& stock,
                                const std::vector<BackingPieces>& pieces) {
  std::vector<CutBlock> blocks;
  for (const BackingPieces& size : bySize(pieces)) {
    blocks.push_back(stock.form == BackingForm::Sheets ? blockOfSheets(stock, size)
                                                       : blockOfRoll(stock, size));
  }
  return blocks;
}

CutNeed cutNeed(const BackingStock& stock, const std::vector<BackingPieces>& pieces) {
  CutNeed need;
  for (const CutBlock& block : cutBlocks(stock, pieces)) {
    need.goesOn = need.goesOn && block.beside > 0;
    need.roll += block.taken;
    need.sheets += block.sheets;
  }
  return need;
}

CutLayout cutLayout(const BackingStock& stock, const std::vector<BackingPieces>& pieces,
                    const UnitChoice& units) {
  const BackingTotal total = backingTotal(stock, pieces, units);
  return {stock.name, stock.form,  stock.width, stock.length, cutBlocks(stock, pieces),
          total.need, total.enough};
}

BackingTotal backingTotal(const BackingStock& stock, const std::vector<BackingPieces>& pieces,
                          const UnitChoice& units) {
  BackingTotal total;
  total.stock = stock.name;
  for (const BackingPieces& need : pieces) {
    total.pieces += need.pieces;
  }
  const CutNeed need = cutNeed(stock, pieces);
  if (stock.form == BackingForm::Sheets) {
    addSheets(total, stock, need);
  } else {
    addRoll(total, stock, need, units);
  }
  return total;
}

}  // namespace creaseline
