// SPDX-License-Identifier: MIT
// Wording of errors.
#include "error_text.h"

namespace creaseline {

std::string errorText(const InputError& error) {
  const InputError::Details& details = error.details();
  std::string text = "error: " + details.file;
  if (!details.where.empty()) {
    text += ": " + details.where;
  }
  if (!details.found.empty()) {
    text += ": found " + details.found;
  }
  if (!details.expected.empty()) {
    text += (details.found.empty() ? ": expected " : "; expected ") + details.expected;
  }
  return text;
}

}  // namespace creaseline
