// SPDX-License-Identifier: MIT
// Runs a program as a user does and keeps what it says.
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "support/temporary_folder.h"

namespace creaseline::support {

struct ProgramResult {
  int exitCode = -1;  // -1 if it did not end by itself
  int signal = 0;     // that ended it, or 0
  std::string out, err;
};

struct ProgramCall {
  std::filesystem::path program;
  std::vector<std::string> arguments;
  std::filesystem::path folder;  // working folder; empty: that of the test
  bool closeStandardInput = false;
  bool closeStandardOutput = false;
  bool closeStandardError = false;
};

// A program that runs. It is ended if the test gives up on it.
class RunningProgram {
 public:
  explicit RunningProgram(const ProgramCall& call);
  ~RunningProgram();
  RunningProgram(const RunningProgram&) = delete;
  RunningProgram& operator=(const RunningProgram&) = delete;

  void sendSignal(int number) const;
  // What it has written to standard error so far.
  [[nodiscard]] std::string errorSoFar() const;
  [[nodiscard]] bool ended();
  ProgramResult wait();

 private:
  TemporaryFolder folder_;
  pid_t process_ = -1;
  bool reaped_ = false;
  int status_ = 0;
};

ProgramResult runProgram(const ProgramCall& call);

std::string contentOf(const std::filesystem::path& file);
void writeContent(const std::filesystem::path& file, const std::string& content);
// Every file below a folder with its content; two equal snapshots mean that nothing was touched.
std::map<std::filesystem::path, std::string> snapshot(const std::filesystem::path& folder);

}  // namespace creaseline::support
