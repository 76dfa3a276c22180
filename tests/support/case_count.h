// SPDX-License-Identifier: MIT
// How many random cases a test runs.
#pragma once

#include <algorithm>
#include <cstdlib>

namespace creaseline::test {

// The full number, or fewer where a slow build asks for it.
inline int caseCount(int full) {
  const char* wanted = std::getenv("CREASELINE_TEST_CASES");
  return wanted == nullptr ? full : std::min(full, std::max(1, std::atoi(wanted)));
}

// The same where many more cases than usual may be asked for.
inline int caseCount(int usual, int most) {
  return std::getenv("CREASELINE_TEST_CASES") == nullptr ? usual : caseCount(most);
}

}  // namespace creaseline::test
