// SPDX-License-Identifier: MIT
// Reading and planning for the verbs that need a plan.
#include "planning_job.h"

#include <fmt/format.h>

#include "commands.h"
#include "creaseline/catalogue/shop_check.h"
#include "creaseline/planning/planner.h"
#include "interruption.h"
#include "language.h"
#include "output.h"
#include "progress_line.h"

namespace creaseline {

namespace {

template <class T>
T take(Loaded<T> loaded, PlanningJob& job, bool quiet) {
  writeNotes(loaded.notes, quiet);
  job.inputs.insert(job.inputs.end(), loaded.files.begin(), loaded.files.end());
  return std::move(loaded.value);
}

std::string counted(int count, const char* one, const char* many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

}  // namespace

PlanningJob readJob(const Arguments& arguments, const std::filesystem::path& program) {
  const std::filesystem::path resources = findResources(program);
  const Phrasebook* book = bookFor(arguments, resources);
  PlanningJob job;
  speakBy(book);
  job.rules = loadRules(resources);
  // What is wrong with the user's files is said in messages, and those are English.
  speakBy(nullptr);
  job.order = take(loadOrder(arguments.order, job.rules), job, arguments.quiet);
  job.shop = take(loadShop(arguments.shop, job.rules), job, arguments.quiet);
  std::vector<LoadNote> notes;
  for (IdleHouseRule& idle : idleHouseRules(job.order, job.shop)) {
    idle.note.file = arguments.shop.string();
    notes.push_back(std::move(idle.note));
  }
  writeNotes(notes, arguments.quiet);
  if (!arguments.prices) {
    job.shop.rates.reset();
  }
  job.units = job.shop.units;
  job.units.length = arguments.unit.value_or(job.units.length);
  job.units.mark = arguments.mark.value_or(job.units.mark);
  throwIfInterrupted();
  speakBy(book);
  return job;
}

Plan planJob(const PlanningJob& job, const Arguments& arguments) {
  ProgressLine line("planning", !arguments.quiet);
  PlanOptions options;
  options.threads = arguments.threads;
  options.cancel = &interruptionFlag();
  options.progress = [&line](double share) { line.show(share); };
  Plan plan = planOrder(job.order, job.shop, job.rules, options);
  throwIfInterrupted();
  return plan;
}

std::string summaryOf(const Plan& plan) {
  const PlanCounts& counts = plan.counts;
  return fmt::format(
      "{}, {}, {}, {}, {}", counted(counts.garments, "garment", "garments"),
      counted(counts.placements, "hooping", "hoopings"), counted(counts.stops, "stop", "stops"),
      counted(counts.watches, "watch", "watches"), counted(counts.notes, "note", "notes"));
}

int exitCodeOf(const Plan& plan) {
  return plan.counts.stops > 0 ? kExitStops : kExitFine;
}

void writeNotes(const std::vector<LoadNote>& notes, bool quiet) {
  if (quiet) {
    return;
  }
  for (const LoadNote& note : notes) {
    writeMessage(fmt::format("note: {}: {}{}{}", note.file, note.where,
                             note.where.empty() ? "" : ": ", note.text));
  }
}

}  // namespace creaseline
