// SPDX-License-Identifier: MIT
// Run cards: the garments that one set-up of the machine sews one after another, and everything
// that the person at the machine must know for them.
#pragma once

#include <string>
#include <vector>

#include "creaseline/base/duration.h"
#include "creaseline/base/units.h"
#include "creaseline/planning/plan.h"
#include "creaseline/planning/report.h"

namespace creaseline {

// Whether a size of a placement may be sewn: its place and frame are decided and nothing stops it.
[[nodiscard]] bool maySew(const PlacementPlan& plan);

// One garment to be ticked off.
struct RunGarment {
  std::size_t placement = 0;  // index into Plan::placements
  std::string lineId;
  std::string blank;   // name
  std::string colour;  // of the cloth; may be empty
  SizeName size;
  int number = 1;  // of `of` garments of this line and size
  int of = 1;
};

struct RunThread {
  std::string name;  // unmistakable within the order: with its colour where two share a name
  Colour colour;
  int needle = 0;        // counted from 1
  int stitches = 0;      // of one garment
  bool putOn = false;    // by hand, before the run
  std::string replaced;  // what it is put on in place of; empty if the needle was free
  bool shared = false;   // the needle carries other threads of this run too, changed by hand
};

// What the machine or the hands do next. `block` counts from 1; 0 where the hands work.
struct RunStep {
  std::string text;  // "Sew", "Cover the edge of piece K", "Stop: lay navy twill over the line"
  bool byHand = false;
  int block = 0;
  std::string thread;  // as in RunThread; empty where the hands work
  int needle = 0;
  int stitches = 0;
};

// Who or what a part of the time keeps busy.
enum class TimeUse {
  Hands,           // away from the machine: hooping
  HandsAtMachine,  // the machine waits: threading, laying and trimming fabric
  Machine          // runs by itself: sewing, colour changes, trims
};

// A part of the time, as a sentence fragment: "4,850 stitches at 700 a minute".
struct TimeShare {
  std::string text;
  Duration time;
  std::string basis;
  TimeUse use = TimeUse::Machine;
};

// One machine head, one garment after another; hooping is not overlapped with sewing.
struct RunTime {
  std::vector<TimeShare> once;  // before the run
  std::vector<TimeShare> each;  // of every garment
  Duration setUp, perGarment, total;
};

struct RunCard {
  int number = 1;
  int garments = 0;
  std::size_t shown = 0;  // index into Plan::placements of the first member, for all that is equal
  std::string location;   // name, "Centre chest"
  std::string design;     // name
  Length width, height;   // of the design as sewn
  int stitches = 0;       // of one garment

  std::string machine;
  std::string machineReason;
  int needles = 0;  // of the machine
  int stitchesPerMinute = 0;

  std::string frame;             // as framePhrase()
  std::string bracketAtMachine;  // side of the frame in its own view: "top"
  std::string bracketOnGarment;  // "towards the collar seam"
  std::string loading;  // how the garment lies at the machine: "the collar seam at the frame's top"
  std::string turn;     // of the design in the frame: "none", "90° clockwise"
  // From the frame's centre to the design's, seen at the machine; +right and +down.
  Length startRight, startDown;
  std::string start;  // "on the frame's centre", "1/2 in (12.7 mm) right of the frame's centre"

  BackingChoice backing;
  std::vector<RunThread> threads;  // in order of first use
  std::vector<std::string> setUp;  // what the hands do before the first garment
  std::vector<RunStep> steps;      // of every garment
  RunTime time;
  std::vector<RunGarment> toSew;         // in order; as many as `garments`
  std::vector<std::string> notes;        // of order lines and placements
  std::vector<std::string> watches;      // what the plan says to be done with care
  std::vector<const Caution*> cautions;  // owned by the rules
};

// Sizes of one line and location that must not be sewn as ordered, and why.
struct HeldGarments {
  std::string lineId;
  std::string blank;
  std::string location;
  std::string sizes;
  int garments = 0;
  std::vector<std::string> reasons;   // the stops, one sentence each
  std::vector<std::string> remedies;  // the least change for each stop that has one, as planned
};

struct RunPlan {
  std::vector<RunCard> cards;  // in the order of the plan
  std::vector<HeldGarments> held;
  int hoopings = 0;  // of all cards
  Duration total;
};

// Placements share a card where design, location, frame and its turn, the design's turn and place
// in the frame (to the millimetre), backing, topping and needle are equal. The machine is the
// first of the shop that reaches the design and has a needle for each of its threads; where none
// has, the first of those with most needles. Over the cards of a machine a thread stays on its
// needle as long as there are needles enough; after that the thread that is needed again latest
// makes room (L. A. Belady, IBM Systems Journal 5(2), 1966; for tools on a machine: C. S. Tang and
// E. V. Denardo, Operations Research 36(5), 1988: fewest changes for a given order of runs).
// Throws InputError if a default time does not read.
[[nodiscard]] RunPlan planRuns(const Plan& plan, const ReportContext& context,
                               const UnitChoice& units);

}  // namespace creaseline
