// SPDX-License-Identifier: MIT
// Where results go: standard output or a file that is never replaced by accident.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace creaseline {

class Output {
 public:
  // Refuses, before any work is done: a file that is there already unless `force`; anything that
  // is there but no ordinary file; a folder that is missing; one of `inputs`, forced or not.
  // Throws InputError or OutputError.
  Output(const std::string& target, bool force,
         const std::vector<std::filesystem::path>& inputs = {});

  [[nodiscard]] bool isStandardOutput() const { return path_.empty(); }
  // Precondition: !isStandardOutput().
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }
  // Throws OutputError.
  void write(std::string_view content) const;

 private:
  std::filesystem::path path_;  // empty: standard output
};

// The folder that many files go to: one that is not there yet, whose parent is, or an empty one;
// with `force` any folder. Throws InputError or OutputError.
[[nodiscard]] std::filesystem::path outputFolder(const std::string& target, bool force);

// Throws OutputError if not everything could be written.
void writeStandardOutput(std::string_view content);
// One message, always one line: control characters become spaces. Errors are not reported.
void writeMessage(std::string_view message);
// Opens standard streams that the caller closed, so that no file of ours takes their numbers.
void guardStandardStreams();

}  // namespace creaseline
