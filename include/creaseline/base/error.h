// SPDX-License-Identifier: MIT
// The one error that readers of files raise, and the one that writers raise.
#pragma once

#include <stdexcept>
#include <string>

namespace creaseline {

// What is wrong with a file that the user gave. Thrown by every reader at the file edge; the
// message is fit for a person: file, place, what was found, what is expected.
class InputError : public std::runtime_error {
 public:
  struct Details {
    std::string file;      // path as the user gave it
    std::string where;     // JSON pointer ("/frames/0/window"), or "line 12, column 'body width'"
    std::string found;     // the offending value, shortened
    std::string expected;  // what would have been right, which is also the remedy
  };

  explicit InputError(Details details);
  [[nodiscard]] const Details& details() const { return details_; }

 private:
  Details details_;
};

// A file could not be written. The old content, if any, is still in place.
class OutputError : public std::runtime_error {
 public:
  OutputError(const std::string& file, const std::string& reason);
};

// Nothing was written, since the file on disk is not the one that was read: somebody else saved it
// meanwhile, or put one there, or took it away.
class ChangedOutside : public OutputError {
 public:
  explicit ChangedOutside(const std::string& file);
  [[nodiscard]] const std::string& file() const { return file_; }

 private:
  std::string file_;
};

}  // namespace creaseline
