// SPDX-License-Identifier: MIT
// The parts of the benchmark program. Each prints a plain text table.
#pragma once

#include <iosfwd>

// One exact fit against GEOS doing the same, measured in the same run.
void benchmarkFit(std::ostream& out);
