// SPDX-License-Identifier: MIT
// Checked writing to files and to the standard streams.
#include "output.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "creaseline/base/error.h"
#include "creaseline/base/file.h"

namespace creaseline {

namespace fs = std::filesystem;

namespace {

// Returns 0, or the error that stopped the writing.
int writeAll(int descriptor, std::string_view content) {
  while (!content.empty()) {
    const ssize_t put = ::write(descriptor, content.data(), content.size());
    if (put < 0 && errno == EINTR) {
      continue;
    }
    if (put < 0) {
      return errno;
    }
    content.remove_prefix(static_cast<std::size_t>(put));
  }
  return 0;
}

void refuseInputs(const fs::path& path, const std::vector<fs::path>& inputs) {
  for (const fs::path& input : inputs) {
    std::error_code ignored;  // a path that cannot be compared is not the same file
    if (fs::equivalent(path, input, ignored)) {
      throw InputError(
          {path.string(), "", "a file that is read for this", "another name for the output"});
    }
  }
}

void requireFolderAbove(const fs::path& path) {
  std::error_code error;
  const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
  if (!fs::is_directory(folder, error)) {
    throw OutputError(path.string(), "the folder " + folder.string() + " does not exist");
  }
}

void refuseUnwritable(const fs::path& path, bool force) {
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (fs::exists(status)) {
    if (!fs::is_regular_file(status)) {
      throw InputError(
          {path.string(), "",
           fs::is_directory(status) ? "a folder" : "something that is no ordinary file",
           "the name of a file, or - for standard output"});
    }
    if (!force) {
      throw InputError(
          {path.string(), "", "a file of that name", "a new name, or --force to replace it"});
    }
    return;
  }
  requireFolderAbove(path);
}

}  // namespace

Output::Output(const std::string& target, bool force, const std::vector<fs::path>& inputs) {
  if (target == "-") {
    return;
  }
  if (target.empty()) {
    throw InputError(
        {"--output", "", "an empty name", "the name of a file, or - for standard output"});
  }
  path_ = target;
  refuseInputs(path_, inputs);
  refuseUnwritable(path_, force);
}

fs::path outputFolder(const std::string& target, bool force) {
  if (target.empty()) {
    throw InputError({"--output", "", "an empty name", "the name of a folder"});
  }
  const fs::path path = target;
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (!fs::exists(status)) {
    requireFolderAbove(path);
  } else if (!fs::is_directory(status)) {
    throw InputError({target, "", "a file of that name", "the name of a folder"});
  } else if (!force && !fs::is_empty(path, error)) {
    throw InputError({target, "", "a folder that is not empty",
                      "a new name, or --force to replace the page pictures in it"});
  }
  return path;
}

void Output::write(std::string_view content) const {
  if (isStandardOutput()) {
    writeStandardOutput(content);
  } else {
    writeFileAtomically(path_, content);
  }
}

void writeStandardOutput(std::string_view content) {
  if (const int error = writeAll(STDOUT_FILENO, content); error != 0) {
    throw OutputError("standard output", std::generic_category().message(error));
  }
}

void writeMessage(std::string_view message) {
  std::string line = "creaseline: ";
  for (const char c : message) {
    const auto byte = static_cast<unsigned char>(c);
    line += byte < 0x20 || byte == 0x7f ? ' ' : c;
  }
  line += '\n';
  writeAll(STDERR_FILENO, line);
}

void guardStandardStreams() {
  for (const int descriptor : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) {
    if (::fcntl(descriptor, F_GETFD) == -1 && errno == EBADF) {
      // Read-only on purpose: writing to a standard output that was closed stays an error. The
      // lowest free number is taken, which is this one.
      if (::open("/dev/null", O_RDONLY) == -1) {
        return;
      }
    }
  }
}

}  // namespace creaseline
