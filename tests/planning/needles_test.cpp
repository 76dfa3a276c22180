// SPDX-License-Identifier: MIT
// Threads on needles over a sequence of runs, replayed, and counted against every other way.
#include "planning/needles.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstdint>
#include <map>
#include <random>

using namespace creaseline;

namespace {

using Threads = std::vector<std::string>;
using Runs = std::vector<Threads>;

// Does what the uses say, garment by garment; counts what the hands put on before runs.
int replay(const Runs& runs, const std::vector<NeedleUse>& uses, int needles) {
  Threads state(static_cast<std::size_t>(needles));
  int loads = 0;
  REQUIRE(uses.size() == runs.size());
  for (std::size_t run = 0; run < runs.size(); ++run) {
    const NeedleUse& use = uses[run];
    for (const NeedleLoad& load : use.before) {
      REQUIRE(load.needle >= 1);
      REQUIRE(load.needle <= needles);
      std::string& there = state[static_cast<std::size_t>(load.needle) - 1];
      CHECK(there == load.replaced);
      there = load.thread;
      ++loads;
    }
    REQUIRE(use.needles.size() == runs[run].size());
    for (int garment = 0; garment < 2; ++garment) {
      for (std::size_t block = 0; block < runs[run].size(); ++block) {
        const int needle = use.needles[block];
        REQUIRE(needle >= 1);
        std::string& there = state[static_cast<std::size_t>(needle) - 1];
        if (needle == use.sharedNeedle) {
          CHECK(std::count(use.shared.begin(), use.shared.end(), runs[run][block]) == 1);
          there = runs[run][block];
        }
        CHECK(there == runs[run][block]);
      }
      if (use.sharedNeedle != 0) {
        state[static_cast<std::size_t>(use.sharedNeedle) - 1] = use.shared.front();
      }
    }
  }
  return loads;
}

// The fewest threads that must be put on for this order of runs: every content of the needles
// tried, by dynamic programming over sets of threads as bits.
int fewestLoads(const Runs& runs, int needles, int threadCount) {
  std::map<std::uint32_t, int> states = {{0U, 0}};
  for (const Threads& run : runs) {
    std::uint32_t wanted = 0;
    for (const std::string& thread : run) {
      wanted |= 1U << static_cast<unsigned>(thread.front() - 'a');
    }
    std::map<std::uint32_t, int> next;
    for (std::uint32_t content = 0; content < (1U << static_cast<unsigned>(threadCount));
         ++content) {
      if ((content & wanted) != wanted || __builtin_popcount(content) > needles) {
        continue;
      }
      for (const auto& [before, loads] : states) {
        const int total = loads + __builtin_popcount(content & ~before);
        const auto [entry, fresh] = next.emplace(content, total);
        entry->second = std::min(entry->second, total);
      }
    }
    states = next;
  }
  int least = 1'000'000;
  for (const auto& [content, loads] : states) {
    least = std::min(least, loads);
  }
  return least;
}

Runs randomRuns(std::mt19937& random, int runCount, int threadCount, int most) {
  Runs runs;
  for (int i = 0; i < runCount; ++i) {
    Threads all;
    for (int t = 0; t < threadCount; ++t) {
      all.emplace_back(1, static_cast<char>('a' + t));
    }
    std::shuffle(all.begin(), all.end(), random);
    all.resize(1 + random() % static_cast<unsigned>(most));
    Threads blocks = all;
    blocks.push_back(all[random() % all.size()]);
    runs.push_back(blocks);
  }
  return runs;
}

}  // namespace

TEST_CASE("a thread keeps its needle over all runs where needles suffice", "[needles]") {
  const Runs runs = {{"white", "navy", "white"}, {"red", "navy"}, {"white", "gold"}};
  const std::vector<NeedleUse> uses = assignNeedles(runs, 4);
  CHECK(uses[0].needles == std::vector<int>{1, 2, 1});
  CHECK(uses[1].needles == std::vector<int>{3, 2});
  CHECK(uses[2].needles == std::vector<int>{1, 4});
  CHECK(uses[0].before == std::vector<NeedleLoad>{{1, "white", ""}, {2, "navy", ""}});
  CHECK(uses[1].before == std::vector<NeedleLoad>{{3, "red", ""}});
  CHECK(uses[2].before == std::vector<NeedleLoad>{{4, "gold", ""}});
  CHECK(replay(runs, uses, 4) == 4);
}

TEST_CASE("the thread that is needed again latest makes room", "[needles]") {
  const Runs runs = {{"a", "b"}, {"c", "b"}, {"b", "c"}, {"a"}};
  const std::vector<NeedleUse> uses = assignNeedles(runs, 2);
  CHECK(uses[1].before == std::vector<NeedleLoad>{{1, "c", "a"}});
  CHECK(uses[2].before.empty());
  CHECK(replay(runs, uses, 2) == 4);
}

TEST_CASE("a run with too many threads changes one needle by hand", "[needles]") {
  // a and b are come back to, so c and d, which are sewn once, take turns.
  const Runs runs = {{"a", "b", "c", "a", "b", "d"}};
  const std::vector<NeedleUse> uses = assignNeedles(runs, 3);
  CHECK(uses[0].shared == Threads{"c", "d"});
  CHECK(uses[0].sharedNeedle == 3);
  CHECK(uses[0].needles == std::vector<int>{1, 2, 3, 1, 2, 3});
  replay(runs, uses, 3);

  // With a or b on its own needle two changes are left, with c four; a comes first.
  const std::vector<NeedleUse> between = assignNeedles({{"a", "b", "a", "b", "a", "c"}}, 2);
  CHECK(between[0].shared == Threads{"b", "c"});
}

TEST_CASE("one needle carries every thread in turn", "[needles]") {
  const Runs runs = {{"a", "b", "c"}, {"c", "a"}};
  const std::vector<NeedleUse> uses = assignNeedles(runs, 1);
  CHECK(uses[0].shared == Threads{"a", "b", "c"});
  CHECK(uses[1].shared == Threads{"c", "a"});
  CHECK(uses[1].before == std::vector<NeedleLoad>{{1, "c", "a"}});
  replay(runs, uses, 1);
}

TEST_CASE("blocks without a thread are given no needle", "[needles]") {
  const std::vector<NeedleUse> uses = assignNeedles({{"", "a", ""}, {}}, 2);
  CHECK(uses[0].needles == std::vector<int>{0, 1, 0});
  CHECK(uses[1].needles.empty());
  CHECK(uses[1].before.empty());
}

TEST_CASE("no other way puts on fewer threads for the same order of runs", "[needles][property]") {
  const unsigned seed = 20'261;
  CAPTURE(seed);
  std::mt19937 random(seed);
  for (int trial = 0; trial < 60; ++trial) {
    CAPTURE(trial);
    constexpr int kNeedles = 3;
    constexpr int kThreads = 6;
    const Runs runs = randomRuns(random, 6, kThreads, kNeedles);
    CHECK(replay(runs, assignNeedles(runs, kNeedles), kNeedles) ==
          fewestLoads(runs, kNeedles, kThreads));
  }
}

TEST_CASE("whatever the runs, each block finds its thread on its needle", "[needles][property]") {
  const unsigned seed = 20'262;
  CAPTURE(seed);
  std::mt19937 random(seed);
  for (int trial = 0; trial < 60; ++trial) {
    CAPTURE(trial);
    const int needles = 1 + static_cast<int>(random() % 4);
    const Runs runs = randomRuns(random, 5, 9, 9);
    CHECK(replay(runs, assignNeedles(runs, needles), needles) > 0);
  }
}
