// SPDX-License-Identifier: MIT
// Gathers what is sewn alike, gives it a machine, and writes its card.
#include "creaseline/planning/run_card.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "creaseline/planning/groups.h"
#include "creaseline/planning/wording.h"
#include "planning/list_names.h"
#include "planning/parts.h"
#include "planning/run_sewing.h"
#include "planning/run_words.h"
#include "planning/same_backing.h"

namespace creaseline {
namespace {

using Members = std::vector<std::size_t>;  // indices into Plan::placements

bool sewnAlike(const PlacementPlan& a, const PlacementPlan& b) {
  return a.location == b.location && a.frame->frame == b.frame->frame &&
         a.frame->turn == b.frame->turn && a.placed.panelTurn == b.placed.panelTurn &&
         startPoint(a) == startPoint(b) && sameBacking(a.backing, b.backing) &&
         sameDesignPart(a, b) && a.design.id == b.design.id && a.design == b.design;
}

std::vector<Members> gather(const Plan& plan) {
  std::vector<Members> runs;
  for (std::size_t index = 0; index < plan.placements.size(); ++index) {
    const PlacementPlan& placement = plan.placements[index];
    if (!maySew(placement)) {
      continue;
    }
    const auto match = std::find_if(runs.begin(), runs.end(), [&](const Members& run) {
      return sewnAlike(plan.placements[run.front()], placement);
    });
    if (match == runs.end()) {
      runs.push_back({index});
    } else {
      match->push_back(index);
    }
  }
  return runs;
}

// ---- Machine
// -------------------------------------------------------------------------------------

// A frame's own sewing field holds on every machine, and the first machine's was planned with.
bool reaches(const Machine& machine, const PlacementPlan& plan, const Shop& shop) {
  const Frame* frame = shop.frame(plan.frame->frame);
  if (&machine == &shop.machines.front() || frame == nullptr || frame->sewingField) {
    return true;
  }
  const Ring hull =
      transformedRing(plan.design.outline.hull(), plan.placed.panelTurn - plan.frame->turn, {});
  const Point at = turned(plan.placed.centre - plan.frame->centre, -plan.frame->turn);
  constexpr double kTouchMm = 1e-6;
  return FrameOpening(machine.sewingField, Length(), std::nullopt).depth(hull, at) >= -kTouchMm;
}

struct MachineChoice {
  const Machine* machine = nullptr;
  std::string reason;
};

std::string countOfThreads(int threads) {
  return counted(threads, toBeWorded("thread"), toBeWorded("threads"));
}

MachineChoice chooseMachine(const PlacementPlan& plan, const Shop& shop, int threads) {
  const Machine* most = nullptr;
  for (const Machine& machine : shop.machines) {
    if (!reaches(machine, plan, shop)) {
      continue;
    }
    if (machine.needles >= threads) {
      return {&machine,
              threads == 1
                  ? worded("first of the shop that reaches the design and has a needle for {}",
                           countOfThreads(threads))
                  : worded("first of the shop that reaches the design and has needles for {}",
                           countOfThreads(threads))};
    }
    if (most == nullptr || machine.needles > most->needles) {
      most = &machine;
    }
  }
  return {most, worded("no machine has needles for {}; this has the most, so one needle "
                       "changes its thread by hand",
                       countOfThreads(threads))};
}

int distinct(std::vector<std::string> threads) {
  std::sort(threads.begin(), threads.end());
  threads.erase(std::unique(threads.begin(), threads.end()), threads.end());
  return static_cast<int>(threads.size() - static_cast<std::size_t>(std::count(
                                               threads.begin(), threads.end(), std::string())));
}

// ---- Words
// ---------------------------------------------------------------------------------------

void addNew(std::vector<std::string>& list, const std::string& entry) {
  if (!entry.empty() && std::find(list.begin(), list.end(), entry) == list.end()) {
    list.push_back(entry);
  }
}

class Cards {
 public:
  Cards(const Plan& plan, const ReportContext& context, const UnitChoice& units)
      : plan_(plan),
        context_(context),
        units_(units),
        names_(plan),
        figures_(readTimeFigures(context.rules.defaults)) {}

  RunPlan write() {
    RunPlan runs;
    for (const Members& members : gather(plan_)) {
      runs.cards.push_back(describe(members));
      runs.cards.back().number = static_cast<int>(runs.cards.size());
    }
    for (const Machine& machine : context_.shop.machines) {
      thread(runs, machine);
    }
    for (const RunCard& card : runs.cards) {
      runs.hoopings += card.garments;
      runs.total += card.time.total;
    }
    runs.held = held();
    return runs;
  }

 private:
  RunCard describe(const Members& members) {
    const PlacementPlan& first = plan_.placements[members.front()];
    RunCard card;
    card.shown = members.front();
    card.location = locationName(context_, first.location);
    card.design = first.letters.empty()
                      ? first.design.name
                      : worded("{}, letters {}", first.design.name, first.letters);
    card.width = first.design.width;
    card.height = first.design.height;
    card.stitches = first.design.stitches;
    card.backing = first.backing;
    addMachine(card, first);
    addFrame(card, first);
    for (const std::size_t index : members) {
      addMember(card, index);
    }
    return card;
  }

