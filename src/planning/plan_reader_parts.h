// SPDX-License-Identifier: MIT
// The parts of a plan file that stand in several places: what a plan is read against, reasons,
// points, frames.
#pragma once

#include "catalogue/json_reader.h"
#include "creaseline/planning/plan.h"
#include "planning/workshop.h"

namespace creaseline {

// What the plan was made of, with the lines found by their id.
struct PlanSource {
  PlanSource(const Order& order, const Shop& shop, const Rules& rules);
  const Order& order;
  const Shop& shop;
  const Rules& rules;
  Workshop workshop;
  std::map<std::string, std::size_t> lines;
};

// The index of the order's line of that id.
[[nodiscard]] std::size_t readLineIndex(const JsonCursor& at, const PlanSource& source);
// The index of one of the line's placements.
[[nodiscard]] std::size_t readPlacementIndex(const JsonCursor& at, const OrderLine& line);
// A size that the blank is made in.
[[nodiscard]] SizeName readChartSize(const JsonCursor& at, const Blank& blank);
[[nodiscard]] LocationId readPlanLocation(const JsonCursor& at, const Rules& rules);
// A location, rule or stock name; empty where the plan names none.
template <class Id>
[[nodiscard]] Id readIdOrEmpty(const JsonCursor& at) {
  return Id(at.anyText());
}

// Any length that a Length can hold.
[[nodiscard]] Length readAnyLength(const JsonCursor& at);
// The exact number that was written, which a Length would round.
[[nodiscard]] double readMillimetres(const JsonCursor& at);
[[nodiscard]] Point readPoint(const JsonCursor& at);
[[nodiscard]] Box readBox(const JsonCursor& at);
[[nodiscard]] Reason readReason(const JsonCursor& at);
[[nodiscard]] Reasons readReasons(const JsonCursor& at);
// A frame that holds the outline about that centre, with the slack that it gives.
struct Held {
  const Outline& outline;
  Point centre;
};
[[nodiscard]] FrameChoice readFrameChoice(const JsonCursor& at, const PlanSource& source,
                                          const Held& held);
// Of a design that is sewn in several hoopings.
[[nodiscard]] DesignPart readDesignPart(const JsonCursor& at);
[[nodiscard]] FrameId readFrameId(const JsonCursor& at, const Shop& shop);
// A factor of scale: any number that is not negative.
[[nodiscard]] double readFactor(const JsonCursor& at);

[[nodiscard]] std::vector<Finding> readFindings(const JsonCursor& at, const PlanSource& source);

// Lists have no upper limit of their own: the document has one.
inline constexpr std::size_t kAnyNumber = 1'000'000'000;

// A list of what `read` makes of each item.
template <class Read>
[[nodiscard]] auto readList(const JsonCursor& at, std::string_view ofWhat, Read read) {
  std::vector<decltype(read(at))> list;
  for (const JsonCursor& item : at.items(0, kAnyNumber, ofWhat)) {
    list.push_back(read(item));
  }
  return list;
}

}  // namespace creaseline
