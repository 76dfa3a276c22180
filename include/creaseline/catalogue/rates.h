// SPDX-License-Identifier: MIT
// What work and material cost the shop. Nothing of it is ever guessed: what is not given is not
// counted, and the cost says so.
#pragma once

#include <optional>
#include <string>

#include "creaseline/base/length.h"
#include "creaseline/base/money.h"

namespace creaseline {

// Work that a shop pays by the stitch, thread above all: so much for so many stitches.
struct StitchPrice {
  Money amount;
  int stitches = 1'000;  // > 0
  bool operator==(const StitchPrice&) const = default;
};

// Of what is bought by the roll; both sides positive.
struct RollPrice {
  Money amount;
  Length width, length;
  bool operator==(const RollPrice&) const = default;
};

// Of a stock of backing: for so much of a roll, or for so many sheets. Its width is the stock's.
struct BackingPrice {
  Money amount;
  Length length;   // of a roll; positive there
  int sheets = 0;  // of sheets; positive there
  bool operator==(const BackingPrice&) const = default;
};

// All amounts are in the shop's currency.
struct Rates {
  Currency currency;
  std::optional<Money> labour;   // an hour
  std::optional<Money> machine;  // an hour
  // Share of the machine's own time in which a person stands by it; absent: all of it.
  std::optional<Percent> attendance;
  std::optional<StitchPrice> thread;
  std::optional<RollPrice> topping;
  std::optional<RollPrice> applique;  // fabric, the same for all
  std::optional<Money> setUp;         // once for each design of an order
  std::optional<Percent> markup;      // on top of all that is counted
  bool operator==(const Rates&) const = default;
};

// A price that says its own currency, as that of a garment does: it lies in a file of its own.
struct Price {
  Money amount;
  Currency currency;
  bool operator==(const Price&) const = default;
};

inline constexpr Percent kWhole = Percent::fromHundredths(Percent::kHundredthsPerWhole);
inline constexpr Percent kMostMarkup = Percent::fromHundredths(1'000'000);
inline constexpr int kMostPricedStitches = 100'000'000;
inline constexpr int kMostPricedSheets = 100'000;

}  // namespace creaseline
