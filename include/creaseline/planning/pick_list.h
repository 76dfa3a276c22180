// SPDX-License-Identifier: MIT
// The pick list: everything to be brought to machine and hooping table before an order is sewn,
// and what of it is short. Pieces are counted, not packed: a need of sheets or roll is what is
// enough when each cut size is cut for itself in straight rows.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "creaseline/planning/run_card.h"

namespace creaseline {

struct SizePick {
  SizeName size;
  int count = 0;
  int held = 0;  // of these, garments that wait because a place on them must not be sewn
};
struct BlankPick {
  std::string blank;   // name
  std::string colour;  // name; may be empty
  std::optional<Colour> cloth;
  std::vector<SizePick> sizes;  // in the chart's order
  int garments = 0;
};

struct FramePick {
  std::string frame;  // name and window
  int onHand = 0;
  int hoopings = 0;
};

struct BackingPick {
  std::string stock;  // name; empty if nothing in stock serves
  std::string kind;   // "cut-away, at least 85 g/m²"
  Length width, height;
  int pieces = 0;
};
// What all pieces from one stock entry take, at most, and what there is.
struct BackingTotal {
  std::string stock;
  int pieces = 0;
  std::string need;    // "12 sheets", "3.2 m of roll"
  std::string onHand;  // "120 sheets", "45 m"
  bool enough = true;
};

// How the pieces of one size are cut from a stock entry: in straight rows across it.
struct CutBlock {
  Length across, along;     // of a piece as it lies, across the roll or sheet and along it
  std::int64_t pieces = 0;  // in all
  std::int64_t beside = 0;  // in a row; 0: the piece goes on no way
  std::int64_t rows = 0;    // on the roll, or on one sheet
  Length taken;             // of the roll
  std::int64_t sheets = 0;
  bool operator==(const CutBlock&) const = default;
};
// All of one stock entry; what its blocks take in all is what BackingTotal says.
struct CutLayout {
  std::string stock;  // name
  BackingForm form{};
  Length width;   // of the roll or sheet
  Length length;  // left on the roll, or of one sheet
  std::vector<CutBlock> blocks;
  std::string need;  // as in BackingTotal
  bool enough = true;
  bool operator==(const CutLayout&) const = default;
};

struct ToppingPick {
  Length width, height;  // of the frame's window, which it covers
  int pieces = 0;
};

struct ThreadPick {
  std::string thread;  // as on the run cards
  Colour colour;
  std::int64_t stitches = 0;         // in all
  std::vector<std::string> needles;  // "Ten-needle machine: 3"
};

// A piece of fabric for appliqué; as many pieces of fusible web, a little smaller.
struct FabricPick {
  std::string fabric, piece, design;
  Length width, height;
  int pieces = 0;
};

struct NeedlePick {
  std::string needle;   // "75 ball point"
  std::string machine;  // name
  int count = 0;        // needle positions in use with it
  bool listed = true;   // among the shop's needles, or the shop lists none
};

struct PickList {
  std::vector<BlankPick> blanks;  // by first line
  int garments = 0;
  std::vector<FramePick> frames;
  std::vector<BackingPick> backing;
  std::vector<BackingTotal> backingTotals;
  std::vector<CutLayout> cuts;  // of the same stock, in the same order
  std::vector<ToppingPick> topping;
  std::vector<ThreadPick> threads;
  std::vector<FabricPick> fabrics;
  std::vector<NeedlePick> needles;
  std::vector<std::string> shortages;  // a sentence each; empty if all that is stated is enough
};

// Blanks are those of the order; all else is for what may be sewn. `runs` must be the plan's.
[[nodiscard]] PickList pickList(const Plan& plan, const RunPlan& runs, const ReportContext& context,
                                const UnitChoice& units);

}  // namespace creaseline
