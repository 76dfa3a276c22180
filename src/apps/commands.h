// SPDX-License-Identifier: MIT
// The verbs. Each returns the exit code and throws InputError, OutputError or Cancelled.
#pragma once

#include <filesystem>

#include "arguments.h"

namespace creaseline {

inline constexpr int kExitFine = 0;
inline constexpr int kExitStops = 1;
inline constexpr int kExitRefused = 2;

// `program`: the running program's own file, for finding the shipped rules.
[[nodiscard]] int runPlan(const Arguments& arguments, const std::filesystem::path& program);
[[nodiscard]] int runSheets(const Arguments& arguments, const std::filesystem::path& program);
[[nodiscard]] int runCheck(const Arguments& arguments, const std::filesystem::path& program);
[[nodiscard]] int runRules(const Arguments& arguments, const std::filesystem::path& program);

}  // namespace creaseline
