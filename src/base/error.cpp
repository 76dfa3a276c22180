// SPDX-License-Identifier: MIT
// Puts the parts of an error together into one line that a person can act on.
#include "creaseline/base/error.h"

#include <utility>

#include "base/quoted_text.h"
#include "base/worded.h"

namespace creaseline {
namespace {

InputError::Details shortened(InputError::Details details) {
  details.found = shortenedText(details.found, kLongestFoundText);
  return details;
}

std::string complaintOf(const InputError::Details& details) {
  if (details.expected.empty()) {
    return details.found.empty() ? std::string() : worded("found {}", details.found);
  }
  return details.found.empty() ? worded("expected {}", details.expected)
                               : worded("found {}, expected {}", details.found, details.expected);
}

std::string messageOf(const InputError::Details& details) {
  std::string message = details.file;
  for (const std::string& part : {details.where, complaintOf(details)}) {
    message += (message.empty() || part.empty() ? "" : ": ") + part;
  }
  return message;
}

}  // namespace

InputError::InputError(Details details)
    : std::runtime_error(messageOf(shortened(details))), details_(shortened(std::move(details))) {
}

OutputError::OutputError(const std::string& file, const std::string& reason)
    : std::runtime_error(worded("{}: cannot be written: {}", file, reason)) {
}

ChangedOutside::ChangedOutside(const std::string& file)
    : OutputError(file, worded("it was changed by somebody else since it was read")), file_(file) {
}

}  // namespace creaseline
