// SPDX-License-Identifier: MIT
// Ctrl-C and a polite request to end, turned into a flag that long work looks at.
#pragma once

#include <atomic>

namespace creaseline {

// From now on the first SIGINT or SIGTERM sets the flag; a second one ends the program at once.
void watchForInterruption();
[[nodiscard]] const std::atomic<bool>& interruptionFlag();
// 128 and the number of the signal, as shells have it: 130 after Ctrl-C.
[[nodiscard]] int interruptionExitCode();
// Throws Cancelled (planner.h) if a signal has come.
void throwIfInterrupted();

}  // namespace creaseline
