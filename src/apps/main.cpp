// SPDX-License-Identifier: MIT
// The command line: reads the arguments, runs a verb, turns errors into one line and a code.
#include <new>

#include "commands.h"
#include "creaseline/planning/planner.h"
#include "error_text.h"
#include "interruption.h"
#include "output.h"

namespace creaseline {

namespace {

// The running program's own file, as the system knows it.
std::filesystem::path programFile(const char* calledAs) {
  std::error_code error;
  const std::filesystem::path file = std::filesystem::read_symlink("/proc/self/exe", error);
  return error ? std::filesystem::path(calledAs) : file;
}

int run(const Arguments& arguments, const std::filesystem::path& program) {
  switch (arguments.verb) {
    case Verb::Show:
      writeStandardOutput(arguments.text);
      return kExitFine;
    case Verb::Plan:
      return runPlan(arguments, program);
    case Verb::Sheets:
      return runSheets(arguments, program);
    case Verb::Check:
      return runCheck(arguments, program);
    case Verb::Rules:
      return runRules(arguments, program);
  }
  return kExitRefused;
}

int runGuarded(int count, char** words) {
  try {
    return run(parseArguments(count, words), programFile(count > 0 ? words[0] : ""));
  } catch (const InputError& error) {
    writeMessage(errorText(error));
  } catch (const Cancelled&) {
    writeMessage("cancelled; nothing was written");
    return interruptionExitCode();
  } catch (const std::bad_alloc&) {
    writeMessage("error: not enough memory");
  } catch (const std::exception& error) {  // UsageError, OutputError, and bugs of our own
    writeMessage(std::string("error: ") + error.what());
  }
  return kExitRefused;
}

}  // namespace

}  // namespace creaseline

int main(int count, char** words) {
  creaseline::guardStandardStreams();
  creaseline::watchForInterruption();
  return creaseline::runGuarded(count, words);
}