  void addMachine(RunCard& card, const PlacementPlan& plan) {
    const MachineChoice choice =
        chooseMachine(plan, context_.shop, distinct(blockThreads(plan.design, names_)));
    machines_.push_back(choice.machine);
    card.machine = choice.machine->name;
    card.machineReason = choice.reason;
    card.needles = choice.machine->needles;
    card.stitchesPerMinute = choice.machine->stitchesPerMinute;
  }

  void addFrame(RunCard& card, const PlacementPlan& plan) {
    const FrameChoice& choice = *plan.frame;
    if (const Frame* frame = context_.shop.frame(choice.frame)) {
      card.frame = framePhrase(*frame, choice, units_);
      card.bracketAtMachine = bracketAtMachine(frame->bracket);
      card.bracketOnGarment = bracketOnGarment(frame->bracket, plan, choice.turn);
    }
    card.loading = loadingPhrase(plan, choice.turn);
    card.turn = turnInFramePhrase(plan.placed.panelTurn - choice.turn);
    const StartPoint start = startPoint(plan);
    card.startRight = start.right;
    card.startDown = start.down;
    card.start = startPhrase(start, units_);
  }

  void addMember(RunCard& card, std::size_t index) {
    const PlacementPlan& plan = plan_.placements[index];
    const OrderLine& line = context_.order.lines[plan.line];
    for (int number = 1; number <= plan.quantity; ++number) {
      card.toSew.push_back({index, line.id, blankName(context_, line), line.colour, plan.size,
                            number, plan.quantity});
    }
    card.garments += plan.quantity;
    for (const std::string& note : {line.note, line.placements[plan.placement].note}) {
      addNew(card.notes, note.empty() ? note : worded("Line {}: {}", line.id, note));
    }
    for (const Finding& finding : plan_.findings) {
      if (finding.severity == Severity::Watch && concerns(finding, plan)) {
        addNew(card.watches, fmt::format("{}: {}", finding.place, finding.text));
      }
    }
    for (const Caution* caution : plan.cautions) {
      if (std::find(card.cautions.begin(), card.cautions.end(), caution) == card.cautions.end()) {
        card.cautions.push_back(caution);
      }
    }
  }

  // Needles, steps and time of all cards of one machine.
  void thread(RunPlan& runs, const Machine& machine) {
    std::vector<std::size_t> own;
    std::vector<std::vector<std::string>> threads;
    for (std::size_t i = 0; i < runs.cards.size(); ++i) {
      if (machines_[i] == &machine) {
        own.push_back(i);
        threads.push_back(blockThreads(plan_.placements[runs.cards[i].shown].design, names_));
      }
    }
    const std::vector<NeedleUse> uses = assignNeedles(threads, machine.needles);
    for (std::size_t i = 0; i < own.size(); ++i) {
      RunCard& card = runs.cards[own[i]];
      const PlacementPlan& first = plan_.placements[card.shown];
      addSewing(card, first, names_, uses[i]);
      card.time = runTime(card, first.design, context_.rules.defaults, figures_);
    }
  }

  // One entry for each line and location that holds sizes back.
  std::vector<HeldGarments> held() {
    std::vector<HeldGarments> list;
    for (std::size_t begin = 0; begin < plan_.placements.size();) {
      std::size_t end = begin;
      Members members;
      for (; end < plan_.placements.size() && samePlace(begin, end); ++end) {
        if (!maySew(plan_.placements[end]) && plan_.placements[end].countsGarments()) {
          members.push_back(end);
        }
      }
      if (!members.empty()) {
        list.push_back(holdBack(members));
      }
      begin = end;
    }
    return list;
  }

  [[nodiscard]] bool samePlace(std::size_t a, std::size_t b) const {
    return plan_.placements[a].line == plan_.placements[b].line &&
           plan_.placements[a].placement == plan_.placements[b].placement;
  }

  HeldGarments holdBack(const Members& members) {
    const PlacementPlan& first = plan_.placements[members.front()];
    const OrderLine& line = context_.order.lines[first.line];
    HeldGarments held;
    held.lineId = line.id;
    held.blank = blankName(context_, line);
    held.location = locationName(context_, first.location);
    std::vector<SizeName> sizes;
    for (const std::size_t index : members) {
      sizes.push_back(plan_.placements[index].size);
      held.garments += plan_.placements[index].quantity;
    }
    held.sizes = sizesPhrase(sizes, chartOf(context_, line));
    for (const Finding& finding : plan_.findings) {
      const bool stops = finding.severity == Severity::Stop &&
                         std::any_of(members.begin(), members.end(), [&](std::size_t index) {
                           return concerns(finding, plan_.placements[index]);
                         });
      if (stops) {
        addNew(held.reasons, finding.text);
        addNew(held.remedies, firstRemedy(finding));
      }
    }
    return held;
  }

  const Plan& plan_;
  const ReportContext& context_;
  UnitChoice units_;
  ThreadNames names_;
  TimeFigures figures_;
  std::vector<const Machine*> machines_;  // of each card
};

}  // namespace

bool maySew(const PlacementPlan& plan) {
  return plan.hasRule && plan.frame && !plan.stops();
}

RunPlan planRuns(const Plan& plan, const ReportContext& context, const UnitChoice& units) {
  return Cards(plan, context, units).write();
}

}  // namespace creaseline
