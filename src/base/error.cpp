// SPDX-License-Identifier: MIT
// Puts the parts of an error together into one line that a person can act on.
#include "creaseline/base/error.h"

#include <utility>

#include "base/quoted_text.h"

namespace creaseline {
namespace {

InputError::Details shortened(InputError::Details details) {
  details.found = shortenedText(details.found, kLongestFoundText);
  return details;
}

std::string messageOf(const InputError::Details& details) {
  std::string message = details.file;
  const auto append = [&message](const char* separator, const std::string& part) {
    if (part.empty()) {
      return;
    }
    if (!message.empty()) {
      message += separator;
    }
    message += part;
  };
  append(": ", details.where);
  append(": ", details.found.empty() ? std::string() : "found " + details.found);
  append(details.found.empty() ? ": " : ", ",
         details.expected.empty() ? std::string() : "expected " + details.expected);
  return message;
}

}  // namespace

InputError::InputError(Details details)
    : std::runtime_error(messageOf(shortened(details))), details_(shortened(std::move(details))) {
}

OutputError::OutputError(const std::string& file, const std::string& reason)
    : std::runtime_error(file + ": cannot be written: " + reason) {
}

ChangedOutside::ChangedOutside(const std::string& file)
    : OutputError(file, "it was changed by somebody else since it was read"), file_(file) {
}

}  // namespace creaseline
