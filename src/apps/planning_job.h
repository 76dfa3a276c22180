// SPDX-License-Identifier: MIT
// What plan and sheets share: reading order and shop, and planning with progress and Ctrl-C.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "arguments.h"
#include "creaseline/catalogue/load.h"
#include "creaseline/planning/plan.h"

namespace creaseline {

struct PlanningJob {
  Rules rules;
  Order order;
  Shop shop;
  UnitChoice units;
  std::vector<std::filesystem::path> inputs;  // all files read
};

// Remarks of the readers go to standard error unless `quiet`. The rules are read, and what is made
// from the job is said, in the language that the arguments ask for.
[[nodiscard]] PlanningJob readJob(const Arguments& arguments, const std::filesystem::path& program);
// The plan's cautions point into the job's rules. Throws Cancelled after Ctrl-C.
[[nodiscard]] Plan planJob(const PlanningJob& job, const Arguments& arguments);
// "52 garments, 61 hoopings, 3 stops, 4 watches, 2 notes"
[[nodiscard]] std::string summaryOf(const Plan& plan);
[[nodiscard]] int exitCodeOf(const Plan& plan);
void writeNotes(const std::vector<LoadNote>& notes, bool quiet);

}  // namespace creaseline
