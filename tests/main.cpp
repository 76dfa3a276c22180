// SPDX-License-Identifier: MIT
#include "support/runner.h"

int main(int argc, char* argv[]) {
  return creaseline::test::runTests(argc, argv);
}
