// SPDX-License-Identifier: MIT
#include "planning/needles.h"

#include <algorithm>

namespace creaseline {
namespace {

using Threads = std::vector<std::string>;

bool holds(const Threads& threads, const std::string& thread) {
  return std::find(threads.begin(), threads.end(), thread) != threads.end();
}

// Each thread once, in order of first use.
Threads distinctThreads(const Threads& blocks) {
  Threads threads;
  for (const std::string& thread : blocks) {
    if (!thread.empty() && !holds(threads, thread)) {
      threads.push_back(thread);
    }
  }
  return threads;
}

// How often one needle must be given another thread if it carries all of `shared` in turn, garment
// after garment.
int changesOf(const Threads& shared, const Threads& blocks) {
  Threads turns;
  for (const std::string& block : blocks) {
    if (holds(shared, block) && (turns.empty() || turns.back() != block)) {
      turns.push_back(block);
    }
  }
  if (turns.empty()) {
    return 0;
  }
  return static_cast<int>(turns.size()) - (turns.back() == turns.front() ? 1 : 0);
}

Threads without(Threads threads, std::size_t index) {
  threads.erase(threads.begin() + static_cast<std::ptrdiff_t>(index));
  return threads;
}

// The threads that must take turns on one needle, in order of first use; none if all have room.
Threads sharedThreads(const Threads& blocks, std::size_t needles) {
  Threads shared = distinctThreads(blocks);
  if (shared.size() <= needles) {
    return {};
  }
  for (std::size_t own = 1; own < needles; ++own) {
    Threads best;
    for (std::size_t i = 0; i < shared.size(); ++i) {
      const Threads rest = without(shared, i);
      if (best.empty() || changesOf(rest, blocks) < changesOf(best, blocks)) {
        best = rest;
      }
    }
    shared = best;
  }
  return shared;
}

class Needles {
 public:
  Needles(const std::vector<Threads>& runs, int count)
      : runs_(runs), onNeedle_(static_cast<std::size_t>(count)) {}

  NeedleUse prepare(std::size_t run) {
    const Threads& blocks = runs_[run];
    NeedleUse use;
    use.shared = sharedThreads(blocks, onNeedle_.size());
    Threads resident;
    for (const std::string& thread : distinctThreads(blocks)) {
      if (!holds(use.shared, thread) || thread == use.shared.front()) {
        resident.push_back(thread);
      }
    }
    for (const std::string& thread : resident) {
      if (!holds(onNeedle_, thread)) {
        load(thread, resident, run, use);
      }
    }
    std::sort(use.before.begin(), use.before.end(),
              [](const NeedleLoad& a, const NeedleLoad& b) { return a.needle < b.needle; });
    if (!use.shared.empty()) {
      use.sharedNeedle = needleOf(use.shared.front());
    }
    for (const std::string& thread : blocks) {
      use.needles.push_back(thread.empty()              ? 0
                            : holds(use.shared, thread) ? use.sharedNeedle
                                                        : needleOf(thread));
    }
    return use;
  }

 private:
  [[nodiscard]] int needleOf(const std::string& thread) const {
    const auto found = std::find(onNeedle_.begin(), onNeedle_.end(), thread);
    return static_cast<int>(found - onNeedle_.begin()) + 1;
  }

  // Index of the first run after `run` that uses the thread; the number of runs if none does.
  [[nodiscard]] std::size_t nextUse(const std::string& thread, std::size_t run) const {
    std::size_t next = run + 1;
    while (next < runs_.size() && !holds(runs_[next], thread)) {
      ++next;
    }
    return next;
  }

  void load(const std::string& thread, const Threads& resident, std::size_t run, NeedleUse& use) {
    std::size_t best = onNeedle_.size();
    std::size_t bestNext = 0;
    for (std::size_t needle = 0; needle < onNeedle_.size(); ++needle) {
      const std::string& there = onNeedle_[needle];
      if (there.empty()) {
        best = needle;
        break;
      }
      const std::size_t next = nextUse(there, run);
      if (!holds(resident, there) && next > bestNext) {
        best = needle;
        bestNext = next;
      }
    }
    use.before.push_back({static_cast<int>(best) + 1, thread, onNeedle_[best]});
    onNeedle_[best] = thread;
  }

  const std::vector<Threads>& runs_;
  Threads onNeedle_;
};

}  // namespace

std::vector<NeedleUse> assignNeedles(const std::vector<std::vector<std::string>>& runs,
                                     int needles) {
  Needles state(runs, needles);
  std::vector<NeedleUse> uses;
  for (std::size_t run = 0; run < runs.size(); ++run) {
    uses.push_back(state.prepare(run));
  }
  return uses;
}

}  // namespace creaseline
