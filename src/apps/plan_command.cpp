// SPDX-License-Identifier: MIT
// creaseline plan, creaseline rules: results that are text.
#include <fmt/format.h>

#include "commands.h"
#include "creaseline/planning/report.h"
#include "output.h"
#include "planning_job.h"
#include "rules_markdown.h"

namespace creaseline {

int runPlan(const Arguments& arguments, const std::filesystem::path& program) {
  const PlanningJob job = readJob(arguments, program);
  const Output output(arguments.output, arguments.force, job.inputs);
  const Plan plan = planJob(job, arguments);
  const ReportContext context{job.order, job.shop, job.rules};
  output.write(arguments.json ? jsonReport(plan, context) : textReport(plan, context, job.units));
  if (!output.isStandardOutput() && !arguments.quiet) {
    writeMessage(fmt::format("wrote {}: {}", arguments.output, summaryOf(plan)));
  }
  return exitCodeOf(plan);
}

int runRules(const Arguments& arguments, const std::filesystem::path& program) {
  const std::filesystem::path resources = findResources(program);
  const Output output(arguments.output, arguments.force);
  output.write(rulesMarkdown(loadRules(resources)));
  return kExitFine;
}

}  // namespace creaseline
