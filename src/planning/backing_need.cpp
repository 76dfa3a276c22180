// SPDX-License-Identifier: MIT
#include "planning/backing_need.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <optional>
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

std::int64_t piecesOfSheet(const BackingStock& stock, Length width, Length height) {
  return std::max(times(stock.width, width) * times(stock.length, height),
                  times(stock.width, height) * times(stock.length, width));
}

// Nothing if the piece is wider than the roll either way.
std::optional<Length> lengthOfRoll(const BackingStock& stock, const BackingPieces& need) {
  std::optional<Length> least;
  for (const auto& [across, along] :
       {std::pair(need.width, need.height), std::pair(need.height, need.width)}) {
    if (const std::int64_t beside = times(stock.width, across); beside > 0) {
      const auto length = Length::fromNanometres(rowsFor(need.pieces, beside) * along.nanometres());
      least = least ? std::min(*least, length) : length;
    }
  }
  return least;
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

CutNeed cutNeed(const BackingStock& stock, const std::vector<BackingPieces>& pieces) {
  CutNeed need;
  for (const BackingPieces& size : bySize(pieces)) {
    if (stock.form == BackingForm::Sheets) {
      const std::int64_t each = piecesOfSheet(stock, size.width, size.height);
      need.goesOn = need.goesOn && each > 0;
      need.sheets += rowsFor(size.pieces, std::max<std::int64_t>(1, each));
    } else if (const auto length = lengthOfRoll(stock, size)) {
      need.roll += *length;
    } else {
      need.goesOn = false;
    }
  }
  return need;
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
