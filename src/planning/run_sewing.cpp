// SPDX-License-Identifier: MIT
#include "planning/run_sewing.h"

#include <algorithm>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "creaseline/planning/part_words.h"
#include "planning/steps.h"

namespace creaseline {
namespace {

std::string machineText(const ThreadBlock& block) {
  switch (block.kind) {
    case BlockKind::PlacementLine:
      return worded("Placement line of piece {}", block.piece);
    case BlockKind::TackDown:
      return worded("Tack down piece {}", block.piece);
    case BlockKind::Cover:
      return worded("Cover the edge of piece {}", block.piece);
    case BlockKind::Sew:
      return block.piece.empty() ? worded("Sew") : worded("Sew piece {}", block.piece);
  }
  return {};
}

RunStep handStep(std::string text) {
  RunStep step;
  step.text = std::move(text);
  step.byHand = true;
  return step;
}

void addThreads(RunCard& card, const Design& design, const std::vector<std::string>& threads,
                const NeedleUse& use) {
  for (std::size_t i = 0; i < threads.size(); ++i) {
    if (threads[i].empty()) {
      continue;
    }
    auto known = std::find_if(card.threads.begin(), card.threads.end(),
                              [&](const RunThread& entry) { return entry.name == threads[i]; });
    if (known == card.threads.end()) {
      RunThread thread;
      thread.name = threads[i];
      thread.colour = design.blocks[i].colour;
      thread.needle = use.needles[i];
      thread.shared =
          std::find(use.shared.begin(), use.shared.end(), threads[i]) != use.shared.end();
      known = card.threads.insert(card.threads.end(), thread);
    }
    known->stitches += design.blocks[i].stitches;
  }
}

std::string putOn(const std::string& thread, int needle, const std::string& replaced) {
  return replaced.empty() ? worded("put {} on needle {}", thread, needle)
                          : worded("put {} on needle {} in place of {}", thread, needle, replaced);
}

void addBlockSteps(RunCard& card, const Design& design, const std::vector<std::string>& threads,
                   const NeedleUse& use) {
  std::string onShared = use.shared.empty() ? std::string() : use.shared.front();
  for (std::size_t i = 0; i < threads.size(); ++i) {
    const ThreadBlock& block = design.blocks[i];
    if (use.sharedNeedle != 0 && use.needles[i] == use.sharedNeedle && threads[i] != onShared) {
      card.steps.push_back(
          handStep(worded("Stop: {}", putOn(threads[i], use.sharedNeedle, onShared))));
      onShared = threads[i];
    }
    card.steps.push_back({machineText(block), false, static_cast<int>(i) + 1, threads[i],
                          use.needles[i], block.stitches});
    if (const std::string byHand = handStepAfter(block, design); !byHand.empty()) {
      card.steps.push_back(handStep(worded("Stop. {}", byHand)));
    }
  }
  if (!use.shared.empty() && onShared != use.shared.front()) {
    card.steps.push_back(handStep(
        worded("For the next garment: {}", putOn(use.shared.front(), use.sharedNeedle, onShared))));
  }
}

// The marks are sewn with the thread that is on the needle by then.
void addMarkSteps(RunCard& card, const DesignPart& part) {
  if (const std::string sewn = sewMarksStep(part); !sewn.empty()) {
    RunStep step;
    step.text = sewn;
    for (const RunStep& before : card.steps) {
      if (!before.byHand) {
        step.block = before.block + 1;
        step.thread = before.thread;
        step.needle = before.needle;
      }
    }
    card.steps.push_back(step);
  }
  if (const std::string pickedOut = pickOutStep(part); !pickedOut.empty()) {
    card.steps.push_back(handStep(pickedOut));
  }
}

int colourChanges(const RunCard& card) {
  int changes = 0;
  int needle = 0;
  for (const RunStep& step : card.steps) {
    if (!step.byHand) {
      changes += needle != 0 && step.needle != needle ? 1 : 0;
      needle = step.needle;
    }
  }
  return changes;
}

// Changes of the shared needle's thread: in one garment, the one back to the beginning included.
int rethreadings(const RunCard& card) {
  std::vector<std::string> shared;
  for (const RunStep& step : card.steps) {
    const auto thread = std::find_if(card.threads.begin(), card.threads.end(),
                                     [&](const RunThread& t) { return t.name == step.thread; });
    if (thread != card.threads.end() && thread->shared &&
        (shared.empty() || shared.back() != step.thread)) {
      shared.push_back(step.thread);
    }
  }
  if (shared.empty()) {
    return 0;
  }
  return static_cast<int>(shared.size()) - 1 + (shared.back() != shared.front() ? 1 : 0);
}

int blocksOf(const Design& design, BlockKind kind) {
  return static_cast<int>(
      std::count_if(design.blocks.begin(), design.blocks.end(),
                    [kind](const ThreadBlock& block) { return block.kind == kind; }));
}

void addShare(std::vector<TimeShare>& shares, TimeUse use, int count, std::string_view one,
              std::string_view many, Duration each, const DefaultValue& basis) {
  if (count > 0) {
    shares.push_back({worded("{}, {} each", counted(count, one, many), formatDuration(each)),
                      each * count, basis.basis, use});
  }
}

Duration sumOf(const std::vector<TimeShare>& shares) {
  Duration sum;
  for (const TimeShare& share : shares) {
    sum += share.time;
  }
  return sum;
}

Duration sewingTime(int stitches, int stitchesPerMinute) {
  constexpr double kSecondsPerMinute = 60.0;
  return Duration::fromSeconds(stitches * kSecondsPerMinute / stitchesPerMinute);
}

}  // namespace

std::vector<std::string> blockThreads(const Design& design, const ThreadNames& names) {
  std::vector<std::string> threads;
  for (const ThreadBlock& block : design.blocks) {
    threads.push_back(names.of(block));
  }
  return threads;
}

void addSewing(RunCard& card, const PlacementPlan& plan, const ThreadNames& names,
               const NeedleUse& use) {
  const std::vector<std::string> threads = blockThreads(plan.design, names);
  addThreads(card, plan.design, threads, use);
  for (const NeedleLoad& load : use.before) {
    for (RunThread& thread : card.threads) {
      if (thread.name == load.thread) {
        thread.putOn = true;
        thread.replaced = load.replaced;
      }
    }
    card.setUp.push_back(load.replaced.empty()
                             ? worded("Put {} on needle {}", load.thread, load.needle)
                             : worded("Put {} on needle {} in place of {}", load.thread,
                                      load.needle, load.replaced));
  }
  if (plan.backing.topping) {
    card.steps.push_back(handStep(worded("Lay topping film over the cloth")));
  }
  if (plan.part && plan.part->number > 1) {
    card.steps.push_back(handStep(alignStep(*plan.part)));
  }
  card.steps.push_back(
      handStep(worded("Check the trace before sewing: needle up, round the whole outline; it must "
                      "clear the frame")));
  if (plan.design.blocks.empty()) {
    card.steps.push_back({worded("Sew {}; its threads are not stated", plan.design.name),
                          false,
                          1,
                          {},
                          0,
                          plan.design.stitches});
  }
  addBlockSteps(card, plan.design, threads, use);
  if (plan.part) {
    addMarkSteps(card, *plan.part);
  }
}

RunTime runTime(const RunCard& card, const Design& design, const Defaults& defaults,
                const TimeFigures& figures) {
  RunTime time;
  addShare(time.once, TimeUse::HandsAtMachine, static_cast<int>(card.setUp.size()),
           toBeWorded("needle threaded"), toBeWorded("needles threaded"), figures.rethreading,
           defaults.rethreading);
  time.each.push_back({worded("{} at {} a minute",
                              counted(card.stitches, toBeWorded("stitch"), toBeWorded("stitches")),
                              card.stitchesPerMinute),
                       sewingTime(card.stitches, card.stitchesPerMinute),
                       worded("speed of the machine, from the shop"), TimeUse::Machine});
  addShare(time.each, TimeUse::Machine, colourChanges(card), toBeWorded("colour change"),
           toBeWorded("colour changes"), figures.colourChange, defaults.colourChange);
  addShare(time.each, TimeUse::HandsAtMachine, rethreadings(card),
           toBeWorded("thread changed by hand"), toBeWorded("threads changed by hand"),
           figures.rethreading, defaults.rethreading);
  addShare(time.each, TimeUse::Machine, static_cast<int>(design.blocks.size()),
           toBeWorded("trim at the end of the block"),
           toBeWorded("trims, one at the end of each block"), figures.threadTrim,
           defaults.threadTrim);
  addShare(time.each, TimeUse::HandsAtMachine, blocksOf(design, BlockKind::PlacementLine),
           toBeWorded("fabric laid"), toBeWorded("fabrics laid"), figures.fabricLaying,
           defaults.fabricLaying);
  addShare(time.each, TimeUse::HandsAtMachine, blocksOf(design, BlockKind::TackDown),
           toBeWorded("fabric trimmed in the frame"), toBeWorded("fabrics trimmed in the frame"),
           figures.fabricTrimming, defaults.fabricTrimming);
  addShare(time.each, TimeUse::Hands, 1, toBeWorded("hooping"), toBeWorded("hoopings"),
           figures.hooping, defaults.hoopingTime);
  time.setUp = sumOf(time.once);
  time.perGarment = sumOf(time.each);
  time.total = time.setUp + time.perGarment * card.garments;
  return time;
}

}  // namespace creaseline
