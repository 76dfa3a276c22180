// SPDX-License-Identifier: MIT
// Programs started by posix_spawn with their output in files: no pipe can fill up.
#include "support/program.h"

#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstring>
#include <fstream>
#include <iterator>
#include <stdexcept>

extern char** environ;

namespace creaseline::support {

namespace fs = std::filesystem;

namespace {

// What is to happen to the three standard streams and the working folder.
class FileActions {
 public:
  FileActions(const ProgramCall& call, const fs::path& folder) {
    check(posix_spawn_file_actions_init(&actions_));
    direct(STDIN_FILENO, call.closeStandardInput, "/dev/null", O_RDONLY);
    constexpr int kWrite = O_WRONLY | O_CREAT | O_TRUNC;
    direct(STDOUT_FILENO, call.closeStandardOutput, folder / "out", kWrite);
    direct(STDERR_FILENO, call.closeStandardError, folder / "err", kWrite);
    if (!call.folder.empty()) {
      check(posix_spawn_file_actions_addchdir_np(&actions_, call.folder.c_str()));
    }
  }
  ~FileActions() { posix_spawn_file_actions_destroy(&actions_); }
  FileActions(const FileActions&) = delete;
  FileActions& operator=(const FileActions&) = delete;
  [[nodiscard]] const posix_spawn_file_actions_t* get() const { return &actions_; }

 private:
  static void check(int error) {
    if (error != 0) {
      throw std::runtime_error(std::string("program cannot be set up: ") + std::strerror(error));
    }
  }
  void direct(int descriptor, bool close, const fs::path& file, int flags) {
    check(close ? posix_spawn_file_actions_addclose(&actions_, descriptor)
                : posix_spawn_file_actions_addopen(&actions_, descriptor, file.c_str(), flags,
                                                   S_IRUSR | S_IWUSR));
  }

  posix_spawn_file_actions_t actions_{};
};

std::string contentIfAny(const fs::path& file) {
  return fs::exists(file) ? contentOf(file) : std::string();
}

}  // namespace

RunningProgram::RunningProgram(const ProgramCall& call) {
  std::vector<std::string> words = {call.program.string()};
  words.insert(words.end(), call.arguments.begin(), call.arguments.end());
  std::vector<char*> pointers;
  for (std::string& word : words) {
    pointers.push_back(word.data());
  }
  pointers.push_back(nullptr);
  const FileActions actions(call, folder_.path());
  const int error = posix_spawn(&process_, call.program.c_str(), actions.get(), nullptr,
                                pointers.data(), environ);
  if (error != 0) {
    throw std::runtime_error(call.program.string() + ": " + std::strerror(error));
  }
}

RunningProgram::~RunningProgram() {
  if (!reaped_) {
    ::kill(process_, SIGKILL);
    ::waitpid(process_, &status_, 0);
  }
}

void RunningProgram::sendSignal(int number) const {
  if (!reaped_) {
    ::kill(process_, number);
  }
}

std::string RunningProgram::errorSoFar() const {
  return contentIfAny(folder_ / "err");
}

bool RunningProgram::ended() {
  if (!reaped_) {
    reaped_ = ::waitpid(process_, &status_, WNOHANG) == process_;
  }
  return reaped_;
}

ProgramResult RunningProgram::wait() {
  if (!reaped_) {
    reaped_ = ::waitpid(process_, &status_, 0) == process_;
  }
  ProgramResult result;
  result.exitCode = WIFEXITED(status_) ? WEXITSTATUS(status_) : -1;
  result.signal = WIFSIGNALED(status_) ? WTERMSIG(status_) : 0;
  result.out = contentIfAny(folder_ / "out");
  result.err = errorSoFar();
  return result;
}

ProgramResult runProgram(const ProgramCall& call) {
  return RunningProgram(call).wait();
}

std::string contentOf(const fs::path& file) {
  std::ifstream stream(file, std::ios::binary);
  if (!stream) {
    throw std::runtime_error(file.string() + " cannot be read");
  }
  return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

void writeContent(const fs::path& file, const std::string& content) {
  std::ofstream stream(file, std::ios::binary);
  stream << content;
  if (!stream.flush()) {
    throw std::runtime_error(file.string() + " cannot be written");
  }
}

std::map<fs::path, std::string> snapshot(const fs::path& folder) {
  std::map<fs::path, std::string> files;
  for (const fs::directory_entry& entry : fs::recursive_directory_iterator(folder)) {
    files[entry.path()] = entry.is_regular_file() ? contentOf(entry.path()) : std::string();
  }
  return files;
}

}  // namespace creaseline::support
