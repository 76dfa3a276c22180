// SPDX-License-Identifier: MIT
#include "planning/backing_need.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
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

std::int64_t piecesOfSheet(const BackingStock& stock, Length width, Length height) {
  return std::max(times(stock.width, width) * times(stock.length, height),
                  times(stock.width, height) * times(stock.length, width));
}

// Millimetres of roll; infinite if the piece is wider than the roll either way.
double lengthOfRoll(const BackingStock& stock, const BackingPieces& need) {
  double least = std::numeric_limits<double>::infinity();
  for (const auto& [across, along] :
       {std::pair(need.width, need.height), std::pair(need.height, need.width)}) {
    if (const std::int64_t beside = times(stock.width, across); beside > 0) {
      least = std::min(least, static_cast<double>(rowsFor(need.pieces, beside)) * along.mm());
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

void addSheets(BackingTotal& total, const BackingStock& stock,
               const std::vector<BackingPieces>& pieces) {
  std::int64_t sheets = 0;
  for (const BackingPieces& need : pieces) {
    const std::int64_t each = piecesOfSheet(stock, need.width, need.height);
    total.enough = total.enough && each > 0;
    sheets += rowsFor(need.pieces, std::max<std::int64_t>(1, each));
  }
  total.enough = total.enough && sheets <= stock.sheets;
  total.need = counted(static_cast<int>(sheets), toBeWorded("sheet"), toBeWorded("sheets"));
  total.onHand = counted(stock.sheets, toBeWorded("sheet"), toBeWorded("sheets"));
}

void addRoll(BackingTotal& total, const BackingStock& stock,
             const std::vector<BackingPieces>& pieces, const UnitChoice& units) {
  double mm = 0.0;
  for (const BackingPieces& need : pieces) {
    mm += lengthOfRoll(stock, need);
  }
  constexpr double kRounding = 1e-6;
  total.enough = mm <= stock.length.mm() + kRounding;
  total.need =
      std::isinf(mm)
          ? worded("a wider roll")
          : worded("{} of roll", rollText(mm, units, [](double v) { return std::ceil(v - 1e-9); }));
  total.onHand = rollText(stock.length.mm(), units, [](double v) { return std::floor(v + 1e-9); });
}

}  // namespace

BackingTotal backingTotal(const BackingStock& stock, const std::vector<BackingPieces>& pieces,
                          const UnitChoice& units) {
  BackingTotal total;
  total.stock = stock.name;
  const std::vector<BackingPieces> sums = bySize(pieces);
  for (const BackingPieces& need : sums) {
    total.pieces += need.pieces;
  }
  if (stock.form == BackingForm::Sheets) {
    addSheets(total, stock, sums);
  } else {
    addRoll(total, stock, sums, units);
  }
  return total;
}

}  // namespace creaseline
