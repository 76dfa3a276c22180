// SPDX-License-Identifier: MIT
// The order on one sheet: what is asked for, how much work it is, and what stands in its way.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/planning/run_card.h"

namespace creaseline {

struct SummaryPlace {
  std::string location, design;  // names
  Length width, height;          // of the design as sewn
  int stitches = 0;
  int hoopings = 1;  // of one garment, the most of any size
  int garments = 0;
  int held = 0;  // of these, must not be sewn as ordered
  // Index into Plan::placements of the size that stands for all: the middle one of those whose
  // place is decided; nothing if none is.
  std::optional<std::size_t> shown;
};
struct SummaryThread {
  std::string name;  // unmistakable within the order
  Colour colour;
  std::vector<std::string> designs;  // names
};
struct SummaryLine {
  std::string id, blank, colour, note;
  std::optional<Colour> cloth;  // of that name, if the blank knows it
  std::vector<SizeQuantity> sizes;
  int garments = 0;
  std::vector<SummaryPlace> places;
  std::vector<SummaryThread> threads;  // in order of first use
};
struct SummaryRun {
  int number = 1;
  std::string title;  // "Centre chest, Club crest"
  std::string machine, frame;
  int garments = 0;
  Duration time;
};
struct SummaryFinding {
  Severity severity{};
  std::string place, text;
  std::string remedy;  // the first, with what the plan then says; empty if none helps
};

struct OrderSummary {
  std::string id, title, customer, due, note, shop;
  std::vector<SummaryLine> lines;
  PlanCounts counts;
  int hoopings = 0;  // that may be sewn
  Duration time;     // of all runs
  std::vector<SummaryRun> runs;
  std::vector<HeldGarments> held;
  std::vector<SummaryFinding> findings;  // stops, then watches
};

// `runs` must be the plan's.
[[nodiscard]] OrderSummary orderSummary(const Plan& plan, const RunPlan& runs,
                                        const ReportContext& context);

}  // namespace creaseline
