// SPDX-License-Identifier: MIT
#pragma once

namespace creaseline::test {

// Runs the tests that the arguments ask for, by default all; returns what a program is to end with.
int runTests(int argc, char* argv[]);

}  // namespace creaseline::test
