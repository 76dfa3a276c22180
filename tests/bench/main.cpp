// SPDX-License-Identifier: MIT
// Prints the measured ratios, each side of a ratio timed in this very run.
#include <iostream>

#include "benchmarks.h"

int main() {
  benchmarkFit(std::cout);
  benchmarkRotation(std::cout);
  benchmarkPlanning(std::cout);
  return 0;
}
