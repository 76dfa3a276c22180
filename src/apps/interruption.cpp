// SPDX-License-Identifier: MIT
// Signals set a flag and nothing else: only that is safe inside a handler.
#include "interruption.h"

#include <csignal>

#include "creaseline/planning/planner.h"

namespace creaseline {

namespace {

std::atomic<bool> interrupted{false};
std::atomic<int> signalNumber{SIGINT};
static_assert(std::atomic<bool>::is_always_lock_free && std::atomic<int>::is_always_lock_free);

extern "C" void noteSignal(int number) {
  signalNumber = number;
  interrupted = true;
}

}  // namespace

void watchForInterruption() {
  struct sigaction action = {};
  action.sa_handler = noteSignal;
  sigemptyset(&action.sa_mask);
  action.sa_flags = static_cast<int>(SA_RESETHAND);
  for (const int number : {SIGINT, SIGTERM}) {
    struct sigaction before = {};
    // A signal that the caller has switched off (nohup, a script's background job) stays off.
    if (sigaction(number, nullptr, &before) == 0 && before.sa_handler != SIG_IGN) {
      sigaction(number, &action, nullptr);
    }
  }
}

const std::atomic<bool>& interruptionFlag() {
  return interrupted;
}

int interruptionExitCode() {
  return 128 + signalNumber;
}

void throwIfInterrupted() {
  if (interrupted) {
    throw Cancelled{};
  }
}

}  // namespace creaseline
