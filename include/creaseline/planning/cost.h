// SPDX-License-Identifier: MIT
// What an order costs the shop: time as the run cards reckon it, materials as the pick list does,
// blanks and fees, each at the shop's rates.
//
// Sums are exact; amounts are rounded once, to the currency's minor unit, so that all that is
// shown adds up: the total to the nearest unit, then the total among the kinds of cost, each kind
// among the lines, each line's share among the runs, every time by largest remainders. So each
// amount of `items`, and each of a line or of a run in a line, is its exact value rounded up or
// down, and no two tables differ. What one garment costs is rounded for itself.
//
// What has no price is never guessed: it is named in `notCounted`, with the field to be filled.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "creaseline/base/duration.h"
#include "creaseline/base/money.h"
#include "creaseline/planning/reason.h"
#include "creaseline/planning/run_card.h"

namespace creaseline {

enum class CostKind { Labour, Machine, Backing, Topping, Applique, Thread, Blanks, SetUp, Markup };

using CostAmounts = std::map<CostKind, Money>;  // kinds that are counted and have a share here
[[nodiscard]] Money sumOf(const CostAmounts& amounts);

// A kind of cost over the whole order.
struct CostItem {
  CostKind kind{};
  std::string measure;  // what is paid for: "3 h 20 min", "3.2 m of roll"
  Money amount;
  Reasons reasons;
  bool operator==(const CostItem&) const = default;
};

struct CostLine {
  std::size_t line = 0;  // index in the order
  std::string id, blank, colour;
  int garments = 0;
  CostAmounts amounts;
  Money total;
  Money perGarment;  // rounded for itself
  bool operator==(const CostLine&) const = default;
};

// Labour, machine and materials of one run; blanks, set-up and markup belong to no run.
struct CostRun {
  int number = 1;
  std::string title;  // "Centre chest, Club crest"
  int garments = 0;
  CostAmounts amounts;
  Money total;
  Money perGarment;  // rounded for itself
  bool operator==(const CostRun&) const = default;
};

// Where what is missing can be put in.
enum class CostField {
  Labour,
  Machine,
  Thread,
  Topping,
  Applique,
  BackingPrice,  // of the stock entry `entry`
  BackingStock,  // nothing in stock serves, or no piece goes on it
  BlankPrice,    // of the blank `entry`
  Held,          // not a field: hoopings that must not be sewn as ordered
  Beyond         // not a field: prices or quantities too large to be reckoned with
};

struct NotCounted {
  CostField field{};
  std::string entry;   // id in the shop's or the order's list, or empty
  std::string text;    // what is not counted, a sentence without a full stop
  std::string remedy;  // how it would be: "give \"labour\" in the shop's rates"
  bool operator==(const NotCounted&) const = default;
};

struct OrderCost {
  Currency currency;
  int garments = 0;
  std::vector<CostItem> items;  // by kind; those that are counted
  std::vector<CostLine> lines;  // of the order, all
  std::vector<CostRun> runs;    // as many as there are cards
  std::vector<NotCounted> notCounted;
  Money total;
  Money perGarment;  // rounded for itself
  [[nodiscard]] bool complete() const { return notCounted.empty(); }
};

// `runs` must be the plan's. Nothing where the shop gives no rates.
[[nodiscard]] std::optional<OrderCost> orderCost(const Plan& plan, const RunPlan& runs,
                                                 const ReportContext& context,
                                                 const UnitChoice& units);

// "Work", "Backing".
[[nodiscard]] std::string costPhrase(CostKind kind);
// "Total, incomplete" where something is not counted.
[[nodiscard]] std::string totalPhrase(const OrderCost& cost);
// What no cost of an order ever holds: one sentence.
[[nodiscard]] std::string leftOutOfCost();

template <>
struct EnumNames<CostKind> {
  static constexpr std::pair<CostKind, std::string_view> names[] = {
      {CostKind::Labour, "labour"},     {CostKind::Machine, "machine"},
      {CostKind::Backing, "backing"},   {CostKind::Topping, "topping"},
      {CostKind::Applique, "applique"}, {CostKind::Thread, "thread"},
      {CostKind::Blanks, "blanks"},     {CostKind::SetUp, "set-up"},
      {CostKind::Markup, "markup"}};
};
template <>
struct EnumNames<CostField> {
  static constexpr std::pair<CostField, std::string_view> names[] = {
      {CostField::Labour, "labour"},
      {CostField::Machine, "machine"},
      {CostField::Thread, "thread"},
      {CostField::Topping, "topping"},
      {CostField::Applique, "applique-fabric"},
      {CostField::BackingPrice, "backing-price"},
      {CostField::BackingStock, "backing-stock"},
      {CostField::BlankPrice, "blank-price"},
      {CostField::Held, "held"},
      {CostField::Beyond, "beyond"}};
};

}  // namespace creaseline
