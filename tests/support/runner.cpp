// SPDX-License-Identifier: MIT
// Most of Catch2's one header is compiled here, once for all programs.
#include "support/runner.h"

#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

int creaseline::test::runTests(int argc, char* argv[]) {
  return Catch::Session().run(argc, argv);
}
